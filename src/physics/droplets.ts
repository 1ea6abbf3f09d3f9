/** Cloud droplets of many sizes, and what they do to air whose pressure changes. */
import { HOMOGENEOUS_FREEZING_POINT } from './constants.ts';
import { checkedTimes, checkHistory, checkStart, coefficients } from './droplet-checks.ts';
import { GROWTH_HIGH } from './droplet-growth.ts';
import {
  DEFAULT_TOLERANCE,
  runAlong,
  saturationIn,
  type PressurePoint,
  type StepTolerance,
} from './droplet-run.ts';
import { DropletSystem } from './droplet-system.ts';
import { checkWall, type Wall } from './droplet-wall.ts';
import { withLiquid, type CloudyAir } from './expansion.ts';
import { criticalPoint, equilibriumDiameter } from './koehler.ts';
import { dryAirDensity, moistAirOfMixingRatio, type MoistAir } from './moist-air.ts';
import { inRange } from './range.ts';
import { activatedShare, sizeClasses, type AerosolMode, type SizeClass } from './size-classes.ts';
import type {
  Kelvin,
  KilogramPerCubicMeter,
  Meter,
  Pascal,
  PerCubicMeter,
  Ratio,
  Second,
} from './units.ts';

export { dropletTemperature, growthRate, type GrowingDroplet } from './growing-droplet.ts';
export type { PressurePoint } from './droplet-run.ts';
export type { Wall } from './droplet-wall.ts';
export type { AerosolMode } from './size-classes.ts';

/** What {@link condense} is given. */
export interface Condensation {
  /** Its vapor does not count the water of the haze; 235.15 to 325 K, saturation ratio up to 1 */
  readonly start: MoistAir;
  /** Particles; none at all is allowed. A sectional distribution is many modes of one size each */
  readonly modes: readonly AerosolMode[];
  /** Two points or more in order of time, the first at the pressure of `start`; 5·10³ to 5·10⁵ Pa, up to 10⁵ s */
  readonly pressureHistory: readonly PressurePoint[];
  /** As in {@link GrowingDroplet} */
  readonly condensationCoefficient?: Ratio;
  readonly thermalAccommodation?: Ratio;
  /** No exchange with walls unless given */
  readonly wall?: Wall;
  /** Size classes of each mode of more than one size, 1 to 1000; 100 unless given */
  readonly classes?: number;
  /** Times of the series, s, in order, within the history; unless given, every step of the solver */
  readonly outputTimes?: readonly Second[];
}

/** A moment of a run. */
export interface CondensationPoint {
  readonly time: Second;
  /** Absolute, Pa */
  readonly pressure: Pascal;
  /** Of the gas, K */
  readonly temperature: Kelvin;
  /** Over plane liquid water */
  readonly saturationRatio: Ratio;
  /** Vapor, kg per kg of dry air */
  readonly mixingRatio: Ratio;
  /** Liquid, the haze's included, kg per kg of dry air */
  readonly liquidWater: Ratio;
  /** The same, kg per m³ of vessel */
  readonly liquidWaterContent: KilogramPerCubicMeter;
  /** Third over second moment of the radii of all droplets and haze, m; 0 without particles */
  readonly effectiveRadius: Meter;
}

/** Droplets of one class at the end of a run. */
export interface DropletSize {
  /** Index of its mode */
  readonly mode: number;
  readonly dryDiameter: Meter;
  readonly kappa: Ratio;
  /** Wet, m */
  readonly diameter: Meter;
  /** Per m³ of the air at the end */
  readonly number: PerCubicMeter;
  /** Of the droplet, K: warmer than the gas while it grows */
  readonly temperature: Kelvin;
}

/** What {@link condense} gives. */
export interface CondensationRun {
  readonly series: readonly CondensationPoint[];
  /** Highest saturation ratio and its time, also between points of the series */
  readonly peakSaturationRatio: Ratio;
  readonly peakTime: Second;
  /** Share of all particles whose critical saturation ratio is reached at the peak; 0 without particles */
  readonly activatedFraction: Ratio;
  readonly final: {
    readonly air: CloudyAir;
    readonly sizes: readonly DropletSize[];
    /** Vapor given off by wet walls, negative if taken up, kg per kg of dry air */
    readonly waterFromWalls: Ratio;
  };
}

const DEFAULT_CLASSES = 100;
/** kg per kg of dry air. Far less would fall out at once; more is surely a mistake in number or size. */
const MOST_HAZE = 1000;
/** Air alone is cheap to follow closely. */
const CLEAR_TOLERANCE: StepTolerance = { ...DEFAULT_TOLERANCE, saturation: 1e-8, supersaturation: 0, undersaturation: 0 };

/**
 * Air, vapor and droplets while the pressure follows a given history: particles start as haze in equilibrium with
 * the vapor, droplets take up or give off vapor and heat. Without particles, air that expands alone.
 * No settling, no coagulation, no ice; vapor and heat are the same throughout the vessel.
 * @param input see {@link Condensation}
 * @returns see {@link CondensationRun}; vapor plus liquid is constant (but for wet walls) to the last digits
 * @throws RangeError outside a range, or where air with particles would be colder than 235.15 K (droplets freeze)
 * Source: {@link growthRate} for many sizes; Köhler's haze after Petters & Kreidenweis 2007; enthalpy of air, vapor
 *   and liquid as in {@link expandWithCondensation}; Rosenbrock steps after Sandu et al. 1997.
 */
export function condense(input: Condensation): CondensationRun {
  const clear = input.modes.every(({ number }) => number === 0);
  return condenseWithin(input, clear ? CLEAR_TOLERANCE : DEFAULT_TOLERANCE);
}

/** {@link condense} with the step errors as given: to tell how far its answers depend on them. */
export function condenseWithin(input: Condensation, tolerance: StepTolerance): CondensationRun {
  const { start, pressureHistory: history, wall } = input;
  checkStart(start);
  checkHistory(history, start.pressure);
  if (wall !== undefined) checkWall(wall);
  const stops = checkedTimes(input.outputTimes, history);
  const classes = sizeClasses(input.modes, input.classes ?? DEFAULT_CLASSES);
  if (classes.length > 0) inRange('start.temperature', start.temperature, HOMOGENEOUS_FREEZING_POINT, GROWTH_HIGH, 'K');

  const density = dryAirDensity(start.temperature, start.pressure, start.mixingRatio);
  const system = new DropletSystem(
    {
      dryRadiusCubed: Float64Array.from(classes, ({ dryDiameter }) => (dryDiameter / 2) ** 3),
      kappa: Float64Array.from(classes, ({ kappa }) => kappa),
      number: Float64Array.from(classes, ({ number }) => number / density),
      scale: Float64Array.from(classes, ({ dryDiameter, kappa }) => {
        return criticalPoint({ dryDiameter, kappa, temperature: start.temperature }).wetDiameter / 2;
      }),
    },
    wall,
    coefficients(input),
  );
  const { temperature } = start;
  const saturationRatio = Math.min(1, start.saturationRatio);
  const radii = Float64Array.from(
    classes,
    ({ dryDiameter, kappa }) => equilibriumDiameter({ dryDiameter, kappa, temperature, saturationRatio }) / 2,
  );
  const state = system.initialState(radii, temperature, start.mixingRatio);
  const water = state[system.own + 1]!;
  inRange('water of the haze at the start, per mass of dry air,', water - start.mixingRatio, -1e-12, MOST_HAZE);

  const series: CondensationPoint[] = [];
  const peak = runAlong(system, state, history, stops ?? [], tolerance, (time, atStop) => {
    if (stops === undefined || atStop) series.push(pointOf(system, time));
  });
  const activatedFraction =
    classes.length === 0 ? 0 : activatedShare(input.modes, peak.saturationRatio, peak.temperature);
  return {
    series,
    peakSaturationRatio: peak.saturationRatio,
    peakTime: peak.time,
    activatedFraction,
    final: {
      air: airOf(system),
      sizes: sizesOf(system, classes),
      waterFromWalls: state[system.own + 1]! - water,
    },
  };
}

function pointOf(system: DropletSystem, time: Second): CondensationPoint {
  const { pressure, temperature, liquid } = system;
  const mixingRatio = Math.max(0, system.mixingRatio);
  let cubes = 0;
  let squares = 0;
  for (let i = 0; i < system.own; i++) {
    const radius = system.radius[i]!;
    squares += system.classes.number[i]! * radius * radius;
    cubes += system.classes.number[i]! * radius * radius * radius;
  }
  return {
    time,
    pressure,
    temperature,
    saturationRatio: saturationIn(system),
    mixingRatio,
    liquidWater: liquid,
    liquidWaterContent: liquid * dryAirDensity(temperature, pressure, mixingRatio),
    effectiveRadius: squares > 0 ? cubes / squares : 0,
  };
}

function airOf(system: DropletSystem): CloudyAir {
  return withLiquid(moistAirOfMixingRatio(system.temperature, system.pressure, Math.max(0, system.mixingRatio)), system.liquid);
}

function sizesOf(system: DropletSystem, classes: readonly SizeClass[]): DropletSize[] {
  if (classes.length === 0) return [];
  const { temperature, pressure, mixingRatio, radius, warmth } = system;
  system.grow(new Float64Array(system.own));
  const density = dryAirDensity(temperature, pressure, Math.max(0, mixingRatio));
  return classes.map(({ mode, dryDiameter, kappa }, i) => {
    const number = system.classes.number[i]! * density;
    return { mode, dryDiameter, kappa, diameter: 2 * radius[i]!, number, temperature: temperature + warmth[i]! };
  });
}
