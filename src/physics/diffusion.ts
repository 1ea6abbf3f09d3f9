/** Transport in air: diffusion of vapor, conduction of heat, viscosity, mean free paths, and their meeting with a small drop. */
import {
  GAS_CONSTANT_DRY_AIR,
  GAS_CONSTANT_VAPOR,
  HEAT_CAPACITY_DRY_AIR,
  STANDARD_PRESSURE,
} from './constants.ts';
import { exp, log } from './elementary.ts';
import { inRange } from './range.ts';
import type { Kelvin, Meter, MeterPerSecond, Pascal, Quantity, Ratio } from './units.ts';

/** Diffusivity, m²/s. */
export type SquareMeterPerSecond = Quantity<'m²/s'>;
/** Thermal conductivity, W/(m·K). */
export type WattPerMeterKelvin = Quantity<'W/(m·K)'>;
/** Dynamic viscosity, Pa·s. */
export type PascalSecond = Quantity<'Pa·s'>;

const TEMPERATURE_LOW = 173.15;
const TEMPERATURE_HIGH = 332;
const PRESSURE_LOW = 5e3;
const PRESSURE_HIGH = 5e5;

/**
 * Diffusivity of water vapor in air.
 * @param temperature K, 173.15 to 332; the source covers −40 to 40 °C
 * @param pressure absolute, Pa, 5·10³ to 5·10⁵
 * @returns m²/s, about 2.4·10⁻⁵; published values are 0 to 4 % higher
 * @throws RangeError outside a range
 * Source: Hall & Pruppacher 1976, in Pruppacher & Klett 1997, eq. 13-3.
 */
export function vaporDiffusivity(temperature: Kelvin, pressure: Pascal): SquareMeterPerSecond {
  const T = checked(temperature, pressure);
  return 2.11e-5 * exp(1.94 * log(T / 273.15)) * (STANDARD_PRESSURE / pressure);
}

/**
 * Thermal conductivity of air; its moisture changes it by less than 1 % below 30 °C.
 * @param temperature K, 173.15 to 332
 * @returns W/(m·K), about 0.025
 * @throws RangeError outside the range
 * Source: ISO 2533 and US Standard Atmosphere 1976, eq. 53.
 */
export function thermalConductivityOfAir(temperature: Kelvin): WattPerMeterKelvin {
  const T = checked(temperature);
  return (2.64638e-3 * T * Math.sqrt(T)) / (T + 245.4 * exp((-12 * Math.LN10) / T));
}

/**
 * Dynamic viscosity of air.
 * @param temperature K, 173.15 to 332
 * @returns Pa·s, about 1.8·10⁻⁵
 * @throws RangeError outside the range
 * Source: Sutherland's law with the constants of ISO 2533 and US Standard Atmosphere 1976, eq. 51.
 */
export function viscosityOfAir(temperature: Kelvin): PascalSecond {
  const T = checked(temperature);
  return (1.458e-6 * T * Math.sqrt(T)) / (T + 110.4);
}

/**
 * Mean free path of the molecules of air.
 * @param temperature K, 173.15 to 332
 * @param pressure absolute, Pa, 5·10³ to 5·10⁵
 * @returns m, about 6.5·10⁻⁸
 * @throws RangeError outside a range
 * Source: from the viscosity; Seinfeld & Pandis 2006, eq. 9.6.
 */
export function meanFreePathOfAir(temperature: Kelvin, pressure: Pascal): Meter {
  const T = checked(temperature, pressure);
  return (2 * viscosityOfAir(T)) / (pressure * Math.sqrt(8 / (Math.PI * GAS_CONSTANT_DRY_AIR * T)));
}

/**
 * Length over which vapor meets a drop as single molecules: three diffusivities over the molecules' mean speed.
 * @param temperature K, 173.15 to 332
 * @param pressure absolute, Pa, 5·10³ to 5·10⁵
 * @returns m, about 1.2·10⁻⁷
 * @throws RangeError outside a range
 * Source: Fuchs & Sutugin 1971; Seinfeld & Pandis 2006, table 12.1.
 */
export function meanFreePathOfVapor(temperature: Kelvin, pressure: Pascal): Meter {
  return (3 * vaporDiffusivity(temperature, pressure)) / meanSpeed(temperature, GAS_CONSTANT_VAPOR);
}

/**
 * The same length for heat: three thermal diffusivities over the mean speed of the molecules of air.
 * @param temperature K, 173.15 to 332
 * @param pressure absolute, Pa, 5·10³ to 5·10⁵
 * @returns m, about 1.3·10⁻⁷
 * @throws RangeError outside a range
 * Source: as {@link meanFreePathOfVapor}, by the likeness of heat and vapor in Pruppacher & Klett 1997, eq. 13-20.
 */
export function meanFreePathOfHeat(temperature: Kelvin, pressure: Pascal): Meter {
  const T = checked(temperature, pressure);
  const volumetricHeat = (pressure / (GAS_CONSTANT_DRY_AIR * T)) * HEAT_CAPACITY_DRY_AIR;
  return (3 * thermalConductivityOfAir(T)) / (volumetricHeat * meanSpeed(T, GAS_CONSTANT_DRY_AIR));
}

/**
 * How much slower vapor (or heat) reaches a drop than diffusion (conduction) alone would let it: the flux is
 * that of the continuum divided by this.
 * @param knudsen mean free path over the drop's radius, 0 and above
 * @param accommodation share of the molecules that stay (or come to the drop's temperature), above 0 to 1
 * @returns 1 for large drops; 4·knudsen/(3·accommodation) for very small ones
 * Source: Fuchs & Sutugin 1971; Seinfeld & Pandis 2006, eq. 12.43.
 */
export function gasKineticResistance(knudsen: Ratio, accommodation: Ratio): Ratio {
  return (4 / (3 * accommodation)) * knudsen + (1 + 0.377 * knudsen) / (1 + knudsen);
}

/** Derivative of {@link gasKineticResistance} to the logarithm of `knudsen`; arguments as there. */
export function gasKineticSlope(knudsen: Ratio, accommodation: Ratio): Ratio {
  return knudsen * (4 / (3 * accommodation) - 0.623 / (1 + knudsen) ** 2);
}

function meanSpeed(temperature: Kelvin, gasConstant: number): MeterPerSecond {
  return Math.sqrt((8 * gasConstant * temperature) / Math.PI);
}

function checked(temperature: Kelvin, pressure: Pascal = STANDARD_PRESSURE): Kelvin {
  inRange('pressure', pressure, PRESSURE_LOW, PRESSURE_HIGH, 'Pa');
  return inRange('temperature', temperature, TEMPERATURE_LOW, TEMPERATURE_HIGH, 'K');
}
