import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomSource, xoshiro128 } from '../../src/physics/random.ts';

const draws = (count: number, draw: () => number): number[] => Array.from({ length: count }, draw);
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

describe('xoshiro128', () => {
  it('follows the reference implementation from the state 1, 2, 3, 4 (D. Blackman & S. Vigna, xoshiro128starstar.c 1.1)', () => {
    expect(draws(10, xoshiro128([1, 2, 3, 4]))).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });
});

describe('randomSource', () => {
  it('repeats itself from the same seed and name, and from no other', () => {
    const first = draws(20, randomSource(7, 'pressure').uniform);
    expect(draws(20, randomSource(7, 'pressure').uniform)).toEqual(first);
    for (const other of [randomSource(8, 'pressure'), randomSource(7, 'temperature'), randomSource(7 + 2 ** 32, 'pressure')]) {
      expect(draws(20, other.uniform)).not.toEqual(first);
    }
  });

  it('keeps uniform numbers strictly between 0 and 1', () => {
    fc.assert(
      fc.property(fc.maxSafeNat(), (seed) => draws(50, randomSource(seed).uniform).every((x) => x > 0 && x < 1)),
      { seed: 1, numRuns: 50 },
    );
  });

  it('spreads uniform numbers evenly: chi-squared of 100 boxes below its 99.9 % point, 148.2 (99 degrees of freedom)', () => {
    const counts = new Array<number>(100).fill(0);
    for (const x of draws(100_000, randomSource(1).uniform)) counts[Math.floor(100 * x)]! += 1;
    expect(counts.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0)).toBeLessThan(148.2);
  });

  it('gives streams of different names no correlation', () => {
    const a = draws(100_000, randomSource(1, 'a').normal);
    const b = randomSource(1, 'b').normal;
    // Three standard errors of the product's mean.
    expect(Math.abs(mean(a.map((x) => x * b())))).toBeLessThan(3 / Math.sqrt(100_000));
  });

  it('gives normal numbers the moments 0, 1, 0, 3 within four standard errors', () => {
    const values = draws(200_000, randomSource(3).normal);
    const moment = (power: number): number => mean(values.map((x) => x ** power));
    const error = 4 / Math.sqrt(200_000);
    expect(Math.abs(moment(1))).toBeLessThan(error);
    expect(Math.abs(moment(2) - 1)).toBeLessThan(error * Math.sqrt(2));
    expect(Math.abs(moment(3))).toBeLessThan(error * Math.sqrt(15));
    expect(Math.abs(moment(4) - 3)).toBeLessThan(error * Math.sqrt(96));
  });

  it("gives Student's t its variance ν/(ν − 2)", () => {
    for (const nu of [8, 30, 1e6]) {
      const source = randomSource(4);
      expect(mean(draws(200_000, () => source.student(nu) ** 2))).toBeCloseTo(nu / (nu - 2), 1);
    }
  });

  it('refuses seeds and degrees of freedom that are none', () => {
    for (const seed of [-1, 0.5, NaN, Infinity, 2 ** 53]) expect(() => randomSource(seed)).toThrow(RangeError);
    for (const nu of [0.9, NaN]) expect(() => randomSource(1).student(nu)).toThrow(RangeError);
    expect(Number.isFinite(randomSource(1).student(Infinity))).toBe(true);
  });
});
