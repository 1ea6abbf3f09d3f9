/**
 * The units that people write, one line a unit. Factors: SI Brochure (BIPM, 9th ed. 2019);
 * NIST SP 811 (2008), appendix B.8, through the functions of the physics library.
 */
import {
  celsius,
  fahrenheit,
  foot,
  hectopascal,
  inchOfMercury,
  kilopascal,
  liter,
  micrometer,
  millimeterOfMercury,
  minute,
  percent,
  perCubicCentimeter,
  poundPerSquareInch,
  STANDARD_PRESSURE,
} from '../physics/index.ts';

/** What a written quantity can measure. SI units: K, K, Pa, m, m², m³, s, 1, 1/m³, Pa/s, m³/s, rad, kg, m/s. */
export const DIMENSIONS = [
  'temperature',
  'temperatureDifference',
  'pressure',
  'length',
  'area',
  'volume',
  'time',
  'fraction',
  'numberDensity',
  'pressureRate',
  'flow',
  'angle',
  'mass',
  'speed',
] as const;
export type Dimension = (typeof DIMENSIONS)[number];

/** One unit as written, of one dimension. */
export interface Unit {
  readonly symbol: string;
  readonly dimension: Dimension;
  /** value in this unit to SI */
  readonly toSI: (value: number) => number;
  /** SI per unit, of a difference */
  readonly scale: number;
}

const by = (dimension: Dimension, symbol: string, scale: number): Unit => ({
  symbol,
  dimension,
  scale,
  toSI: (value) => value * scale,
});
/** A unit whose factor the physics library holds; the scale is what one unit gives, save where zero is not zero. */
const from = (dimension: Dimension, symbol: string, toSI: (value: number) => number, scale = toSI(1)): Unit => ({
  symbol,
  dimension,
  scale,
  toSI,
});

const DAY = 86_400;
const HOUR = 3600;
const MINUTE = minute(1);
const FAHRENHEIT_DEGREE = 5 / 9;
const INCH = foot(1) / 12; // exact: 12 in = 1 ft

/** Every unit; where two dimensions share one symbol, the field decides. */
export const UNITS: readonly Unit[] = [
  from('temperature', '°C', celsius, 1),
  from('temperature', '°F', fahrenheit, FAHRENHEIT_DEGREE),
  by('temperature', 'K', 1),
  by('temperatureDifference', 'K', 1),
  by('temperatureDifference', '°C', 1),
  by('temperatureDifference', '°F', FAHRENHEIT_DEGREE),
  by('pressure', 'Pa', 1),
  from('pressure', 'hPa', hectopascal),
  from('pressure', 'kPa', kilopascal),
  by('pressure', 'MPa', 1e6),
  from('pressure', 'mbar', hectopascal), // exact: 1 mbar = 1 hPa
  by('pressure', 'bar', 1e5), // exact
  from('pressure', 'inHg', inchOfMercury),
  from('pressure', 'mmHg', millimeterOfMercury),
  from('pressure', 'psi', poundPerSquareInch),
  by('pressure', 'atm', STANDARD_PRESSURE), // exact
  by('length', 'm', 1),
  by('length', 'cm', 0.01),
  by('length', 'mm', 0.001),
  from('length', 'µm', micrometer),
  by('length', 'nm', 1e-9),
  by('length', 'km', 1000),
  from('length', 'ft', foot),
  by('length', 'in', INCH),
  by('area', 'm²', 1),
  by('area', 'cm²', 1e-4),
  by('area', 'mm²', 1e-6),
  from('volume', 'L', liter),
  by('volume', 'mL', 1e-6),
  by('volume', 'cm³', 1e-6),
  by('volume', 'm³', 1),
  by('time', 's', 1),
  by('time', 'ms', 0.001),
  from('time', 'min', minute),
  by('time', 'h', HOUR),
  by('time', 'd', DAY),
  from('fraction', '%', percent),
  from('numberDensity', '/cm³', perCubicCentimeter),
  by('numberDensity', '/L', 1000),
  by('numberDensity', '/m³', 1),
  by('pressureRate', 'Pa/s', 1),
  by('pressureRate', 'Pa/min', 1 / MINUTE),
  by('pressureRate', 'hPa/min', hectopascal(1) / MINUTE),
  by('pressureRate', 'kPa/min', kilopascal(1) / MINUTE),
  by('pressureRate', 'kPa/s', kilopascal(1)),
  by('pressureRate', 'hPa/h', hectopascal(1) / HOUR),
  by('flow', 'L/min', liter(1) / MINUTE),
  by('flow', 'L/s', liter(1)),
  by('flow', 'mL/min', 1e-6 / MINUTE),
  by('flow', 'm³/h', 1 / HOUR),
  by('angle', '°', Math.PI / 180),
  by('angle', 'rad', 1),
  by('mass', 'kg', 1),
  by('mass', 'g', 0.001),
  by('mass', 'mg', 1e-6),
  by('speed', 'm/s', 1),
  by('speed', 'cm/s', 0.01),
  by('speed', 'mm/s', 0.001),
  by('speed', 'km/h', 1000 / HOUR),
];

/** Other spellings of the same unit that are understood. */
export const SPELLINGS: Readonly<Record<string, string>> = {
  μm: 'µm', // Greek mu beside the micro sign
  '℃': '°C',
  '℉': '°F',
  l: 'L',
  ml: 'mL',
  'l/min': 'L/min',
  m3: 'm³',
  cm3: 'cm³',
  'cm⁻³': '/cm³',
  'm⁻³': '/m³',
  'L⁻¹': '/L',
  '/cm3': '/cm³',
  '/m3': '/m³',
  '/l': '/L',
  '1/cm³': '/cm³',
  '1/m³': '/m³',
};

/** Spellings that people use and that are refused, with the one to write. */
export const MISSPELLINGS: Readonly<Record<string, string>> = {
  C: '°C',
  F: '°F',
  degC: '°C',
  degF: '°F',
  degrees: '°C',
  deg: '°',
  '°K': 'K',
  k: 'K',
  kelvin: 'K',
  Celsius: '°C',
  Fahrenheit: '°F',
  hpa: 'hPa',
  HPa: 'hPa',
  kpa: 'kPa',
  KPa: 'kPa',
  pa: 'Pa',
  mb: 'mbar',
  mbars: 'mbar',
  bars: 'bar',
  Torr: 'mmHg',
  torr: 'mmHg',
  PSI: 'psi',
  psig: 'psi',
  psia: 'psi',
  '"Hg': 'inHg',
  'in Hg': 'inHg',
  'mm Hg': 'mmHg',
  um: 'µm',
  micron: 'µm',
  microns: 'µm',
  feet: 'ft',
  foot: 'ft',
  "'": 'ft',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  meter: 'm',
  meters: 'm',
  metres: 'm',
  liter: 'L',
  liters: 'L',
  litre: 'L',
  litres: 'L',
  cc: 'mL',
  ccm: 'cm³',
  sec: 's',
  secs: 's',
  second: 's',
  seconds: 's',
  mins: 'min',
  minute: 'min',
  minutes: 'min',
  hr: 'h',
  hrs: 'h',
  hour: 'h',
  hours: 'h',
  day: 'd',
  days: 'd',
  percent: '%',
  pct: '%',
  '%RH': '%',
  lpm: 'L/min',
  LPM: 'L/min',
  'per cm³': '/cm³',
};
