/** Dry particles of many sizes as a limited number of classes, and the share of them that a saturation ratio activates. */
import { exp, log } from './elementary.ts';
import { criticalDryDiameter } from './koehler.ts';
import { inRange, wholeInRange } from './range.ts';
import type { Kelvin, Meter, PerCubicMeter, Ratio } from './units.ts';

/** A population of dry particles of one substance, lognormal in diameter. */
export interface AerosolMode {
  /** Of the spheres of equal volume, m, 5·10⁻⁹ to 10⁻⁵ */
  readonly medianDryDiameter: Meter;
  /** 1 (all of one size) to 3 */
  readonly geometricStandardDeviation: Ratio;
  /** Hygroscopicity, 0.001 to 2; ammonium sulfate 0.61, smoke 0.05 to 0.3 */
  readonly kappa: Ratio;
  /** Particles per m³ of the air at the start, 0 to 10¹³ */
  readonly number: PerCubicMeter;
}

/** Particles of one dry size. */
export interface SizeClass {
  readonly dryDiameter: Meter;
  readonly kappa: Ratio;
  /** 1/m³ */
  readonly number: PerCubicMeter;
  /** Index of the mode it belongs to */
  readonly mode: number;
}

/** Range of the classes: this many geometric standard deviations to each side; the rest joins the outermost classes. */
const REACH = 4;
// A trifle inside the range of the Köhler curve, so that rounding does not leave it.
const SMALLEST: Meter = 1.000001e-9;
const LARGEST: Meter = 0.999999e-4;

/**
 * Splits modes into classes of equal width in the logarithm of the diameter, each at its mean logarithm. A mode
 * of one size is one class; one without particles none.
 * @param modes see {@link AerosolMode}
 * @param perMode number of classes of a mode of more than one size, 1 to 1000
 * @throws RangeError outside a range
 * Source: moments of the lognormal distribution; Hinds 1999, ch. 4.
 */
export function sizeClasses(modes: readonly AerosolMode[], perMode: number): SizeClass[] {
  const count = wholeInRange('classes', perMode, 1, 1000);
  return modes.flatMap((mode, index) => classesOf(checkedMode(mode, index), count, index));
}

/**
 * Share of the particles whose critical saturation ratio is reached: of the distribution itself, not of its classes.
 * @param modes see {@link AerosolMode}
 * @param saturationRatio that was reached, 0 and above
 * @param temperature K, 235 to 332
 * @returns 0 to 1; 0 where there are no particles
 * @throws RangeError outside a range
 * Source: Petters & Kreidenweis 2007, eq. 6, and the lognormal distribution.
 */
export function activatedShare(modes: readonly AerosolMode[], saturationRatio: Ratio, temperature: Kelvin): Ratio {
  let all = 0;
  let activated = 0;
  for (const mode of modes) {
    all += mode.number;
    activated += mode.number * activatedShareOf(mode, saturationRatio, temperature);
  }
  return all === 0 ? 0 : activated / all;
}

// Below the lower bound a critical particle would be larger than any here; at the upper one it is a few molecules.
const NO_PARTICLE_ACTIVATES = 1 + 1e-6;
const EVERY_PARTICLE_ACTIVATES = 5;

function activatedShareOf(mode: AerosolMode, saturationRatio: Ratio, temperature: Kelvin): Ratio {
  if (mode.number === 0 || saturationRatio <= NO_PARTICLE_ACTIVATES) return 0;
  const critical = criticalDryDiameter({
    saturationRatio: Math.min(saturationRatio, EVERY_PARTICLE_ACTIVATES),
    kappa: mode.kappa,
    temperature,
  });
  if (mode.geometricStandardDeviation === 1) return mode.medianDryDiameter >= critical ? 1 : 0;
  return normalShareBelow(log(mode.medianDryDiameter / critical) / log(mode.geometricStandardDeviation));
}

function classesOf(mode: AerosolMode, count: number, index: number): SizeClass[] {
  const { medianDryDiameter, geometricStandardDeviation, kappa, number } = mode;
  if (number === 0) return [];
  const width = log(geometricStandardDeviation);
  if (width === 0) return [{ dryDiameter: medianDryDiameter, kappa, number, mode: index }];
  const low = Math.max(-REACH, log(SMALLEST / medianDryDiameter) / width);
  const high = Math.min(REACH, log(LARGEST / medianDryDiameter) / width);
  const classes: SizeClass[] = [];
  for (let i = 0; i < count; i++) {
    const lower = i === 0 ? -Infinity : low + ((high - low) * i) / count;
    const upper = i === count - 1 ? Infinity : low + ((high - low) * (i + 1)) / count;
    const share = normalShareBelow(upper) - normalShareBelow(lower);
    const mean = Math.min(high, Math.max(low, (normalDensity(lower) - normalDensity(upper)) / share));
    classes.push({ dryDiameter: medianDryDiameter * exp(width * mean), kappa, number: number * share, mode: index });
  }
  return classes;
}

function checkedMode(mode: AerosolMode, index: number): AerosolMode {
  const name = (field: string): string => `modes[${index}].${field}`;
  inRange(name('medianDryDiameter'), mode.medianDryDiameter, 5e-9, 1e-5, 'm');
  inRange(name('geometricStandardDeviation'), mode.geometricStandardDeviation, 1, 3);
  inRange(name('kappa'), mode.kappa, 1e-3, 2);
  inRange(name('number'), mode.number, 0, 1e13, '1/m³');
  return mode;
}

function normalDensity(z: number): number {
  return exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** Standard normal distribution function, to 10⁻¹⁵: Abramowitz & Stegun 1964, eq. 26.2.11. */
export function normalShareBelow(z: number): Ratio {
  if (z > 8.3) return 1;
  if (z < -8.3) return 0;
  let term = z;
  let sum = z;
  for (let k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return Math.min(1, Math.max(0, 0.5 + normalDensity(z) * sum));
}
