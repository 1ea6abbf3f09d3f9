/** Numbers of published checks as text: as many digits as the comparison needs. */
import { STYLES, type Style } from '../../../tables/display.ts';
import { CHECK_TEXTS, type Language } from '../../../texts/index.ts';
import type { TruthRow } from '../../../../tests/truth/index.ts';

/** More digits than this say nothing about agreement. */
const MOST_DIGITS = 10;
const LARGE = 1e6;
const SMALL = 1e-3;

const signed = (text: string): string => text.replace('-', '−');

/** A number with a given number of significant digits, in powers of ten where it is very large or very small. HTML. */
function withDigits(value: number, digits: number, language: Language): string {
  const kept = Math.min(MOST_DIGITS, Math.max(1, digits));
  const { decimal } = STYLES[language];
  const [mantissa = '', exponent = '0'] = value.toExponential(kept - 1).split('e');
  const size = Math.abs(value);
  if (value !== 0 && (size >= LARGE || size < SMALL)) return `${signed(mantissa.replace('.', decimal))} × 10<sup>${signed(String(Number(exponent)))}</sup>`;
  return signed(grouped(value.toFixed(Math.max(0, kept - 1 - Number(exponent))), STYLES[language]));
}

const grouped = (text: string, { group, decimal }: Style): string => {
  const [whole = '', decimals] = text.split('.');
  const parted = whole.replace(/(?<=\d)(?=(?:\d{3})+$)/g, whole.replace('-', '').length > 4 ? group : '');
  return decimals === undefined ? parted : `${parted}${decimal}${decimals}`;
};

/** Significant digits of a number as it was written; of a large whole one, without its last zeros. */
function digitsOf(value: number): number {
  const digits = String(Math.abs(value)).replace(/e.*$/, '').replace('.', '').replace(/^0+/, '');
  return (Math.abs(value) >= LARGE ? digits.replace(/0+$/, '') : digits).length;
}

/** A number as it was written. HTML. */
export const asWritten = (value: number, language: Language): string => withDigits(value, digitsOf(value), language);

/** What a row allows, in its unit; the value itself where it is a bound. */
const allowed = ({ tolerance, value }: TruthRow): number =>
  tolerance.kind === 'rel' ? Math.abs(tolerance.value * value) : tolerance.kind === 'abs' ? tolerance.value : Math.abs(value) / 10;

/** A computed value to a tenth of what the row allows. HTML. */
export function computedText(row: TruthRow, computed: number, language: Language): string {
  const finest = Math.floor(Math.log10(allowed(row))) - 1;
  return withDigits(computed, computed === 0 ? 1 : Math.floor(Math.log10(Math.abs(computed))) - finest + 1, language);
}

/** Two digits at most. */
const two = (value: number, language: Language): string => (value === 0 ? '0' : asWritten(Number(value.toPrecision(2)), language));
const withUnit = (text: string, unit: string): string => (unit === '' || unit === '1' ? text : `${text} ${unit}`);
const unitOf = (row: TruthRow): string => row.unit.replace(/[&<>]/g, '');

export const publishedText = (row: TruthRow, language: Language): string => withUnit(asWritten(row.value, language), unitOf(row));
export const computedWithUnit = (row: TruthRow, computed: number, language: Language): string => withUnit(computedText(row, computed, language), unitOf(row));

/** How far computed is from published. HTML. */
export function deviationText(row: TruthRow, deviation: number, language: Language): string {
  switch (row.tolerance.kind) {
    case 'rel': return `${two(deviation * 100, language)} %`;
    case 'abs': return withUnit(two(deviation, language), unitOf(row));
    case 'max': return CHECK_TEXTS[language].below;
    case 'min': return CHECK_TEXTS[language].above;
  }
}

/** What is allowed. HTML. */
export function toleranceText({ tolerance, ...row }: TruthRow, language: Language): string {
  switch (tolerance.kind) {
    case 'rel': return `±${two(tolerance.value * 100, language)} %`;
    case 'abs': return `±${withUnit(two(tolerance.value, language), unitOf({ tolerance, ...row }))}`;
    case 'max': return CHECK_TEXTS[language].atMost;
    case 'min': return CHECK_TEXTS[language].atLeast;
  }
}

/** A share of what is allowed, in percent; never rounded down to none. */
export const shareText = (share: number, language: Language): string => (share > 0 && share < 0.005 ? CHECK_TEXTS[language].under('1 %') : `${Math.round(share * 100)} %`);

/** `saturationVaporPressure` in words. */
export const inWords = (name: string): string => name.replace(/(?<=[a-z0-9])(?=[A-Z])|-/g, ' ').toLowerCase();

/** `moist-air` in words. */
export const moduleName = (name: string): string => `${name.charAt(0).toUpperCase()}${name.slice(1)}`.replaceAll('-', ' ');
