import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '../../src/physics/roots.ts';

describe('findRoot', () => {
  it.each([
    ['fixed point of the cosine (Dottie number)', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['Wallis’s equation x³ − 2x − 5 (1685)', (x: number) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265],
    ['square root of two', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['a ninth-order root (Brent 1973, ch. 4: flat, so that interpolation alone crawls)', (x: number) => x ** 9, -1, 1.5, 0],
  ])('finds the %s', (_, f, low, high, root) => {
    expect(findRoot(f, low, high)).toBeCloseTo(root, root === 0 ? 6 : 14);
  });

  it('finds the place of a jump', () => {
    expect(findRoot((x) => (x < 0.3 ? -1 : 1), 0, 1)).toBeCloseTo(0.3, 14);
  });

  it('takes an end that is a root', () => {
    expect(findRoot((x) => x, 0, 1)).toBe(0);
    expect(findRoot((x) => x - 1, 0, 1)).toBe(1);
  });

  it('stops at the tolerance it is given', () => {
    let calls = 0;
    const root = findRoot((x) => (calls++, Math.exp(x) - 2), 0, 5, 0.01);
    expect(Math.abs(root - Math.LN2)).toBeLessThanOrEqual(0.01);
    const few = calls;
    findRoot((x) => (calls++, Math.exp(x) - 2), 0, 5);
    expect(calls - few).toBeGreaterThan(few);
  });

  it.each([
    ['no change of sign', (x: number) => x * x + 1],
    ['a function that is not a number', () => NaN],
  ])('refuses %s', (_, f) => {
    expect(() => findRoot(f, -1, 1)).toThrow(RangeError);
  });

  it('inverts a monotonic function', () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), (x) => {
        const y = Math.sinh(x) + x;
        expect(findRoot((t) => Math.sinh(t) + t - y, -4, 5)).toBeCloseTo(x, 12);
      }),
      { seed: 1 },
    );
  });
});
