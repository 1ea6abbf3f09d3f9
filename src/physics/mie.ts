/** Scattering of light by a sphere that does not absorb: the exact series of Mie. */
import { inRange } from './range.ts';
import type { Radian, Ratio } from './units.ts';

/** How a sphere scatters. */
export interface MieSphere {
  /** Extinction (here also scattering) cross-section over the geometric one */
  readonly extinctionEfficiency: Ratio;
  /** Mean cosine of the scattering angle */
  readonly asymmetry: Ratio;
  /** Unpolarized intensity toward a scattering angle (0 straight on, π straight back) over its mean over all directions */
  readonly phase: (angle: Radian) => Ratio;
}

/**
 * Scattering of unpolarized light by one sphere.
 * @param sizeParameter circumference over wavelength, 0.01 to 6000
 * @param refractiveIndex of the sphere relative to its surroundings, 0.5 to 2.5, real
 * @throws RangeError outside a range
 * Source: Bohren & Huffman 1983, Absorption and Scattering of Light by Small Particles, eq. 4.61, 4.74, 4.88 and
 *   appendix A; number of terms by Wiscombe 1980.
 */
export function mieSphere(sizeParameter: number, refractiveIndex: Ratio): MieSphere {
  const x = inRange('sizeParameter', sizeParameter, 0.01, 6000, '');
  const m = inRange('refractiveIndex', refractiveIndex, 0.5, 2.5, '');
  const { aRe, aIm, bRe, bIm, terms } = coefficients(x, m);

  let extinction = 0;
  let forward = 0;
  for (let n = 1; n <= terms; n++) {
    const a = [aRe[n]!, aIm[n]!] as const;
    const b = [bRe[n]!, bIm[n]!] as const;
    extinction += (2 * n + 1) * (a[0] + b[0]);
    forward += ((2 * n + 1) / (n * (n + 1))) * (a[0] * b[0] + a[1] * b[1]);
    if (n === terms) continue;
    const nextA = [aRe[n + 1]!, aIm[n + 1]!] as const;
    const nextB = [bRe[n + 1]!, bIm[n + 1]!] as const;
    forward += ((n * (n + 2)) / (n + 1)) * (a[0] * nextA[0] + a[1] * nextA[1] + b[0] * nextB[0] + b[1] * nextB[1]);
  }
  const efficiency = (2 / x ** 2) * extinction;

  function phase(angle: Radian): Ratio {
    const mu = Math.cos(inRange('angle', angle, 0, Math.PI, 'rad'));
    let [s1Re, s1Im, s2Re, s2Im] = [0, 0, 0, 0];
    let previous = 0;
    let pi = 1;
    for (let n = 1; n <= terms; n++) {
      const tau = n * mu * pi - (n + 1) * previous;
      const weight = (2 * n + 1) / (n * (n + 1));
      s1Re += weight * (aRe[n]! * pi + bRe[n]! * tau);
      s1Im += weight * (aIm[n]! * pi + bIm[n]! * tau);
      s2Re += weight * (aRe[n]! * tau + bRe[n]! * pi);
      s2Im += weight * (aIm[n]! * tau + bIm[n]! * pi);
      const next = ((2 * n + 1) * mu * pi - (n + 1) * previous) / n;
      previous = pi;
      pi = next;
    }
    return (2 * (s1Re ** 2 + s1Im ** 2 + s2Re ** 2 + s2Im ** 2)) / (x ** 2 * efficiency);
  }

  return { extinctionEfficiency: efficiency, asymmetry: ((4 / x ** 2) * forward) / efficiency, phase };
}

interface Coefficients {
  readonly terms: number;
  readonly aRe: Float64Array;
  readonly aIm: Float64Array;
  readonly bRe: Float64Array;
  readonly bIm: Float64Array;
}

function coefficients(x: number, m: number): Coefficients {
  const terms = Math.ceil(x + 4.05 * Math.cbrt(x) + 2);
  const derivative = logarithmicDerivative(m * x, terms);
  const aRe = new Float64Array(terms + 1);
  const aIm = new Float64Array(terms + 1);
  const bRe = new Float64Array(terms + 1);
  const bIm = new Float64Array(terms + 1);
  // Riccati–Bessel functions of order n − 1 and n, upward: stable as far as the series is needed.
  let [psiBefore, psi] = [Math.cos(x), Math.sin(x)];
  let [chiBefore, chi] = [-Math.sin(x), Math.cos(x)];
  for (let n = 1; n <= terms; n++) {
    const psiNext = ((2 * n - 1) / x) * psi - psiBefore;
    const chiNext = ((2 * n - 1) / x) * chi - chiBefore;
    const electric = derivative[n]! / m + n / x;
    const magnetic = derivative[n]! * m + n / x;
    [aRe[n], aIm[n]] = coefficient(electric * psiNext - psi, electric * chiNext - chi);
    [bRe[n], bIm[n]] = coefficient(magnetic * psiNext - psi, magnetic * chiNext - chi);
    [psiBefore, psi] = [psi, psiNext];
    [chiBefore, chi] = [chi, chiNext];
  }
  return { terms, aRe, aIm, bRe, bIm };
}

/** p/(p − iq), which is what a coefficient comes to when the index is real. */
function coefficient(p: number, q: number): [number, number] {
  const norm = p ** 2 + q ** 2;
  return [p ** 2 / norm, (p * q) / norm];
}

/** Downward, upward being unstable, from so far above the argument that the start no longer matters. */
function logarithmicDerivative(z: number, terms: number): Float64Array {
  const start = Math.ceil(Math.max(terms, z) + 10 * Math.cbrt(z)) + 16;
  const values = new Float64Array(start + 1);
  for (let n = start; n > 0; n--) values[n - 1] = n / z - 1 / (values[n]! + n / z);
  return values;
}
