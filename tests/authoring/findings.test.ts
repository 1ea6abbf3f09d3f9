/** Findings in their order, and names that are nearly right. */
import { describe, expect, it } from 'vitest';
import { FINDINGS, formatFinding, nearestName, proposeName, sortFindings, type Finding } from '../../src/authoring/index.ts';

const finding = (file: string, line: number, column: number): Finding => ({
  code: 'unknown-key',
  file,
  line,
  column,
  what: 'w',
  instead: 'i',
});

describe('findings', () => {
  it('are one line each', () => {
    expect(formatFinding(finding('content/site.yaml', 3, 14))).toBe('content/site.yaml:3:14: w; i');
  });

  it('stand in the order of files and places, each once', () => {
    const all = [finding('b', 1, 1), finding('a', 10, 1), finding('a', 2, 5), finding('a', 2, 3), finding('a', 2, 5)];
    expect(sortFindings(all).map(({ file, line, column }) => `${file}:${line}:${column}`)).toEqual([
      'a:2:3',
      'a:2:5',
      'a:10:1',
      'b:1:1',
    ]);
  });

  it('are all explained: what, why and the cure, as sentences', () => {
    for (const [code, { title, cause, cure }] of Object.entries(FINDINGS)) {
      expect(code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(title).toMatch(/^[A-Z].*[^.]$/);
      expect(cause).toMatch(/^[A-Z`].*\.$/);
      expect(cure).toMatch(/^[A-Z`].*\.$/);
    }
  });
});

describe('nearestName', () => {
  const choices = ['pressure-steps', 'strokes', 'elevations', 'acrylic'];
  it.each([
    ['pressure-step', 'pressure-steps'],
    ['presure-steps', 'pressure-steps'],
    ['strokse', 'strokes'],
    ['Strokes', 'strokes'],
    ['acryl', 'acrylic'],
    ['wind', undefined],
    ['', undefined],
  ])('of "%s" is %s', (written, expected) => {
    expect(nearestName(written, choices)).toBe(expected);
  });

  it('lists what there is where nothing is near', () => {
    expect(proposeName('wind', ['b', 'a'])).toBe('choose one of `a`, `b`');
    expect(proposeName('wind', [])).toBe('there is none to choose from');
  });
});
