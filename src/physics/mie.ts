/** Scattering of light by a sphere that does not absorb: the exact series of Mie. */
import { cbrt } from './elementary.ts';
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
  // Coefficients a and b of the series from n = 1 on: real parts, imaginary parts.
  const [aRe, aIm, bRe, bIm]: [number[], number[], number[], number[]] = [[0], [0], [0], [0]];
  const efficiency = sumOfSeries(sizeParameter, refractiveIndex, (electric, magnetic) => {
    aRe.push(realPart(electric));
    aIm.push(imaginaryPart(electric));
    bRe.push(realPart(magnetic));
    bIm.push(imaginaryPart(magnetic));
  });
  const x = sizeParameter;
  const terms = aRe.length - 1;
  let forward = 0;
  for (let n = 1; n <= terms; n++) {
    const a = [aRe[n]!, aIm[n]!] as const;
    const b = [bRe[n]!, bIm[n]!] as const;
    forward += ((2 * n + 1) / (n * (n + 1))) * (a[0] * b[0] + a[1] * b[1]);
    if (n === terms) continue;
    const nextA = [aRe[n + 1]!, aIm[n + 1]!] as const;
    const nextB = [bRe[n + 1]!, bIm[n + 1]!] as const;
    forward += ((n * (n + 2)) / (n + 1)) * (a[0] * nextA[0] + a[1] * nextA[1] + b[0] * nextB[0] + b[1] * nextB[1]);
  }

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

/**
 * The extinction efficiency alone, as in {@link mieSphere}.
 * @throws RangeError outside a range
 */
export function mieExtinction(sizeParameter: number, refractiveIndex: Ratio): Ratio {
  return sumOfSeries(sizeParameter, refractiveIndex, () => {});
}

/** A coefficient of the series is p/(p − iq), where the refractive index is real. */
type Coefficient = readonly [p: number, q: number];

const realPart = ([p, q]: Coefficient): number => p ** 2 / (p ** 2 + q ** 2);
const imaginaryPart = ([p, q]: Coefficient): number => (p * q) / (p ** 2 + q ** 2);

/** Extinction efficiency; calls `visit` with the coefficients a and b of each order on the way. */
function sumOfSeries(sizeParameter: number, refractiveIndex: Ratio, visit: (a: Coefficient, b: Coefficient) => void): Ratio {
  const x = inRange('sizeParameter', sizeParameter, 0.01, 6000);
  const m = inRange('refractiveIndex', refractiveIndex, 0.5, 2.5);
  const terms = Math.ceil(x + 4.05 * cbrt(x) + 2);
  const derivative = logarithmicDerivative(m * x, terms);
  // Riccati–Bessel functions of order n − 1 and n, upward: stable as far as the series is needed.
  let [psiBefore, psi] = [Math.cos(x), Math.sin(x)];
  let [chiBefore, chi] = [-Math.sin(x), Math.cos(x)];
  let sum = 0;
  for (let n = 1; n <= terms; n++) {
    const psiNext = ((2 * n - 1) / x) * psi - psiBefore;
    const chiNext = ((2 * n - 1) / x) * chi - chiBefore;
    const electric = derivative[n]! / m + n / x;
    const magnetic = derivative[n]! * m + n / x;
    const a = [electric * psiNext - psi, electric * chiNext - chi] as const;
    const b = [magnetic * psiNext - psi, magnetic * chiNext - chi] as const;
    sum += (2 * n + 1) * (realPart(a) + realPart(b));
    visit(a, b);
    [psiBefore, psi] = [psi, psiNext];
    [chiBefore, chi] = [chi, chiNext];
  }
  return (2 / x ** 2) * sum;
}

/** Downward, upward being unstable, from so far above the argument that the start no longer matters. */
function logarithmicDerivative(z: number, terms: number): Float64Array {
  const start = Math.ceil(Math.max(terms, z) + 10 * cbrt(z)) + 16;
  const values = new Float64Array(start + 1);
  for (let n = start; n > 0; n--) values[n - 1] = n / z - 1 / (values[n]! + n / z);
  return values;
}
