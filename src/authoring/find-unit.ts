/** A written symbol as the unit it means. */
import type { Problem } from './findings.ts';
import { proposeName } from './names.ts';
import { MISSPELLINGS, SPELLINGS, UNITS, type Dimension, type Unit } from './unit-table.ts';

const PLAIN: Readonly<Record<Dimension, string>> = {
  temperature: 'a temperature',
  temperatureDifference: 'a difference of temperature',
  pressure: 'a pressure',
  length: 'a length',
  area: 'an area',
  volume: 'a volume',
  time: 'a time',
  fraction: 'a percentage',
  numberDensity: 'a number per volume',
  pressureRate: 'a change of pressure with time',
  flow: 'a flow',
  angle: 'an angle',
  mass: 'a mass',
  speed: 'a speed',
};

/** The dimension in words, with its article. */
export const dimensionInWords = (dimension: Dimension): string => PLAIN[dimension];

/**
 * The unit of a written symbol.
 * @param accepted dimensions, the first of which a shared symbol such as `K` means; none for any
 * @returns the unit, or what is wrong with it
 */
export function findUnit<D extends Dimension>(written: string, accepted: readonly D[]): Unit | Problem {
  const symbol = SPELLINGS[written] ?? written;
  const same = UNITS.filter((unit) => unit.symbol === symbol);
  const wanted =
    accepted.length === 0 ? same : accepted.flatMap((dimension) => same.filter((unit) => unit.dimension === dimension));
  if (wanted[0] !== undefined) return wanted[0];
  const usable = UNITS.filter((unit) => accepted.length === 0 || (accepted as readonly Dimension[]).includes(unit.dimension)).map(
    (unit) => unit.symbol,
  );
  if (same[0] !== undefined) {
    const expected = accepted.map(dimensionInWords).join(' or ');
    return {
      code: 'wrong-dimension',
      what: `\`${symbol}\` measures ${dimensionInWords(same[0].dimension)}, and ${expected} belongs here`,
      instead: `use one of ${usable.join(', ')}`,
    };
  }
  const meant = MISSPELLINGS[written];
  const instead = meant !== undefined && usable.includes(meant) ? `write \`${meant}\`` : proposeName(written, new Set(usable));
  return { code: 'unknown-unit', what: `\`${written}\` is not a unit known here`, instead };
}
