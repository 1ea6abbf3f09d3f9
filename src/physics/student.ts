/** Student's t-distribution: the coverage factor of an uncertainty with few degrees of freedom. */
import { exp, log, log1p } from './elementary.ts';
import { inRange } from './range.ts';
import { findRoot } from './roots.ts';
import { normalShareBelow } from './size-classes.ts';

/** Beyond this many degrees of freedom the normal distribution agrees to eight digits. */
const MANY = 1e8;

/**
 * Coverage factor: the share `probability` of Student's t lies between its negative and itself.
 * @param degreesOfFreedom 1 and above, not necessarily whole; Infinity gives the normal distribution
 * @param probability 0.01 to 0.9999
 * @returns pure number, 1.96 for many degrees of freedom and 95 %
 * @throws RangeError outside a range
 * Source: JCGM 100:2008, G.3 and table G.2; the distribution function by the incomplete beta function
 *   (Abramowitz & Stegun 1964, eq. 26.7.1 and 26.5.8).
 */
export function coverageFactor(degreesOfFreedom: number, probability = 0.95): number {
  const nu = inRange('degreesOfFreedom', degreesOfFreedom, 1, Infinity);
  const p = inRange('probability', probability, 0.01, 0.9999);
  const normal = findRoot((z) => normalShareBelow(z) - (1 + p) / 2, 0, 5);
  if (nu > MANY) return normal;
  const outside = (t: number): number => regularizedBeta(nu / (nu + t * t), nu / 2, 0.5) - (1 - p);
  return findRoot(outside, normal / 2, normal * 1e4);
}

/** Regularized incomplete beta function Iₓ(a, b). */
function regularizedBeta(x: number, a: number, b: number): number {
  if (x > (a + 1) / (a + b + 2)) return 1 - regularizedBeta(1 - x, b, a);
  const front = exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * log(x) + b * log1p(-x)) / a;
  return front * betaFraction(x, a, b);
}

/** Continued fraction of the incomplete beta function by Lentz's method, for x below about a/(a + b). */
function betaFraction(x: number, a: number, b: number): number {
  let d = 1 / nonzero(1 - ((a + b) * x) / (a + 1));
  let c = 1;
  let value = d;
  for (let m = 1; m < 10_000; m++) {
    const at = a + 2 * m;
    for (const term of [(m * (b - m)) / (at - 1), (-(a + m) * (a + b + m)) / (at + 1)]) {
      d = 1 / nonzero(1 + ((term * x) / at) * d);
      c = nonzero(1 + (term * x) / at / c);
      value *= d * c;
    }
    if (Math.abs(d * c - 1) < 4 * Number.EPSILON) break;
  }
  return value;
}

const nonzero = (x: number): number => (Math.abs(x) < 1e-300 ? 1e-300 : x);

/** Logarithm of the gamma function of x above 0: Stirling's series (Abramowitz & Stegun 1964, eq. 6.1.41) after shifting x up. */
function logGamma(x: number): number {
  let shift = 0;
  let z = x;
  for (; z < 15; z++) shift += log(z);
  const w = 1 / (z * z);
  const series = (1 / 12 - w * (1 / 360 - w * (1 / 1260 - w * (1 / 1680 - w / 1188)))) / z;
  return (z - 0.5) * log(z) - z + 0.5 * log(2 * Math.PI) + series - shift;
}
