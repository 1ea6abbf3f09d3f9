/** Root of a function of one variable by Brent's method (R. P. Brent 1973, ch. 4). */

const MAX_ITERATIONS = 200;

/**
 * The root of `f` between `low` and `high`, where `f` must change sign.
 * @param tolerance largest error of the root, in the unit of the argument; the default is near machine precision.
 * @throws RangeError if `f` has the same sign at both ends.
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance = 0): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) throw new RangeError(`no root between ${low} and ${high}: the function does not change sign`);
  let c = a;
  let fc = fa;
  let step = b - a;
  let previousStep = step;
  for (let i = 0; i < MAX_ITERATIONS; i++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const least = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= least || fb === 0) return b;
    if (Math.abs(previousStep) >= least && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * s;
        q = 1 - s;
      } else {
        const r = fb / fc;
        const t = fa / fc;
        p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
        q = (t - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      if (2 * p < Math.min(3 * half * q - Math.abs(least * q), Math.abs(previousStep * q))) {
        previousStep = step;
        step = p / q;
      } else {
        step = half;
        previousStep = half;
      }
    } else {
      step = half;
      previousStep = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > least ? step : Math.sign(half) * least;
    fb = f(b);
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      previousStep = step;
    }
  }
  return b;
}
