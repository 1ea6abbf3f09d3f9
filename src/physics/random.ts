/**
 * Random numbers from a seed, the same on every machine: integer arithmetic and the operations that IEEE 754
 * rounds exactly (+ − × ÷ √), no function whose last digit is the machine's affair.
 */
import { expm1, log } from './elementary.ts';
import { inRange, wholeInRange } from './range.ts';

/** A stream of random numbers; each call takes the next. */
export interface RandomSource {
  /** Uniform, strictly between 0 and 1 */
  readonly uniform: () => number;
  /** Of mean 0 and standard deviation 1 */
  readonly normal: () => number;
  /** Student's t with the given degrees of freedom, 1 and above */
  readonly student: (degreesOfFreedom: number) => number;
}

/**
 * A stream of random numbers.
 * @param seed whole number, 0 to 2⁵³ − 1
 * @param name of the stream: streams of different names are independent, whatever the order they are used in
 * @returns see {@link RandomSource}
 * @throws RangeError for another seed
 * Source: xoshiro128** 1.1, D. Blackman & S. Vigna 2018, seeded by a 32-bit mixing function of the same kind as
 *   splitmix (S. Vigna); Student's t by the polar method of R. W. Bailey 1994, Math. Comp. 62, 779.
 */
export function randomSource(seed: number, name = ''): RandomSource {
  const next = generator(seed, name);
  const uniform = (): number => ((next() >>> 6) * 2 ** 26 + (next() >>> 6) + 0.5) / 2 ** 52;
  const student = (degreesOfFreedom: number): number => {
    const nu = inRange('degreesOfFreedom', degreesOfFreedom, 1, Infinity);
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const w = u * u + v * v;
      if (w >= 1) continue;
      return u * Math.sqrt((nu === Infinity ? -2 * log(w) : nu * expm1((-2 * log(w)) / nu)) / w);
    }
  };
  // The normal distribution is Student's of endless degrees of freedom, and this polar method Marsaglia's of 1964.
  return { uniform, normal: () => student(Infinity), student };
}

function generator(seed: number, name: string): () => number {
  wholeInRange('seed', seed, 0, Number.MAX_SAFE_INTEGER);
  let mixed = seed >>> 0;
  const mix = (value: number): number => {
    mixed = (Math.imul(mixed ^ value, 0x9e3779b1) + 0x9e3779b9) >>> 0;
    let z = mixed;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return (z ^ (z >>> 16)) >>> 0;
  };
  mix(Math.floor(seed / 2 ** 32));
  for (let i = 0; i < name.length; i++) mix(name.charCodeAt(i));
  // A state of zeros would stay zero.
  return xoshiro128([mix(1), mix(2), mix(3), mix(4) | 1]);
}

/**
 * The bare generator of whole numbers, 0 to 2³² − 1.
 * @param state four whole numbers of 32 bits, not all zero
 * @returns a function that gives the next number
 * Source: xoshiro128** 1.1, D. Blackman & S. Vigna 2018.
 */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state;
  return () => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return result;
  };
}

const rotate = (x: number, by: number): number => (x << by) | (x >>> (32 - by));
