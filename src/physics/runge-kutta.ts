/** A linearly implicit Runge–Kutta (Rosenbrock) method of order 4(3), for small stiff systems of ordinary differential equations. */
import { invert } from './inverse.ts';

/** Writes the derivative at (`time`, `state`) into `out`; a value that is not finite makes the step be tried again, shorter. */
export type Derivative = (time: number, state: Float64Array, out: Float64Array) => void;

/** Writes the state at a time within the last step into `out`. */
export type Interpolant = (time: number, out: Float64Array) => void;

/** What the integrator needs to know of a system. */
export interface StiffSystem {
  /** Number of unknowns, 1 or more */
  readonly dimension: number;
  readonly derivative: Derivative;
  /** Largest error of a step in each unknown, absolute, in the unknown's unit */
  readonly tolerances: readonly number[];
  /** The same as shares of each unknown, in addition; 0 unless given */
  readonly shares?: readonly number[];
  /** Typical size of each unknown, above 0: sets the increments of the numerical Jacobian */
  readonly scales: readonly number[];
}

/** Integrates from one time to another; see {@link stiffIntegrator}. */
export type Integrator = (
  state: Float64Array,
  from: number,
  to: number,
  onStep?: (from: number, to: number, interpolate: Interpolant) => void,
) => void;

// Coefficients of RODAS: Hairer & Wanner 1996, Solving Ordinary Differential Equations II, sect. IV.7 and their table of
// coefficients; in the transformed form that needs no product with the Jacobian.
const GAMMA = 0.25;
const NODES = [0, 0.386, 0.21, 0.63, 1, 1];
const TIME_WEIGHTS = [0.25, -0.1043, 0.1035, -0.03620000000000023, 0, 0];
const STAGES = [
  [],
  [1.544],
  [0.9466785280815826, 0.2557011698983284],
  [3.314825187068521, 2.896124015972201, 0.9986419139977817],
  [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895],
  [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895, 1],
];
const COUPLINGS = [
  [],
  [-5.6688],
  [-2.430093356833875, -0.2063599157091915],
  [-0.1073529058151375, -9.594562251023355, -20.47028614809616],
  [7.496443313967647, -10.24680431464352, -33.99990352819905, 11.7089089320616],
  [8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054],
];
const DENSE_QUADRATIC = [10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662];
const DENSE_CUBIC = [-0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872];

const SQRT_EPSILON = 2 ** -26;
const MOST_STEPS = 1_000_000;

/**
 * An integrator for one system; it advances a state in place with steps that keep each error within its tolerance.
 * Deterministic. The state between the ends of a step is known to third order and stays bounded where the system is stiff.
 * @param system see {@link StiffSystem}
 * @returns a function of the state, the time it belongs to and the time to reach (not earlier); `onStep` is called after
 *   each step. It throws RangeError where the derivative stays not finite however short the step
 * Source: Hairer & Wanner 1996, sect. IV.7 (RODAS); numerical Jacobian by forward differences.
 */
export function stiffIntegrator(system: StiffSystem): Integrator {
  const { dimension: n, derivative, tolerances, scales, shares = tolerances.map(() => 0) } = system;
  const stages = STAGES.map(() => new Float64Array(n));
  const [slope, trial, shifted, timeSlope, next] = [0, 1, 2, 3, 4].map(() => new Float64Array(n)) as [
    Float64Array, Float64Array, Float64Array, Float64Array, Float64Array,
  ];
  const jacobian = new Float64Array(n * n);
  const matrix = new Float64Array(n * n);
  const inverse = new Float64Array(n * n);
  const start = new Float64Array(n);
  const quadratic = new Float64Array(n);
  const cubic = new Float64Array(n);
  let lastStep = 0;
  // Whether `slope` belongs to the state already: the end of a step is the beginning of the next.
  let isSlopeKnown = false;

  const linearize = (time: number, state: Float64Array, span: number): boolean => {
    if (!isSlopeKnown) derivative(time, state, slope);
    const delay = 1e-6 * span;
    derivative(time + delay, state, shifted);
    for (let i = 0; i < n; i++) timeSlope[i] = (shifted[i]! - slope[i]!) / delay;
    // The last unknown first: a system whose first ones cost most may keep what follows from them.
    for (let j = n - 1; j >= 0; j--) {
      const value = state[j]!;
      const increment = SQRT_EPSILON * Math.max(Math.abs(value), scales[j]!);
      state[j] = value + increment;
      derivative(time, state, shifted);
      state[j] = value;
      for (let i = 0; i < n; i++) jacobian[i * n + j] = (shifted[i]! - slope[i]!) / increment;
    }
    return areFinite(slope) && areFinite(jacobian) && areFinite(timeSlope);
  };

  /** One step of length h from the linearized point; returns the error over the tolerance. */
  const attempt = (time: number, state: Float64Array, h: number): number => {
    const perTime = 1 / h;
    for (let i = 0; i < n * n; i++) matrix[i] = -jacobian[i]!;
    for (let i = 0; i < n; i++) matrix[i * n + i]! += 1 / (h * GAMMA);
    if (!invert(matrix, n, inverse)) return Infinity;
    for (let s = 0; s < 6; s++) {
      const weights = STAGES[s]!;
      const couplings = COUPLINGS[s]!;
      const stage = stages[s]!;
      for (let i = 0; i < n; i++) {
        let y = state[i]!;
        for (let k = 0; k < s; k++) y += weights[k]! * stages[k]![i]!;
        trial[i] = y;
      }
      if (s === 0) stage.set(slope);
      else derivative(time + NODES[s]! * h, trial, stage);
      for (let i = 0; i < n; i++) {
        let right = stage[i]! + h * TIME_WEIGHTS[s]! * timeSlope[i]!;
        for (let k = 0; k < s; k++) right += couplings[k]! * perTime * stages[k]![i]!;
        shifted[i] = right;
      }
      for (let i = 0; i < n; i++) {
        let sum = 0;
        for (let j = 0; j < n; j++) sum += inverse[i * n + j]! * shifted[j]!;
        stage[i] = sum;
      }
    }
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const error = stages[5]![i]!;
      next[i] = trial[i]! + error;
      sum += (error / (tolerances[i]! + shares[i]! * Math.abs(state[i]!))) ** 2;
    }
    derivative(time + h, next, shifted);
    return areFinite(shifted) ? Math.sqrt(sum / n) : Infinity;
  };

  const interpolantOf = (from: number, h: number): Interpolant => {
    for (let i = 0; i < n; i++) {
      let second = 0;
      let third = 0;
      for (let k = 0; k < 5; k++) {
        second += DENSE_QUADRATIC[k]! * stages[k]![i]!;
        third += DENSE_CUBIC[k]! * stages[k]![i]!;
      }
      quadratic[i] = second;
      cubic[i] = third;
    }
    return (time, out) => {
      const s = (time - from) / h;
      for (let i = 0; i < n; i++) {
        out[i] = start[i]! * (1 - s) + s * (next[i]! + (1 - s) * (quadratic[i]! + s * cubic[i]!));
      }
    };
  };

  return (state, from, to, onStep) => {
    isSlopeKnown = false;
    let time = from;
    let h = Math.min(to - from, lastStep > 0 ? lastStep : (to - from) / 100);
    for (let taken = 0; time < to; taken++) {
      if (taken > MOST_STEPS) throw new RangeError(`no end after ${MOST_STEPS} steps; reached time ${time} of ${to}`);
      if (!linearize(time, state, to - from)) throw new RangeError(`the equations leave their range at time ${time} s`);
      start.set(state);
      let error = Infinity;
      for (;;) {
        const isLast = time + h * (1 + 1e-9) >= to;
        if (isLast) h = to - time;
        error = attempt(time, state, h);
        if (error <= 1) {
          const end = isLast ? to : time + h;
          state.set(next);
          slope.set(shifted);
          isSlopeKnown = true;
          onStep?.(time, end, interpolantOf(time, end - time));
          time = end;
          break;
        }
        h *= Number.isFinite(error) ? Math.max(0.1, 0.9 * error ** -0.25) : 0.1;
        if (time + h <= time) throw new RangeError(`the equations leave their range at time ${time} s`);
      }
      const longer = h * Math.min(5, Math.max(0.2, 0.9 * Math.max(error, 1e-10) ** -0.25));
      if (time < to || longer < h) lastStep = longer;
      h = longer;
    }
  };
}

function areFinite(values: Float64Array): boolean {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]! * 0;
  return sum === 0;
}
