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

/** The particles' kind, and the water on one of them. */
export interface DropletLaw {
  readonly dryDiameter: Meter;
  readonly kappa: Ratio;
  /** Water on a particle whose droplet has the given radius, kg */
  readonly waterMass: (radius: Meter) => Kilogram;
  /** Share of the droplet's volume that is water, 0 to 1 */
  readonly waterShare: (radius: Meter) => Ratio;
}

/** How one droplet changes. */
export interface DropletRates {
  /** m/s */
  readonly radiusRate: number;
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
  const dryRadius = inRange('nuclei.dryDiameter', dryDiameter, 1e-8, 1e-5, 'm') / 2;
  inRange('nuclei.kappa', kappa, 1e-3, 2, '');
  const dryCube = dryRadius ** 3;
  return {
    dryDiameter,
    kappa,
    waterMass: (radius) => ((4 * Math.PI) / 3) * DENSITY_LIQUID_WATER * Math.max(0, radius ** 3 - dryCube),
    waterShare: (radius) => Math.max(0, 1 - dryCube / radius ** 3),
  };
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
 * Growth (or evaporation) and fall of one droplet.
 * @param law see {@link dropletLaw}
 * @param radius m
 * @param temperature of the gas, K, 235 to 332
 * @param pressure absolute, Pa
 * @param saturationRatio of the gas
 * Source: Maxwell–Mason, Rogers & Yau 1989, eq. 7.18, with the solute of Petters & Kreidenweis 2007, eq. 6, and gas-kinetic
 *   factors of Fuchs & Sutugin 1971 for both coefficients 1. Linear in the saturation ratio, so up to 10 % too fast above
 *   a ratio of 1.3. Fall: Stokes, which overstates it above a radius of 30 µm.
 */
export function dropletOf(
  law: DropletLaw,
  radius: Meter,
  temperature: Kelvin,
  pressure: Pascal,
  saturationRatio: Ratio,
): DropletRates {
  const T = temperature;
  const latentHeat = latentHeatOfVaporization(T);
  const waterVolume = Math.max(law.waterShare(radius), 1e-12);
  const activity = waterVolume / (waterVolume + law.kappa * (1 - waterVolume));
  const equilibrium = activity * exp(kelvinLength(T) / (2 * radius));
  const forHeat =
    ((latentHeat / (GAS_CONSTANT_VAPOR * T) - 1) * latentHeat * DENSITY_LIQUID_WATER * gasKineticResistance(meanFreePathOfHeat(T, pressure) / radius, 1)) /
    (thermalConductivityOfAir(T) * T);
  const forVapor =
    (DENSITY_LIQUID_WATER * GAS_CONSTANT_VAPOR * T * gasKineticResistance(meanFreePathOfVapor(T, pressure) / radius, 1)) /
    (vaporDiffusivity(T, pressure) * saturationPressureInAir(T, pressure));
  const radiusRate = (saturationRatio - equilibrium) / ((equilibrium * forHeat + forVapor) * radius);
  return {
    radiusRate,
    massRate: 4 * Math.PI * radius * radius * DENSITY_LIQUID_WATER * radiusRate,
    fallSpeed: (2 * DENSITY_LIQUID_WATER * STANDARD_GRAVITY * radius * radius) / (9 * viscosityOfAir(T)),
  };
}
