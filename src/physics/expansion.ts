/** Expansion (and compression) of moist air without exchange of heat: with droplets, without, and where they begin. */
import {
  GAS_CONSTANT_DRY_AIR,
  GAS_CONSTANT_VAPOR,
  HEAT_CAPACITY_DRY_AIR,
  HEAT_CAPACITY_VAPOR,
  HOMOGENEOUS_FREEZING_POINT,
  MOLAR_MASS_RATIO,
} from './constants.ts';
import { exp, log } from './elementary.ts';
import { dryAirDensity, moistAirOfMixingRatio, saturationMixingRatio, saturationRatioOf, vaporPressureOf, type MoistAir } from './moist-air.ts';
import { inRange } from './range.ts';
import { findRoot } from './roots.ts';
import { latentHeatOfVaporization } from './saturation.ts';
import type { JoulePerKilogramKelvin, Kelvin, KilogramPerCubicMeter, Pascal, Ratio } from './units.ts';

/** Moist air that may carry droplets of liquid water, in equilibrium with its vapor. */
export interface CloudyAir extends MoistAir {
  /** kg per kg of dry air; exactly 0 where saturation is not reached */
  readonly liquidWater: Ratio;
  /** kg per m³ of the volume that the air fills; exactly 0 where saturation is not reached */
  readonly liquidWaterContent: KilogramPerCubicMeter;
}

/** A point on the way of an expansion. */
export interface CloudOnset {
  /** Absolute, Pa */
  readonly pressure: Pascal;
  /** K */
  readonly temperature: Kelvin;
}

const LOWEST_PRESSURE = 5e3;
const HIGHEST_PRESSURE = 5e5;
const HIGHEST_TEMPERATURE = 332;
/** Saturated air may exceed 1 by rounding, not by more. */
const ROUNDING = 1e-9;
/** After it the next step would be a hundred times smaller, K. */
const LAST_STEP = 1e-10;
const MOST_STEPS = 50;

/**
 * Air after a reversible adiabatic change of pressure in which no droplets form: all vapor
 * stays, and the saturation ratio may pass 1.
 * @param air without liquid water
 * @param pressure absolute, Pa, 5·10³ to 5·10⁵, reached from either side
 * @returns see {@link MoistAir}; of the same mixing ratio
 * @throws RangeError outside the range, if `air` carries liquid, or if the air would leave 123 to 332 K (without
 *   any vapor 450 K, where the constant heat capacity is 1.6 % low: Incropera & DeWitt 2007, table A.4)
 * Source: entropy of a mixture of ideal gases with constant heat capacities; e.g. Bohren & Albrecht 1998, ch. 3.
 */
export function expandWithoutCondensation(air: MoistAir | CloudyAir, pressure: Pascal): MoistAir {
  refuseLiquid(air);
  const p = inRange('pressure', pressure, LOWEST_PRESSURE, HIGHEST_PRESSURE, 'Pa');
  const temperature = air.temperature * (p / air.pressure) ** (air.gasConstant / air.heatCapacity);
  return moistAirOfMixingRatio(temperature, p, air.mixingRatio);
}

/**
 * Air after a reversible adiabatic change of pressure in which droplets keep the vapor at
 * saturation and are carried along: the entropy of air, vapor and liquid is conserved.
 * Liquid that `air` carries evaporates again on compression.
 * @param air not supersaturated
 * @param pressure absolute, Pa, 5·10³ to 5·10⁵, reached from either side
 * @returns see {@link CloudyAir}; vapor and liquid together as much as before
 * @throws RangeError outside the range, if `air` is supersaturated, if it would be warmer than 332 K, or if the
 *   droplets would be colder than −38 °C, where they freeze by themselves
 * Source: reversible saturated adiabat; Emanuel 1994, Atmospheric Convection, ch. 4. The liquid's entropy is that
 *   of saturated vapor less latent heat over temperature, so that it agrees with the vapor pressure used.
 */
export function expandWithCondensation(air: MoistAir | CloudyAir, pressure: Pascal): CloudyAir {
  inRange('air.saturationRatio', air.saturationRatio, 0, 1 + ROUNDING);
  const p = inRange('pressure', pressure, LOWEST_PRESSURE, HIGHEST_PRESSURE, 'Pa');
  const water = air.mixingRatio + liquidOf(air);
  const target = entropy(air);

  const clearTemperature = unsaturatedTemperature(target, p, water);
  if (clearTemperature > HIGHEST_TEMPERATURE) throw tooWarm(clearTemperature);
  if (saturationMixingRatio(clearTemperature, p) >= water) {
    const clear = moistAirOfMixingRatio(clearTemperature, p, water);
    return withLiquid({ ...clear, saturationRatio: Math.min(1, clear.saturationRatio) }, 0);
  }

  const excess = (T: Kelvin): number => entropyOf(T, p, saturationMixingRatio(T, p), water) - target;
  if (excess(HOMOGENEOUS_FREEZING_POINT) > 0) {
    throw new RangeError(
      `pressure is ${p} Pa; the droplets would be colder than ${HOMOGENEOUS_FREEZING_POINT} K, where they freeze`,
    );
  }
  if (p > air.pressure && excess(HIGHEST_TEMPERATURE) < 0) throw tooWarm(HIGHEST_TEMPERATURE);
  const temperature = saturatedTemperature(target, p, water, Math.max(clearTemperature, HOMOGENEOUS_FREEZING_POINT));
  const cloudy = moistAirOfMixingRatio(temperature, p, saturationMixingRatio(temperature, p));
  return withLiquid({ ...cloudy, saturationRatio: 1 }, Math.max(0, water - cloudy.mixingRatio));
}

/**
 * Where air expanding without droplets passes saturation: a cloud can begin here.
 * Air that is saturated already gives its own state.
 * @param air with some vapor
 * @returns pressure in Pa, absolute, and temperature in K
 * @throws RangeError if saturation is not reached above 5·10³ Pa, or only below −38 °C
 * Source: {@link expandWithoutCondensation}, solved for a saturation ratio of 1.
 */
export function cloudOnset(air: MoistAir): CloudOnset {
  const onset = firstReaching(air, () => 1, HOMOGENEOUS_FREEZING_POINT);
  if (onset !== undefined) return { pressure: onset.pressure, temperature: onset.temperature };
  throw new RangeError(
    `air.saturationRatio is ${air.saturationRatio}; no pressure above ${LOWEST_PRESSURE} Pa saturates it above ${HOMOGENEOUS_FREEZING_POINT} K, where droplets freeze`,
  );
}

/**
 * The first state of air expanding without droplets whose saturation ratio reaches a limit; its own if it has already.
 * @param limit of the saturation ratio, by temperature
 * @param coldest K
 * @returns nothing where the air is colder than that, or thinner than 5·10³ Pa, before
 * @throws RangeError if `air` carries liquid
 */
export function firstReaching(
  air: MoistAir,
  limit: (temperature: Kelvin) => Ratio,
  coldest: Kelvin,
): (CloudOnset & { readonly saturationRatio: Ratio }) | undefined {
  const { pressure, temperature, saturationRatio } = air;
  if (saturationRatio >= limit(temperature)) return { pressure, temperature, saturationRatio };
  refuseLiquid(air);
  const exponent = air.gasConstant / air.heatCapacity;
  // A little above, so that rounding does not carry the end of the search out of the range.
  const lowest = Math.max(LOWEST_PRESSURE, pressure * (coldest / temperature) ** (1 / exponent) * (1 + 1e-12));
  const at = (lnP: number): CloudOnset & { readonly saturationRatio: Ratio } => {
    // The exponential of a logarithm may miss by a rounding, and the ends are ends of the range.
    const p = Math.min(pressure, Math.max(lowest, exp(lnP)));
    const T = temperature * (p / pressure) ** exponent;
    return { pressure: p, temperature: T, saturationRatio: saturationRatioOf(T, p, air.mixingRatio) };
  };
  const excess = (lnP: number): number => {
    const state = at(lnP);
    return state.saturationRatio / limit(state.temperature) - 1;
  };
  if (lowest >= pressure || excess(log(lowest)) < 0) return undefined;
  return at(excess(log(pressure)) >= 0 ? log(pressure) : findRoot(excess, log(lowest), log(pressure)));
}

/**
 * Entropy of air, vapor and liquid together.
 * @returns J/K per kg of dry air, against dry air and vapor at 273.15 K and 10⁵ Pa
 * Source: as {@link expandWithCondensation}.
 */
export function entropy(air: MoistAir | CloudyAir): JoulePerKilogramKelvin {
  return entropyOf(air.temperature, air.pressure, air.mixingRatio, air.mixingRatio + liquidOf(air));
}

const REFERENCE_TEMPERATURE = 273.15;
const REFERENCE_PRESSURE = 1e5;

function entropyOf(T: Kelvin, p: Pascal, vapor: Ratio, water: Ratio): JoulePerKilogramKelvin {
  const vaporPressure = vaporPressureOf(p, vapor);
  const lnT = log(T / REFERENCE_TEMPERATURE);
  const dry = HEAT_CAPACITY_DRY_AIR * lnT - GAS_CONSTANT_DRY_AIR * log((p - vaporPressure) / REFERENCE_PRESSURE);
  // Where there is liquid the vapor is at saturation.
  return dry + (vapor > 0 ? water * (HEAT_CAPACITY_VAPOR * lnT - GAS_CONSTANT_VAPOR * log(vaporPressure / REFERENCE_PRESSURE)) : 0) -
    (water === vapor ? 0 : ((water - vapor) * latentHeatOfVaporization(T)) / T);
}

/** Temperature of the given entropy with all water as vapor: in closed form, since ln T enters linearly. */
function unsaturatedTemperature(target: JoulePerKilogramKelvin, p: Pascal, water: Ratio): Kelvin {
  const atReference = entropyOf(REFERENCE_TEMPERATURE, p, water, water);
  return REFERENCE_TEMPERATURE * exp((target - atReference) / (HEAT_CAPACITY_DRY_AIR + water * HEAT_CAPACITY_VAPOR));
}

/** Temperature of the given entropy with the vapor at saturation, by Newton's method: Clausius and Clapeyron's slope is good to a percent. */
function saturatedTemperature(target: JoulePerKilogramKelvin, p: Pascal, water: Ratio, coldest: Kelvin): Kelvin {
  let T = coldest;
  for (let i = 0; i < MOST_STEPS; i++) {
    const vapor = saturationMixingRatio(T, p);
    const latent = latentHeatOfVaporization(T) / T;
    const slope = HEAT_CAPACITY_DRY_AIR + water * HEAT_CAPACITY_VAPOR + (latent * latent * vapor * (1 + vapor / MOLAR_MASS_RATIO)) / GAS_CONSTANT_VAPOR;
    const step = ((target - entropyOf(T, p, vapor, water)) * T) / slope;
    T = Math.min(HIGHEST_TEMPERATURE, Math.max(coldest, T + step));
    if (Math.abs(step) < LAST_STEP) break;
  }
  return T;
}

function tooWarm(temperature: Kelvin): RangeError {
  return new RangeError(`temperature would reach ${temperature} K; the range ends at ${HIGHEST_TEMPERATURE} K`);
}

/** @throws RangeError for air that carries liquid water */
export function refuseLiquid(air: MoistAir | CloudyAir): void {
  if (liquidOf(air) > 0) throw new RangeError(`air carries ${liquidOf(air)} kg/kg of liquid water; it must carry none`);
}

function liquidOf(air: MoistAir | CloudyAir): Ratio {
  return 'liquidWater' in air ? air.liquidWater : 0;
}

/** The same air with droplets in it. */
export function withLiquid(air: MoistAir, liquidWater: Ratio): CloudyAir {
  return { ...air, liquidWater, liquidWaterContent: liquidWater * dryAirDensity(air.temperature, air.pressure, air.mixingRatio) };
}
