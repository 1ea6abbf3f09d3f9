/** Versions of editions. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { VERSION } from '../../src/authoring/index.ts';
import { compareVersions, isAsLarge, nextVersion, stepBetween } from '../../src/editions/index.ts';

const STEPS = ['major', 'minor', 'patch'] as const;
const part = fc.integer({ min: 0, max: 9998 });
const version = fc.tuple(part, part, part).map((parts) => parts.join('.'));
const step = fc.constantFrom(...STEPS);

describe('versions', () => {
  it.each(['0.1.0', '1.0.0', '12.30.4'])('are three numbers: %s', (text) => expect(text).toMatch(VERSION));
  it.each(['1', '1.0', '1.0.0.0', 'v1.0.0', '01.0.0', '1.00.0', '1.0.0-rc1', '1.0.0 ', '../1.0.0', '-1.0.0', ''])('are nothing else: %j', (text) => expect(text).not.toMatch(VERSION));

  it('are ordered as numbers, not as text', () => {
    expect(['1.10.0', '2.0.0', '1.9.9', '1.9.10'].sort(compareVersions)).toEqual(['1.9.9', '1.9.10', '1.10.0', '2.0.0']);
  });

  it('step to a later one, by just that step', () =>
    fc.assert(fc.property(version, step, (from, by) => {
      const next = nextVersion(from, by);
      expect(next).toMatch(VERSION);
      expect(compareVersions(next, from)).toBeGreaterThan(0);
      expect(compareVersions(from, next)).toBeLessThan(0);
      expect(stepBetween(from, next)).toBe(by);
    })));

  it('know which step is as large as which', () => {
    for (const [i, one] of STEPS.entries()) for (const [j, other] of STEPS.entries()) expect(isAsLarge(one, other)).toBe(i <= j);
  });
});
