import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../src/physics/least-squares.ts';
import { randomSource } from '../../src/physics/random.ts';

const TIMES = Array.from({ length: 30 }, (_, i) => i / 3);

describe('leastSquares', () => {
  it('finds the straight line of closed form, with its standard errors', () => {
    // Bevington & Robinson 2003, eq. 6.12 and 6.21, worked by hand for these five points.
    const y = [1, 3, 2, 5, 4];
    const fit = leastSquares({ initial: [0, 0], residuals: ([a, b]) => y.map((value, x) => value - a! - b! * x) });
    expect(fit.parameters[0]).toBeCloseTo(1.4, 9);
    expect(fit.parameters[1]).toBeCloseTo(0.8, 9);
    expect(fit.sumOfSquares).toBeCloseTo(3.6, 9);
    expect(fit.standardErrors[0]).toBeCloseTo(Math.sqrt(1.2 * 0.6), 8);
    expect(fit.standardErrors[1]).toBeCloseTo(Math.sqrt(1.2 / 10), 8);
    expect(fit.correlation[0]![1]).toBeCloseTo(-2 / Math.sqrt(6), 8);
    expect(fit.degreesOfFreedom).toBe(3);
    expect(fit.hasConverged).toBe(true);
  });

  it('states errors that the truth keeps to: standard deviations of 1 over many noisy sets', () => {
    const deviations = Array.from({ length: 200 }, (_, seed) => {
      const random = randomSource(seed, 'decay');
      const y = TIMES.map((t) => 3 * Math.exp(-t / 4) + 0.1 * random.normal());
      const fit = leastSquares({ initial: [1, 1], residuals: ([a, tau]) => y.map((value, i) => value - a! * Math.exp(-TIMES[i]! / tau!)) });
      return [(fit.parameters[0]! - 3) / fit.standardErrors[0]!, (fit.parameters[1]! - 4) / fit.standardErrors[1]!];
    });
    for (const k of [0, 1]) {
      const meanSquare = deviations.reduce((sum, deviation) => sum + deviation[k]! ** 2, 0) / deviations.length;
      expect(meanSquare).toBeGreaterThan(0.75);
      expect(meanSquare).toBeLessThan(1.3);
    }
  });

  it('gives an infinite error, and no correlation, to what has no effect of its own', () => {
    const y = TIMES.map((t) => 2 * t);
    const idle = leastSquares({ initial: [1, 7], residuals: ([a]) => y.map((value, i) => value - a! * TIMES[i]! - (i % 2)) });
    expect(idle.standardErrors[0]).toBeLessThan(1);
    expect(idle.standardErrors[1]).toBe(Infinity);
    expect(idle.parameters[1]).toBeCloseTo(7, 9);
    expect(idle.correlation).toEqual([[1, 0], [0, 1]]);
    const twins = leastSquares({ initial: [1, 2], residuals: ([a, b]) => y.map((value, i) => value - (a! + b!) * TIMES[i]! - (i % 2)) });
    expect(twins.standardErrors).toEqual([Infinity, Infinity]);
    expect(twins.parameters[0]! + twins.parameters[1]!).toBeGreaterThan(1.9);
  });

  it('steps back from where the model fails', () => {
    const y = TIMES.map((t) => Math.sqrt(1 + t));
    const fit = leastSquares({ initial: [30], residuals: ([a]) => y.map((value, i) => value - Math.sqrt(a! + TIMES[i]!)) });
    expect(fit.parameters[0]).toBeCloseTo(1, 8);
  });

  it('refuses too few measurements and a start where the model fails', () => {
    expect(() => leastSquares({ initial: [0, 0], residuals: () => [1, 2] })).toThrow(/2 measurements for 2 parameters/);
    expect(() => leastSquares({ initial: [0], hiddenParameters: 1, residuals: () => [1, 2] })).toThrow(RangeError);
    expect(() => leastSquares({ initial: [0], residuals: () => [1, Number.NaN] })).toThrow(/not finite at the initial parameters 0/);
  });
});
