/**
 * How the numbers of particles in size classes fall with time. The state is one array: the numbers in the air of each
 * class, the numbers inside droplets of each class, and the four losses so far, all per m³.
 */
import { expm1 } from './elementary.ts';
import type { Coagulation } from './particle-classes.ts';
import type { Ratio, Second } from './units.ts';

/** Places after the numbers in the air and in droplets. */
export const SETTLED = 0;
export const DIFFUSED = 1;
export const COAGULATED = 2;
export const CLOUDED = 3;
export const LOSSES = 4;

/** A cloud as it stands. */
export interface Cloud {
  /** Rate at which droplets reach the floor, 1/s */
  readonly settling: number;
  /** Coefficient at which a droplet catches a particle of each class, m³/s */
  readonly capture: readonly number[];
}

/** What takes particles away, with the losses left out set to nothing. */
export interface Processes {
  /** Of each class, 1/s */
  readonly settling: readonly number[];
  readonly diffusion: readonly number[];
  readonly coagulation: Coagulation | undefined;
}

/**
 * Advances the state by symmetric splitting (Strang 1968): losses in proportion to number exactly, between two halves
 * of them coagulation by the midpoint rule. Numbers stay positive and the balance exact; the error falls with the
 * square of `stepShare`, the share of particles or of their volume that one step may change.
 */
export function advance(state: Float64Array, span: Second, processes: Processes, cloud: Cloud | undefined, size: number, stepShare: Ratio): void {
  const rates = new Float64Array(size);
  const middle = new Float64Array(size);
  let left = span;
  while (left > 0) {
    rates.fill(0);
    const coagulating = processes.coagulation?.(state, rates) ?? 0;
    const h = Math.min(left, stepShare / fastest(state, processes, rates, coagulating));
    lose(state, h / 2, processes, cloud, size);
    if (processes.coagulation !== undefined) {
      rates.fill(0);
      processes.coagulation(state, rates);
      for (let i = 0; i < size; i++) middle[i] = Math.max(0, state[i]! + (h / 2) * rates[i]!);
      rates.fill(0);
      const lost = processes.coagulation(middle, rates);
      for (let i = 0; i < size; i++) state[i] = Math.max(0, state[i]! + h * rates[i]!);
      state[2 * size + COAGULATED]! += h * lost;
    }
    lose(state, h / 2, processes, cloud, size);
    left -= h;
  }
}

/** Greatest relative rate of change that the step must follow, 1/s. */
function fastest(state: Float64Array, { settling, diffusion }: Processes, rates: Float64Array, coagulating: number): number {
  const number = sumOf(state, 0, rates.length);
  // Less than one in a million cubic meters needs no following.
  if (number < 1e-6) return Number.MIN_VALUE;
  let [lost, quickest] = [0, 0];
  for (let i = 0; i < rates.length; i++) {
    const n = state[i]!;
    lost += n * (settling[i]! + diffusion[i]!);
    // Small particles may vanish into large ones much faster than the number as a whole falls; those all but gone
    // need not be followed, since the midpoint, held at nothing or above, keeps them where they are.
    if (rates[i]! < 0 && n > 1e-9 * number) quickest = Math.max(quickest, -rates[i]! / n);
  }
  return Math.max(quickest / 4, (lost + coagulating) / number, Number.MIN_VALUE);
}

/** Losses in proportion to number over a time, and what becomes of droplets in it. */
function lose(state: Float64Array, time: Second, { settling, diffusion }: Processes, cloud: Cloud | undefined, size: number): void {
  let exposure = 0;
  if (cloud !== undefined) {
    const lost = -expm1(-cloud.settling * time);
    const droplets = sumOf(state, size, 2 * size);
    exposure = (droplets * lost) / cloud.settling;
    for (let i = size; i < 2 * size; i++) state[i]! *= 1 - lost;
    state[2 * size + CLOUDED]! += droplets * lost;
  }
  for (let i = 0; i < size; i++) {
    const caught = exposure * (cloud?.capture[i] ?? 0);
    const exponent = (settling[i]! + diffusion[i]!) * time + caught;
    if (exponent === 0) continue;
    const lost = -state[i]! * expm1(-exponent);
    state[i]! -= lost;
    state[2 * size + SETTLED]! += (lost * settling[i]! * time) / exponent;
    state[2 * size + DIFFUSED]! += (lost * diffusion[i]! * time) / exponent;
    state[2 * size + CLOUDED]! += (lost * caught) / exponent;
  }
}

function sumOf(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i]!;
  return sum;
}
