/** The model that a fit holds against a recorded run: driven by the pressures read, shut in during holds. */
import type { MoistAir } from './moist-air.ts';
import { inRange } from './range.ts';
import type { TimedPressure } from './run-events.ts';
import type { RunNuclei, RunVessel } from './run-input.ts';
import type { RunPoint } from './run-recorder.ts';
import { simulateRun } from './run.ts';
import type { Kelvin, KelvinDifference, Pascal, Ratio, Second } from './units.ts';

/** What was read at one time; either the gauge or the absolute pressure. */
export interface VesselReading {
  /** s */
  readonly time: Second;
  /** Against the room, Pa */
  readonly gauge?: Pascal;
  /** Absolute, Pa */
  readonly pressure?: Pascal;
  /** K */
  readonly thermometer: Kelvin;
}

/** What is known of a run besides its readings. */
export interface FitOptions {
  /** The air in the vessel at the first reading, at rest with walls and thermometer */
  readonly start: MoistAir;
  /** Absolute, Pa; that of the start unless given */
  readonly roomPressure?: Pascal;
  /** Walls and wetness as in a simulated run; its time constant of the walls and its leak are found, not taken */
  readonly vessel?: Pick<RunVessel, 'wallTemperature' | 'walls'>;
  /** Particles, where a cloud formed; none unless given */
  readonly nuclei?: RunNuclei;
  /** Share of the walls in what the thermometer relaxes to, 0 to 0.95; 0 unless given */
  readonly wallShare?: Ratio;
  /** Times between which valve and pump were left alone; they tell the leak, and the walls from the gauge. Each needs 3 readings */
  readonly holds?: readonly { readonly from: Second; readonly to: Second }[];
  /** Where to begin; tried on a coarse grid unless given */
  readonly initial?: { readonly wallTimeConstant?: Second; readonly thermometerTimeConstant?: Second };
}

/** Readings during which valve and pump were left alone. */
export interface Hold {
  readonly indices: readonly number[];
  /** As in the driving pressures, whose first time is 0 */
  readonly span: { readonly from: Second; readonly to: Second };
}

/** A hold's pressures against the model. */
export interface HoldMisfit {
  /** Pressures read over the model's */
  readonly scale: Ratio;
  readonly residuals: readonly Pascal[];
}

/** Readings less model. */
export interface Misfit {
  readonly thermometer: readonly KelvinDifference[];
  readonly holds: readonly HoldMisfit[];
}

/** Far finer than any thermometer, and than what the fit's increments change. */
const MODEL_ACCURACY: KelvinDifference = 3e-6;

/**
 * The pressures read, absolute, from time 0.
 * @throws RangeError outside a range, or if times do not rise
 */
export function pressureHistory(readings: readonly VesselReading[], roomPressure: Pascal): readonly TimedPressure[] {
  inRange('number of readings', readings.length, 8, 1e5);
  return readings.map(({ time, gauge, pressure, thermometer }, i) => {
    if ((gauge === undefined) === (pressure === undefined)) {
      throw new RangeError(`readings[${i}] has ${gauge === undefined ? 'no' : 'two'} pressures; give either gauge or pressure`);
    }
    inRange(`readings[${i}].thermometer`, thermometer, 200, 400, 'K');
    return {
      time: inRange(`readings[${i}].time`, time, i === 0 ? -1e6 : readings[i - 1]!.time + 1e-6, 1e6, 's') - readings[0]!.time,
      pressure: inRange(`readings[${i}].pressure`, pressure ?? roomPressure + gauge!, 5e3, 5e5, 'Pa'),
    };
  });
}

/**
 * The readings of a hold.
 * @throws RangeError with fewer than three
 */
export function holdOf(hold: { readonly from: Second; readonly to: Second }, readings: readonly VesselReading[]): Hold {
  const indices = readings.flatMap(({ time }, i) => (time >= hold.from && time <= hold.to ? [i] : []));
  inRange(`number of readings from ${hold.from} to ${hold.to} s`, indices.length, 3, Infinity);
  const first = readings[0]!.time;
  return { indices, span: { from: hold.from - first, to: hold.to - first } };
}

/** The model at the times of the readings; nothing where it leaves the range of its formulas. */
export function modelSeries(
  history: readonly TimedPressure[],
  holds: readonly Hold[],
  options: FitOptions,
  constants: { readonly wall: Second; readonly thermometer: Second; readonly leak: number },
): readonly RunPoint[] | undefined {
  try {
    return simulateRun({
      start: options.start,
      vessel: { ...options.vessel, wallTimeConstant: constants.wall, leakTimeConstant: 1 / constants.leak },
      room: { pressure: options.roomPressure ?? options.start.pressure },
      thermometer: { timeConstant: constants.thermometer, wallShare: options.wallShare ?? 0 },
      ...(options.nuclei === undefined ? {} : { nuclei: options.nuclei }),
      pressureHistory: history,
      holds: holds.map(({ span }) => span),
      interval: Infinity,
      accuracy: MODEL_ACCURACY,
    }).series;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/**
 * Pressures of a hold less the model's, whose height is found here: the single reading it starts from may be off.
 */
export function holdMisfit(hold: Hold, readings: readonly TimedPressure[], series: readonly RunPoint[], roomPressure: Pascal, leak: number): HoldMisfit {
  const read = hold.indices.map((i) => readings[i]!.pressure);
  const from = series[hold.indices[0]!]!.time;
  // A leak has no negative time constant; what noise makes negative is added in proportion, so that the fit can pass zero.
  const belowZero = Math.min(0, leak);
  const model = hold.indices.map((i) => {
    const { pressure, time } = series[i]!;
    return pressure + belowZero * (roomPressure - pressure) * (time - from);
  });
  const scale =
    read.reduce((sum, pressure, i) => sum + pressure * model[i]!, 0) / model.reduce((sum, pressure) => sum + pressure * pressure, 0);
  return { scale, residuals: read.map((pressure, i) => pressure - scale * model[i]!) };
}

/** The driving pressures with each hold's beginning put where all its readings want it. */
export function withBeginnings(driving: readonly TimedPressure[], holds: readonly Hold[], misfits: readonly HoldMisfit[]): readonly TimedPressure[] {
  return driving.map((point, i) => {
    const h = holds.findIndex((hold) => hold.indices[0] === i);
    return h < 0 ? point : { ...point, pressure: point.pressure * misfits[h]!.scale };
  });
}
