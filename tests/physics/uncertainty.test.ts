import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagateMonteCarlo } from '../../src/physics/monte-carlo.ts';
import { coverageFactor } from '../../src/physics/student.ts';
import { rectangular, triangular } from '../../src/physics/uncertain-input.ts';
import { propagate } from '../../src/physics/uncertainty.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('propagate', () => {
  it('adds independent uncertainties of a sum in squares, with shares that make one', () => {
    fc.assert(
      fc.property(between(-10, 10), between(-10, 10), between(0.01, 5), between(0.01, 5), between(-3, 3), (a, b, ua, ub, factor) => {
        const result = propagate(({ x, y }) => x + factor * y, {
          x: { value: a, standardUncertainty: ua },
          y: { value: b, standardUncertainty: ub },
        });
        expect(result.standardUncertainty).toBeCloseTo(Math.hypot(ua, factor * ub), 9);
        expect(result.budget.reduce((sum, row) => sum + row.share, 0)).toBeCloseTo(1, 12);
        expect(result.expandedUncertainty).toBeCloseTo(1.959964 * result.standardUncertainty, 5);
      }),
      { seed: 1 },
    );
  });

  it('lets full correlation cancel a difference and double a sum', () => {
    const inputs = { x: { value: 5, standardUncertainty: 0.1 }, y: { value: 3, standardUncertainty: 0.1 } };
    const correlations = [{ between: ['x', 'y'] as const, coefficient: 1 }];
    expect(propagate(({ x, y }) => x - y, inputs, { correlations }).standardUncertainty).toBeCloseTo(0, 6);
    expect(propagate(({ x, y }) => x + y, inputs, { correlations }).standardUncertainty).toBeCloseTo(0.2, 9);
  });

  it('finds the derivatives of curved models', () => {
    const { budget } = propagate(({ x, y }) => Math.exp(x) * Math.sin(y), {
      x: { value: 0.5, standardUncertainty: 0.01 },
      y: { value: 0.3, standardUncertainty: 0.02 },
    });
    expect(budget[0]?.sensitivity).toBeCloseTo(Math.exp(0.5) * Math.sin(0.3), 6);
    expect(budget[1]?.sensitivity).toBeCloseTo(Math.exp(0.5) * Math.cos(0.3), 6);
  });

  it('keeps a certain input in the budget, with its sensitivity and no share', () => {
    const { budget, standardUncertainty, coverageFactor: k } = propagate(({ x }) => 3 * x, { x: { value: 2, standardUncertainty: 0 } });
    expect(budget[0]).toMatchObject({ name: 'x', estimate: 2, contribution: 0, share: 0, type: 'B', distribution: 'normal' });
    expect(budget[0]?.sensitivity).toBeCloseTo(3, 6);
    expect(standardUncertainty).toBe(0);
    expect(k).toBeCloseTo(1.959964, 6);
  });

  it('takes the fewest degrees of freedom where inputs are correlated', () => {
    const inputs = {
      x: { value: 1, standardUncertainty: 1, degreesOfFreedom: 4 },
      y: { value: 1, standardUncertainty: 1, degreesOfFreedom: 9 },
    };
    const correlations = [{ between: ['x', 'y'] as const, coefficient: 0.5 }];
    expect(propagate(({ x, y }) => x + y, inputs, { correlations }).effectiveDegreesOfFreedom).toBe(4);
  });

  it('refuses what cannot be', () => {
    const good = { value: 1, standardUncertainty: 0.1 };
    const bad = [{ value: NaN }, { value: Infinity }, { standardUncertainty: -1 }, { standardUncertainty: NaN }, { degreesOfFreedom: 0.5 }, { degreesOfFreedom: NaN }];
    for (const change of bad) {
      expect(() => propagate(({ x }) => x, { x: { ...good, ...change } })).toThrow(RangeError);
      expect(() => propagateMonteCarlo(({ x }) => x, { x: { ...good, ...change } }, { seed: 1, trials: 1000 })).toThrow(RangeError);
    }
    expect(() => propagate(() => NaN, { x: good })).toThrow(RangeError);
    expect(() => propagate(({ x }) => x, { x: { value: 1e20, standardUncertainty: 1 } })).toThrow(/too small/);
    type Name = 'x' | 'y' | 'z';
    const pair = (coefficient: number, other: Name) => ({ correlations: [{ between: ['x', other] as [Name, Name], coefficient }] });
    for (const options of [pair(1.1, 'y'), pair(NaN, 'y'), pair(0.5, 'x')]) {
      expect(() => propagate(({ x, y, z }) => x + y + z, { x: good, y: good, z: good }, options)).toThrow(RangeError);
    }
    const names: readonly [Name, Name][] = [['x', 'y'], ['y', 'z'], ['x', 'z']];
    const impossible = names.map((between) => ({ between, coefficient: -1 }));
    expect(() => propagate(({ x, y, z }) => x + y + z, { x: good, y: good, z: good }, { correlations: impossible })).toThrow(/contradict/);
    expect(() => propagate(({ x }) => x, { x: good }, { probability: 1 })).toThrow(RangeError);
  });
});

describe('propagateMonteCarlo', () => {
  const inputs = {
    x: { value: 10, standardUncertainty: 0.5 },
    y: { value: 4, standardUncertainty: 0.2, distribution: 'triangular' },
  } as const;
  const model = ({ x, y }: { x: number; y: number }): number => x / y;

  it('repeats itself, whatever the order of the inputs', () => {
    const first = propagateMonteCarlo(model, inputs, { seed: 5, trials: 2000 });
    expect(propagateMonteCarlo(model, { y: inputs.y, x: inputs.x }, { seed: 5, trials: 2000 })).toEqual(first);
    expect(propagateMonteCarlo(model, inputs, { seed: 6, trials: 2000 })).not.toEqual(first);
  });

  it('agrees with first order where the model is nearly straight', () => {
    const drawn = propagateMonteCarlo(model, inputs, { seed: 1, trials: 100_000 });
    const linear = propagate(model, inputs);
    expect(drawn.standardUncertainty / linear.standardUncertainty).toBeCloseTo(1, 1);
    expect((drawn.interval[1] - drawn.interval[0]) / (2 * linear.expandedUncertainty)).toBeCloseTo(1, 1);
  });

  it("draws from Student's t where degrees of freedom are few: the interval is that of the coverage factor", () => {
    const x = { value: 0, standardUncertainty: 1, degreesOfFreedom: 5 };
    const { interval } = propagateMonteCarlo((i: { x: number }) => i.x, { x }, { seed: 2 });
    for (const edge of interval) expect(Math.abs(edge) / coverageFactor(5)).toBeCloseTo(1, 1);
  });

  it('keeps a spread far smaller than its value', () => {
    const x = { value: 1e9, standardUncertainty: 1e-3, distribution: 'rectangular' } as const;
    const { standardUncertainty, interval } = propagateMonteCarlo((i: { x: number }) => i.x, { x }, { seed: 3, trials: 50_000 });
    expect(standardUncertainty * 1e3).toBeCloseTo(1, 1);
    expect(interval[1] - interval[0]).toBeLessThanOrEqual(2 * Math.sqrt(3) * 1e-3 + 1e-6);
  });

  it('refuses too few and too many trials and a model without an answer', () => {
    for (const trials of [999, 1e7 + 1, NaN]) expect(() => propagateMonteCarlo(model, inputs, { seed: 1, trials })).toThrow(RangeError);
    expect(() => propagateMonteCarlo(({ x }) => Math.sqrt(x - 10), inputs, { seed: 1, trials: 1000 })).toThrow(RangeError);
  });
});

describe('helpers', () => {
  it('turn half-widths into standard uncertainties', () => {
    expect(rectangular(3)).toBeCloseTo(1.7320508, 7);
    expect(triangular(6)).toBeCloseTo(2.4494897, 7);
    for (const half of [-1, NaN, Infinity]) for (const f of [rectangular, triangular]) expect(() => f(half)).toThrow(RangeError);
  });

  it('narrow the coverage factor as degrees of freedom and doubt grow', () => {
    fc.assert(
      fc.property(between(1, 1000), between(0.1, 0.99), (nu, p) => {
        expect(coverageFactor(nu, p)).toBeGreaterThan(coverageFactor(nu * 1.5, p));
        expect(coverageFactor(nu, p + 0.005)).toBeGreaterThan(coverageFactor(nu, p));
      }),
      { seed: 4 },
    );
    for (const nu of [0.99, NaN]) expect(() => coverageFactor(nu)).toThrow(RangeError);
    for (const p of [0, 1, NaN]) expect(() => coverageFactor(5, p)).toThrow(RangeError);
    expect(coverageFactor(Infinity)).toBeCloseTo(1.959964, 6);
  });
});
