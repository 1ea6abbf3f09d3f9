/** How the page of checks writes numbers: enough digits to see the deviation, no more. */
import { describe, expect, it } from 'vitest';
import {
  asWritten, computedText, deviationText, inWords, moduleName, shareText, toleranceText,
} from '../../src/pages/[...edition]/checks/_numbers.ts';
import { checkRow, checks, type TruthRow } from '../truth/index.ts';

const row = (value: number, tolerance: TruthRow['tolerance'], unit = 'Pa'): TruthRow =>
  ({ id: 'x', check: 'x', inputs: {}, value, unit, tolerance, toleranceReason: 'x', source: 'x', seenIn: 'x' });

it.each([
  [611.657, '611.657'],
  [101325, '101,325'],
  [1000, '1000'],
  [-10, '−10'],
  [0, '0'],
  [0.005425, '0.005425'],
  [8.9e-10, '8.9 × 10<sup>−10</sup>'],
  [29_000_000, '2.9 × 10<sup>7</sup>'],
])('%d is written %s', (value, text) => expect(asWritten(value, 'en')).toBe(text));

describe('a computed value goes to a tenth of what is allowed', () => {
  it.each([
    [3169.7, { kind: 'rel', value: 0.0003 }, 3169.8413, '3169.84'],
    [294.16, { kind: 'abs', value: 0.05 }, 294.19512, '294.195'],
    [8.9e-10, { kind: 'rel', value: 0.045 }, 8.8862e-10, '8.89 × 10<sup>−10</sup>'],
    [3.8, { kind: 'max' }, 3, '3.00'],
  ] as const)('%d %o', (value, tolerance, computed, text) => expect(computedText(row(value, tolerance), computed, 'en')).toBe(text));
});

it('says how far off, and what is allowed, in the kind of the tolerance', () => {
  expect([deviationText(row(1, { kind: 'rel', value: 0.01 }), -0.00123, 'en'), toleranceText(row(1, { kind: 'rel', value: 0.01 }), 'en')]).toEqual(['−0.12 %', '±1 %']);
  expect([deviationText(row(1, { kind: 'abs', value: 0.5 }), 0.123, 'en'), toleranceText(row(1, { kind: 'abs', value: 0.5 }), 'en')]).toEqual(['0.12 Pa', '±0.5 Pa']);
  expect(toleranceText(row(1, { kind: 'max' }), 'en')).toBe('at most the published value');
});

it('writes the decimal sign and the words of the page’s language', () => {
  expect([asWritten(0.005425, 'es'), asWritten(8.9e-10, 'es'), shareText(0.001, 'es')]).toEqual(['0,005425', '8,9 × 10<sup>−10</sup>', 'menos del 1 %']);
});

it('names things in words', () => {
  expect([inWords('saturationVaporPressure'), moduleName('moist-air')]).toEqual(['saturation vapor pressure', 'Moist air']);
  expect([0, 0.001, 0.5, 1].map((share) => shareText(share, 'en'))).toEqual(['0 %', 'under 1 %', '50 %', '100 %']);
});

it('writes every row of the collection as numbers', () => {
  for (const one of checks) {
    const { computed, deviation } = checkRow(one);
    for (const text of [asWritten(one.value, 'en'), computedText(one, computed, 'es'), deviationText(one, deviation, 'en'), toleranceText(one, 'es')]) expect(text, one.id).not.toMatch(/NaN|Infinity|undefined|^$/);
  }
});
