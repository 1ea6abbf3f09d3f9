/** Root of a function of one variable by Chandrupatla's method (T. R. Chandrupatla 1997, Adv. Eng. Softw. 28, 145). */

const MAX_ITERATIONS = 200;

/**
 * The root of `f` between `low` and `high`, where `f` must change sign.
 * @param f continuous function of one number
 * @param low one end of the interval
 * @param high the other end
 * @param tolerance largest error of the root, in the unit of the argument; the default is near machine precision
 * @returns the root, in the unit of the argument
 * @throws RangeError if `f` has the same sign at both ends
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance = 0): number {
  // The root is between a, the last value tried, and b; c is the one before that.
  let a = high;
  let b = low;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) throw new RangeError(`no root between ${low} and ${high}`);
  let share = 0.5;
  for (let i = 0; i < MAX_ITERATIONS; i++) {
    const x = a + share * (b - a);
    const fx = f(x);
    let c = a;
    let fc = fa;
    if (fx > 0 !== fa > 0) {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const best = Math.abs(fb) < Math.abs(fa) ? b : a;
    const least = (2 * Number.EPSILON * Math.abs(best) + tolerance / 2) / Math.abs(b - a);
    if (fa === 0 || least > 0.5) return best;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    // Inverse quadratic interpolation where the inverse is sure to be monotonic, else bisection.
    share =
      phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi
        ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
        : 0.5;
    share = Math.min(1 - least, Math.max(least, share));
  }
  return a;
}
