import { describe, expect, it } from 'vitest';
import { rosenbrockStep, stepWorkspace, type BorderedSystem } from '../../src/physics/rosenbrock.ts';

/** Runs a system at constant steps and returns the state at the end. */
function run(system: BorderedSystem, start: readonly number[], end: number, steps: number): Float64Array {
  const work = stepWorkspace(system.own);
  const state = Float64Array.from(start);
  for (let i = 0; i < steps; i++) {
    const time = (end * i) / steps;
    expect(system.linearize(time, state, work.rate, work.jacobian)).toBe(true);
    expect(rosenbrockStep(system, time, state, end / steps, work)).toBe(true);
    state.set(work.next);
  }
  return state;
}

/**
 * Two species a, b that turn into each other's square with a third, all coupled through s = a + 2b; the common
 * unknowns are u with u′ = −u s and v with v′ = cos t. No closed form: the reference is the method of Runge and Kutta.
 */
const coupled: BorderedSystem = {
  own: 2,
  evaluate(time, [a = 0, b = 0, u = 0, v = 0], rate) {
    const s = a + 2 * b;
    rate.set([-a * a * s + u, -3 * b * s + v * b, -u * s, Math.cos(time) + u * v]);
    return true;
  },
  linearize(time, state, rate, jacobian) {
    const [a = 0, b = 0, u = 0, v = 0] = state;
    const s = a + 2 * b;
    coupled.evaluate(time, state, rate);
    jacobian.diagonal.set([-2 * a * s, -3 * s + v]);
    jacobian.sumGradient.set([1, 2]);
    jacobian.bySum.set([-a * a, -3 * b, -u, 0]);
    jacobian.byFirst.set([1, 0, -s, v]);
    jacobian.bySecond.set([0, b, 0, u]);
    jacobian.byTime.set([0, 0, 0, -Math.sin(time)]);
    return true;
  },
};

function rungeKutta(system: BorderedSystem, start: readonly number[], end: number, steps: number): Float64Array {
  let y = Float64Array.from(start);
  const h = end / steps;
  const f = (time: number, state: Float64Array): Float64Array => {
    const rate = new Float64Array(state.length);
    system.evaluate(time, state, rate);
    return rate;
  };
  for (let i = 0; i < steps; i++) {
    const t = h * i;
    const k1 = f(t, y);
    const k2 = f(t + h / 2, y.map((x, j) => x + (h / 2) * k1[j]!));
    const k3 = f(t + h / 2, y.map((x, j) => x + (h / 2) * k2[j]!));
    const k4 = f(t + h, y.map((x, j) => x + h * k3[j]!));
    y = y.map((x, j) => x + (h / 6) * (k1[j]! + 2 * k2[j]! + 2 * k3[j]! + k4[j]!));
  }
  return y;
}

const distance = (a: Float64Array, b: Float64Array): number => Math.hypot(...a.map((x, i) => x - b[i]!));

describe('rosenbrockStep', () => {
  const start = [1, 0.5, 0.8, 0.2];

  it('converges with the third power of the step on coupled equations', () => {
    const exact = rungeKutta(coupled, start, 1, 2000);
    const coarse = distance(run(coupled, start, 1, 20), exact);
    const fine = distance(run(coupled, start, 1, 40), exact);
    expect(Math.log2(coarse / fine)).toBeGreaterThan(2.8);
    expect(fine).toBeLessThan(1e-5);
  });

  it('estimates its error', () => {
    const work = stepWorkspace(2);
    const state = Float64Array.from(start);
    coupled.linearize(0, state, work.rate, work.jacobian);
    rosenbrockStep(coupled, 0, state, 0.1, work);
    const error = distance(work.next, rungeKutta(coupled, start, 0.1, 200));
    const estimate = Math.hypot(...work.error);
    expect(error).toBeLessThan(estimate);
    expect(estimate).toBeLessThan(1e-2);
  });

  it('follows a slow solution through stiffness of any size (Prothero & Robinson 1974)', () => {
    const stiffness = 1e8;
    const stiff: BorderedSystem = {
      own: 1,
      evaluate(time, [y = 0], rate) {
        rate.set([-stiffness * (y - Math.sin(time)) + Math.cos(time), 0, 0]);
        return true;
      },
      linearize(time, state, rate, jacobian) {
        stiff.evaluate(time, state, rate);
        jacobian.diagonal[0] = -stiffness;
        jacobian.byTime[0] = stiffness * Math.cos(time) - Math.sin(time);
        return true;
      },
    };
    const [y = 0] = run(stiff, [0, 0, 0], 2, 20);
    expect(y).toBeCloseTo(Math.sin(2), 8);
  });

  it('refuses a step that an unstable unknown would outgrow, and one that leaves the domain', () => {
    const growing: BorderedSystem = {
      own: 1,
      evaluate: (_time, [y = 0], rate) => {
        rate.set([y, 0, 0]);
        return y < 2;
      },
      linearize: (time, state, rate, jacobian) => {
        jacobian.diagonal[0] = 1;
        return growing.evaluate(time, state, rate);
      },
    };
    const work = stepWorkspace(1);
    const state = Float64Array.from([1, 0, 0]);
    growing.linearize(0, state, work.rate, work.jacobian);
    expect(rosenbrockStep(growing, 0, state, 3, work)).toBe(false);
    expect(rosenbrockStep(growing, 0, state, 1, work)).toBe(false);
    expect(rosenbrockStep(growing, 0, state, 0.1, work)).toBe(true);
    expect(work.next[0]).toBeCloseTo(Math.exp(0.1), 3);
  });
});
