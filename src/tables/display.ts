/** How a number in SI is written for people: units, decimals, signs. The same at build and in the browser. */
import {
  toCelsius, toFahrenheit, toFoot, toHectopascal, toInchOfMercury, toKilopascal, toLiter, toMicrometer,
  toMillimeterOfMercury, toMinute, toPerCubicCentimeter, toPercent, toPoundPerSquareInch,
} from '../physics/index.ts';
import type { Language } from '../texts/index.ts';

/** What kind of quantity a column or a value holds; decides the units it is written in. */
export type DimensionName =
  | 'temperature' | 'temperatureDifference' | 'pressure' | 'height' | 'length' | 'diameter' | 'volume' | 'waterContent'
  | 'ratio' | 'fraction' | 'time' | 'clock' | 'numberDensity' | 'speed' | 'angle' | 'force' | 'stress' | 'energy' | 'count';

export interface DisplayUnit {
  /** As printed after the number; empty for a pure number. */
  readonly symbol: string;
  readonly fromSi: (value: number) => number;
}

const scale = (symbol: string, factor: number): DisplayUnit => ({ symbol, fromSi: (value) => value * factor });

/** Every unit that can be printed, by the name used in `unit="…"`. One line per unit. */
export const DISPLAY_UNITS = {
  '°C': { symbol: '°C', fromSi: toCelsius },
  '°F': { symbol: '°F', fromSi: toFahrenheit },
  K: scale('K', 1),
  'K difference': scale('K', 1),
  '°C difference': scale('°C', 1),
  '°F difference': scale('°F', 1.8),
  kPa: { symbol: 'kPa', fromSi: toKilopascal },
  hPa: { symbol: 'hPa', fromSi: toHectopascal },
  Pa: scale('Pa', 1),
  inHg: { symbol: 'inHg', fromSi: toInchOfMercury },
  mmHg: { symbol: 'mmHg', fromSi: toMillimeterOfMercury },
  psi: { symbol: 'psi', fromSi: toPoundPerSquareInch },
  mbar: { symbol: 'mbar', fromSi: toHectopascal },
  bar: scale('bar', 1e-5),
  m: scale('m', 1),
  km: scale('km', 1e-3),
  cm: scale('cm', 100),
  mm: scale('mm', 1000),
  ft: { symbol: 'ft', fromSi: toFoot },
  µm: { symbol: 'µm', fromSi: toMicrometer },
  nm: scale('nm', 1e9),
  L: { symbol: 'L', fromSi: toLiter },
  mL: scale('mL', 1e6),
  'g/m³': scale('g/m³', 1000),
  '%': { symbol: '%', fromSi: toPercent },
  min: { symbol: 'min', fromSi: toMinute },
  s: scale('s', 1),
  h: scale('h', 1 / 3600),
  '/cm³': { symbol: '/cm³', fromSi: toPerCubicCentimeter },
  'cm/s': scale('cm/s', 100),
  'm/s': scale('m/s', 1),
  '°': scale('°', 180 / Math.PI),
  N: scale('N', 1),
  MPa: scale('MPa', 1e-6),
  J: scale('J', 1),
  '1': scale('', 1),
} satisfies Record<string, DisplayUnit>;

export type UnitName = keyof typeof DISPLAY_UNITS;

/** Main unit and, where teachers meet either, the second one. */
export const UNITS_OF: Record<DimensionName, readonly [UnitName, UnitName?]> = {
  temperature: ['°C', '°F'],
  temperatureDifference: ['°C difference', '°F difference'],
  pressure: ['kPa', 'inHg'],
  height: ['m', 'ft'],
  length: ['cm'],
  diameter: ['µm'],
  volume: ['L'],
  waterContent: ['g/m³'],
  ratio: ['1'],
  fraction: ['%'],
  time: ['min'],
  clock: ['s'],
  numberDensity: ['/cm³'],
  speed: ['cm/s'],
  angle: ['°'],
  force: ['N'],
  stress: ['MPa'],
  energy: ['J'],
  count: ['1'],
};

/** Units that measure a dimension, for `unit="…"`. */
export const UNIT_CHOICES: Record<DimensionName, readonly UnitName[]> = {
  temperature: ['°C', '°F', 'K'],
  temperatureDifference: ['°C difference', '°F difference', 'K difference'],
  pressure: ['kPa', 'hPa', 'Pa', 'inHg', 'mmHg', 'psi', 'mbar', 'bar'],
  height: ['m', 'km', 'ft'],
  length: ['cm', 'mm', 'm'],
  diameter: ['µm', 'nm'],
  volume: ['L', 'mL'],
  waterContent: ['g/m³'],
  ratio: ['1', '%'],
  fraction: ['%', '1'],
  time: ['min', 's', 'h'],
  clock: ['s', 'min'],
  numberDensity: ['/cm³'],
  speed: ['cm/s', 'm/s'],
  angle: ['°'],
  force: ['N'],
  stress: ['MPa'],
  energy: ['J'],
  count: ['1'],
};

/** A unit as an author writes it ("°C" for a difference too) to the unit that prints it; undefined if it does not measure the dimension. */
export function unitFor(dimension: DimensionName, written: string): UnitName | undefined {
  return UNIT_CHOICES[dimension].find((name) => name === written || DISPLAY_UNITS[name].symbol === written);
}

/** How a page is written: its language, how numbers are punctuated in it, and which unit a reader meets first. */
export interface Style {
  readonly language: Language;
  readonly decimal: string;
  /** Between thousands, in numbers of so many whole digits and more. */
  readonly group: string;
  readonly groupFrom: number;
  /** Degrees Fahrenheit, inches of mercury and feet stand first, the others beside them. */
  readonly customary?: boolean;
}

const CUSTOMARY: ReadonlySet<UnitName | undefined> = new Set<UnitName>(['°F', '°F difference', 'inHg', 'ft']);

/** A main unit and its second one in the order of a reader. */
export const inOrder = (units: readonly [UnitName, UnitName?], style: Style): readonly [UnitName, UnitName?] =>
  style.customary === true && CUSTOMARY.has(units[1]) ? [units[1]!, units[0]] : units;

/** The unit that a reader meets first for a dimension: what an axis is drawn in. */
export function axisUnit(dimension: DimensionName, style: Style): DisplayUnit {
  return DISPLAY_UNITS[inOrder(UNITS_OF[dimension], style)[0]];
}

/**
 * The usual style of each language. Spanish groups from five digits on, by a space (Ortografía de la lengua española 2010, VIII, 2.2.1.2)
 * at which no line ends; the fonts have none that is narrower.
 */
export const STYLES: Readonly<Record<Language, Style>> = {
  en: { language: 'en', decimal: '.', group: ',', groupFrom: 4 },
  es: { language: 'es', decimal: ',', group: '\u00a0', groupFrom: 5 },
};

const MINUS = '−';
const MOST_DECIMALS = 6;
const DIGITS_OF_EXACT_NUMBERS = 3;

/**
 * The number of decimals (negative: rounded to tens, hundreds) that `uncertainty` supports: the
 * last digit stands in the place of the uncertainty's first. Without an uncertainty, three
 * significant digits.
 * @param value in the printed unit
 * @param uncertainty standard uncertainty in the printed unit, 0 if exact
 */
export function decimalsFor(value: number, uncertainty: number): number {
  if (uncertainty > 0) return Math.min(MOST_DECIMALS, 0 - Math.floor(Math.log10(uncertainty) + 1e-9));
  if (value === 0) return 0;
  const decimals = DIGITS_OF_EXACT_NUMBERS - 1 - Math.floor(Math.log10(Math.abs(value)));
  const needed = Math.min(MOST_DECIMALS, Math.max(0, decimals));
  const text = value.toFixed(needed);
  return text.includes('.') ? text.replace(/0+$/, '').split('.')[1]!.length : 0;
}

/**
 * A number as text: real minus sign, grouped thousands, rounded to `decimals` places.
 * @param decimals negative values round to tens, hundreds, …
 */
export function formatNumber(value: number, decimals: number, style: Style): string {
  const rounded = decimals < 0 ? Math.round(value / 10 ** -decimals) * 10 ** -decimals : value;
  const digits = Math.abs(rounded).toFixed(Math.max(0, decimals));
  const [whole, fraction] = digits.split('.') as [string, string?];
  const grouped = whole.length >= style.groupFrom ? whole.replace(/\B(?=(\d{3})+$)/g, style.group) : whole;
  const isZero = !/[1-9]/.test(digits);
  return (rounded < 0 && !isZero ? MINUS : '') + grouped + (fraction === undefined ? '' : style.decimal + fraction);
}

/** The decimals of a number in SI when it is printed in a unit. */
export function decimalsIn(unit: UnitName, value: number, uncertainty: number): number {
  const { fromSi } = DISPLAY_UNITS[unit];
  return decimalsFor(fromSi(value), uncertainty * Math.abs(fromSi(1) - fromSi(0)));
}

/** A number in SI printed in a unit to a number of decimals, without the unit's symbol. */
export const formatIn = (unit: UnitName, value: number, decimals: number, style: Style): string =>
  formatNumber(DISPLAY_UNITS[unit].fromSi(value), decimals, style);

/** A quantity in SI with its unit: `16.7 °C`, `48 %`, `1.53`. */
export function formatWithUnit(unit: UnitName, value: number, uncertainty: number, style: Style): string {
  const { symbol } = DISPLAY_UNITS[unit];
  const number = formatIn(unit, value, decimalsIn(unit, value, uncertainty), style);
  return symbol === '' ? number : `${number}${symbol === '°' ? '' : ' '}${symbol}`;
}
