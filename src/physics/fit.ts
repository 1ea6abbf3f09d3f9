/** A vessel's own constants from a recorded run: what the readings say, how well, and what they cannot say. */
import { exp, log } from './elementary.ts';
import {
  holdMisfit,
  holdOf,
  modelSeries,
  pressureHistory,
  withBeginnings,
  type FitOptions,
  type Hold,
  type Misfit,
  type VesselReading,
} from './fit-model.ts';
import { verdictOn } from './fit-verdict.ts';
import { leastSquares, type LeastSquaresFit } from './least-squares.ts';
import { inRange } from './range.ts';
import { coverageFactor } from './student.ts';
import type { KelvinDifference, Pascal, Ratio, Second } from './units.ts';

export type { FitOptions, VesselReading } from './fit-model.ts';

/** A constant that the fit finds. */
export type FittedConstant = 'wallTimeConstant' | 'thermometerTimeConstant' | 'leak' | 'offset';

/** A value with its standard error. */
export interface FittedValue {
  readonly value: number;
  /** Infinite where the readings do not determine the value */
  readonly standardError: number;
  /** Ends of the 95 % interval; for time constants of the interval of their logarithm */
  readonly low: number;
  readonly high: number;
}

/** Reading less model at one time. */
export interface FitResidual {
  readonly time: Second;
  /** K */
  readonly thermometer: KelvinDifference;
  /** Pa; only during a hold */
  readonly pressure: Pascal | undefined;
}

/** What a recorded run says of a vessel. */
export interface VesselFit {
  /** s */
  readonly wallTimeConstant: FittedValue;
  /** s */
  readonly thermometerTimeConstant: FittedValue;
  /** Share of the difference from the room that a leak takes away per time, 1/s; undefined without a hold */
  readonly leak: FittedValue | undefined;
  /** Thermometer less true temperature, K */
  readonly offset: FittedValue;
  readonly residuals: readonly FitResidual[];
  /** Scatter of the thermometer's readings about the model, K */
  readonly residualStandardDeviation: KelvinDifference;
  /** Scatter of the pressures read during holds, Pa; undefined without a hold */
  readonly pressureStandardDeviation: Pascal | undefined;
  /** Share of the thermometer's squared deviations from its mean that the model accounts for, at most 1 */
  readonly explained: Ratio;
  /** Of each pair of constants found, −1 to 1 */
  readonly correlation: Readonly<Partial<Record<FittedConstant, Readonly<Partial<Record<FittedConstant, number>>>>>>;
  readonly degreesOfFreedom: number;
  /** Constants that these readings do not determine */
  readonly undetermined: readonly FittedConstant[];
  /** Pairs of constants that these readings cannot tell apart */
  readonly inseparable: readonly (readonly [FittedConstant, FittedConstant])[];
  /** Whether the residuals follow each other, as they do where something happened that the model leaves out */
  readonly hasCourse: boolean;
}

const SHORTEST: Second = 0.02;
const LONGEST: Second = 1e5;
const GRID_OF_WALLS: readonly Second[] = [2, 6, 18, 60];
const GRID_OF_THERMOMETERS: readonly Second[] = [3, 12, 40, 120];
/** Assumed until the residuals show the true ones. */
const FIRST_GUESS_OF_SCATTER = { thermometer: 0.1, pressure: 50 };
const ROUNDS = 3;
/** Of a logarithm of a time constant: large against the model's accuracy, small against its curvature. */
const INCREMENT = 1e-3;

/**
 * Time constants of walls and thermometer, leak and offset of the thermometer from a recorded run, by least squares.
 * The pressures read drive the model; the thermometer is what it must come close to. During holds the gas is shut in, so
 * there the pressure itself tells how it comes back to the walls' temperature and what leaks.
 * @param readings 8 or more, times rising; the pressure is taken as linear between them
 * @param options see {@link FitOptions}
 * @returns see {@link VesselFit}; standard errors are those of the linearized model, the scatter of each instrument taken
 *   from its own residuals
 * @throws RangeError outside a range, or where the model leaves the range of its formulas
 * Source: the run's equations (vessel-equations.ts) and {@link leastSquares}; weights by the residuals of the round before.
 */
export function fitVessel(readings: readonly VesselReading[], options: FitOptions): VesselFit {
  const { start } = options;
  const roomPressure = inRange('roomPressure', options.roomPressure ?? start.pressure, 5e3, 5e5, 'Pa');
  inRange('wallShare', options.wallShare ?? 0, 0, 0.95);
  const history = pressureHistory(readings, roomPressure);
  const holds = (options.holds ?? []).map((hold) => holdOf(hold, readings));
  // The pressures that drive the model: as read, but for the beginnings of holds, which all readings of the hold tell better.
  let driving = history;
  const names: readonly FittedConstant[] = [
    'wallTimeConstant', 'thermometerTimeConstant', 'offset', ...(holds.length > 0 ? (['leak'] as const) : []),
  ];

  const misfit = (parameters: readonly number[]): Misfit | undefined => {
    const [lnWall, lnThermometer, offset, leak = 0] = parameters as [number, number, number, number?];
    const series = modelSeries(driving, holds, options, {
      wall: exp(clampLn(lnWall)), thermometer: exp(clampLn(lnThermometer)), leak: Math.max(0, leak),
    });
    if (series === undefined) return undefined;
    return {
      thermometer: series.map((point, i) => readings[i]!.thermometer - offset - point.thermometerReading),
      holds: holds.map((hold) => holdMisfit(hold, history, series, roomPressure, leak)),
    };
  };

  let scatter = { ...FIRST_GUESS_OF_SCATTER };
  const residuals = (parameters: readonly number[]): readonly number[] => {
    const found = misfit(parameters);
    if (found === undefined) return [Infinity];
    return [
      ...found.thermometer.map((value) => value / scatter.thermometer),
      ...found.holds.flatMap((hold) => hold.residuals.map((value) => value / scatter.pressure)),
    ];
  };

  let initial = firstGuess(options, readings, names.length, residuals);
  let fit: LeastSquaresFit | undefined;
  for (let round = 0; round < (holds.length > 0 ? ROUNDS : 1); round++) {
    fit = leastSquares({ residuals, initial, hiddenParameters: holds.length, scales: [1, 1, 0.1, 1e-3], increment: INCREMENT, smallestStep: 1e-6 });
    initial = [...fit.parameters];
    const found = misfit(fit.parameters)!;
    scatter = scatterOf(found);
    if (round < ROUNDS - 1) driving = withBeginnings(driving, holds, found.holds);
  }
  return describeFit(readings, names, fit!, misfit(fit!.parameters)!, holds, scatter);
}

function firstGuess(
  options: FitOptions,
  readings: readonly VesselReading[],
  parameters: number,
  residuals: (parameters: readonly number[]) => readonly number[],
): readonly number[] {
  const { wallTimeConstant, thermometerTimeConstant } = options.initial ?? {};
  const walls = wallTimeConstant === undefined ? GRID_OF_WALLS : [inRange('initial.wallTimeConstant', wallTimeConstant, SHORTEST, LONGEST, 's')];
  const thermometers =
    thermometerTimeConstant === undefined
      ? GRID_OF_THERMOMETERS
      : [inRange('initial.thermometerTimeConstant', thermometerTimeConstant, SHORTEST, LONGEST, 's')];
  const offset = readings[0]!.thermometer - options.start.temperature;
  const candidates = walls.flatMap((wall) =>
    thermometers.map((thermometer) => [log(wall), log(thermometer), offset, 0].slice(0, parameters)),
  );
  const sizes = candidates.map((candidate) => residuals(candidate).reduce((sum, value) => sum + value * value, 0));
  return candidates[sizes.indexOf(Math.min(...sizes))]!;
}

/** Scatter of each instrument; what the constants cost in freedom goes to the readings that find them. */
function scatterOf(misfit: Misfit): { thermometer: KelvinDifference; pressure: Pascal } {
  const pressures = misfit.holds.flatMap((hold) => hold.residuals);
  // Lag and offset are found from the thermometer, leak and beginnings from the pressure, the walls' time from both.
  const shared = pressures.length > 0 ? 0.5 : 1;
  return {
    thermometer: Math.max(1e-6, rootMeanSquare(misfit.thermometer, misfit.thermometer.length - 2 - shared)),
    pressure: Math.max(1e-3, rootMeanSquare(pressures, pressures.length - misfit.holds.length - 1 - shared)),
  };
}

function rootMeanSquare(values: readonly number[], count: number): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / Math.max(1, count));
}

function clampLn(lnTime: number): number {
  return Math.min(log(LONGEST), Math.max(log(SHORTEST), lnTime));
}

function describeFit(
  readings: readonly VesselReading[],
  names: readonly FittedConstant[],
  fit: LeastSquaresFit,
  misfit: Misfit,
  holds: readonly Hold[],
  scatter: { thermometer: KelvinDifference; pressure: Pascal },
): VesselFit {
  const factor = coverageFactor(fit.degreesOfFreedom);
  const linear = (name: FittedConstant): FittedValue => {
    const i = names.indexOf(name);
    const [value, standardError] = [fit.parameters[i]!, fit.standardErrors[i]!];
    return { value, standardError, low: value - factor * standardError, high: value + factor * standardError };
  };
  const logarithmic = (name: FittedConstant): FittedValue => {
    const { value: ln, standardError, low, high } = linear(name);
    const value = exp(clampLn(ln));
    return { value, standardError: value * standardError, low: exp(low), high: exp(high) };
  };
  const mean = readings.reduce((sum, { thermometer }) => sum + thermometer, 0) / readings.length;
  const total = readings.reduce((sum, { thermometer }) => sum + (thermometer - mean) ** 2, 0);
  const left = misfit.thermometer.reduce((sum, value) => sum + value * value, 0);
  const pressureAt = new Map(holds.flatMap((hold, h) => hold.indices.map((index, i) => [index, misfit.holds[h]!.residuals[i]!] as const)));
  const values = {
    wallTimeConstant: logarithmic('wallTimeConstant'),
    thermometerTimeConstant: logarithmic('thermometerTimeConstant'),
    leak: holds.length > 0 ? linear('leak') : undefined,
    offset: linear('offset'),
  };
  return {
    ...values,
    residuals: readings.map(({ time }, i) => ({ time, thermometer: misfit.thermometer[i]!, pressure: pressureAt.get(i) })),
    residualStandardDeviation: scatter.thermometer,
    pressureStandardDeviation: holds.length > 0 ? scatter.pressure : undefined,
    explained: total > 0 ? 1 - left / total : 0,
    correlation: Object.fromEntries(
      names.map((a, i) => [a, Object.fromEntries(names.map((b, j) => [b, fit.correlation[i]![j]!]))]),
    ),
    degreesOfFreedom: fit.degreesOfFreedom,
    ...verdictOn(names, fit, misfit.thermometer),
  };
}
