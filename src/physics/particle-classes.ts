/** A distribution of particle sizes as numbers in classes, and how coagulation moves them between classes. */
import { exp, log } from './elementary.ts';
import type { CubicMeter, Meter, PerCubicMeter, Ratio } from './units.ts';

/** A lognormal mode of particles. */
export interface ParticleMode {
  /** Per m³ */
  readonly number: PerCubicMeter;
  /** Half of the particles are smaller, m */
  readonly medianDiameter: Meter;
  /** 1 for particles of one size */
  readonly geometricStandardDeviation: Ratio;
}

/** Size classes, each standing at one diameter; diameters rise by a constant factor. */
export interface SizeClasses {
  readonly diameters: readonly Meter[];
  readonly volumes: readonly CubicMeter[];
}

/**
 * Classes wide enough for lognormal modes and for what coagulation makes of them.
 * @param modes checked by the caller
 * @param perDoubling classes for each doubling of a particle's volume
 */
export function sizeClasses(modes: readonly ParticleMode[], perDoubling: number): SizeClasses {
  const ends = modes.map(({ medianDiameter, geometricStandardDeviation }) => ({
    low: medianDiameter / geometricStandardDeviation ** 4,
    high: medianDiameter * geometricStandardDeviation ** 4,
  }));
  const anchor = modes[0]!.medianDiameter;
  const low = Math.max(1.5e-9, Math.min(...ends.map((end) => end.low)));
  // Eight times the largest diameter is five hundred coagulations: more than a day of the densest smoke brings.
  const high = Math.min(1.5e-4, 8 * Math.max(...ends.map((end) => end.high)));
  const step = 2 ** (1 / (3 * perDoubling));
  const first = Math.floor(log(low / anchor) / log(step) + 1e-9);
  const last = Math.ceil(log(high / anchor) / log(step) - 1e-9);
  const diameters = Array.from({ length: last - first + 1 }, (_, i) => anchor * step ** (first + i));
  return { diameters, volumes: diameters.map((d) => (Math.PI / 6) * d ** 3) };
}

/**
 * Number of particles of a mode in each class: by the mode's density at the class, scaled to its number. A mode of
 * one size goes into the two classes beside it so that number and volume are kept.
 */
export function populate(classes: SizeClasses, mode: ParticleMode): Float64Array {
  const numbers = new Float64Array(classes.diameters.length);
  const width = log(mode.geometricStandardDeviation);
  const spacing = log(classes.diameters[1]! / classes.diameters[0]!);
  if (width < spacing) {
    for (const { into, share } of split(classes, (Math.PI / 6) * mode.medianDiameter ** 3)) numbers[into]! += share * mode.number;
    return numbers;
  }
  classes.diameters.forEach((d, i) => {
    numbers[i] = exp(-0.5 * (log(d / mode.medianDiameter) / width) ** 2);
  });
  const sum = numbers.reduce((total, n) => total + n, 0);
  return numbers.map((n) => (n * mode.number) / sum);
}

/** Adds the rates of change of number by coagulation to `rates`. @returns particles lost per volume and time */
export type Coagulation = (numbers: ArrayLike<number>, rates: Float64Array) => number;

/**
 * Coagulation among classes, conserving volume exactly: a particle formed between two classes is shared out so that
 * number and volume are both right.
 * @param kernel coagulation coefficient of two diameters, m³/s, in the sense K₁₂ n₁ n₂ meetings
 * Source: fixed pivots, Kumar & Ramkrishna 1996, Chem. Eng. Sci. 51, 1311.
 */
export function coagulationAmong(classes: SizeClasses, kernel: (d1: Meter, d2: Meter) => number): Coagulation {
  const { diameters, volumes } = classes;
  const size = diameters.length;
  const pairs = size * size;
  const coefficient = new Float64Array(pairs);
  const lower = new Int32Array(pairs);
  const lowerShare = new Float64Array(pairs);
  const upperShare = new Float64Array(pairs);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      const at = i * size + j;
      coefficient[at] = kernel(diameters[i]!, diameters[j]!) * (i === j ? 0.5 : 1);
      const [first, second] = split(classes, volumes[i]! + volumes[j]!);
      lower[at] = first.into;
      lowerShare[at] = first.share;
      upperShare[at] = second?.share ?? 0;
    }
  }
  return (numbers, rates) => {
    let lost = 0;
    for (let i = 0; i < size; i++) {
      const n = numbers[i]!;
      for (let j = 0; j <= i; j++) {
        const at = i * size + j;
        const meetings = coefficient[at]! * n * numbers[j]!;
        rates[i]! -= meetings;
        rates[j]! -= meetings;
        rates[lower[at]!]! += meetings * lowerShare[at]!;
        if (upperShare[at]! > 0) rates[lower[at]! + 1]! += meetings * upperShare[at]!;
        lost += meetings * (2 - lowerShare[at]! - upperShare[at]!);
      }
    }
    return lost;
  };
}

interface Share {
  readonly into: number;
  readonly share: Ratio;
}

/** Classes beside a volume and the shares of one particle that keep number and volume; at the ends volume alone. */
function split({ volumes }: SizeClasses, volume: CubicMeter): [Share] | [Share, Share] {
  const last = volumes.length - 1;
  if (volume >= volumes[last]!) return [{ into: last, share: volume / volumes[last]! }];
  if (volume <= volumes[0]!) return [{ into: 0, share: volume / volumes[0]! }];
  const spacing = log(volumes[1]! / volumes[0]!);
  const guess = Math.floor(log(volume / volumes[0]!) / spacing);
  const into = Math.min(last - 1, guess);
  const share = (volumes[into + 1]! - volume) / (volumes[into + 1]! - volumes[into]!);
  return [{ into, share }, { into: into + 1, share: 1 - share }];
}
