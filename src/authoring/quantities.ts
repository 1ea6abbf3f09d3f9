/** Quantities as people write them: a number, a unit, perhaps an uncertainty. */
import { findUnit } from './find-unit.ts';
import type { Problem } from './findings.ts';
import type { Dimension, Unit } from './unit-table.ts';

/** What a level of pressure is counted from. */
export type PressureReference = 'absolute' | 'gauge';

/** A quantity as written, read. */
export interface WrittenQuantity<D extends Dimension = Dimension> {
  /** SI: see the list of dimensions */
  readonly value: number;
  /** Standard uncertainty, SI: as stated after `±`, else that of rounding to the last written digit */
  readonly uncertainty: number;
  readonly dimension: D;
  /** as the table of units spells it */
  readonly unit: string;
  /** of a pressure level only; gauge is negative below the room */
  readonly reference?: PressureReference;
  /** as written, without outer spaces */
  readonly text: string;
}

/** A pressure of which it is said whether it is absolute or against the room. */
export type PressureLevel = WrittenQuantity<'pressure'> & { readonly reference: PressureReference };

export type Reading<Q> = { readonly quantity: Q } | { readonly problem: Problem };

const NUMBER = String.raw`[+\-−]?(?:\d{1,3}(?:,\d{3})+|\d+)?(?:\.\d+)?(?:[eE][+\-−]?\d+)?`;
const FORM = new RegExp(
  String.raw`^(?<number>${NUMBER})(?: ?± ?(?<inner>${NUMBER}))? ?(?<unit>[^\d\s±+−-][^±]*?)?` +
    String.raw`(?: (?<reference>gauge|absolute))?(?: ?± ?(?<outer>${NUMBER}) ?(?<outerUnit>[^\d\s±+−-][^±]*?)?(?: (?<lastReference>gauge|absolute))?)?$`,
  'u',
);
const EXAMPLES: Readonly<Record<Dimension, string>> = {
  temperature: '21 °C',
  temperatureDifference: '0.5 K',
  pressure: '20 kPa',
  length: '25 cm',
  area: '10 cm²',
  volume: '5 L',
  time: '3 min',
  fraction: '97 %',
  numberDensity: '20000 /cm³',
  pressureRate: '0.5 kPa/min',
  flow: '6 L/min',
  angle: '10°',
  mass: '20 g',
  speed: '2 cm/s',
};
/** A quantity of the dimension as it should be written. */
export const exampleOf = (dimension: Dimension): string => EXAMPLES[dimension];

/**
 * Reads one quantity, for example `21.0 °C ± 0.3 K`, `−70 kPa gauge`, `1,600 m` or `20000 /cm³`.
 * The uncertainty after `±` is a standard uncertainty, in the same unit or one of the same dimension
 * (a difference, for temperatures). Without it, the value counts as rounded to its last written digit, zeros
 * included (`1600 m` to the meter): half a unit of that place, evenly distributed, divided by √3.
 * @param text as written; spaces of any width and both minus signs are understood
 * @param accepted dimensions, the first of which a shared symbol such as `K` means; none for any
 * @returns the quantity in SI, or what is wrong with it
 * Source: JCGM 100:2008 (GUM), 4.3.7, for the rectangular distribution.
 */
export function parseQuantity<D extends Dimension>(text: string, ...accepted: readonly D[]): Reading<WrittenQuantity<D>> {
  const example = exampleOf(accepted[0] ?? 'temperature');
  const plain = text
    .normalize('NFC')
    .replace(/[\s\u00a0\u2007-\u200a\u202f]+/gu, ' ')
    .trim();
  const comma = /^([+\-−]?\d+),(\d+)(?!\d*,)/u.exec(plain);
  if (comma && !/^[+\-−]?\d{1,3},\d{3}(?!\d)/u.test(plain)) {
    return wrong('decimal-comma', `\`${text}\` has a decimal comma`, `write \`${plain.replace(',', '.')}\``);
  }
  const parts = FORM.exec(plain)?.groups;
  const number = parts?.['number'];
  if (parts === undefined || number === undefined || !/\d/.test(number)) {
    return wrong('quantity-unreadable', `\`${text}\` is not a quantity`, `write a number and a unit, such as \`${example}\``);
  }
  const written = parts['unit'];
  if (written === undefined && parts['reference'] === undefined) {
    return wrong('quantity-without-unit', `\`${text}\` has no unit`, `write the unit too, as in \`${example}\``);
  }
  const unit = findUnit(written ?? '', accepted);
  if ('code' in unit) return { problem: unit };

  const value = unit.toSI(readNumber(number));
  const uncertainty = uncertaintyOf(parts, unit, lastPlace(number));
  if (typeof uncertainty !== 'number') return { problem: uncertainty };
  if (!Number.isFinite(value) || !Number.isFinite(uncertainty)) {
    return wrong(
      'quantity-unreadable',
      `\`${text}\` is larger than any number that can be held`,
      `write a smaller number, such as \`${example}\``,
    );
  }
  const reference = (parts['reference'] ?? parts['lastReference']) as PressureReference | undefined;
  if (reference !== undefined && unit.dimension !== 'pressure') {
    return wrong(
      'reference-not-wanted',
      `\`${text}\` says ${reference}, which only a pressure can be`,
      `leave out \`${reference}\``,
    );
  }
  const quantity = { value, uncertainty, dimension: unit.dimension as D, unit: unit.symbol, text: text.trim() };
  return { quantity: reference === undefined ? quantity : { ...quantity, reference } };
}

/** Reads a pressure that must say `gauge` or `absolute`. */
export function parseLevel(text: string): Reading<PressureLevel> {
  const reading = parseQuantity(text, 'pressure');
  if ('problem' in reading) return reading;
  const { quantity } = reading;
  if (quantity.reference === undefined) {
    return wrong(
      'level-without-reference',
      `\`${text}\` does not say what it is counted from`,
      `write \`${quantity.text} gauge\` if it is against the room's pressure (negative below it)` +
        (quantity.value < 0 ? '' : `, \`${quantity.text} absolute\` if from vacuum`),
    );
  }
  return { quantity: { ...quantity, reference: quantity.reference } };
}

/** Reads a difference of pressure: neither gauge nor absolute. */
export function parseDifference(text: string): Reading<WrittenQuantity<'pressure'>> {
  const reading = parseQuantity(text, 'pressure');
  if ('problem' in reading || reading.quantity.reference === undefined) return reading;
  const { reference } = reading.quantity;
  return wrong(
    'reference-not-wanted',
    `\`${text}\` says ${reference}, but this is a difference of pressure`,
    `leave out \`${reference}\``,
  );
}

function uncertaintyOf(parts: Readonly<Record<string, string | undefined>>, unit: Unit, place: number): number | Problem {
  const outer = parts['outer'];
  const number = parts['inner'] ?? outer;
  if (number === undefined) return (0.5 * place * unit.scale) / Math.sqrt(3);
  let scale = unit.scale;
  if (outer !== undefined && parts['outerUnit'] !== undefined) {
    const own = findUnit(parts['outerUnit'], [unit.dimension === 'temperature' ? 'temperatureDifference' : unit.dimension]);
    if ('code' in own) return own;
    scale = own.scale;
  }
  const size = readNumber(number);
  const doubled = parts['inner'] !== undefined && outer !== undefined;
  if (doubled || !/\d/.test(number) || !(size >= 0)) {
    return {
      code: 'quantity-unreadable',
      what: `\`±\` is followed by no single uncertainty`,
      instead: 'write it once, not negative and with its unit, as in `21.0 °C ± 0.3 K`',
    };
  }
  return size * scale;
}

function readNumber(text: string): number {
  return Number(text.replaceAll(',', '').replace(/−/gu, '-'));
}

/** The size of one unit of the last written digit. */
function lastPlace(number: string): number {
  const [mantissa = '', exponent = '0'] = number.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return Number(`1e${Number(exponent.replace(/−/gu, '-')) - decimals}`);
}

function wrong(code: Problem['code'], what: string, instead: string): { problem: Problem } {
  return { problem: { code, what, instead } };
}
