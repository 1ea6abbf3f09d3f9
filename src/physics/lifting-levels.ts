/** Where lifted air becomes saturated, in closed form: an account of its own, independent of `expansion.ts`. */
import { exp, log } from './elementary.ts';
import { lambertWLower } from './lambert.ts';
import type { MoistAir } from './moist-air.ts';
import { inRange } from './range.ts';
import type { JoulePerKilogram, JoulePerKilogramKelvin, Kelvin, Meter, Pascal } from './units.ts';

/** A level that lifted air reaches. */
export interface LiftingLevel {
  /** Absolute, Pa */
  readonly pressure: Pascal;
  /** K */
  readonly temperature: Kelvin;
  /** Above the start, m */
  readonly height: Meter;
}

// All constants of this block: Romps 2017 and the author's code. They differ slightly from those of `constants.ts`;
// the closed form is exact for these, and its published values hold for these only.
const TRIPLE_POINT_TEMPERATURE: Kelvin = 273.16;
const TRIPLE_POINT_PRESSURE: Pascal = 611.65;
const GRAVITY = 9.81; // m/s²
const GAS_CONSTANT_AIR: JoulePerKilogramKelvin = 287.04;
const GAS_CONSTANT_WATER: JoulePerKilogramKelvin = 461;
const HEAT_CAPACITY_AIR: JoulePerKilogramKelvin = 719 + GAS_CONSTANT_AIR; // at constant pressure
const HEAT_CAPACITY_WATER_VOLUME: JoulePerKilogramKelvin = 1418; // of vapor, at constant volume
const HEAT_CAPACITY_WATER: JoulePerKilogramKelvin = HEAT_CAPACITY_WATER_VOLUME + GAS_CONSTANT_WATER;

/** Saturated air may exceed 1 by rounding, not by more. */
const ROUNDING = 1e-9;

/** What the vapor condenses to. */
interface Condensate {
  readonly heatCapacity: JoulePerKilogramKelvin;
  /** Internal energy of vapor over that of the condensate at the triple point */
  readonly energy: JoulePerKilogram;
}
const LIQUID: Condensate = { heatCapacity: 4119, energy: 2.374e6 };
const ICE: Condensate = { heatCapacity: 1861, energy: 2.374e6 + 0.3337e6 };

/**
 * Lifting condensation level: where air lifted without exchange of heat is saturated over liquid water.
 * Only temperature, pressure and saturation ratio are read from `air`.
 * @param air saturation ratio 10⁻⁶ to 1
 * @returns pressure in Pa, absolute, temperature in K, and height above the start in m
 * @throws RangeError outside the range
 * Source: Romps 2017, J. Atmos. Sci. 74, 3891, eq. 22, exact for constant heat capacities.
 */
export function liftingCondensationLevel(air: MoistAir): LiftingLevel {
  return liftingLevel(air, LIQUID);
}

/**
 * Lifting deposition level: where lifted air is saturated over ice. It means something only where it is
 * colder than the triple point, and is then the lower of the two levels.
 * @param air saturation ratio over liquid water 10⁻⁶ to 1, not supersaturated over ice
 * @throws RangeError outside the range
 * Source: Romps 2017, eq. 23.
 */
export function liftingDepositionLevel(air: MoistAir): LiftingLevel {
  return liftingLevel(air, ICE);
}

/**
 * Temperature at the lifting condensation level by an empirical formula, as a cross-check.
 * @param temperature K, 238.15 to 318.15
 * @param dewPoint K, 218.15 to `temperature`
 * @returns K, within 0.1 K
 * @throws RangeError outside the range
 * Source: Bolton 1980, Mon. Weather Rev. 108, 1046, eq. 15.
 */
export function boltonCondensationTemperature(temperature: Kelvin, dewPoint: Kelvin): Kelvin {
  const T = inRange('temperature', temperature, 238.15, 318.15, 'K');
  const Td = inRange('dewPoint', dewPoint, 218.15, T, 'K');
  return 1 / (1 / (Td - 56) + log(T / Td) / 800) + 56;
}

function liftingLevel(air: MoistAir, condensate: Condensate): LiftingLevel {
  const humidity = inRange('air.saturationRatio', air.saturationRatio, 1e-6, 1 + ROUNDING);
  const { temperature: T, pressure: p } = air;
  const vaporPressure = humidity * saturationPressure(T, LIQUID);
  const relative = inRange('saturation ratio over the condensate', vaporPressure / saturationPressure(T, condensate), 0, 1 + ROUNDING);
  const q = (GAS_CONSTANT_AIR * vaporPressure) / (GAS_CONSTANT_WATER * p + (GAS_CONSTANT_AIR - GAS_CONSTANT_WATER) * vaporPressure);
  const gasConstant = (1 - q) * GAS_CONSTANT_AIR + q * GAS_CONSTANT_WATER;
  const heatCapacity = (1 - q) * HEAT_CAPACITY_AIR + q * HEAT_CAPACITY_WATER;

  const a = heatCapacity / gasConstant - powerOf(condensate);
  const b = -temperatureScale(condensate) / T;
  // exp(b) may be as small as 10⁻²⁰: its root is taken in the exponent.
  const argument = (b / a) * relative ** (1 / a) * exp(b / a);
  const ratio = Math.min(1, b / (a * lambertWLower(argument)));
  return {
    pressure: p * ratio ** (heatCapacity / gasConstant),
    temperature: T * ratio,
    height: ((heatCapacity * T) / GRAVITY) * (1 - ratio),
  };
}

/** Of vapor and condensate with constant heat capacities: Romps 2017, section 2. */
function saturationPressure(T: Kelvin, condensate: Condensate): Pascal {
  const inverse = 1 / TRIPLE_POINT_TEMPERATURE - 1 / T;
  return TRIPLE_POINT_PRESSURE * (T / TRIPLE_POINT_TEMPERATURE) ** powerOf(condensate) * exp(temperatureScale(condensate) * inverse);
}

function powerOf({ heatCapacity }: Condensate): number {
  return (HEAT_CAPACITY_WATER - heatCapacity) / GAS_CONSTANT_WATER;
}

function temperatureScale({ heatCapacity, energy }: Condensate): Kelvin {
  return (energy - (HEAT_CAPACITY_WATER_VOLUME - heatCapacity) * TRIPLE_POINT_TEMPERATURE) / GAS_CONSTANT_WATER;
}
