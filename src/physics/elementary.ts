/**
 * Exponentials and logarithms from the operations that IEEE 754 rounds exactly (+ − × ÷): the same to the last digit
 * in every engine. Engines' own differ in that digit, and solvers that choose their steps make of it whole percents.
 * Sources: series of exp and artanh, e.g. Abramowitz & Stegun 1964, eq. 4.2.1 and 4.1.27; Kahan's forms of
 * log(1 + x) and exp(x) − 1 (Higham 2002, Accuracy and Stability of Numerical Algorithms, sect. 1.14).
 */

/** ln 2 in two parts, of which the first has so few digits that its product with any exponent is exact. */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
const LOG2_E = 1.4426950408889634;
/** Exponent of the smallest power of two below, its sign turned. */
const BIAS = 1022;
/** 2^−1022. */
const SMALLEST_POWER = 2.2250738585072014e-308;
/** Powers of two that a double holds with all its digits, from 2^−1022 to 2^1022. */
const powers = /* @__PURE__ */ powersOfTwo();
const bits = /* @__PURE__ */ new DataView(/* @__PURE__ */ new ArrayBuffer(8));

function powersOfTwo(): Float64Array {
  // From the smallest on, by doubling, which is exact.
  let power = SMALLEST_POWER / 2;
  return new Float64Array(2 * BIAS + 1).map(() => (power *= 2));
}

// The series are summed in pairs and pairs of pairs, which a processor can do at the same time; it multiplies several
// times faster than it divides.

/** Exponential function; where a double is nearly too small or too large for it, the engine's own. */
export function exp(x: number): number {
  if (!(x > -708 && x < 708)) return Math.exp(x);
  const k = Math.round(x * LOG2_E);
  const r = x - k * LN2_HIGH - k * LN2_LOW;
  const r2 = r * r;
  const r4 = r2 * r2;
  const low = 1 / 2 + r * (1 / 6) + r2 * (1 / 24 + r * (1 / 120));
  const middle = 1 / 720 + r * (1 / 5040) + r2 * (1 / 40320 + r * (1 / 362880));
  const high = 1 / 3628800 + r * (1 / 39916800) + r2 * (1 / 479001600);
  return powers[BIAS + k]! * (1 + (r + r2 * (low + r4 * (middle + r4 * high))));
}

/** Natural logarithm; the engine's own where the argument is nearly too small or too large for a double, or has none. */
export function log(x: number): number {
  if (!(x > 1e-307 && x < 1e307)) return Math.log(x);
  bits.setFloat64(0, x, true);
  // The power of two that leaves between about √½ and √2, so that the logarithm of what is near 1 keeps its digits.
  const k = (bits.getInt32(4, true) - 0x3fe6a09e) >> 20;
  const mantissa = x * powers[BIAS - k]!;
  const z = (mantissa - 1) / (mantissa + 1);
  const w = z * z;
  const w2 = w * w;
  const w4 = w2 * w2;
  const low = 1 / 3 + w * (1 / 5) + w2 * (1 / 7 + w * (1 / 9));
  const middle = 1 / 11 + w * (1 / 13) + w2 * (1 / 15 + w * (1 / 17));
  const series = low + w4 * (middle + w4 * (1 / 19 + w * (1 / 21)));
  return k * LN2_HIGH + (2 * z + (2 * z * w * series + k * LN2_LOW));
}

/** log(1 + x) that keeps its digits for small x. */
export function log1p(x: number): number {
  const u = 1 + x;
  return u === 1 || u === Infinity ? x : (log(u) * x) / (u - 1);
}

/** exp(x) − 1 that keeps its digits for small x. */
export function expm1(x: number): number {
  const u = exp(x);
  if (!(Math.abs(x) < 40)) return u - 1;
  return u === 1 ? x : ((u - 1) * x) / log(u);
}

/** Cube root of what is 0 or more, one step of Newton's method after a first value. */
export function cbrt(x: number): number {
  const y = exp(log(x) / 3);
  return x > 0 ? y - (y - x / (y * y)) / 3 : x;
}
