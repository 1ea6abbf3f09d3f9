/** The conditions that every number of a kit is computed for: room, vessel and plan, with what is not known about them. */
import type { Kelvin, Meter, Pascal, Ratio, Second, CubicMeter, PerCubicMeter } from '../physics/index.ts';
import type { MaterialName } from '../texts/index.ts';
import { watched } from './asked.ts';
import { startsAbove } from './release.ts';

/** A number in SI with its standard uncertainty. */
export interface Measured {
  readonly value: number;
  readonly uncertainty: number;
}

/** Standard uncertainty of a number that is read or written in steps of this size: rectangular distribution, JCGM 100, 4.3.7. */
export const uncertaintyOfSteps = (step: number): number => step / Math.sqrt(12);

/** What is read off instruments or chosen, and so uncertain. */
export interface Inputs {
  readonly roomTemperature: Measured;
  /** Absolute. */
  readonly roomPressure: Measured;
  readonly roomHumidity: Measured;
  /** Of the air in the vessel, less the room's. */
  readonly startTemperatureDifference: Measured;
  readonly startHumidity: Measured;
  /** What the gauge may be wrong by when a step is read off it: its value is 0. */
  readonly gaugeError: Measured;
  /** What the formulas of saturation may be wrong by, as a share of the vapor: its value is 0. */
  readonly formulaError: Measured;
  /** What the weather adds to the pressure of the standard atmosphere at an elevation, Pa: its value is 0. */
  readonly weather: Measured;
}

export type InputName = keyof Inputs;

export interface Particles {
  readonly id: string;
  readonly title: string;
  readonly dryDiameter: Meter;
  /** Geometric standard deviation. */
  readonly spread: Ratio;
  readonly kappa: Ratio;
  readonly number: PerCubicMeter;
}

export interface Apparatus {
  readonly title: string;
  readonly vessel: {
    readonly shape: 'cylinder' | 'sphere';
    readonly volume: CubicMeter;
    readonly diameter: Meter;
    readonly wallThickness: Meter;
    readonly material: MaterialName;
    /** Rated lowest and highest pressure against the room. */
    readonly lowestGauge: Pascal;
    readonly highestGauge: Pascal;
    readonly wallTimeConstant?: Second;
  };
  readonly source:
    | { readonly kind: 'stroke-pump'; readonly strokeVolume: CubicMeter; readonly deadVolume: CubicMeter; readonly strokeTime: Second; readonly ultimatePressure: Pascal }
    | { readonly kind: 'steady-pump'; readonly speed: number; readonly ultimatePressure: Pascal }
    | { readonly kind: 'squeeze'; readonly volumeChange: CubicMeter }
    | { readonly kind: 'pressurise'; readonly highestGauge: Pascal; readonly releaseTime: Second };
  readonly gauge: { readonly kind: 'dial' | 'digital'; readonly lowestGauge: Pascal; readonly highestGauge: Pascal; readonly resolution: Pascal; readonly unit: string };
  readonly thermometer: { readonly kind: 'stem' | 'thermocouple' | 'digital'; readonly resolution: number; readonly timeConstant: Second; readonly wallShare: Ratio; readonly position: string };
  readonly light: { readonly kind: string; readonly from: 'side' | 'back' | 'front' };
  readonly backing: string;
  readonly valve: string;
}

/** All that a kit's numbers follow from; plain data, so that it travels to the browser. */
export interface Conditions {
  readonly roomTitle: string;
  readonly elevation?: Meter;
  readonly inputs: Inputs;
  /** The largest pressure drop that the kit plans. */
  readonly plannedDrop: Pascal;
  readonly apparatus: Apparatus;
  readonly particles: readonly Particles[];
}

/** The conditions with each input at one value: what the computing functions take. SI. */
export interface State {
  readonly roomTemperature: Kelvin;
  readonly roomPressure: Pascal;
  readonly roomHumidity: Ratio;
  readonly startTemperature: Kelvin;
  readonly startHumidity: Ratio;
  /** Absolute pressure in the vessel before it expands. */
  readonly startPressure: Pascal;
  /** The same in the kit's own room, where a parameter has moved the state to another elevation. */
  readonly kitStartPressure: Pascal;
  readonly gaugeError: Pascal;
  readonly formulaError: Ratio;
  readonly weather: Pascal;
  readonly plannedDrop: Pascal;
  readonly apparatus: Apparatus;
  readonly particles: readonly Particles[];
}

const known = new WeakMap<Conditions, Map<InputName | undefined, Map<number, State>>>();

/**
 * The state with every input at its estimate, but `shifted` moved by `by`. The same one for all tables and values of some
 * conditions, so that what one of them computed in it serves the others.
 */
export function stateOf(conditions: Conditions, shifted?: InputName, by = 0): State {
  let ofConditions = known.get(conditions);
  if (ofConditions === undefined) known.set(conditions, (ofConditions = new Map()));
  let ofInput = ofConditions.get(shifted);
  if (ofInput === undefined) ofConditions.set(shifted, (ofInput = new Map()));
  let state = ofInput.get(by);
  if (state === undefined) ofInput.set(by, (state = shifted === undefined ? watched(newState(conditions)) : newState(conditions, shifted, by)));
  return state;
}

/** A state that differs from another in some parts, and asks it for all others. */
export const stateWith = (state: State, parts: Partial<State>): State => Object.create(state, Object.getOwnPropertyDescriptors(parts)) as State;

function newState(conditions: Conditions, shifted?: InputName, by = 0): State {
  const at = (name: InputName): number => conditions.inputs[name].value + (name === shifted ? by : 0);
  const { apparatus, particles, plannedDrop } = conditions;
  const roomTemperature = at('roomTemperature');
  const roomPressure = at('roomPressure');
  // What is let go ends at the room's pressure, so it starts above the room by what it is planned to fall.
  const startPressure = roomPressure + (startsAbove(apparatus) ? plannedDrop : 0);
  return {
    roomTemperature,
    roomPressure,
    roomHumidity: clampFraction(at('roomHumidity')),
    startTemperature: roomTemperature + at('startTemperatureDifference'),
    startHumidity: clampFraction(at('startHumidity')),
    startPressure,
    kitStartPressure: startPressure,
    gaugeError: at('gaugeError'),
    formulaError: at('formulaError'),
    weather: at('weather'),
    plannedDrop,
    apparatus,
    particles,
  };
}

/** A humidity of 99.8 % ± 0.3 % is shifted to 100 % at most. */
const clampFraction = (value: number): Ratio => Math.min(1, Math.max(0, value));
