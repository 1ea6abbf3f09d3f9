/**
 * Units of measure as branded numbers: a pressure where a temperature belongs is a
 * compile error and costs nothing at run time. The library computes in SI; the
 * functions here cross the border.
 *
 * Conversions are exact unless the line says otherwise. Each takes any number of the unit
 * it names first, gives one of the second and refuses nothing: the function that a value
 * goes to knows its range. Sources: SI Brochure (BIPM, 9th ed. 2019); NIST SP 811 (2008),
 * appendix B.8, for the customary units.
 */

declare const unit: unique symbol;

/** A number that carries its unit in its type only. */
export type Quantity<U extends string> = number & { readonly [unit]?: U };

export type Kelvin = Quantity<'K'>;
/** A difference of temperature, kelvin. */
export type KelvinDifference = Quantity<'ΔK'>;
export type Pascal = Quantity<'Pa'>;
export type Meter = Quantity<'m'>;
export type CubicMeter = Quantity<'m³'>;
export type Second = Quantity<'s'>;
export type Kilogram = Quantity<'kg'>;
export type KilogramPerCubicMeter = Quantity<'kg/m³'>;
/** Number concentration, particles per cubic meter. */
export type PerCubicMeter = Quantity<'1/m³'>;
export type JoulePerKilogram = Quantity<'J/kg'>;
export type JoulePerKilogramKelvin = Quantity<'J/(kg·K)'>;
export type MeterPerSecond = Quantity<'m/s'>;
export type NewtonPerMeter = Quantity<'N/m'>;
export type Newton = Quantity<'N'>;
export type Joule = Quantity<'J'>;
export type Radian = Quantity<'rad'>;
/** A pure number: a fraction, a ratio, a saturation ratio. */
export type Ratio = Quantity<'1'>;

const ZERO_CELSIUS = 273.15;
const PASCALS_PER_INCH_OF_MERCURY = 3386.389; // conventional, 0 °C: NIST SP 811 B.8
const PASCALS_PER_MILLIMETER_OF_MERCURY = 133.3224; // conventional, 0 °C: NIST SP 811 B.8
const PASCALS_PER_PSI = 6894.757; // NIST SP 811 B.8, seven digits
const METERS_PER_FOOT = 0.3048;

/** Degrees Celsius to kelvin. */
export const celsius = (degrees: number): Kelvin => degrees + ZERO_CELSIUS;
/** Kelvin to degrees Celsius. */
export const toCelsius = (temperature: Kelvin): number => temperature - ZERO_CELSIUS;
/** Degrees Fahrenheit to kelvin. */
export const fahrenheit = (degrees: number): Kelvin => ((degrees - 32) * 5) / 9 + ZERO_CELSIUS;
/** Kelvin to degrees Fahrenheit. */
export const toFahrenheit = (temperature: Kelvin): number => ((temperature - ZERO_CELSIUS) * 9) / 5 + 32;

/** Hectopascal (millibar) to pascal. */
export const hectopascal = (pressure: number): Pascal => pressure * 100;
/** Pascal to hectopascal. */
export const toHectopascal = (pressure: Pascal): number => pressure / 100;
/** Kilopascal to pascal. */
export const kilopascal = (pressure: number): Pascal => pressure * 1000;
/** Pascal to kilopascal. */
export const toKilopascal = (pressure: Pascal): number => pressure / 1000;
/** Conventional inches of mercury (0 °C) to pascal; seven digits. */
export const inchOfMercury = (pressure: number): Pascal => pressure * PASCALS_PER_INCH_OF_MERCURY;
/** Pascal to conventional inches of mercury (0 °C). */
export const toInchOfMercury = (pressure: Pascal): number => pressure / PASCALS_PER_INCH_OF_MERCURY;
/** Conventional millimeters of mercury (0 °C) to pascal; seven digits. */
export const millimeterOfMercury = (pressure: number): Pascal => pressure * PASCALS_PER_MILLIMETER_OF_MERCURY;
/** Pascal to conventional millimeters of mercury (0 °C). */
export const toMillimeterOfMercury = (pressure: Pascal): number => pressure / PASCALS_PER_MILLIMETER_OF_MERCURY;
/** Pounds-force per square inch to pascal; seven digits. */
export const poundPerSquareInch = (pressure: number): Pascal => pressure * PASCALS_PER_PSI;
/** Pascal to pounds-force per square inch. */
export const toPoundPerSquareInch = (pressure: Pascal): number => pressure / PASCALS_PER_PSI;

/** International feet to meters. */
export const foot = (length: number): Meter => length * METERS_PER_FOOT;
/** Meters to international feet. */
export const toFoot = (length: Meter): number => length / METERS_PER_FOOT;
/** Liters to cubic meters. */
export const liter = (volume: number): CubicMeter => volume / 1000;
/** Cubic meters to liters. */
export const toLiter = (volume: CubicMeter): number => volume * 1000;
/** Micrometers to meters. */
export const micrometer = (length: number): Meter => length * 1e-6;
/** Meters to micrometers. */
export const toMicrometer = (length: Meter): number => length * 1e6;
/** Minutes to seconds. */
export const minute = (time: number): Second => time * 60;
/** Seconds to minutes. */
export const toMinute = (time: Second): number => time / 60;
/** Per cubic centimeter to per cubic meter. */
export const perCubicCentimeter = (number: number): PerCubicMeter => number * 1e6;
/** Per cubic meter to per cubic centimeter. */
export const toPerCubicCentimeter = (number: PerCubicMeter): number => number / 1e6;
/** Percent to fraction. */
export const percent = (share: number): Ratio => share / 100;
/** Fraction to percent. */
export const toPercent = (share: Ratio): number => share * 100;
