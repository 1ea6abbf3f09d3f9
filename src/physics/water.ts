/** Properties of liquid water that a droplet needs, in the supercooled range as well. */
import { exp, log } from './elementary.ts';
import { inRange } from './range.ts';
import type { Kelvin, KilogramPerCubicMeter, NewtonPerMeter } from './units.ts';

/** Lowest and highest temperature of the formulas below, K: droplets freeze by themselves a little below the first. */
export const WATER_LOW: Kelvin = 235;
export const WATER_HIGH: Kelvin = 332;

const CRITICAL_TEMPERATURE = 647.096;

/**
 * Surface tension of water against its vapor; that against air is the same within the source's uncertainty.
 * @param temperature K, 235 to 332
 * @returns N/m; within 0.5 % above 0 °C. The source gives it from the triple point and states that it
 *   extrapolates well to −25 °C; from there to −38 °C it is an extrapolation
 * @throws RangeError outside the range
 * Source: IAPWS R1-76(2014), eq. 1.
 */
export function surfaceTension(temperature: Kelvin): NewtonPerMeter {
  const T = inRange('temperature', temperature, WATER_LOW, WATER_HIGH, 'K');
  const tau = 1 - T / CRITICAL_TEMPERATURE;
  return 0.2358 * exp(1.256 * log(tau)) * (1 - 0.625 * tau);
}

/**
 * Density of liquid (below 0 °C: supercooled) water at one atmosphere.
 * @param temperature K, 235 to 332
 * @returns kg/m³; within 0.002 % from 0 to 59 °C. The source gives it from 0 °C up; extrapolated, it agrees
 *   with measurements down to −30 °C within 0.01 %
 * @throws RangeError outside the range
 * Source: Kell 1975, J. Chem. Eng. Data 20, 97, eq. 16.
 */
export function densityOfWater(temperature: Kelvin): KilogramPerCubicMeter {
  const t = inRange('temperature', temperature, WATER_LOW, WATER_HIGH, 'K') - 273.15;
  const numerator =
    999.83952 +
    t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - 280.54253e-12 * t))));
  return numerator / (1 + 16.87985e-3 * t);
}
