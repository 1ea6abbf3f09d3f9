/**
 * Steps of a stiff set of equations whose unknowns hang together loosely: many `own` unknowns, each with an
 * equation of its own, two `common` ones, and one sum over the own ones through which they all meet. The matrix
 * of such a set is diagonal but for a narrow border, so that a step costs as many operations as there are unknowns.
 *
 * Method: RODAS3 of Sandu et al. 1997, Atmos. Environ. 31, 3459: four stages with three evaluations, order 3
 * with an embedded order 2, both stiffly accurate and L-stable. It needs a good Jacobian.
 */
import { invert } from './inverse.ts';

/** Unknowns in order: the own ones, then the two common ones. */
export interface BorderedSystem {
  /** Number of own unknowns, 0 and above. */
  readonly own: number;
  /** Writes the rates of change into `rate`; false where the state has left the system's domain. */
  evaluate(time: number, state: Float64Array, rate: Float64Array): boolean;
  /** Writes rates and derivatives; false as above. */
  linearize(time: number, state: Float64Array, rate: Float64Array, jacobian: BorderedJacobian): boolean;
}

/** Derivatives of the rates, at constant values of everything else; `sum` is the sum through which the unknowns meet. */
export interface BorderedJacobian {
  /** Of each own rate to its own unknown */
  readonly diagonal: Float64Array;
  /** Of the sum to each own unknown */
  readonly sumGradient: Float64Array;
  /** Of every rate to the sum */
  readonly bySum: Float64Array;
  /** Of every rate to the first and the second common unknown */
  readonly byFirst: Float64Array;
  readonly bySecond: Float64Array;
  /** Of every rate to time */
  readonly byTime: Float64Array;
}

/** Storage for steps of one system, so that a step allocates nothing. */
export interface StepWorkspace {
  readonly rate: Float64Array;
  readonly jacobian: BorderedJacobian;
  /** The state after the step */
  readonly next: Float64Array;
  /** Estimated error of `next` */
  readonly error: Float64Array;
  readonly trial: Float64Array;
  readonly stageRate: Float64Array;
  readonly k1: Float64Array;
  readonly k2: Float64Array;
  readonly k3: Float64Array;
  readonly pivot: Float64Array;
  readonly reduced: Float64Array;
  readonly border: Float64Array;
}

const GAMMA = 0.5;

/** Storage for a system of `own` own unknowns. */
export function stepWorkspace(own: number): StepWorkspace {
  const all = (): Float64Array => new Float64Array(own + 2);
  const each = (): Float64Array => new Float64Array(own);
  return {
    rate: all(),
    jacobian: {
      diagonal: each(),
      sumGradient: each(),
      bySum: all(),
      byFirst: all(),
      bySecond: all(),
      byTime: all(),
    },
    next: all(),
    error: all(),
    trial: all(),
    stageRate: all(),
    k1: all(),
    k2: all(),
    k3: all(),
    pivot: each(),
    reduced: new Float64Array(9),
    border: new Float64Array(9),
  };
}

/**
 * One step from `state`, whose rates and derivatives must stand in the workspace already: a step that is
 * refused is tried again, shorter, with the same ones.
 * @returns false where a stage leaves the system's domain or the step is too long for the linear equations;
 *   otherwise `next` and `error` are in the workspace
 */
export function rosenbrockStep(
  system: Pick<BorderedSystem, 'own' | 'evaluate'>,
  time: number,
  state: Float64Array,
  step: number,
  work: StepWorkspace,
): boolean {
  const { rate, jacobian, next, error, trial, stageRate, k1, k2, k3 } = work;
  const { byTime } = jacobian;
  const size = state.length;
  if (!factor(system.own, 1 / (GAMMA * step), work)) return false;

  for (let i = 0; i < size; i++) k1[i] = rate[i]! + 0.5 * step * byTime[i]!;
  solve(system.own, k1, work);
  for (let i = 0; i < size; i++) k2[i] = rate[i]! + (4 / step) * k1[i]! + 1.5 * step * byTime[i]!;
  solve(system.own, k2, work);
  for (let i = 0; i < size; i++) trial[i] = state[i]! + 2 * k1[i]!;
  if (!system.evaluate(time + step, trial, stageRate)) return false;
  for (let i = 0; i < size; i++) k3[i] = stageRate[i]! + (k1[i]! - k2[i]!) / step;
  solve(system.own, k3, work);
  for (let i = 0; i < size; i++) trial[i] = trial[i]! + k3[i]!;
  if (!system.evaluate(time + step, trial, stageRate)) return false;
  for (let i = 0; i < size; i++) error[i] = stageRate[i]! + (k1[i]! - k2[i]! - (8 / 3) * k3[i]!) / step;
  solve(system.own, error, work);
  for (let i = 0; i < size; i++) next[i] = trial[i]! + error[i]!;
  return true;
}

/** Prepares the equations (shift − Jacobian) k = right side, reduced to the sum and the two common unknowns. */
function factor(own: number, shift: number, work: StepWorkspace): boolean {
  const { pivot, reduced, border, jacobian } = work;
  const { diagonal, sumGradient, bySum, byFirst, bySecond } = jacobian;
  let sum = 0;
  let first = 0;
  let second = 0;
  for (let i = 0; i < own; i++) {
    const d = shift - diagonal[i]!;
    // An unknown that grows faster than the step resolves would change sign here.
    if (!(d > 0)) return false;
    const weight = sumGradient[i]! / d;
    pivot[i] = 1 / d;
    sum += weight * bySum[i]!;
    first += weight * byFirst[i]!;
    second += weight * bySecond[i]!;
  }
  reduced.set([
    1 - sum, -first, -second,
    -bySum[own]!, shift - byFirst[own]!, -bySecond[own]!,
    -bySum[own + 1]!, -byFirst[own + 1]!, shift - bySecond[own + 1]!,
  ]);
  return invert(reduced, 3, border);
}

/** Replaces the right side by the solution. */
function solve(own: number, right: Float64Array, work: StepWorkspace): void {
  const { pivot, border, jacobian } = work;
  const { sumGradient, bySum, byFirst, bySecond } = jacobian;
  let weighted = 0;
  for (let i = 0; i < own; i++) weighted += sumGradient[i]! * pivot[i]! * right[i]!;
  const a = right[own]!;
  const b = right[own + 1]!;
  const sum = border[0]! * weighted + border[1]! * a + border[2]! * b;
  const first = border[3]! * weighted + border[4]! * a + border[5]! * b;
  const second = border[6]! * weighted + border[7]! * a + border[8]! * b;
  for (let i = 0; i < own; i++) {
    right[i] = pivot[i]! * (right[i]! + bySum[i]! * sum + byFirst[i]! * first + bySecond[i]! * second);
  }
  right[own] = first;
  right[own + 1] = second;
}
