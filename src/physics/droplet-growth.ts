/**
 * Growth of one droplet by diffusion of vapor to it and of heat away from it, the drop's own temperature solved
 * for: at saturation ratios above about 1.3 the usual linearised law is several percent too fast.
 *
 * Vapor: dm/dt = 4πr D′/R_v (e/T − e_r/T_r). Heat: L dm/dt = 4πr k′ (T_r − T). D′ and k′ are the diffusivity and
 * conductivity divided by the gas-kinetic resistance, e_r the vapor pressure over the drop after Köhler.
 * Source: Pruppacher & Klett 1997, ch. 13-2; Fuchs & Sutugin 1971 for the gas-kinetic part. Left out, and small
 * here: ventilation of falling drops, the vapor's own drift (1–2 %), heat capacity of the drop.
 */
import { DENSITY_LIQUID_WATER, GAS_CONSTANT_VAPOR, MOLAR_MASS_RATIO } from './constants.ts';
import {
  gasKineticResistance,
  meanFreePathOfHeat,
  meanFreePathOfVapor,
  thermalConductivityOfAir,
  vaporDiffusivity,
} from './diffusion.ts';
import { exp, log } from './elementary.ts';
import { kelvinLength } from './koehler.ts';
import { saturationPressureInAir } from './moist-air.ts';
import { latentHeatOfVaporization, saturationVaporPressure } from './saturation.ts';
import type { Kelvin, Pascal, Ratio } from './units.ts';

/** Lowest and highest temperature of the gas around a growing drop, K. */
export const GROWTH_LOW: Kelvin = 235;
export const GROWTH_HIGH: Kelvin = 325;

/** What a droplet's growth depends on in the gas, and what the last call of {@link logGrowthRate} found on the way. */
export interface Surroundings {
  readonly condensationCoefficient: Ratio;
  readonly thermalAccommodation: Ratio;
  readonly temperature: number;
  /** e/T far from the drop */
  readonly vapor: number;
  /** e_s/T over plane water at the gas's temperature; its logarithm is a polynomial of the drop's excess temperature */
  readonly saturated: number;
  readonly slope1: number;
  readonly slope2: number;
  readonly slope3: number;
  readonly slope4: number;
  /** Kelvin length for the radius, m */
  readonly kelvin: number;
  /** Latent heat over conductivity and the vapor's gas constant */
  readonly heatingScale: number;
  readonly diffusivity: number;
  readonly vaporPath: number;
  readonly heatPath: number;
  /** How much warmer than the gas the last drop is, K */
  excess: number;
}

/** ln(radius) grows by this times D′(e/T − e_r/T_r)/r². */
const GROWTH_SCALE = 1 / (GAS_CONSTANT_VAPOR * DENSITY_LIQUID_WATER);
/** Spacing of the temperatures, K, through which the saturation pressure's polynomial goes. */
const NODE = 3;

/** What is the same for all drops in gas of this state. */
export function describeGas(T: Kelvin, p: Pascal, mixingRatio: Ratio, condensationCoefficient: Ratio, thermalAccommodation: Ratio): Surroundings {
  const logAt = (offset: number): number => log(saturationVaporPressure(T + offset) / (T + offset));
  const a = logAt(-2 * NODE);
  const b = logAt(-NODE);
  const c = logAt(0);
  const d = logAt(NODE);
  const e = logAt(2 * NODE);
  return {
    condensationCoefficient,
    thermalAccommodation,
    temperature: T,
    vapor: (p * mixingRatio) / (MOLAR_MASS_RATIO + mixingRatio) / T,
    saturated: saturationPressureInAir(T, p) / T,
    slope1: (a - 8 * b + 8 * d - e) / (12 * NODE),
    slope2: (-a + 16 * b - 30 * c + 16 * d - e) / (24 * NODE ** 2),
    slope3: (-a + 2 * b - 2 * d + e) / (12 * NODE ** 3),
    slope4: (a - 4 * b + 6 * c - 4 * d + e) / (24 * NODE ** 4),
    kelvin: kelvinLength(T) / 2,
    diffusivity: vaporDiffusivity(T, p),
    vaporPath: meanFreePathOfVapor(T, p),
    heatPath: meanFreePathOfHeat(T, p),
    heatingScale: latentHeatOfVaporization(T) / (thermalConductivityOfAir(T) * GAS_CONSTANT_VAPOR),
    excess: 0,
  };
}

/**
 * Rate of change of the logarithm of a droplet's radius, 1/s.
 * @param s gas from {@link describeGas}
 * @param radius m
 * @param dryRadiusCubed m³; 0 for pure water
 * @param kappa of the dry particle
 */
export function logGrowthRate(s: Surroundings, radius: number, dryRadiusCubed: number, kappa: number): number {
  const inverse = 1 / radius;
  const dryShare = dryRadiusCubed * inverse * inverse * inverse;
  // A trial step may leave less than the dry particle; there the straight line that touches the curve leads back.
  const activity = (1 - dryShare) / (dryShare < 1 ? 1 - dryShare * (1 - kappa) : kappa);
  const koehler = activity * exp(s.kelvin * inverse);
  const vaporResistance = gasKineticResistance(s.vaporPath * inverse, s.condensationCoefficient);
  const heatResistance = gasKineticResistance(s.heatPath * inverse, s.thermalAccommodation);
  const diffusivity = s.diffusivity / vaporResistance;
  const heating = s.heatingScale * diffusivity * heatResistance;

  // The linearised law starts Newton's method; after a correction of 10⁻⁴ K the next would be below 10⁻⁹ K.
  let plane = s.saturated;
  let slope = s.slope1;
  let excess = (heating * (s.vapor - koehler * plane)) / (1 + heating * koehler * plane * slope);
  for (let turn = 0; turn < 20; turn++) {
    const exponent = excess * (s.slope1 + excess * (s.slope2 + excess * (s.slope3 + excess * s.slope4)));
    plane = s.saturated * exponential(exponent);
    slope = s.slope1 + excess * (2 * s.slope2 + excess * (3 * s.slope3 + excess * 4 * s.slope4));
    const correction = (heating * (s.vapor - koehler * plane) - excess) / (1 + heating * koehler * plane * slope);
    excess += correction;
    if (!(Math.abs(correction) > 1e-4)) break;
  }
  s.excess = excess;
  return (GROWTH_SCALE * diffusivity * inverse * inverse * excess) / heating;
}

/** exp(x), by its series where that is exact to double precision: most drops are within a tenth of a kelvin of the gas. */
function exponential(x: number): number {
  if (x > 0.01 || x < -0.01) return exp(x);
  return 1 + x * (1 + x * (1 / 2 + x * (1 / 6 + x * (1 / 24 + x * (1 / 120 + x / 720)))));
}
