/**
 * The equations of a vessel full of moist air: mass, energy, water, droplets and a thermometer.
 * The gas is well stirred; the walls keep their temperature. Source of the balances: conservation of energy and water
 * in an open volume, e.g. Bohren & Albrecht 1998, Atmospheric Thermodynamics, ch. 3, per kg of dry air.
 */
import {
  GAS_CONSTANT_DRY_AIR,
  GAS_CONSTANT_VAPOR,
  HEAT_CAPACITY_DRY_AIR,
  HEAT_CAPACITY_VAPOR,
  HOMOGENEOUS_FREEZING_POINT,
} from './constants.ts';
import { exp } from './elementary.ts';
import { dropletsIn, radiusOf, waterMass, type DropletLaw } from './run-droplets.ts';
import { mixingRatioOf, vaporPressureOf } from './moist-air.ts';
import { enhancementFactor, latentHeatOfVaporization, saturationVaporPressure } from './saturation.ts';
import type { Derivative } from './runge-kutta.ts';
import type { Kelvin, Meter, Pascal, Ratio, Second } from './units.ts';

/** Places of the unknowns in the state; the last three count only where there are particles, the very last where they come in with room air. */
export const TEMPERATURE = 0;
export const PRESSURE = 1;
/** Vapor and liquid, kg per kg of dry air */
export const WATER = 2;
export const THERMOMETER = 3;
/** Of the droplets, see sizeOf in run-droplets.ts */
export const SIZE = 4;
/** Logarithm of the particles with their droplets, per kg of dry air: they thin out and never pass zero */
export const LN_PARTICLES = 5;
/** Particles that came in with room air since the action began, per kg of dry air: they join the others when it ends */
export const DRAWN = 6;

/** Specific heat of liquid water, J/(kg·K): CRC Handbook, 4192 at 10 °C and 4182 at 20 °C; below 0 °C it rises by 2 % to −20 °C. */
const HEAT_CAPACITY_LIQUID = 4190;

/** What does not change during a run. */
export interface VesselConstants {
  readonly wallTemperature: Kelvin;
  /** s, 0 (the gas is always at the walls' temperature) to infinite */
  readonly wallTimeConstant: Second;
  /** s, above 0; infinite for dry walls */
  readonly vaporTimeConstant: Second;
  /** Time in which a leak would bring the vessel to the room's pressure at its first rate, s; may be infinite */
  readonly leakTimeConstant: Second;
  /** s, above 0; may be infinite */
  readonly thermometerTimeConstant: Second;
  /** Share of the walls in what the thermometer relaxes to */
  readonly wallShare: Ratio;
  readonly room: RoomAir;
  /** None where the vessel and the room hold no particles */
  readonly droplets: DropletLaw | undefined;
  /** Height that droplets fall through, m; infinite where none are lost by settling */
  readonly settlingHeight: Meter;
}

/** The air that enters from the room. */
export interface RoomAir {
  readonly pressure: Pascal;
  readonly temperature: Kelvin;
  /** kg per kg of dry air */
  readonly mixingRatio: Ratio;
  /** Particles per kg of dry air */
  readonly particles: number;
}

/** What the operator does during one stretch of time; pressure is either given or follows from the flow. */
export interface Action {
  /** Pa/s at a time, where the pressure is given */
  readonly pressureRate?: (time: Second) => number;
  /** Whether room air takes the place where the given pressure asks for more gas */
  readonly open?: boolean;
  /** Taken out, volume per time over the vessel's volume, 1/s, and the pressure below which none is */
  readonly pump?: { readonly rate: number; readonly limit: Pascal };
  /** Relative change of the vessel's volume per time, 1/s */
  readonly volumeRate?: (time: Second) => number;
}

/** The vessel's state in words of the air in it. */
export interface VesselAir {
  /** kg per kg of dry air */
  readonly vapor: Ratio;
  readonly liquid: Ratio;
  /** Gas constant of air and vapor, J/K per kg of dry air */
  readonly gasConstant: number;
}

/** Logarithm that stands for no particles at all. */
export const NO_PARTICLES = -50;
const LOWEST_TEMPERATURE = 150;
const HIGHEST_TEMPERATURE = 332;
const LOWEST_PRESSURE = 5e3;
const HIGHEST_PRESSURE = 5e5;

/** Vapor, liquid and gas constant of a state. */
export function airOf(state: Float64Array, droplets: DropletLaw | undefined): VesselAir {
  const liquid = droplets === undefined ? 0 : exp(state[LN_PARTICLES]!) * waterMass(droplets, radiusOf(droplets, state[SIZE]!));
  const vapor = state[WATER]! - liquid;
  return { vapor, liquid, gasConstant: GAS_CONSTANT_DRY_AIR + vapor * GAS_CONSTANT_VAPOR };
}

/** Heat capacity at constant pressure of air with vapor and liquid, J/K per kg of dry air. */
export function heatCapacityOf(vapor: Ratio, liquid: Ratio): number {
  return HEAT_CAPACITY_DRY_AIR + vapor * HEAT_CAPACITY_VAPOR + liquid * HEAT_CAPACITY_LIQUID;
}

/** Whether the formulas hold for a state: gas from 150 to 332 K (with droplets: above −38 °C) and 5·10³ to 5·10⁵ Pa. */
function isInRange(state: Float64Array, droplets: DropletLaw | undefined): boolean {
  const T = state[TEMPERATURE]!;
  const p = state[PRESSURE]!;
  return T >= coldestFor(droplets) && T <= HIGHEST_TEMPERATURE && p >= LOWEST_PRESSURE && p <= HIGHEST_PRESSURE;
}

/** The range of {@link isInRange} in words. */
export function rangeOf(droplets: DropletLaw | undefined): string {
  const range = `the range is ${coldestFor(droplets)} to ${HIGHEST_TEMPERATURE} K and ${LOWEST_PRESSURE} to ${HIGHEST_PRESSURE} Pa`;
  return droplets === undefined ? range : `${range}, colder droplets freeze`;
}

function coldestFor(droplets: DropletLaw | undefined): Kelvin {
  return droplets === undefined ? LOWEST_TEMPERATURE : HOMOGENEOUS_FREEZING_POINT;
}

/** The derivative of the state under an action; not finite where the formulas do not hold. */
export function vesselDerivative(vessel: VesselConstants, action: Action): Derivative {
  const { droplets, room, wallTemperature } = vessel;
  const { pressureRate, pump, volumeRate } = action;
  const isIsothermal = vessel.wallTimeConstant === 0;
  const isWet = Number.isFinite(vessel.vaporTimeConstant);
  // Once for all times, since the walls keep their temperature.
  const vaporPressureAtWalls = saturationVaporPressure(wallTemperature);
  // A Jacobian moves one unknown after the other: most leave what follows from temperature and pressure as it was.
  let grow: ReturnType<typeof dropletsIn> | undefined;
  let lastT: Kelvin | undefined;
  let lastP: Pascal | undefined;

  return (time, state, out) => {
    if (!isInRange(state, droplets)) {
      out.fill(Number.NaN);
      return;
    }
    const T = state[TEMPERATURE]!;
    const p = state[PRESSURE]!;
    const { vapor, liquid, gasConstant } = airOf(state, droplets);
    const heatCapacity = heatCapacityOf(vapor, liquid);

    let condensation = 0;
    let sizeRate = 0;
    let settling = 0;
    if (droplets !== undefined) {
      if (T !== lastT || p !== lastP) grow = dropletsIn((lastT = T), (lastP = p));
      const drop = grow!(droplets, radiusOf(droplets, state[SIZE]!), vaporPressureOf(p, vapor));
      condensation = exp(state[LN_PARTICLES]!) * drop.massRate;
      sizeRate = drop.sizeRate;
      settling = drop.fallSpeed / vessel.settlingHeight;
    }
    const evaporation = isWet
      ? (mixingRatioOf(enhancementFactor(wallTemperature, p) * vaporPressureAtWalls, p) - vapor) / vessel.vaporTimeConstant
      : 0;

    // Heat and vapor that come without any flow through an opening.
    const heating =
      (isIsothermal ? 0 : (heatCapacity * (wallTemperature - T)) / vessel.wallTimeConstant) +
      (condensation === 0 ? 0 : condensation * latentHeatOfVaporization(T)) +
      evaporation * HEAT_CAPACITY_VAPOR * (wallTemperature - T);
    const moistening = evaporation - condensation;
    const swelling = volumeRate?.(time) ?? 0;
    // Heat and vapor brought by each kg of room air per kg of air in the vessel.
    const roomHeat = (HEAT_CAPACITY_DRY_AIR + room.mixingRatio * HEAT_CAPACITY_VAPOR) * (room.temperature - T);
    const roomVapor = room.mixingRatio - vapor;

    let inflow = 0;
    let temperatureRate: number;
    let lnPressureRate: number;
    if (pressureRate !== undefined) {
      lnPressureRate = pressureRate(time) / p;
      temperatureRate = isIsothermal ? 0 : (gasConstant * T * lnPressureRate + heating) / heatCapacity;
      const gain = lnPressureRate + swelling - temperatureRate / T - (GAS_CONSTANT_VAPOR * moistening) / gasConstant;
      if (action.open === true && gain > 0) {
        const warming = isIsothermal ? 0 : roomHeat / heatCapacity;
        inflow = gain / (1 + warming / T + (GAS_CONSTANT_VAPOR * roomVapor) / gasConstant);
        temperatureRate += inflow * warming;
      }
    } else {
      const outflow = pump === undefined ? 0 : pump.rate * Math.max(0, 1 - pump.limit / p);
      const leak = (room.pressure - p) / (vessel.leakTimeConstant * p);
      inflow = Math.max(0, leak);
      const expansion =
        Math.min(0, leak) + inflow - outflow - swelling +
        (GAS_CONSTANT_VAPOR * (moistening + inflow * roomVapor)) / gasConstant;
      temperatureRate = isIsothermal
        ? 0
        : (gasConstant * T * expansion + heating + inflow * roomHeat) / (heatCapacity - gasConstant);
      lnPressureRate = temperatureRate / T + expansion;
    }

    out[TEMPERATURE] = temperatureRate;
    out[PRESSURE] = p * lnPressureRate;
    out[WATER] = evaporation + inflow * (room.mixingRatio - state[WATER]!) - settling * liquid;
    const surroundings = T + vessel.wallShare * (wallTemperature - T);
    out[THERMOMETER] = (surroundings - state[THERMOMETER]!) / vessel.thermometerTimeConstant;
    if (droplets !== undefined) {
      out[SIZE] = sizeRate;
      out[LN_PARTICLES] = -(inflow + settling);
      if (room.particles > 0) out[DRAWN] = inflow * (room.particles - state[DRAWN]!);
    }
  };
}
