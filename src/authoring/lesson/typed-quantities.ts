/** Numbers with units in plain text: each must be computed or stated. */
import type { Problem } from '../findings.ts';
import { MISSPELLINGS, SPELLINGS, UNITS } from '../unit-table.ts';

/** The longest first, so that no part of one stands for it. */
const longestFirst = (words: readonly string[]): string[] => [...words].sort((a, b) => b.length - a.length);

/** Units in words, of the languages that sites are written in. */
const WORDS = longestFirst([
  'degrees?',
  'degrees? Celsius',
  'degrees? Fahrenheit',
  'kelvins?',
  'percent',
  'per cent',
  'seconds?',
  'minutes?',
  'hours?',
  '(?:hecto|kilo)?pascals?',
  'millibars?',
  'atmospheres?',
  'pounds per square inch',
  'inches',
  'inches of mercury',
  'feet',
  '(?:milli|kilo|centi|micro|nano)?met(?:er|re)s?',
  '(?:milli)?lit(?:er|re)s?',
  '(?:kilo|milli)?grams?',
  'grados?',
  'grados? Celsius',
  'por ciento',
  'segundos?',
  'minutos?',
  'horas?',
  '(?:hecto|kilo)?pascales',
  'milibares',
  'atmósferas?',
  '(?:mili|kiló|centí|micró|nanó)?metros?',
  '(?:mili)?litros?',
  '(?:kilo|mili)?gramos?',
]);
/** Units that no field takes, and that prose may hold all the same. */
const UNITS_OF_PROSE = [
  'V', 'mV', 'W', 'mW', 'kW', 'kJ', 'Hz', 'kHz', 'MHz', 'lx', 'lux', 'lm', 'ppm', 'ppb', 'rpm', 'kcal', 'cal', 'dB', 'mol',
  'g/m³', 'g/kg', 'J/kg', 'kJ/kg', 'm/s²', 'W/m²', 'N/m', 'kg/m³', 'K/km', '°C/km', 'K/s', 'K/min', 'mph', 'oz', 'lb', 'gal',
];
/** `in` is a word far more often than an inch. */
const NOT_IN_PROSE = new Set(['in', '"', "'", 'k', 'C', 'F', 'deg', 'foot', 'inch', 'second', 'micron', 'pa']);
const symbols = [
  ...new Set([...UNITS.map((unit) => unit.symbol), ...Object.keys(SPELLINGS), ...Object.keys(MISSPELLINGS), ...UNITS_OF_PROSE]),
].filter((symbol) => !NOT_IN_PROSE.has(symbol));
const escaped = (symbol: string): string => symbol.replace(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`);
/** A single letter right after the digits is no unit, as in `the 1990s`; a liter is. */
const lone = symbols.filter((symbol) => /^[A-Za-z]$/.test(symbol) && symbol !== 'L').map(escaped);
const others = longestFirst([...symbols.filter((symbol) => !/^[A-Za-z]$/.test(symbol) || symbol === 'L').map(escaped), ...WORDS]);
/** Numbers in words, from two on: one is an article as well, as in `one degree of freedom`. */
const NUMBER_WORDS = [
  'half(?: an?)?', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve', 'fifteen', 'twenty', 'thirty',
  'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety', 'hundred', 'thousand', 'million',
  'medi[oa]', 'dos', 'tres', 'cuatro', 'cinco', 'seis', 'siete', 'ocho', 'nueve', 'diez', 'doce', 'quince', 'veinte', 'treinta', 'cuarenta',
  'cincuenta', 'sesenta', 'cien', 'mil',
];

/** In words these are sayings: `a hundred percent`. */
const SHARES = new Set(['percent', 'per cent', 'por ciento']);
/** The same at the start of a sentence. */
const COUNTS = NUMBER_WORDS.map((word) => `[${word.charAt(0).toUpperCase()}${word.charAt(0)}]${word.slice(1)}`).join('|');

/** Spaces of any width, none included, and what cannot be seen. */
const SPACE = String.raw`[\s\u00a0\u00ad\u2007-\u200d\u202f\u2060\ufeff]`;
const NUMBER = String.raw`(?:\p{Nd}+(?:[.,]\p{Nd}+)*(?:\/\p{Nd}+)?[¼½¾⅓⅔⅛]?|[¼½¾⅓⅔⅛])`;
const NUMBERS = String.raw`(?<![\p{L}\p{N}.,/:-])[+\-−]?${NUMBER}(?:${SPACE}?[-–—]${SPACE}?${NUMBER})?(?:${SPACE}?[×·]${SPACE}?10[⁻⁺]?[⁰¹²³⁴-⁹]+)?`;
const PROSE = new RegExp(
  `(?:${NUMBERS}(?:${SPACE}{0,2}-?(?:${others.join('|')})|${SPACE}{1,2}(?:${lone.join('|')}))` +
    String.raw`|(?<![\p{L}\p{N}])(?:${COUNTS})(?:${SPACE}{1,2}|-)(?:${WORDS.filter((word) => !SHARES.has(word)).join('|')}))(?![\p{L}\p{N}])`,
  'gu',
);
/** Whether there can be any number: digits and fractions of all scripts, words. A search in Unicode mode takes five times as long. */
const ANY_NUMBER = new RegExp(String.raw`[0-9¼-¾\u0660-\u1fff\u2150-\u218f\u3000-\ufffb]|(?:\b|_)(?:${COUNTS})\b`);
const FORMULA =
  /\d[\d.,]*(?:\\[,;:! ]|[~\s]|\{,\})*(?:\\%|(?:\^\{?\\circ\}?\s*)?\\(?:text|mathrm|mathsf|operatorname)\{[\s~\\,]*(?<unit>[^}]*)\})/g;

/** One typed-in quantity. */
export interface Typed {
  readonly text: string;
  readonly index: number;
}

/** The quantities in plain text. */
export function typedQuantities(text: string): Typed[] {
  return ANY_NUMBER.test(text) ? [...text.matchAll(PROSE)].map((match) => ({ text: match[0], index: match.index })) : [];
}

/** The quantities in a formula: a number followed by a unit set as text. */
export function typedInFormula(formula: string): Typed[] {
  return [...formula.matchAll(FORMULA)]
    .filter((match) => match.groups?.['unit'] === undefined || KNOWN.has((match.groups['unit'] ?? '').trim()))
    .map((match) => ({ text: match[0], index: match.index }));
}
const KNOWN = new Set([...symbols, 'in', 'C', 'F']);

/** What is wrong with it. */
export function typedProblem(text: string, instead?: string): Problem {
  const plain = text.replace(/\s+/g, ' ').trim();
  return {
    code: 'typed-quantity',
    what: `\`${plain}\` is typed in: nothing computes it and nobody vouches for it`,
    instead:
      instead ??
      `write \`<Value of="…"/>\` if room and apparatus decide it, \`<Given>${plain}</Given>\` if it is a choice or has a source`,
  };
}
