/** Lambert's W function on its lower real branch. */
import { exp, log } from './elementary.ts';
import { inRange } from './range.ts';

const BRANCH_POINT = -1 / Math.E;
const MOST_ITERATIONS = 50;

/**
 * The solution w ≤ −1 of w·exp(w) = x.
 * @param x pure number, −1/e to −10⁻³⁰⁰
 * @returns pure number, −1 at −1/e and falling without bound as x nears 0
 * @throws RangeError outside the range
 * Source: Corless et al. 1996, Adv. Comput. Math. 5, 329: series at the branch point (eq. 4.22), Halley's step (eq. 5.9).
 */
export function lambertWLower(x: number): number {
  inRange('x', x, BRANCH_POINT, -1e-300);
  const q = -Math.sqrt(2 * Math.max(0, 1 + Math.E * x));
  // Halley's step divides by w + 1; so near the branch point the series alone is the more exact.
  const series = -1 + q - q ** 2 / 3 + (11 / 72) * q ** 3 - (43 / 540) * q ** 4;
  if (q > -1e-3) return series;
  const ln = log(-x);
  let w = x > -0.25 ? ln - log(-ln) : series;
  for (let i = 0; i < MOST_ITERATIONS; i++) {
    const e = exp(w);
    const error = w * e - x;
    const step = error / (e * (w + 1) - ((w + 2) * error) / (2 * w + 2));
    w -= step;
    if (Math.abs(step) <= 4 * Number.EPSILON * Math.abs(w)) break;
  }
  return w;
}
