import { describe, expect, it } from 'vitest';
import { stiffIntegrator, type Derivative } from '../../src/physics/runge-kutta.ts';

function solve(derivative: Derivative, initial: readonly number[], to: number, tolerance: number, scale = 1): Float64Array {
  const dimension = initial.length;
  const state = Float64Array.from(initial);
  const each = <T>(value: T): T[] => new Array<T>(dimension).fill(value);
  stiffIntegrator({ dimension, derivative, tolerances: each(tolerance), scales: each(scale) })(state, 0, to);
  return state;
}

/** Robertson 1966, three reactions with rates nine powers of ten apart. */
const robertson: Derivative = (_, y, out) => {
  const first = -0.04 * y[0]! + 1e4 * y[1]! * y[2]!;
  const third = 3e7 * y[1]! * y[1]!;
  out[0] = first;
  out[1] = -first - third;
  out[2] = third;
};

const oscillator: Derivative = (_, y, out) => {
  out[0] = y[1]!;
  out[1] = -y[0]!;
};

describe('stiffIntegrator', () => {
  // Robertson's problem as printed by LSODE (Hindmarsh 1983) and by CVODE's example; from memory, four digits.
  it.each([
    [0.4, 0.98517, 3.3864e-5, 0.014794],
    [4, 0.90552, 2.2405e-5, 0.094476],
    [40, 0.71583, 9.1855e-6, 0.28416],
    [400, 0.4505, 3.223e-6, 0.5495],
    [4000, 0.1832, 8.942e-7, 0.8168],
  ])('solves Robertson’s reactions to time %d', (time, a, b, c) => {
    const y = Float64Array.of(1, 0, 0);
    stiffIntegrator({ dimension: 3, derivative: robertson, tolerances: [1e-8, 1e-13, 1e-8], scales: [1, 1e-4, 1] })(y, 0, time);
    expect(y[0]! / a).toBeCloseTo(1, 3);
    expect(y[1]! / b).toBeCloseTo(1, 3);
    expect(y[2]! / c).toBeCloseTo(1, 3);
    expect(y[0]! + y[1]! + y[2]!).toBeCloseTo(1, 10);
  });

  it('follows a solution that rushes to a slow curve, Prothero & Robinson 1974', () => {
    const derivative: Derivative = (t, y, out) => {
      out[0] = -1e6 * (y[0]! - Math.cos(t)) - Math.sin(t);
    };
    expect(solve(derivative, [1.5], 10, 1e-8)[0]).toBeCloseTo(Math.cos(10), 7);
  });

  it('is of fourth order: 10⁴ times the accuracy for ten times the steps', () => {
    const errorAndSteps = (tolerance: number): readonly [number, number] => {
      const state = Float64Array.of(1, 0);
      let steps = 0;
      stiffIntegrator({ dimension: 2, derivative: oscillator, tolerances: [tolerance, tolerance], scales: [1, 1] })(state, 0, 20, () => {
        steps++;
      });
      return [Math.hypot(state[0]! - Math.cos(20), state[1]! + Math.sin(20)), steps];
    };
    const [coarse, few] = errorAndSteps(1e-5);
    const [fine, many] = errorAndSteps(1e-10);
    const order = Math.log(coarse / fine) / Math.log(many / few);
    expect(order).toBeGreaterThan(3.7);
    expect(order).toBeLessThan(4.6);
  });

  it('knows the state between the ends of its steps', () => {
    const state = Float64Array.of(1, 0);
    const between = new Float64Array(2);
    let worst = 0;
    stiffIntegrator({ dimension: 2, derivative: oscillator, tolerances: [1e-8, 1e-8], scales: [1, 1] })(state, 0, 10, (from, to, at) => {
      for (const share of [0, 0.25, 0.5, 0.75, 1]) {
        const time = from + share * (to - from);
        at(time, between);
        worst = Math.max(worst, Math.abs(between[0]! - Math.cos(time)), Math.abs(between[1]! + Math.sin(time)));
      }
    });
    expect(worst).toBeLessThan(1e-6);
  });

  it('gives the same in one go as in several', () => {
    const integrate = stiffIntegrator({ dimension: 2, derivative: oscillator, tolerances: [1e-10, 1e-10], scales: [1, 1] });
    const state = Float64Array.of(1, 0);
    for (let time = 0; time < 10; time++) integrate(state, time, time + 1);
    expect(state[0]).toBeCloseTo(Math.cos(10), 8);
    integrate(state, 10, 10);
    expect(state[0]).toBeCloseTo(Math.cos(10), 8);
  });

  it('shortens its step where the equations end, and says so where no step is short enough', () => {
    // y' = −√y reaches 0 at time 2 and has no real continuation for negative y.
    const derivative: Derivative = (_, y, out) => {
      out[0] = -Math.sqrt(y[0]!);
    };
    expect(solve(derivative, [1], 1.9, 1e-8)[0]).toBeCloseTo(0.0025, 6);
    const blowUp: Derivative = (_, y, out) => {
      out[0] = y[0]! > 2 ? Number.NaN : 1;
    };
    expect(() => solve(blowUp, [0], 3, 1e-8)).toThrow(RangeError);
    expect(() => solve((_, __, out) => out.fill(Number.NaN), [0], 1, 1e-8)).toThrow(/leave their range at time 0/);
  });
});
