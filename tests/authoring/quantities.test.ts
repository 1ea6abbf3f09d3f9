/** Quantities as people write them, against published factors and definitions. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  parseDifference,
  parseLevel,
  parseQuantity,
  UNITS,
  type Dimension,
  type Reading,
  type WrittenQuantity,
} from '../../src/authoring/index.ts';

function read(reading: Reading<WrittenQuantity>): WrittenQuantity {
  if ('problem' in reading) throw new Error(`${reading.problem.code}: ${reading.problem.what}`);
  return reading.quantity;
}
const code = (reading: Reading<unknown>): string => ('problem' in reading ? reading.problem.code : 'none');

const SP811 = 'NIST SP 811 (2008), appendix B.8';
const SI = 'SI Brochure, 9th ed. (2019)';

/** Written, dimension, value in SI as published, decimal digits of the published figure that count. */
const VALUES: readonly (readonly [text: string, dimension: Dimension, value: number, source: string])[] = [
  ['0 °C', 'temperature', 273.15, `${SI}, 2.3.1`],
  ['21.0 °C', 'temperature', 294.15, `${SI}, 2.3.1`],
  ['32 °F', 'temperature', 273.15, `${SP811}: T/K = (t/°F + 459.67)/1.8`],
  ['212 °F', 'temperature', 373.15, `${SP811}: T/K = (t/°F + 459.67)/1.8`],
  ['293 K', 'temperature', 293, SI],
  ['9 °F', 'temperatureDifference', 5, `${SP811}: interval of temperature, 1 °F = 5/9 K`],
  ['0.3 K', 'temperatureDifference', 0.3, SI],
  ['2 °C', 'temperatureDifference', 2, `${SI}, 2.3.1: one degree Celsius of difference is one kelvin`],
  ['985 hPa', 'pressure', 98500, SI],
  ['98.5 kPa', 'pressure', 98500, SI],
  ['1000 mbar', 'pressure', 1e5, `${SI}, table 8 notes: bar`],
  ['1 bar', 'pressure', 1e5, `${SP811}: bar`],
  ['1 atm', 'pressure', 101325, `${SP811}: atmosphere, standard`],
  ['1 inHg', 'pressure', 3386.389, `${SP811}: inch of mercury, conventional`],
  ['1 mmHg', 'pressure', 133.3224, `${SP811}: millimeter of mercury, conventional`],
  ['1 psi', 'pressure', 6894.757, `${SP811}: pound-force per square inch`],
  ['1 ft', 'length', 0.3048, `${SP811}: foot`],
  ['1 in', 'length', 0.0254, `${SP811}: inch`],
  ['0.1 µm', 'length', 1e-7, SI],
  ['0.1 μm', 'length', 1e-7, `${SI}; written with the Greek letter`],
  ['20 nm', 'length', 2e-8, SI],
  ['1,600 m', 'length', 1600, 'commas part thousands'],
  ['1,234,567 m', 'length', 1234567, 'commas part thousands'],
  ['5 L', 'volume', 0.005, `${SI}, table 8: liter`],
  ['5 l', 'volume', 0.005, `${SI}, table 8: liter, either letter`],
  ['200 mL', 'volume', 2e-4, `${SI}, table 8: liter`],
  ['1 cm³', 'volume', 1e-6, SI],
  ['3 min', 'time', 180, `${SI}, table 8: minute`],
  ['2 h', 'time', 7200, `${SI}, table 8: hour`],
  ['1 d', 'time', 86400, `${SI}, table 8: day`],
  ['97 %', 'fraction', 0.97, `${SI}, 5.4.7: percent`],
  ['97%', 'fraction', 0.97, `${SI}, 5.4.7: percent`],
  ['20000 /cm³', 'numberDensity', 2e10, SI],
  ['20000 cm⁻³', 'numberDensity', 2e10, SI],
  ['6 kPa/min', 'pressureRate', 100, `${SI}, table 8: minute`],
  ['6 L/min', 'flow', 1e-4, `${SI}, table 8: liter, minute`],
  ['1°', 'angle', 1.745329e-2, `${SP811}: degree (angle)`],
  ['20 g', 'mass', 0.02, SI],
  ['1 km/h', 'speed', 0.2777778, `${SP811}: kilometer per hour`],
  ['−70 kPa', 'pressure', -70000, 'minus sign U+2212'],
  ['-70 kPa', 'pressure', -70000, 'hyphen-minus'],
  ['21\u00a0°C', 'temperature', 294.15, 'no-break space'],
  ['21\u202f°C', 'temperature', 294.15, 'narrow no-break space'],
  ['21\u2009°C', 'temperature', 294.15, 'thin space'],
  ['1.5e3 Pa', 'pressure', 1500, 'exponent'],
];

describe('parseQuantity', () => {
  it.each(VALUES)('%s is %s %d', (text, dimension, value) => {
    const quantity = read(parseQuantity(text, dimension));
    // Seven digits are published where the factor is not exact.
    expect(Math.abs(quantity.value - value)).toBeLessThanOrEqual(Math.abs(value) * 2e-7);
    expect(quantity.dimension).toBe(dimension);
    expect(quantity.text).toBe(text);
  });

  it.each([
    ['21 °C', 'temperature', 0.5 / Math.sqrt(3)],
    ['21.0 °C', 'temperature', 0.05 / Math.sqrt(3)],
    ['1600 m', 'length', 0.5 / Math.sqrt(3)],
    ['985 hPa', 'pressure', 50 / Math.sqrt(3)],
    ['9.00 °F', 'temperatureDifference', (0.005 * 5) / 9 / Math.sqrt(3)],
    ['1.5e3 Pa', 'pressure', 50 / Math.sqrt(3)],
    ['21.0 °C ± 0.3 K', 'temperature', 0.3],
    ['21.0 °C ± 0.3 °C', 'temperature', 0.3],
    ['21.0 ± 0.3 °C', 'temperature', 0.3],
    ['97 % ± 1 %', 'fraction', 0.01],
    ['985 hPa ± 0.1 kPa', 'pressure', 100],
  ] as const)('%s is uncertain by half its last place or as stated: GUM (JCGM 100:2008), 4.3.7', (text, dimension, uncertainty) => {
    expect(read(parseQuantity(text, dimension)).uncertainty).toBeCloseTo(uncertainty, 12);
  });

  it.each([
    ['5', 'volume', 'quantity-without-unit'],
    ['', 'volume', 'quantity-unreadable'],
    ['five liters', 'volume', 'quantity-unreadable'],
    ['5 L 3', 'volume', 'unknown-unit'],
    ['12-14 kPa', 'pressure', 'quantity-unreadable'],
    ['21,5 °C', 'temperature', 'decimal-comma'],
    ['1,60 m', 'length', 'decimal-comma'],
    ['5 hpa', 'pressure', 'unknown-unit'],
    ['5 L', 'temperature', 'wrong-dimension'],
    ['5 kPa ± 2 K', 'pressure', 'wrong-dimension'],
    ['5 kPa ± -2 kPa', 'pressure', 'quantity-unreadable'],
    ['5 ± 1 kPa ± 2 kPa', 'pressure', 'quantity-unreadable'],
    ['5 L absolute', 'volume', 'reference-not-wanted'],
    ['1e999 Pa', 'pressure', 'quantity-unreadable'],
    ['__proto__', 'pressure', 'quantity-unreadable'],
    ['5 constructor', 'pressure', 'unknown-unit'],
  ] as const)('refuses %s as %s: %s', (text, dimension, expected) => {
    expect(code(parseQuantity(text, dimension))).toBe(expected);
  });

  it.each([
    ['5 minutes', 'time', 'write `min`'],
    ['5 hpa', 'pressure', 'write `hPa`'],
    ['21 C', 'temperature', 'write `°C`'],
    ['21,5 °C', 'temperature', 'write `21.5 °C`'],
    ['5 kPaa', 'pressure', 'write `kPa`, the nearest there is'],
  ] as const)('%s: proposes %s %s', (text, dimension, instead) => {
    const reading = parseQuantity(text, dimension);
    expect('problem' in reading && reading.problem.instead).toBe(instead);
  });

  it('reads back every unit that it lists, at the scale that it lists', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...UNITS),
        fc.integer({ min: -999_999, max: 999_999 }),
        ({ symbol, dimension, toSI, scale }, n) => {
          const quantity = read(parseQuantity(`${n / 100} ${symbol}`, dimension));
          expect(quantity).toMatchObject({ unit: symbol, dimension, value: toSI(n / 100) });
          expect(toSI(1) - toSI(0)).toBeCloseTo(scale, 9);
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('never throws, and never gives a number that is none', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'0123456789.,+-−±eE °CKkPaLm/%³µ gauge') }), (text) => {
        const reading = parseQuantity(text);
        if ('quantity' in reading) expect(Number.isFinite(reading.quantity.value) && reading.quantity.uncertainty >= 0).toBe(true);
      }),
      { seed: 20261125, numRuns: 2000 },
    );
  });
});

describe('pressures', () => {
  it.each([
    ['-70 kPa gauge', -70000, 'gauge'],
    ['300 hPa absolute', 30000, 'absolute'],
    ['300 hPa absolute ± 2 hPa', 30000, 'absolute'],
    ['300 hPa ± 2 hPa absolute', 30000, 'absolute'],
  ])('%s says what it is counted from', (text, value, reference) => {
    const reading = parseLevel(text);
    expect(reading).toMatchObject({ quantity: { value, reference } });
  });

  it('asks of a level what it is counted from, and of a difference nothing', () => {
    expect(code(parseLevel('-70 kPa'))).toBe('level-without-reference');
    expect(code(parseDifference('20 kPa'))).toBe('none');
    expect(code(parseDifference('20 kPa gauge'))).toBe('reference-not-wanted');
  });
});
