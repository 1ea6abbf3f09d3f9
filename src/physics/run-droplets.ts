/** Droplets of a run: one size stands for all, each on a dry particle of one kind. */
import { DENSITY_LIQUID_WATER, GAS_CONSTANT_VAPOR, STANDARD_GRAVITY } from './constants.ts';
import {
  gasKineticResistance,
  meanFreePathOfHeat,
  meanFreePathOfVapor,
  thermalConductivityOfAir,
  vaporDiffusivity,
  viscosityOfAir,
} from './diffusion.ts';
import { exp } from './elementary.ts';
import { criticalPoint, equilibriumDiameter, kelvinLength } from './koehler.ts';
import { saturationPressureInAir } from './moist-air.ts';
import { inRange } from './range.ts';
import { latentHeatOfVaporization } from './saturation.ts';
import type { Kelvin, Kilogram, Meter, MeterPerSecond, Pascal, Ratio } from './units.ts';

/** The kind of the particles that droplets form on. */
export interface DropletLaw {
  readonly dryDiameter: Meter;
  readonly kappa: Ratio;
}

/** How one droplet changes. */
export interface DropletRates {
  /** Of the unknown of {@link sizeOf}, 1/s */
  readonly sizeRate: number;
  /** kg/s */
  readonly massRate: number;
  /** m/s */
  readonly fallSpeed: MeterPerSecond;
}

/**
 * The law of particles of one kind.
 * @param dryDiameter m, 10⁻⁸ to 10⁻⁵
 * @param kappa hygroscopicity, 10⁻³ to 2
 * @throws RangeError outside a range
 */
export function dropletLaw(dryDiameter: Meter, kappa: Ratio): DropletLaw {
  inRange('nuclei.dryDiameter', dryDiameter, 1e-8, 1e-5, 'm');
  inRange('nuclei.kappa', kappa, 1e-3, 2);
  return { dryDiameter, kappa };
}

/**
 * The unknown that stands for the radius: with q = (r/r_dry)², it is q − 1/q. It grows and shrinks as evenly as a droplet's
 * square does, and none stands for a radius that is not above 0.
 */
export function sizeOf({ dryDiameter }: DropletLaw, radius: Meter): number {
  const square = ((2 * radius) / dryDiameter) ** 2;
  return square - 1 / square;
}

/** The radius that an unknown stands for, m. */
export function radiusOf({ dryDiameter }: DropletLaw, size: number): Meter {
  return (dryDiameter / 2) * Math.sqrt((size + Math.sqrt(size * size + 4)) / 2);
}

/** Water on a particle whose droplet has a radius, kg. */
export function waterMass({ dryDiameter }: DropletLaw, radius: Meter): Kilogram {
  return (4 / 3) * Math.PI * DENSITY_LIQUID_WATER * Math.max(0, radius * radius * radius - (dryDiameter / 2) ** 3);
}

/**
 * Radius of the haze droplet in equilibrium with vapor; where the vapor would let it grow without end, the largest that is stable.
 * @param law see {@link dropletLaw}
 * @param temperature K, 235 to 332
 * @param saturationRatio 0 or more
 * @returns m
 * @throws RangeError outside a range
 * Source: Köhler's equation; see {@link equilibriumDiameter}.
 */
export function hazeRadius(law: DropletLaw, temperature: Kelvin, saturationRatio: Ratio): Meter {
  const particle = { dryDiameter: law.dryDiameter, kappa: law.kappa, temperature };
  const highest = criticalPoint(particle).saturationRatio;
  return equilibriumDiameter({ ...particle, saturationRatio: Math.min(saturationRatio, highest) }) / 2;
}

/**
 * Growth (or evaporation) and fall of one droplet in gas of a temperature and a pressure: a function of its kind, its
 * radius in m, and the pressure of the vapor in the gas in Pa.
 * @param temperature of the gas, K, 235 to 332
 * @param pressure absolute, Pa
 * Source: Maxwell–Mason, Rogers & Yau 1989, eq. 7.18, with the solute of Petters & Kreidenweis 2007, eq. 6, and gas-kinetic
 *   factors of Fuchs & Sutugin 1971 for both coefficients 1. Linear in the saturation ratio, so up to 10 % too fast above
 *   a ratio of 1.3. Fall: Stokes, which overstates it above a radius of 30 µm.
 */
export function dropletsIn(temperature: Kelvin, pressure: Pascal): (law: DropletLaw, radius: Meter, vaporPressure: Pascal) => DropletRates {
  const T = temperature;
  const latentHeat = latentHeatOfVaporization(T);
  const saturationPressure = saturationPressureInAir(T, pressure);
  const heatPath = meanFreePathOfHeat(T, pressure);
  const vaporPath = meanFreePathOfVapor(T, pressure);
  const kelvinRadius = kelvinLength(T) / 2;
  const heatTerm = ((latentHeat / (GAS_CONSTANT_VAPOR * T) - 1) * latentHeat * DENSITY_LIQUID_WATER) / (thermalConductivityOfAir(T) * T);
  const vaporTerm = (DENSITY_LIQUID_WATER * GAS_CONSTANT_VAPOR * T) / (vaporDiffusivity(T, pressure) * saturationPressure);
  const fall = (2 * DENSITY_LIQUID_WATER * STANDARD_GRAVITY) / (9 * viscosityOfAir(T));
  return (law, radius, vaporPressure) => {
    const ratio = (2 * radius) / law.dryDiameter;
    const share = Math.max(1 - 1 / (ratio * ratio * ratio), 1e-12);
    const activity = share / (share + law.kappa * (1 - share));
    const equilibrium = activity * exp(kelvinRadius / radius);
    const forHeat = heatTerm * gasKineticResistance(heatPath / radius, 1);
    const forVapor = vaporTerm * gasKineticResistance(vaporPath / radius, 1);
    const radiusRate = (vaporPressure / saturationPressure - equilibrium) / ((equilibrium * forHeat + forVapor) * radius);
    return {
      sizeRate: (2 * (ratio * ratio + 1 / (ratio * ratio)) * radiusRate) / radius,
      massRate: 4 * Math.PI * radius * radius * DENSITY_LIQUID_WATER * radiusRate,
      fallSpeed: fall * radius * radius,
    };
  };
}
