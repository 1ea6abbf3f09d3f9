import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cbrt, exp, expm1, log, log1p } from '../../src/physics/elementary.ts';

/** From published tables, to more digits than a double has: Abramowitz & Stegun 1964, tables 1.1 and 4.2 to 4.4 (from memory). */
const VALUES: readonly (readonly [name: string, computed: number, published: number])[] = [
  ['e', exp(1), 2.718281828459045235],
  ['1/e', exp(-1), 0.367879441171442322],
  ['e^10', exp(10), 22026.46579480671652],
  ['√e', exp(0.5), 1.648721270700128147],
  ['ln 2', log(2), 0.693147180559945309],
  ['ln 10', log(10), 2.302585092994045684],
  ['ln 3', log(3), 1.098612288668109691],
  ['cube root of 2', cbrt(2), 1.259921049894873165],
  ['cube root of 10', cbrt(10), 2.154434690031883722],
];

/** The engine's own functions are within one unit in the last place of the truth; these within two of that. */
const CLOSE = 6e-16;
const apart = (a: number, b: number): number => (a === b ? 0 : Math.abs(a - b) / Math.abs(b));

describe('exponentials and logarithms', () => {
  it.each(VALUES)('%s', (_, computed, published) => expect(apart(computed, published)).toBeLessThan(4e-16));

  const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
  it.each([
    ['exp', exp, Math.exp, between(-700, 700)],
    ['log', log, Math.log, between(1e-300, 1e300)],
    ['log near 1', log, Math.log, between(0.9, 1.1)],
    ['log1p', log1p, Math.log1p, between(-0.999, 1e5)],
    ['expm1', expm1, Math.expm1, between(-45, 45)],
    ['cbrt', cbrt, Math.cbrt, between(1e-100, 1e100)],
  ] as const)('%s is the engine’s but for the last digit', (_, own, engine, values) => {
    fc.assert(fc.property(values, (x) => apart(own(x), engine(x)) < CLOSE), { seed: 20261125, numRuns: 3000 });
  });

  it('has the right ends', () => {
    expect([exp(0), exp(-Infinity), exp(Infinity), exp(-1000), exp(1000)]).toEqual([1, 0, Infinity, 0, Infinity]);
    expect([log(1), log(0), log(Infinity), log1p(0), log1p(Infinity)]).toEqual([0, -Infinity, Infinity, 0, Infinity]);
    expect([expm1(0), expm1(-Infinity), expm1(-1000), expm1(Infinity), cbrt(0), cbrt(8)]).toEqual([0, -1, -1, Infinity, 0, 2]);
    expect([exp(NaN), log(NaN), log(-1), log1p(NaN), expm1(NaN)].every(Number.isNaN)).toBe(true);
  });
});
