/** A printed code is read back by the rules of ISO/IEC 18004:2015, not by the library that made it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printedCode } from '../../src/figures/printed-code.ts';
import { modulesOf, readCode } from '../support/read-code.ts';

const ADDRESSES = [
  'https://a.example/',
  'https://school.example/kits/cloud/draft/run/',
  'https://lab.school.example/kits/cloud-by-pumping-down/1.2.0/student/',
  'https://school.example/kits/cloud/draft/run/#p=84300&t=295.15&h=0.35&vessel=sphere&units=inHg',
];

describe('the printed code', () => {
  it.each(ADDRESSES)('leads to %s', (address) => expect(readCode(printedCode(address, 'en'))).toBe(address));

  it('leads to any address of a page', () => {
    fc.assert(fc.property(fc.webUrl().filter((address) => address.length <= 100), (address) => {
      expect(readCode(printedCode(address, 'en'))).toBe(address);
    }), { seed: 20, numRuns: 60 });
  });

  it('has its quiet zone of four modules (section 6.3.8) and its finders in three corners (6.3.3)', () => {
    const { modules, quiet } = modulesOf(printedCode(ADDRESSES[0]!, 'en'));
    expect(quiet).toBe(4);
    const finder = ['1111111', '1000001', '1011101', '1011101', '1011101', '1000001', '1111111'];
    const corner = (top: number, left: number): string[] => modules.slice(top, top + 7).map((row) => row.slice(left, left + 7).map(Number).join(''));
    const end = modules.length - 7;
    expect([corner(0, 0), corner(0, end), corner(end, 0)]).toEqual([finder, finder, finder]);
    expect(corner(end, end)).not.toEqual(finder);
  });

  it('obeys the pages’ policy and says what it is', () => {
    const svg = printedCode('https://a.example/?x=1&y="2"', 'en');
    expect(svg).not.toMatch(/style|<script|href/);
    expect(svg).toContain('aria-label="Code of the address https://a.example/?x=1&amp;y=&quot;2&quot;"');
  });

  it('refuses what no code can hold: 2,331 bytes at 40-M, table 7', () => expect(() => printedCode('x'.repeat(2332), 'en')).toThrow(RangeError));
});
