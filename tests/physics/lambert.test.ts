import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lambertWLower } from '../../src/physics/lambert.ts';

describe('lambertWLower', () => {
  it.each([
    // w = −n·ln 2 solves it where x = −n·ln 2/2ⁿ: exact by definition.
    [(-2 * Math.LN2) / 4, -2 * Math.LN2],
    [(-3 * Math.LN2) / 8, -3 * Math.LN2],
    [(-40 * Math.LN2) / 2 ** 40, -40 * Math.LN2],
    [-2 * Math.exp(-2), -2],
    [-690 * Math.exp(-690), -690],
    // Two well-known values of this branch, and one near the branch point from the manual of a Julia package.
    [-0.1, -3.577152063957297],
    [-0.2, -2.542641357773526],
    [-1 / Math.E + 1e-3, -1 - 0.07560894118662498],
  ])('of %d', (x, w) => {
    expect(Math.abs(lambertWLower(x) / w - 1)).toBeLessThan(2e-13);
  });

  it('is −1 at the branch point', () => {
    expect(lambertWLower(-1 / Math.E)).toBeCloseTo(-1, 7);
  });

  it('solves its equation', () => {
    fc.assert(
      fc.property(fc.double({ min: -600, max: -1.001, noNaN: true }), (w) => {
        // The error of x is magnified by 1/(1 + w) on the way back.
        expect(Math.abs(lambertWLower(w * Math.exp(w)) - w) * Math.abs(1 + w)).toBeLessThan(1e-13 * w * w);
      }),
      { seed: 6, numRuns: 500 },
    );
  });

  it.each([[-0.37], [0], [1], [NaN]])('refuses %d', (x) => {
    expect(() => lambertWLower(x)).toThrow(RangeError);
  });
});
