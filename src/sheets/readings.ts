/** A class's readings held against the model of its vessel, and the model alone where nothing is recorded. Pure: the same at build and on the reader's device. */
import { fitVessel, type VesselFit } from '../physics/fit.ts';
import { simulateRun } from '../physics/run.ts';
import { stateOf, uncertaintyOfSteps, type Conditions, type State } from '../tables/conditions.ts';
import { pressureAfter } from '../tables/air.ts';
import { pumpingTime, runSetting } from '../tables/vessel-run.ts';

/** What was read at one time, SI; uncertainties are standard uncertainties. */
export interface ClassReading {
  readonly time: number;
  /** Against the room, negative below it. */
  readonly gauge: number;
  readonly thermometer: number;
  readonly gaugeUncertainty?: number;
  readonly thermometerUncertainty?: number;
}

/** Times between which valve and pump were left alone, s. */
export interface ValveClosed {
  readonly from: number;
  readonly to: number;
}

/** What the readings themselves do not say. */
export interface Choice {
  /** Taken from the gauge where not given. */
  readonly closed?: ValveClosed;
  /** Of the kit's particles, those that a cloud formed on; none in a run that stayed clear. */
  readonly particles?: string;
}

/** One line of the comparison. */
export interface ComparedReading extends ClassReading {
  readonly gaugeUncertainty: number;
  readonly thermometerUncertainty: number;
  /** What the fitted model's thermometer shows, its offset included, K. */
  readonly model?: number;
  /** Reading less model, K. */
  readonly residual?: number;
  /** What the fitted model's gauge shows while the valve is closed, Pa. */
  readonly gaugeModel?: number;
}

export type Note = 'tooFew' | 'cannotFollow' | 'startsFar' | 'absolute' | 'otherRoom';

export interface Comparison {
  readonly lines: readonly ComparedReading[];
  readonly fit?: VesselFit;
  readonly closed?: ValveClosed | undefined;
  /** Of the room that the model stands in, Pa */
  readonly roomPressure: number;
  /** Whether `closed` was taken from the gauge. */
  readonly closedFound: boolean;
  /** Why there is no fit, or what makes it doubtful. */
  readonly notes: readonly Note[];
  /** What the kit itself says of its instruments. */
  readonly declared: { readonly wallTimeConstant?: number; readonly thermometerTimeConstant: number; readonly thermometerResolution: number };
}

/** As many as the model has constants, twice over. */
export const FEWEST_FOR_FIT = 8;
const FEWEST_IN_HOLD = 4;
/** A first reading farther from the start than this was taken when the pump had begun, Pa. */
const LARGEST_START = 3000;
/** A thermometer is hardly ever farther off, K: more likely the room was warmer or colder than is said. */
const LARGEST_OFFSET = 2;
/** Of the pressure of the room: a first reading as near to it as weather and elevation leave a barometer was not taken against the room. */
const NEAR_ABSOLUTE = 0.2;
/** Of the fastest change of the gauge: what comes back faster has its valve open. */
const SLOW = 0.3;
/** Of the farthest reading: nearer to the room the valve may be open. */
const NEAR_ROOM = 0.2;
/** Of the farthest reading: what is as near to it was read while nothing was done. */
const NEAR_FARTHEST = 0.02;

/** Readings against the model with the constants that fit them best. */
export function compareWithModel(readings: readonly ClassReading[], conditions: Conditions, choice: Choice = {}): Comparison {
  const state = stateOf(conditions);
  const { gauge, thermometer, vessel } = state.apparatus;
  const lines = readings.map((reading): ComparedReading => ({
    ...reading,
    gaugeUncertainty: reading.gaugeUncertainty ?? uncertaintyOfSteps(gauge.resolution),
    thermometerUncertainty: reading.thermometerUncertainty ?? uncertaintyOfSteps(thermometer.resolution),
  }));
  const closed = choice.closed ?? valveClosed(readings);
  const base = {
    closed,
    roomPressure: state.roomPressure,
    closedFound: choice.closed === undefined && closed !== undefined,
    declared: {
      wallTimeConstant: vessel.wallTimeConstant,
      thermometerTimeConstant: thermometer.timeConstant,
      thermometerResolution: thermometer.resolution,
    },
  };
  if (readings.length < FEWEST_FOR_FIT) return { ...base, lines, notes: ['tooFew'] };
  try {
    const fit = fitOf(readings, state, closed, choice.particles);
    const notes = [...doubtsOf(readings, state), ...(Math.abs(fit.offset.value) > LARGEST_OFFSET ? ['otherRoom' as const] : [])];
    return { ...base, lines: withModel(lines, fit), fit, notes };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ...base, lines, notes: [...doubtsOf(readings, state), 'cannotFollow'] };
  }
}

function fitOf(readings: readonly ClassReading[], state: State, closed: ValveClosed | undefined, particles: string | undefined): VesselFit {
  const { start, vessel, thermometer } = runSetting(state);
  return fitVessel(readings, {
    start,
    roomPressure: state.roomPressure,
    vessel: { wallTemperature: vessel.wallTemperature, walls: vessel.walls },
    nuclei: state.particles.find(({ id }) => id === particles),
    wallShare: thermometer.wallShare,
    holds: closed && [closed],
  });
}

function withModel(lines: readonly ComparedReading[], fit: VesselFit): ComparedReading[] {
  return lines.map((line, i) => {
    const { thermometer: residual, pressure } = fit.residuals[i]!;
    return { ...line, residual, model: line.thermometer - residual, gaugeModel: pressure === undefined ? undefined : line.gauge - pressure };
  });
}

function doubtsOf(readings: readonly ClassReading[], state: State): Note[] {
  const begins = readings[0]!.gauge;
  if (Math.abs(begins - (state.startPressure - state.roomPressure)) <= LARGEST_START) return [];
  return [Math.abs(begins - state.roomPressure) < NEAR_ABSOLUTE * state.roomPressure ? 'absolute' : 'startsFar'];
}

/**
 * Where the gauge says that valve and pump were left alone: around the reading farthest from the room's pressure,
 * as long as it comes back only slowly, which is the air that warms and a leak.
 */
export function valveClosed(readings: readonly ClassReading[]): ValveClosed | undefined {
  const away = readings.map(({ gauge }) => Math.abs(gauge));
  const farthest = Math.max(0, ...away);
  const slopes = readings.slice(1).map(({ time }, i) => (away[i + 1]! - away[i]!) / (time - readings[i]!.time));
  const fastest = Math.max(0, ...slopes.map(Math.abs));
  let from = away.indexOf(farthest);
  let to = from;
  while (from > 0 && away[from - 1]! > (1 - NEAR_FARTHEST) * farthest) from -= 1;
  while (to + 1 < readings.length && away[to + 1]! > NEAR_ROOM * farthest && slopes[to]! > -SLOW * fastest) to += 1;
  return farthest === 0 || to - from + 1 < FEWEST_IN_HOLD ? undefined : { from: readings[from]!.time, to: readings[to]!.time };
}

/** How long before pumping a record begins, and after it goes on, s. */
const BEFORE = 10;
const AFTER = 150;
const EVERY = 5;

/** What gauge and thermometer of the kit's own apparatus will show in the clean run, read every five seconds. */
export function expectedReadings(conditions: Conditions): ClassReading[] {
  const state = stateOf(conditions);
  const to = pressureAfter(state, state.plannedDrop);
  const duration = pumpingTime(state, state.startPressure, to);
  const { series } = simulateRun({
    ...runSetting(state),
    events: [{ kind: 'hold', duration: BEFORE }, { kind: 'pump', to, duration }, { kind: 'hold', duration: AFTER }],
    interval: EVERY,
  });
  return series.map(({ time, gauge, thermometerReading }) => ({ time, gauge, thermometer: thermometerReading }));
}
