/** Saturation vapor pressure over water and ice, its correction for air, dew point and latent heat. */
import { MOLAR_MASS_WATER } from './constants.ts';
import { exp, log } from './elementary.ts';
import { inRange } from './range.ts';
import type { JoulePerKilogram, Kelvin, Pascal, Ratio } from './units.ts';

const LIQUID_LOW = 123;
const LIQUID_HIGH = 332;
const ICE_LOW = 111;
const ICE_HIGH = 273.16;
/** A straight line for ln e over 1/T through the triple point, 273.16 K and 611.657 Pa, from which the dew point is refined. */
const INTERCEPT_OF_LN_E = 26.258;
const SLOPE_OF_LN_E = 5420;

/**
 * Saturation vapor pressure over a plane surface of liquid (below 0 °C: supercooled) water.
 * @param temperature K, 123 to 332
 * @returns Pa; within 0.05 % of measurement above 273 K
 * @throws RangeError outside the range
 * Source: Murphy & Koop 2005, Q. J. R. Meteorol. Soc. 131, 1539, eq. 10.
 */
export function saturationVaporPressure(temperature: Kelvin): Pascal {
  return exp(logOverWater(inRange('temperature', temperature, LIQUID_LOW, LIQUID_HIGH, 'K')).value);
}

/** Logarithm of the saturation vapor pressure (Pa) over liquid water, and its derivative to temperature, 1/K. */
function logOverWater(T: Kelvin): { readonly value: number; readonly slope: number } {
  const lnT = log(T);
  // The hyperbolic tangent of half of that exponent, by the exponential that is the same in every engine.
  const tanh = 1 - 2 / (exp(0.083 * (T - 218.8)) + 1);
  const cold = 53.878 - 1331.22 / T - 9.44523 * lnT + 0.014025 * T;
  return {
    value: 54.842763 - 6763.22 / T - 4.21 * lnT + 0.000367 * T + tanh * cold,
    slope:
      (6763.22 / T - 4.21 + tanh * (1331.22 / T - 9.44523)) / T +
      0.000367 + 0.014025 * tanh + 0.0415 * (1 - tanh * tanh) * cold,
  };
}

/**
 * Saturation vapor pressure over a plane surface of ice.
 * @param temperature K, 111 to 273.16
 * @returns Pa
 * @throws RangeError outside the range
 * Source: Murphy & Koop 2005, eq. 7.
 */
export function saturationVaporPressureIce(temperature: Kelvin): Pascal {
  const T = inRange('temperature', temperature, ICE_LOW, ICE_HIGH, 'K');
  return exp(9.550426 - 5723.265 / T + 3.53068 * log(T) - 0.00728332 * T);
}

/**
 * Enhancement factor: how much the presence of air raises the saturation vapor pressure.
 * The source gives it as a function of pressure alone; the temperature only bounds the range.
 * @param temperature K, 123 to 332
 * @param pressure absolute, Pa, 5·10³ to 5·10⁵
 * @returns pure number, about 1.005 at sea level
 * @throws RangeError outside the range
 * Source: WMO-No. 8, Guide to Instruments and Methods of Observation, annex 4.B (pressure in hPa).
 */
export function enhancementFactor(temperature: Kelvin, pressure: Pascal): Ratio {
  inRange('temperature', temperature, LIQUID_LOW, LIQUID_HIGH, 'K');
  const p = inRange('pressure', pressure, 5e3, 5e5, 'Pa') / 100;
  return 1.0016 + 3.15e-6 * p - 0.074 / p;
}

/**
 * Dew point of pure water vapor: where its pressure is that of saturation over liquid water.
 * @param vaporPressure Pa, 10⁻³ (about 168 K) to 1.89·10⁴ (about 332 K)
 * @returns K
 * @throws RangeError outside the range
 * Source: inverse of {@link saturationVaporPressure}.
 */
export function dewPoint(vaporPressure: Pascal): Kelvin {
  const lnE = log(inRange('vaporPressure', vaporPressure, 1e-3, 1.89e4, 'Pa'));
  // Newton's method in 1/T, in which ln e is nearly a straight line: after a step so small the next would be below 10⁻¹⁴.
  let x = (INTERCEPT_OF_LN_E - lnE) / SLOPE_OF_LN_E;
  for (let i = 0; i < 8; i++) {
    const T = Math.min(LIQUID_HIGH, Math.max(LIQUID_LOW, 1 / x));
    const { value, slope } = logOverWater(T);
    const step = (value - lnE) / (slope * T * T);
    x = 1 / T + step;
    if (Math.abs(step) < 1e-7 * x) break;
  }
  return Math.min(LIQUID_HIGH, 1 / x);
}

/**
 * Latent heat of vaporization of (below 0 °C: supercooled) water.
 * @param temperature K, 230 to 332
 * @returns J/kg; within 0.1 % of steam tables up to 50 °C, though the source gives it to 0 °C only
 * @throws RangeError outside the range
 * Source: Murphy & Koop 2005, eq. 9.
 */
export function latentHeatOfVaporization(temperature: Kelvin): JoulePerKilogram {
  const T = inRange('temperature', temperature, 230, LIQUID_HIGH, 'K');
  return (56579 - 42.212 * T + exp(0.1149 * (281.6 - T))) / MOLAR_MASS_WATER;
}
