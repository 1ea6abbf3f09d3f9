/** Moist air as a mixture of ideal gases: dry air and water vapor. */
import {
  GAS_CONSTANT_DRY_AIR,
  GAS_CONSTANT_VAPOR,
  HEAT_CAPACITY_DRY_AIR,
  HEAT_CAPACITY_VAPOR,
  MOLAR_MASS_RATIO,
} from './constants.ts';
import { inRange } from './range.ts';
import { dewPoint, enhancementFactor, saturationVaporPressure } from './saturation.ts';
import type { JoulePerKilogramKelvin, Kelvin, KilogramPerCubicMeter, Pascal, Ratio } from './units.ts';

/** The state of a volume of moist air. Fields in SI; every ratio a fraction. */
export interface MoistAir {
  /** K */
  readonly temperature: Kelvin;
  /** Absolute, Pa */
  readonly pressure: Pascal;
  /** Partial pressure of water vapor, Pa */
  readonly vaporPressure: Pascal;
  /** Vapor pressure over that of air saturated over plane liquid water at this temperature and pressure */
  readonly saturationRatio: Ratio;
  /** Vapor, kg per kg of dry air */
  readonly mixingRatio: Ratio;
  /** Vapor, kg per kg of moist air */
  readonly specificHumidity: Ratio;
  /** Dry air and vapor, kg/m³ */
  readonly density: KilogramPerCubicMeter;
  /** Of the mixture, J/(kg·K) */
  readonly gasConstant: JoulePerKilogramKelvin;
  /** Of the mixture at constant pressure, J/(kg·K) */
  readonly heatCapacity: JoulePerKilogramKelvin;
  /** Temperature of dry air of the same pressure and density, K */
  readonly virtualTemperature: Kelvin;
  /** Over liquid water, K; undefined where there is next to no vapor (below about −85 °C) or, supersaturated, too much (above 58 °C) */
  readonly dewPoint: Kelvin | undefined;
}

/**
 * Vapor pressure of air saturated over plane liquid water, the presence of air included.
 * @param temperature K, 123 to 332
 * @param pressure absolute, Pa, 5·10³ to 5·10⁵
 * @returns Pa
 * @throws RangeError outside the range
 * Source: Murphy & Koop 2005, eq. 10, times the enhancement factor of WMO-No. 8.
 */
export function saturationPressureInAir(temperature: Kelvin, pressure: Pascal): Pascal {
  return enhancementFactor(temperature, pressure) * saturationVaporPressure(temperature);
}

/** Mixing ratio of air saturated over plane liquid water; at most that of half vapor. */
export function saturationMixingRatio(temperature: Kelvin, pressure: Pascal): Ratio {
  return mixingRatioOf(saturationPressureInAir(temperature, pressure), pressure);
}

/** Mixing ratio of air whose vapor has a given pressure, Pa; at most that of half vapor. */
export function mixingRatioOf(vaporPressure: Pascal, pressure: Pascal): Ratio {
  const e = Math.min(vaporPressure, pressure / 2);
  return (MOLAR_MASS_RATIO * e) / (pressure - e);
}

/** Pressure of the vapor in air of a given mixing ratio, Pa. */
export function vaporPressureOf(pressure: Pascal, mixingRatio: Ratio): Pascal {
  return (pressure * mixingRatio) / (MOLAR_MASS_RATIO + mixingRatio);
}

/** Vapor pressure over that of saturation, of air of a given mixing ratio. */
export function saturationRatioOf(temperature: Kelvin, pressure: Pascal, mixingRatio: Ratio): Ratio {
  return vaporPressureOf(pressure, mixingRatio) / saturationPressureInAir(temperature, pressure);
}

/** Density of the dry air alone, kg/m³, in air of a given mixing ratio. */
export function dryAirDensity(temperature: Kelvin, pressure: Pascal, mixingRatio: Ratio): KilogramPerCubicMeter {
  return pressure / ((GAS_CONSTANT_DRY_AIR + mixingRatio * GAS_CONSTANT_VAPOR) * temperature);
}

/**
 * Moist air from what a room's instruments read.
 * @param state.temperature K, 173.15 to 331
 * @param state.pressure absolute, Pa, 5·10³ to 5·10⁵
 * @param state.relativeHumidity fraction over liquid water at this temperature and pressure, 0 to 1
 * @returns see {@link MoistAir}
 * @throws RangeError outside a range, or where vapor would be more than half of the gas
 * Source: WMO-No. 8, annex 4.B; ideal-gas mixture (CIPM-2007's density differs by the compressibility, 0.04 %).
 */
export function moistAir(state: {
  temperature: Kelvin;
  pressure: Pascal;
  relativeHumidity: Ratio;
}): MoistAir {
  const temperature = inRange('temperature', state.temperature, 173.15, 331, 'K');
  const pressure = inRange('pressure', state.pressure, 5e3, 5e5, 'Pa');
  const saturationRatio = inRange('relativeHumidity', state.relativeHumidity, 0, 1);
  return describe(temperature, pressure, saturationRatio * saturationPressureInAir(temperature, pressure), saturationRatio);
}

/**
 * Moist air of a given mixing ratio; unlike {@link moistAir} it may be supersaturated.
 * @param temperature K, 123 to 332; without any vapor to 450
 * @param pressure absolute, Pa, 5·10³ to 5·10⁵
 * @param mixingRatio kg of vapor per kg of dry air, 0 to 0.6
 * @returns see {@link MoistAir}
 * @throws RangeError outside a range
 * Source: as {@link moistAir}; e = p·w/(ε + w), WMO-No. 8, annex 4.A.
 */
export function moistAirOfMixingRatio(temperature: Kelvin, pressure: Pascal, mixingRatio: Ratio): MoistAir {
  inRange('mixingRatio', mixingRatio, 0, 0.6);
  const vaporPressure = vaporPressureOf(pressure, mixingRatio);
  // Air without vapor is not bound to the range of saturation: any temperature in it would do.
  const bounded = mixingRatio === 0 ? Math.min(inRange('temperature', temperature, 123, 450, 'K'), 300) : temperature;
  return describe(temperature, pressure, vaporPressure, vaporPressure / saturationPressureInAir(bounded, pressure));
}

function describe(temperature: Kelvin, pressure: Pascal, vaporPressure: Pascal, saturationRatio: Ratio): MoistAir {
  inRange('vaporPressure', vaporPressure, 0, pressure / 2, 'Pa');
  const mixingRatio = (MOLAR_MASS_RATIO * vaporPressure) / (pressure - vaporPressure);
  const specificHumidity = mixingRatio / (1 + mixingRatio);
  // The dew point is that of vapor corrected for the presence of air: at saturation it equals the temperature.
  const pureVaporPressure = vaporPressure && vaporPressure / enhancementFactor(temperature, pressure);
  const gasConstant = GAS_CONSTANT_DRY_AIR + specificHumidity * (GAS_CONSTANT_VAPOR - GAS_CONSTANT_DRY_AIR);
  return {
    temperature,
    pressure,
    vaporPressure,
    saturationRatio,
    mixingRatio,
    specificHumidity,
    density: pressure / (gasConstant * temperature),
    gasConstant,
    heatCapacity: HEAT_CAPACITY_DRY_AIR + specificHumidity * (HEAT_CAPACITY_VAPOR - HEAT_CAPACITY_DRY_AIR),
    virtualTemperature: (temperature * gasConstant) / GAS_CONSTANT_DRY_AIR,
    dewPoint: pureVaporPressure < 0.05 || pureVaporPressure > 1.89e4 ? undefined : dewPoint(pureVaporPressure),
  };
}
