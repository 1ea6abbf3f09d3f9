/** The standard atmosphere, altitude by pressure, and the hypsometric equation. */
import { GAS_CONSTANT_DRY_AIR, STANDARD_GRAVITY, STANDARD_PRESSURE } from './constants.ts';
import { exp, log } from './elementary.ts';
import { inRange } from './range.ts';
import type { JoulePerKilogramKelvin, Kelvin, KilogramPerCubicMeter, Meter, Pascal } from './units.ts';

/** The standard atmosphere at one altitude. */
export interface StandardAtmosphere {
  /** K */
  readonly temperature: Kelvin;
  /** Absolute, Pa */
  readonly pressure: Pascal;
  /** Dry air, kg/m³ */
  readonly density: KilogramPerCubicMeter;
}

/** A layer in which temperature changes linearly with geopotential altitude. */
interface Layer {
  readonly base: Meter;
  readonly temperature: Kelvin;
  readonly pressure: Pascal;
  /** K/m, positive where it warms upward */
  readonly gradient: number;
}

/**
 * Specific gas constant by the molar gas constant, J/(kmol·K), and molar mass, kg/kmol, of US Standard Atmosphere
 * 1976. ISO 2533 has the same atmosphere with a molar mass of 28.964420: 2 parts in 10⁶ of pressure at 20 km.
 */
const STANDARD_GAS_CONSTANT: JoulePerKilogramKelvin = 8314.32 / 28.9644;
/** Earth radius by which the standard turns geometric into geopotential altitude. */
const EARTH_RADIUS: Meter = 6_356_766;

const LOWEST: Meter = -5000;
const HIGHEST: Meter = 32_000;
const LOWEST_TEMPERATURE: Kelvin = 150;
const HIGHEST_TEMPERATURE: Kelvin = 350;

const TROPOSPHERE: Layer = { base: 0, temperature: 288.15, pressure: STANDARD_PRESSURE, gradient: -0.0065 };
const TROPOPAUSE = /* @__PURE__ */ layerAbove(TROPOSPHERE, 11_000, 0);
const LOWER_STRATOSPHERE = /* @__PURE__ */ layerAbove(TROPOPAUSE, 20_000, 0.001);
/** From above, so that the first layer whose base lies below is the right one; the lowest reaches below its base. */
const LAYERS: readonly Layer[] = [LOWER_STRATOSPHERE, TROPOPAUSE];

const HIGHEST_PRESSURE = /* @__PURE__ */ pressureIn(TROPOSPHERE, LOWEST);
const LOWEST_PRESSURE = /* @__PURE__ */ pressureIn(LOWER_STRATOSPHERE, HIGHEST);

/**
 * Temperature, pressure and density of the standard atmosphere.
 * @param geopotentialAltitude m, −5000 to 32 000
 * @returns K, Pa (absolute) and kg/m³
 * @throws RangeError outside the range
 * Source: ISO 2533:1975; US Standard Atmosphere 1976, eqs. 23 and 33 and table 4. Below sea level the lapse rate of the troposphere continues.
 */
export function standardAtmosphere(geopotentialAltitude: Meter): StandardAtmosphere {
  const altitude = inRange('geopotentialAltitude', geopotentialAltitude, LOWEST, HIGHEST, 'm');
  const layer = LAYERS.find(({ base }) => altitude >= base) ?? TROPOSPHERE;
  const temperature = temperatureIn(layer, altitude);
  const pressure = pressureIn(layer, altitude);
  return { temperature, pressure, density: pressure / (STANDARD_GAS_CONSTANT * temperature) };
}

/**
 * Geopotential altitude at which the standard atmosphere has the given pressure.
 * @param pressure absolute, Pa, 868 (32 km) to 177 687 (−5 km)
 * @returns m
 * @throws RangeError outside the range
 * Source: inverse of {@link standardAtmosphere}.
 */
export function pressureAltitude(pressure: Pascal): Meter {
  const p = inRange('pressure', pressure, LOWEST_PRESSURE, HIGHEST_PRESSURE, 'Pa');
  const layer = LAYERS.find((candidate) => p <= candidate.pressure) ?? TROPOSPHERE;
  const ratio = p / layer.pressure;
  const rise =
    layer.gradient === 0
      ? -log(ratio) * scaleHeight(layer)
      : (layer.temperature / layer.gradient) * (ratio ** -exponent(layer) - 1);
  return layer.base + rise;
}

/**
 * Pressure to expect at a place, by the standard atmosphere; weather moves it by some percent.
 * @param elevation geometric, above mean sea level, m, −4000 to 9000
 * @returns absolute, Pa
 * @throws RangeError outside the range
 * Source: ISO 2533:1975, by way of {@link geopotentialAltitude}.
 */
export function stationPressure(elevation: Meter): Pascal {
  const z = inRange('elevation', elevation, -4000, 9000, 'm');
  return standardAtmosphere(geopotentialAltitude(z)).pressure;
}

/**
 * Geopotential altitude of a geometric altitude: gravity weakens upward, so it is the smaller.
 * @param geometricAltitude m, −5000 to 86 000
 * @returns m
 * @throws RangeError outside the range
 * Source: US Standard Atmosphere 1976, eq. 18; ISO 2533:1975.
 */
export function geopotentialAltitude(geometricAltitude: Meter): Meter {
  const z = inRange('geometricAltitude', geometricAltitude, -5000, 86_000, 'm');
  return (EARTH_RADIUS * z) / (EARTH_RADIUS + z);
}

/**
 * Geopotential thickness of the layer between two pressures.
 * @param layer.bottomPressure absolute, Pa, 100 to 5·10⁵
 * @param layer.topPressure absolute, Pa, 100 to `bottomPressure`
 * @param layer.virtualTemperature its mean, weighted by the logarithm of pressure, K, 150 to 350
 * @returns m
 * @throws RangeError outside a range
 * Source: hypsometric equation; Wallace & Hobbs 2006, eq. 3.29.
 */
export function thickness(layer: { bottomPressure: Pascal; topPressure: Pascal; virtualTemperature: Kelvin }): Meter {
  const bottom = inRange('bottomPressure', layer.bottomPressure, 100, 5e5, 'Pa');
  const top = inRange('topPressure', layer.topPressure, 100, bottom, 'Pa');
  const mean = inRange('virtualTemperature', layer.virtualTemperature, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE, 'K');
  return ((GAS_CONSTANT_DRY_AIR * mean) / STANDARD_GRAVITY) * log(bottom / top);
}

function temperatureIn(layer: Layer, altitude: Meter): Kelvin {
  return layer.temperature + layer.gradient * (altitude - layer.base);
}

function pressureIn(layer: Layer, altitude: Meter): Pascal {
  if (layer.gradient === 0) return layer.pressure * exp(-(altitude - layer.base) / scaleHeight(layer));
  return layer.pressure * (layer.temperature / temperatureIn(layer, altitude)) ** (1 / exponent(layer));
}

function scaleHeight(layer: Layer): Meter {
  return (STANDARD_GAS_CONSTANT * layer.temperature) / STANDARD_GRAVITY;
}

/** Of pressure in temperature, where the gradient is not zero; pure number. */
function exponent(layer: Layer): number {
  return (STANDARD_GAS_CONSTANT * layer.gradient) / STANDARD_GRAVITY;
}

function layerAbove(below: Layer, base: Meter, gradient: number): Layer {
  return { base, temperature: temperatureIn(below, base), pressure: pressureIn(below, base), gradient };
}
