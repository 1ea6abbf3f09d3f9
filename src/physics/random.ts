/**
 * Random numbers from a seed, the same on every machine: integer arithmetic and the operations that IEEE 754
 * rounds exactly (+ − × ÷ √), no function whose last digit is the machine's affair.
 */
import { inRange } from './range.ts';

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
 * @throws RangeError for another seed
 * Source: xoshiro128** 1.1, D. Blackman & S. Vigna 2018, seeded by a 32-bit mixing function of the same kind as
 *   splitmix (S. Vigna); Student's t by the polar method of R. W. Bailey 1994, Math. Comp. 62, 779.
 */
export function randomSource(seed: number, name = ''): RandomSource {
  const next = generator(seed, name);
  const uniform = (): number => ((next() >>> 6) * 2 ** 26 + (next() >>> 6) + 0.5) / 2 ** 52;
  const student = (degreesOfFreedom: number): number => {
    const nu = inRange('degreesOfFreedom', degreesOfFreedom, 1, Infinity, '');
    if (nu === Infinity) return inverseNormal(uniform());
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const w = u * u + v * v;
      if (w >= 1) continue;
      return u * Math.sqrt((nu * exactPowerLessOne(w, nu)) / w);
    }
  };
  return { uniform, normal: () => inverseNormal(uniform()), student };
}

function generator(seed: number, name: string): () => number {
  inRange('seed', seed, 0, Number.MAX_SAFE_INTEGER, '');
  if (!Number.isInteger(seed)) throw new RangeError(`seed is ${seed}; it must be a whole number`);
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

const CENTER_TOP = [
  3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125, 45921.953931549871457,
  67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
];
const CENTER_BOTTOM = [
  1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867, 39307.89580009271061,
  28729.085735721942674, 5226.495278852854561,
];
const SIDE_TOP = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504, 1.27045825245236838258,
  0.24178072517745061177, 0.0227238449892691845833, 7.7454501427834140764e-4,
];
const SIDE_BOTTOM = [
  1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459,
  0.0151986665636164571966, 5.475938084995344946e-4, 1.05075007164441684324e-9,
];
const TAIL_TOP = [
  6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123, 0.026532189526576123093,
  0.0012426609473880784386, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
];
const TAIL_BOTTOM = [
  1, 0.59983220655588793769, 0.13692988092273580531, 0.0148753612908506148525, 7.868691311456132591e-4,
  1.8463183175100546818e-5, 1.4215117583164458887e-7, 2.04426310338993978564e-15,
];

/**
 * The normal deviate below which a share p of all lies.
 * @param p strictly between 0 and 1
 * @returns about 16 digits
 * @throws RangeError for another p
 * Source: M. J. Wichura 1988, Appl. Statist. 37, 477 (algorithm AS 241, PPND16).
 */
export function inverseNormal(p: number): number {
  inRange('p', p, Number.MIN_VALUE, 1 - Number.EPSILON / 2, '');
  const q = p - 0.5;
  if (q <= 0.425 && q >= -0.425) {
    const r = 0.180625 - q * q;
    return (q * polynomial(CENTER_TOP, r)) / polynomial(CENTER_BOTTOM, r);
  }
  const r = Math.sqrt(-exactLog(q < 0 ? p : 1 - p));
  const size =
    r <= 5
      ? polynomial(SIDE_TOP, r - 1.6) / polynomial(SIDE_BOTTOM, r - 1.6)
      : polynomial(TAIL_TOP, r - 5) / polynomial(TAIL_BOTTOM, r - 5);
  return q < 0 ? -size : size;
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}

const LN2 = 0.6931471805599453;

/** Natural logarithm from exactly rounded operations alone; x above 0. */
function exactLog(x: number): number {
  let mantissa = x;
  let exponent = 0;
  for (; mantissa < Math.SQRT1_2; exponent--) mantissa *= 2;
  for (; mantissa > Math.SQRT2; exponent++) mantissa /= 2;
  const z = (mantissa - 1) / (mantissa + 1);
  let sum = 0;
  for (let n = 23; n >= 1; n -= 2) sum = sum * z * z + 1 / n;
  return exponent * LN2 + 2 * z * sum;
}

/** w^(−2/ν) − 1 from exactly rounded operations alone: exp(y) − 1 by its series at y/2ᵏ, then doubled k times. */
function exactPowerLessOne(w: number, nu: number): number {
  let y = (-2 * exactLog(w)) / nu;
  let doublings = 0;
  for (; y > 0.5; doublings++) y /= 2;
  let sum = 0;
  for (let n = 16; n >= 1; n--) sum = ((sum + 1) * y) / n;
  for (; doublings > 0; doublings--) sum = sum * (sum + 2);
  return sum;
}
