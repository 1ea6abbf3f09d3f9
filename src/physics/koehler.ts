/** Equilibrium of a droplet with vapor: Kelvin's curve for pure water, Köhler's with a dissolved nucleus. */
import { MOLAR_GAS_CONSTANT, MOLAR_MASS_WATER } from './constants.ts';
import { exp, expm1, log, log1p } from './elementary.ts';
import { inRange } from './range.ts';
import { findRoot } from './roots.ts';
import type { Kelvin, Meter, NewtonPerMeter, Ratio } from './units.ts';
import { densityOfWater, surfaceTension } from './water.ts';

/** A dry particle and the temperature at which it meets water vapor. */
export interface DryParticle {
  /** Diameter of the sphere of equal volume, m, 10⁻⁹ to 10⁻⁴ */
  readonly dryDiameter: Meter;
  /** Hygroscopicity, 0 (insoluble, wettable) to 2; sodium chloride 1.28, ammonium sulfate 0.61 */
  readonly kappa: Ratio;
  /** K, 235 to 332 */
  readonly temperature: Kelvin;
  /** Of the solution, N/m, 0.01 to 0.2; that of pure water unless given */
  readonly surfaceTension?: NewtonPerMeter;
}

/** The top of a Köhler curve: beyond it a droplet grows by itself. */
export interface CriticalPoint {
  /** Vapor pressure over that of saturation, above 1 */
  readonly saturationRatio: Ratio;
  /** Of the droplet at the top, m */
  readonly wetDiameter: Meter;
}

const SMALLEST = 1e-9;
const LARGEST = 1e-4;

/**
 * Kelvin length A of water: over a pure droplet of diameter D the saturation ratio is exp(A/D).
 * @param temperature K, 235 to 332
 * @param tension surface tension, N/m, 0.01 to 0.2; that of pure water unless given
 * @returns m, about 2.1·10⁻⁹
 * @throws RangeError outside the range
 * Source: Petters & Kreidenweis 2007, Atmos. Chem. Phys. 7, 1961, eq. 6: A = 4σM/(RTρ).
 */
export function kelvinLength(temperature: Kelvin, tension: NewtonPerMeter = surfaceTension(temperature)): Meter {
  const sigma = inRange('surfaceTension', tension, 0.01, 0.2, 'N/m');
  return (4 * sigma * MOLAR_MASS_WATER) / (MOLAR_GAS_CONSTANT * temperature * densityOfWater(temperature));
}

/**
 * Saturation ratio in equilibrium with a droplet of pure water.
 * @param diameter m, 10⁻⁹ to 10⁻⁴
 * @param temperature K, 235 to 332
 * @returns above 1
 * @throws RangeError outside a range
 * Source: Kelvin's equation; Pruppacher & Klett 1997, ch. 6.
 */
export function kelvinSaturation(diameter: Meter, temperature: Kelvin): Ratio {
  return exp(kelvinLength(temperature) / inRange('diameter', diameter, SMALLEST, LARGEST, 'm'));
}

/**
 * Critical diameter of a droplet of pure water: smaller ones evaporate, larger ones grow.
 * @param saturationRatio above 1, to 20
 * @param temperature K, 235 to 332
 * @returns m
 * @throws RangeError outside a range
 * Source: inverse of {@link kelvinSaturation}.
 */
export function kelvinDiameter(saturationRatio: Ratio, temperature: Kelvin): Meter {
  const S = inRange('saturationRatio', saturationRatio, 1 + Number.EPSILON, 20);
  return kelvinLength(temperature) / log(S);
}

/**
 * Saturation ratio in equilibrium with a droplet on a dry particle, exact in the dilution.
 * @param state.wetDiameter m, from the dry diameter to 1
 * @param state other arguments as in {@link DryParticle}
 * @returns 0 for a dry soluble particle; may pass 1
 * @throws RangeError outside a range, or if the droplet is smaller than its particle
 * Source: Petters & Kreidenweis 2007, eq. 6, with D³ − d³ taken as a product, which keeps its digits where little
 *   water is taken up.
 */
export function koehlerSaturation(state: DryParticle & { readonly wetDiameter: Meter }): Ratio {
  const { dryDiameter, kappa, kelvinRatio } = scaled(state);
  const wet = inRange('wetDiameter', state.wetDiameter, dryDiameter, 1, 'm');
  return exp(logSaturation((wet - dryDiameter) / dryDiameter, kelvinRatio, kappa));
}

/**
 * Critical saturation ratio of a dry particle: where it is passed, the particle becomes a cloud droplet.
 * @param particle see {@link DryParticle}
 * @returns the highest value of the exact Köhler curve, for example 1.0013
 * @throws RangeError outside a range
 * Source: as {@link criticalPoint}.
 */
export function criticalSaturation(particle: DryParticle): Ratio {
  return criticalPoint(particle).saturationRatio;
}

/**
 * The top of the Köhler curve of a dry particle; for kappa 0 that of Kelvin's at the particle's own size.
 * @param particle see {@link DryParticle}
 * @throws RangeError outside a range
 * Source: Petters & Kreidenweis 2007, eq. 6, where its derivative vanishes.
 */
export function criticalPoint(particle: DryParticle): CriticalPoint {
  const { dryDiameter, kappa, kelvinRatio } = scaled(particle);
  const growth = criticalGrowth(kelvinRatio, kappa);
  return {
    saturationRatio: exp(logSaturation(growth, kelvinRatio, kappa)),
    wetDiameter: dryDiameter * (1 + growth),
  };
}

/**
 * Smallest dry particle that a given saturation ratio turns into a cloud droplet.
 * @param state.saturationRatio above 1, to 5
 * @param state.kappa 0 to 2
 * @param state.temperature K, 235 to 332
 * @returns m
 * @throws RangeError outside a range, or where the diameter would leave 10⁻¹⁰ to 10⁻² m
 * Source: inverse of {@link criticalSaturation}.
 */
export function criticalDryDiameter(state: {
  readonly saturationRatio: Ratio;
  readonly kappa: Ratio;
  readonly temperature: Kelvin;
}): Meter {
  const S = inRange('saturationRatio', state.saturationRatio, 1 + Number.EPSILON, 5);
  const kappa = inRange('kappa', state.kappa, 0, 2);
  const A = kelvinLength(state.temperature);
  // A soluble particle needs less than an insoluble one of its size, so Kelvin's diameter bounds it from above.
  const insoluble = A / log(S);
  const excess = (lnD: number): number => {
    const ratio = A * exp(-lnD);
    return log(logSaturation(criticalGrowth(ratio, kappa), ratio, kappa) / log(S));
  };
  // So little solute changes no digit.
  const diameter = kappa < 1e-30 ? insoluble : exp(findRoot(excess, log(insoluble * 1e-6), log(insoluble)));
  return inRange('diameter at this saturationRatio', diameter, 1e-10, 1e-2, 'm');
}

/**
 * Diameter of the haze droplet that a dry particle carries below its critical saturation ratio.
 * @param state.saturationRatio 0 to the particle's critical saturation ratio
 * @param state other arguments as in {@link DryParticle}
 * @returns m, on the stable branch; the dry diameter for kappa 0
 * @throws RangeError outside a range
 * Source: stable branch of Petters & Kreidenweis 2007, eq. 6.
 */
export function equilibriumDiameter(state: DryParticle & { readonly saturationRatio: Ratio }): Meter {
  const { dryDiameter, kappa, kelvinRatio } = scaled(state);
  const limit = criticalGrowth(kelvinRatio, kappa);
  const highest = exp(logSaturation(limit, kelvinRatio, kappa));
  const S = inRange('saturationRatio', state.saturationRatio, 0, highest);
  if (S === 0 || kappa === 0) return dryDiameter;
  const target = log(S);
  const excess = (lnGrowth: number): number => logSaturation(exp(lnGrowth), kelvinRatio, kappa) - target;
  // Kelvin's effect at the dry size is the largest possible: the water that balances it bounds the answer from below.
  const leastWater = kappa / expm1(kelvinRatio - target);
  if (leastWater < Number.EPSILON) return dryDiameter;
  const lowest = log(expm1(log1p(leastWater) / 3) * (1 - 1e-9));
  const top = log(limit);
  if (excess(top) <= 0) return dryDiameter * (1 + limit);
  return dryDiameter * (1 + exp(findRoot(excess, lowest, top)));
}

function scaled(particle: DryParticle): { dryDiameter: Meter; kappa: Ratio; kelvinRatio: Ratio } {
  const dryDiameter = inRange('dryDiameter', particle.dryDiameter, SMALLEST, LARGEST, 'm');
  const kappa = inRange('kappa', particle.kappa, 0, 2);
  return { dryDiameter, kappa, kelvinRatio: kelvinLength(particle.temperature, particle.surfaceTension) / dryDiameter };
}

/** Logarithm of the saturation ratio; `growth` is wet over dry diameter less one, `kelvinRatio` A over dry diameter. */
function logSaturation(growth: number, kelvinRatio: Ratio, kappa: Ratio): number {
  const kelvin = kelvinRatio / (1 + growth);
  return kappa === 0 ? kelvin : kelvin - log1p(kappa / waterVolume(growth));
}

/** Volume of water over that of the dry particle. */
function waterVolume(growth: number): number {
  return growth * (3 + growth * (3 + growth));
}

/** Growth at the top of the curve. The condition has one root: its left side rises with the growth for kappa below 2. */
function criticalGrowth(kelvinRatio: Ratio, kappa: Ratio): number {
  if (kappa === 0) return 0;
  const excess = (lnGrowth: number): number => {
    const growth = exp(lnGrowth);
    const water = waterVolume(growth);
    return log((kelvinRatio * water * (water + kappa)) / (3 * kappa)) - 4 * log1p(growth);
  };
  const lowest = Math.min(1, Math.sqrt((1.5 * kappa) / (49 * kelvinRatio)), 1.5 / (7 * kelvinRatio));
  const highest = 1 + Math.sqrt((3 * kappa) / kelvinRatio);
  return exp(findRoot(excess, log(lowest / 2), log(highest * 2)));
}
