/** Runs the equations of a cloud along a pressure history, step by step, and finds the peak of the saturation ratio. */
import { HOMOGENEOUS_FREEZING_POINT } from './constants.ts';
import type { DropletSystem, RadiusTolerance } from './droplet-system.ts';
import { saturationRatioOf } from './moist-air.ts';
import { rosenbrockStep, stepWorkspace, type StepWorkspace } from './rosenbrock.ts';
import type { Kelvin, Pascal, Ratio, Second } from './units.ts';

/** A point of a pressure history; between points the pressure is linear in time. */
export interface PressurePoint {
  /** s */
  readonly time: Second;
  /** Absolute, Pa */
  readonly pressure: Pascal;
}

/** The highest saturation ratio of a run. */
export interface SaturationPeak {
  readonly saturationRatio: Ratio;
  readonly time: Second;
  readonly temperature: Kelvin;
}

/** Largest errors of a step that is accepted. */
export interface StepTolerance {
  /** Relative, of the radii, root mean square */
  readonly radius: number;
  /** The same, as a share of a radius's change in the step: for droplets that grow, and for those that shrink */
  readonly growth: number;
  readonly shrinkage: number;
  /** Of the saturation ratio near 1 */
  readonly saturation: number;
  /** More, as a share of the distance from 1: above it, and below it */
  readonly supersaturation: number;
  readonly undersaturation: number;
}

/**
 * With these the peak saturation ratio less 1 is right within 0.3 %, nearly always within 0.1 %. The coarser ones for
 * droplets that shrink in dry air let each of them vanish in a few steps: what is left then is haze.
 */
export const DEFAULT_TOLERANCE: StepTolerance = {
  radius: 5e-4,
  growth: 0.02,
  shrinkage: 0.2,
  saturation: 3e-6,
  supersaturation: 1e-4,
  undersaturation: 1e-3,
};

/** Of steps: more than ten times what the longest sensible runs take. */
const MOST_ATTEMPTS = 200_000;
const SHORTEST_STEP = 1e-13;
const LONGEST_GROWTH = 5;
const SHARPEST_CUT = 0.2;
const SAFETY = 0.9;
const ORDER = 3;

/**
 * Runs `system` from `state`, which is left at the end of the history.
 * @param history two points at least, in order of time
 * @param stops times at which a step must end besides the history's own points, in order, within the history
 * @param visit called after the start and after each step; what the system holds then belongs to that time
 * @throws RangeError where droplets would freeze, or where the state leaves the formulas' range
 */
export function runAlong(
  system: DropletSystem,
  state: Float64Array,
  history: readonly PressurePoint[],
  stops: readonly Second[],
  tolerance: StepTolerance,
  visit: (time: Second, atStop: boolean) => void,
): SaturationPeak {
  const work = stepWorkspace(system.own);
  const peak = peakFinder();
  const begin = history[0]!;
  const span = history[history.length - 1]!.time - begin.time;
  let time = begin.time;
  let proposed = span * 1e-4;
  let nextStop = 0;
  let attempts = 0;
  system.follow(time, begin.pressure, 0);
  if (!system.open(time, state)) throw outOfRange(system, time);
  peak.corner(time, saturationIn(system), system.temperature);
  if (stops[nextStop] === time) nextStop++;
  visit(time, nextStop > 0);

  for (let leg = 1; leg < history.length; leg++) {
    const from = history[leg - 1]!;
    const to = history[leg]!;
    system.follow(from.time, from.pressure, (to.pressure - from.pressure) / (to.time - from.time));
    while (time < to.time) {
      const target = nextStop < stops.length ? Math.min(stops[nextStop]!, to.time) : to.time;
      if (++attempts > MOST_ATTEMPTS + history.length) throw outOfRange(system, time);
      system.linearize(work.rate, work.jacobian);
      // Halved where it would leave a sliver before the target.
      const left = target - time;
      let step = proposed >= left ? left : proposed > left / 2 ? left / 2 : proposed;
      const distance = saturationIn(system) - 1;
      const tolerated =
        tolerance.saturation + (distance > 0 ? tolerance.supersaturation * distance : -tolerance.undersaturation * distance);
      let lastError = tryStep(system, time, state, step, work, tolerance, tolerated);
      let refused = false;
      while (!(lastError <= 1)) {
        refused = true;
        attempts++;
        step *= Number.isFinite(lastError) ? Math.max(SHARPEST_CUT, SAFETY * lastError ** (-1 / ORDER)) : SHARPEST_CUT;
        if (step < SHORTEST_STEP * span) throw outOfRange(system, time);
        lastError = tryStep(system, time, state, step, work, tolerance, tolerated);
      }
      const limit = refused ? 1 : LONGEST_GROWTH;
      const arrived = step === left;
      time = arrived ? target : time + step;
      const wanted = step * Math.min(limit, SAFETY * Math.max(lastError, 1e-6) ** (-1 / ORDER));
      // A step cut short by a stop says little about the next one.
      proposed = arrived ? Math.max(proposed, wanted) : wanted;
      state.set(work.next);
      system.confine(state);
      if (!system.open(time, state) || (system.own > 0 && system.temperature < HOMOGENEOUS_FREEZING_POINT)) throw outOfRange(system, time);
      const atStop = nextStop < stops.length && time === stops[nextStop];
      if (atStop) nextStop++;
      if (time === to.time) peak.corner(time, saturationIn(system), system.temperature);
      else peak.along(time, saturationIn(system), system.temperature);
      visit(time, atStop);
    }
  }
  return peak.result();
}

/** Vapor pressure over that of saturation over plane water, of the state last opened. */
export function saturationIn(system: DropletSystem): Ratio {
  return saturationRatioOf(system.temperature, system.pressure, Math.max(0, system.mixingRatio));
}

/** Tries a step; returns its error over what is tolerated (`tolerated`: of the saturation ratio), Infinity where it leaves the domain. */
function tryStep(
  system: DropletSystem,
  time: Second,
  state: Float64Array,
  step: number,
  work: StepWorkspace,
  tolerance: RadiusTolerance,
  tolerated: Ratio,
): number {
  const { own } = system;
  const { error, jacobian } = work;
  if (!rosenbrockStep(system, time, state, step, work)) return Infinity;
  let liquid = 0;
  for (let i = 0; i < own; i++) liquid += jacobian.sumGradient[i]! * error[i]!;
  const warmth = system.temperatureError(liquid, error[own]!, error[own + 1]!);
  const vapor = Math.abs(error[own + 1]! - liquid) / Math.max(system.mixingRatio, 1e-9);
  const saturation = vapor + Math.abs(warmth) * RELATIVE_SLOPE;
  return Math.max(system.radiusError(state, work.next, error, tolerance), saturation / tolerated);
}

/** Rise of the saturation pressure with temperature near the freezing point, per kelvin. */
const RELATIVE_SLOPE = 0.07;

/** Follows a saturation ratio through a run; between steps it is a parabola, at the history's corners a value. */
interface PeakFinder {
  readonly corner: (time: Second, saturationRatio: Ratio, temperature: Kelvin) => void;
  readonly along: (time: Second, saturationRatio: Ratio, temperature: Kelvin) => void;
  readonly result: () => SaturationPeak;
}

function peakFinder(): PeakFinder {
  let best: Point = [0, -Infinity, 0];
  /** The last three points of the leg */
  let points: Point[] = [];
  const offer = (candidate: Point): void => {
    if (candidate[1] > best[1]) best = candidate;
  };
  const along = (...point: Point): void => {
    points = [...points.slice(-2), point];
    const [a, b, c] = points;
    if (a !== undefined && b !== undefined && c !== undefined && b[1] >= a[1] && b[1] >= c[1]) offer(topOfParabola(a, b, c));
  };
  const corner = (...point: Point): void => {
    along(...point);
    offer(point);
    points = [point];
  };
  return { along, corner, result: () => ({ time: best[0], saturationRatio: best[1], temperature: best[2] }) };
}

/** Time, saturation ratio, temperature */
type Point = [time: Second, saturationRatio: Ratio, temperature: Kelvin];

function topOfParabola(a: Point, b: Point, c: Point): Point {
  const left = (b[1] - a[1]) / (b[0] - a[0]);
  const right = (c[1] - b[1]) / (c[0] - b[0]);
  const curvature = (right - left) / (c[0] - a[0]);
  if (!(curvature < 0)) return b;
  const slope = left + curvature * (b[0] - a[0]);
  const shift = -slope / (2 * curvature);
  const warming = shift > 0 ? (c[2] - b[2]) / (c[0] - b[0]) : (b[2] - a[2]) / (b[0] - a[0]);
  return [b[0] + shift, b[1] + shift * (slope + curvature * shift), b[2] + shift * warming];
}

function outOfRange(system: DropletSystem, time: Second): RangeError {
  return new RangeError(`the air is at ${system.temperature} K after ${time} s; ${reasonAt(system)}`);
}

function reasonAt({ own, temperature, range: [low, high] }: DropletSystem): string {
  if (own > 0 && temperature < HOMOGENEOUS_FREEZING_POINT + 1) return `below ${HOMOGENEOUS_FREEZING_POINT} K droplets freeze`;
  if (own === 0 || temperature > high - 1) return `the range of temperature is ${low} to ${high} K ${own > 0 ? 'with' : 'without'} droplets`;
  return 'the particles change faster than can be followed: too many or too large for so little water';
}
