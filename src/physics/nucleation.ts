/** Where vapor condenses without particles: on small ions, or with nothing at all. Droplets on particles: koehler.ts. */
import { AVOGADRO_CONSTANT, BOLTZMANN_CONSTANT, MOLAR_MASS_WATER } from './constants.ts';
import { cbrt, exp, log } from './elementary.ts';
import { firstReaching } from './expansion.ts';
import type { MoistAir } from './moist-air.ts';
import { inRange } from './range.ts';
import { findRoot } from './roots.ts';
import { saturationVaporPressure } from './saturation.ts';
import type { CubicMeter, Kelvin, Meter, NewtonPerMeter, Pascal, Ratio } from './units.ts';
import { densityOfWater, surfaceTension, WATER_LOW } from './water.ts';

export {
  criticalDryDiameter,
  criticalPoint,
  criticalSaturation,
  equilibriumDiameter,
  kelvinDiameter,
  kelvinLength,
  kelvinSaturation,
  koehlerSaturation,
} from './koehler.ts';
export type { CriticalPoint, DryParticle } from './koehler.ts';

/** Properties of water that nucleation depends on most; give them to repeat a published calculation. */
export interface NucleationProperties {
  /** N/m */
  readonly surfaceTension?: NewtonPerMeter;
  /** Of vapor over plane liquid, Pa */
  readonly saturationPressure?: Pascal;
  /** Volume of a molecule in the liquid, m³ */
  readonly moleculeVolume?: CubicMeter;
}

/** The state at which clear air, expanding without droplets, first forms them by itself. */
export interface NucleationLimit {
  /** Absolute, Pa */
  readonly pressure: Pascal;
  /** K */
  readonly temperature: Kelvin;
  readonly saturationRatio: Ratio;
}

/** Elementary charge, C. Exact: SI Brochure (BIPM, 9th ed. 2019). */
const ELEMENTARY_CHARGE = 1.602176634e-19;
/** Vacuum electric permittivity, F/m: CODATA 2018. */
const VACUUM_PERMITTIVITY = 8.8541878128e-12;
/**
 * Relative permittivity of water near 0 °C: CRC Handbook. It enters as 1 − 1/ε: the whole change from 20 °C
 * to −30 °C moves the ion limit by less than 0.1 %.
 */
const RELATIVE_PERMITTIVITY = 88;
/** One drop per cubic centimeter and second, where drops begin to be seen, 1/(m³·s). */
const VISIBLE_RATE = 1e6;
const HIGHEST_SATURATION = 100;
/** kg */
const MOLECULE_MASS = MOLAR_MASS_WATER / AVOGADRO_CONSTANT;

/**
 * Rate at which droplets form in vapor without particles or ions.
 * @param temperature K, 235 to 332
 * @param saturationRatio above 1, to 100
 * @param properties of water, where they should differ from the library's
 * @returns 1/(m³·s); 0 where it is too small for a number. Measured rates (Miller et al. 1983, J. Chem. Phys. 78,
 *   3204; Wölk & Strey 2001, J. Phys. Chem. B 105, 11683) are about equal at 240 K, 10 times lower at 260 K and
 *   10 to 200 times lower at 290 K: an error of the saturation ratio at onset of 7 % at most
 * @throws RangeError outside a range
 * Source: classical theory with the factor 1/S; Seinfeld & Pandis 2006, eq. 11.47.
 */
export function homogeneousNucleationRate(
  temperature: Kelvin,
  saturationRatio: Ratio,
  properties: NucleationProperties = {},
): number {
  return exp(logRate(temperature, checkedSaturation(saturationRatio), properties));
}

/**
 * The smallest cluster of molecules that grows by itself.
 * @param temperature K, 235 to 332
 * @param saturationRatio above 1, to 100
 * @param properties of water, where they should differ from the library's
 * @returns radius in m, and the number of molecules (not rounded)
 * @throws RangeError outside a range
 * Source: Kelvin's equation; Seinfeld & Pandis 2006, ch. 11.
 */
export function criticalCluster(
  temperature: Kelvin,
  saturationRatio: Ratio,
  properties: NucleationProperties = {},
): { readonly radius: Meter; readonly molecules: number } {
  const { sigma, volume, thermal } = describe(temperature, properties);
  const radius = (2 * sigma * volume) / (thermal * log(checkedSaturation(saturationRatio)));
  return { radius, molecules: ((4 / 3) * Math.PI * radius ** 3) / volume };
}

/**
 * Saturation ratio at which droplets form with nothing at all.
 * @param temperature K, 235 to 332
 * @param options.rate that counts as onset, 1/(m³·s), 1 to 10²⁰; 10⁶ (one drop per cm³ and second) unless given
 * @returns above 1; 7 % too low at most, see {@link homogeneousNucleationRate}
 * @throws RangeError outside a range, or where the onset would be above 100
 * Source: {@link homogeneousNucleationRate}, solved for the rate.
 */
export function homogeneousOnset(temperature: Kelvin, options: { readonly rate?: number } = {}): Ratio {
  const target = log(inRange('rate', options.rate ?? VISIBLE_RATE, 1, 1e20, '1/(m³·s)'));
  const excess = (lnS: number): number => logRate(temperature, exp(lnS), {}) - target;
  if (excess(log(HIGHEST_SATURATION)) < 0) {
    throw new RangeError(`rate is ${options.rate} 1/(m³·s); it is not reached below saturationRatio ${HIGHEST_SATURATION}`);
  }
  return exp(findRoot(excess, 0.05, log(HIGHEST_SATURATION)));
}

/**
 * Saturation ratio at which droplets grow on small ions of one charge, which air always contains.
 * @param temperature K, 235 to 332
 * @returns above 1. The top of the curve: no barrier is left there. Ions begin to act slightly below it, negative
 *   ones before positive ones, which this model does not tell apart: Wilson 1897 saw first drops at about 4.2
 *   near −6 °C, where this gives 4.5
 * @throws RangeError outside the range
 * Source: Kelvin's curve with the energy of the charge's field, J. J. Thomson 1906, Conduction of Electricity
 *   through Gases, 2nd ed.; Seinfeld & Pandis 2006, ch. 11. With
 *   ln S = a/r − b/r⁴ the top lies at r³ = 4b/a and its height is 3a/(4r).
 */
export function ionLimit(temperature: Kelvin): Ratio {
  const { sigma, volume, thermal } = describe(temperature, {});
  const curvature = (2 * sigma * volume) / thermal;
  const charge =
    ((volume * ELEMENTARY_CHARGE ** 2) / (32 * Math.PI ** 2 * VACUUM_PERMITTIVITY * thermal)) * (1 - 1 / RELATIVE_PERMITTIVITY);
  const radius = cbrt((4 * charge) / curvature);
  return exp((3 * curvature) / (4 * radius));
}

/**
 * Where clear air, expanding without exchange of heat and without a particle, forms droplets all the same:
 * the pressure below which "no particles, no cloud" is untrue.
 * @param air at the start
 * @param options.rate of drop formation that counts as onset, as in {@link homogeneousOnset}
 * @returns the limit on ions and that with nothing at all; the first to be reached holds (near room temperature
 *   they are within 10 % of each other). Each is undefined where it is not reached before the air is colder than
 *   235 K or thinner than 5·10³ Pa
 * @throws RangeError if the air is outside 235 to 332 K, or for a rate outside its range
 * Source: {@link expandWithoutCondensation} with {@link ionLimit} and {@link homogeneousOnset}.
 */
export function noParticleLimit(
  air: MoistAir,
  options: { readonly rate?: number } = {},
): { readonly ion: NucleationLimit | undefined; readonly homogeneous: NucleationLimit | undefined } {
  return {
    ion: firstReaching(air, ionLimit, WATER_LOW),
    homogeneous: firstReaching(air, (T) => homogeneousOnset(T, options), WATER_LOW),
  };
}

function checkedSaturation(saturationRatio: Ratio): Ratio {
  return inRange('saturationRatio', saturationRatio, 1 + Number.EPSILON, HIGHEST_SATURATION);
}

function logRate(temperature: Kelvin, saturationRatio: Ratio, properties: NucleationProperties): number {
  const { sigma, volume, thermal, pressure } = describe(temperature, properties);
  const barrier = ((16 * Math.PI) / 3) * ((volume ** 2 * sigma ** 3) / (thermal ** 3 * log(saturationRatio) ** 2));
  const monomers = pressure / thermal;
  return log(Math.sqrt((2 * sigma) / (Math.PI * MOLECULE_MASS)) * volume * monomers ** 2 * saturationRatio) - barrier;
}

function describe(
  temperature: Kelvin,
  given: NucleationProperties,
): { sigma: NewtonPerMeter; volume: CubicMeter; thermal: number; pressure: Pascal } {
  const ownSigma = surfaceTension(temperature);
  return {
    sigma: inRange('surfaceTension', given.surfaceTension ?? ownSigma, 0.01, 0.2, 'N/m'),
    volume: inRange('moleculeVolume', given.moleculeVolume ?? MOLECULE_MASS / densityOfWater(temperature), 1e-29, 1e-28, 'm³'),
    pressure: inRange('saturationPressure', given.saturationPressure ?? saturationVaporPressure(temperature), 1e-2, 1e5, 'Pa'),
    thermal: BOLTZMANN_CONSTANT * temperature,
  };
}
