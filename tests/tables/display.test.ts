/** How numbers are written: SI Brochure 9th ed., 5.4; NIST SP 811, 7 and 10.5; JCGM 100, 7.2.6. */
import { describe, expect, it } from 'vitest';
import { decimalsIn, DISPLAY_UNITS, formatNumber, formatWithUnit, STYLES, UNIT_CHOICES, unitFor, UNITS_OF, type UnitName } from '../../src/tables/index.ts';
import { decimalsFor } from '../../src/tables/display.ts';

describe('the decimals that an uncertainty supports', () => {
  it.each([
    // value, uncertainty, decimals: the last digit stands where the uncertainty's first does
    [21.04, 0.3, 1],
    [21.04, 0.03, 2],
    [21.04, 0.1, 1],
    [21.04, 0.0999, 2],
    [1234, 12, -1],
    [1234, 100, -2],
    [1234, 8, 0],
    [0, 0.02, 2],
  ])('%d ± %d has %d', (value, uncertainty, decimals) => expect(decimalsFor(value, uncertainty)).toBe(decimals));

  it.each([
    // exact: three significant digits, no zeros after them
    [20, 0],
    [0.5, 1],
    [0.1235, 3],
    [101.325, 0],
    [1600, 0],
    [0, 0],
  ])('an exact %d has %d', (value, decimals) => expect(decimalsFor(value, 0)).toBe(decimals));

  it('an uncertainty is scaled with its unit, not shifted with its zero', () => {
    expect(decimalsIn('°F', 294.15, 0.3)).toBe(1);
    expect(decimalsIn('kPa', 100_000, 300)).toBe(1);
    expect(decimalsIn('hPa', 100_000, 300)).toBe(0);
  });
});

describe('a number as text', () => {
  it.each([
    [-5, 0, '−5'], // U+2212
    [-0.04, 1, '0.0'], // no minus sign before a zero
    [1234, 0, '1,234'],
    [999, 0, '999'],
    [1_234_567.25, 1, '1,234,567.3'],
    [1234, -2, '1,200'],
    [1250, -2, '1,300'],
    [-1849, -1, '−1,850'],
    [21.05, 2, '21.05'],
  ])('%d with %d decimals is %s', (value, decimals, text) => expect(formatNumber(value, decimals, STYLES.en)).toBe(text));

  it('follows the language', () => {
    expect(formatNumber(-12345.5, 1, STYLES.es)).toBe('−12\u00a0345,5');
    // Four digits stand together in Spanish: Ortografía de la lengua española (2010), VIII, 2.2.1.2 (from memory).
    expect(formatNumber(1003.4, 1, STYLES.es)).toBe('1003,4');
    expect(formatNumber(12345.5, 1, STYLES.en)).toBe('12,345.5');
  });

  it('puts a space before a unit, none before the degree of an angle (SI Brochure 5.4.3)', () => {
    expect(formatWithUnit('°C', 294.15, 0.3, STYLES.en)).toBe('21.0 °C');
    expect(formatWithUnit('%', 0.97, 0.01, STYLES.en)).toBe('97 %');
    expect(formatWithUnit('°', Math.PI / 180, 0, STYLES.en)).toBe('1°');
    expect(formatWithUnit('1', 1.5, 0.01, STYLES.en)).toBe('1.50');
  });
});

describe('units', () => {
  it.each<[UnitName, number, number]>([
    // NIST SP 811 (2008), appendix B.8: one of the unit in SI
    ['inHg', 3386.389, 1e-6],
    ['mmHg', 133.3224, 1e-6],
    ['psi', 6894.757, 1e-6],
    ['mbar', 100, 0],
    ['bar', 1e5, 0],
    ['ft', 0.3048, 0],
    ['L', 1e-3, 0],
    ['min', 60, 0],
    ['h', 3600, 0],
    ['°', 0.01745329, 1e-6],
  ])('%s is %d in SI', (unit, si, tolerance) => expect(Math.abs(DISPLAY_UNITS[unit].fromSi(si) - 1)).toBeLessThanOrEqual(tolerance + 1e-12));

  it('print every dimension, in units that measure it', () => {
    for (const [dimension, [main, also]] of Object.entries(UNITS_OF)) {
      const choices = UNIT_CHOICES[dimension as keyof typeof UNIT_CHOICES];
      expect(choices).toContain(main);
      if (also !== undefined) expect(choices).toContain(also);
    }
  });

  it('of a difference have no zero of their own', () => {
    expect(unitFor('temperatureDifference', '°C')).toBe('°C difference');
    expect(DISPLAY_UNITS['°F difference'].fromSi(10)).toBe(18);
    expect(unitFor('temperature', 'kPa')).toBeUndefined();
  });
});
