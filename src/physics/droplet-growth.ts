/**
 * Growth of one droplet by diffusion of vapor to it and of heat away from it, the drop's own temperature solved
 * for: at saturation ratios above about 1.3 the usual linearised law is several percent too fast.
 *
 * Vapor: dm/dt = 4πr D′/R_v (e/T − e_r/T_r). Heat: L dm/dt = 4πr k′ (T_r − T). D′ and k′ are the diffusivity and
 * conductivity divided by the gas-kinetic resistance, e_r the vapor pressure over the drop after Köhler.
 * Source: Pruppacher & Klett 1997, ch. 13-2; Fuchs & Sutugin 1971 for the gas-kinetic part. Left out, and small
 * here: ventilation of falling drops, the vapor's own drift (1–2 %), heat capacity of the drop.
 */
import { DENSITY_LIQUID_WATER, GAS_CONSTANT_VAPOR } from './constants.ts';
import {
  gasKineticResistance,
  gasKineticSlope,
  meanFreePathOfHeat,
  meanFreePathOfVapor,
  thermalConductivityOfAir,
  vaporDiffusivity,
} from './diffusion.ts';
import { exp, log } from './elementary.ts';
import { kelvinLength } from './koehler.ts';
import { saturationPressureInAir, vaporPressureOf } from './moist-air.ts';
import { latentHeatOfVaporization, saturationVaporPressure } from './saturation.ts';
import type { Kelvin, Pascal, Ratio } from './units.ts';

/** Lowest and highest temperature of the gas around a growing drop, K. */
export const GROWTH_LOW: Kelvin = 235;
export const GROWTH_HIGH: Kelvin = 325;

/**
 * What a droplet's growth depends on in the gas: K; e/T far from the drop; e_s/T over plane water at the gas's
 * temperature; the Kelvin length for the radius, m; latent heat over conductivity and the vapor's gas constant;
 * diffusivity and mean free paths; the logarithm of e_s/T as a polynomial of the drop's excess temperature; coefficients.
 */
export type Surroundings = readonly [
  temperature: number, vapor: number, saturated: number, kelvin: number, heatingScale: number, diffusivity: number,
  vaporPath: number, heatPath: number, slope1: number, slope2: number, slope3: number, slope4: number,
  condensationCoefficient: number, thermalAccommodation: number,
];

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
  return [
    T,
    vaporPressureOf(p, mixingRatio) / T,
    saturationPressureInAir(T, p) / T,
    kelvinLength(T) / 2,
    latentHeatOfVaporization(T) / (thermalConductivityOfAir(T) * GAS_CONSTANT_VAPOR),
    vaporDiffusivity(T, p),
    meanFreePathOfVapor(T, p),
    meanFreePathOfHeat(T, p),
    (a - 8 * b + 8 * d - e) / (12 * NODE),
    (-a + 16 * b - 30 * c + 16 * d - e) / (24 * NODE ** 2),
    (-a + 2 * b - 2 * d + e) / (12 * NODE ** 3),
    (a - 4 * b + 6 * c - 4 * d + e) / (24 * NODE ** 4),
    condensationCoefficient,
    thermalAccommodation,
  ];
}

/** Relative change of each quantity from one gas to another that is warmer by `nudge`, per kelvin. */
export function changeTo(other: Surroundings, s: Surroundings, nudge: number): Surroundings {
  // Dry air has no vapor in either.
  return s.map((value, i) => (other[i]! / value - 1 || 0) / nudge) as unknown as Surroundings;
}

/** Derivatives of the rates: to the logarithms of radius and pressure, to temperature, and to e/T of the gas. */
export type GrowthSlopes = readonly [
  byLogRadius: Float64Array, byLogPressure: Float64Array, byTemperature: Float64Array, byVapor: Float64Array,
];

/**
 * Writes the rates of change of the logarithms of radii, 1/s, and how much warmer than the gas the droplets are, K.
 * @param s gas from {@link describeGas}
 * @param radius m
 * @param dryRadiusCubed m³; 0 for pure water
 * @param kappa of the dry particles
 * @param rate written, 1/s
 * @param warmth written, K
 * @param slopes where to write the rates' derivatives, if they are wanted; and for these:
 * @param warmer how the gas changes with temperature, from {@link changeTo}
 * @param enhancement how the presence of air changes the saturation pressure: derivative of its logarithm to the pressure's
 */
export function growDroplets(
  s: Surroundings,
  radius: Float64Array,
  dryRadiusCubed: Float64Array,
  kappa: Float64Array,
  rate: Float64Array,
  warmth: Float64Array,
  slopes?: GrowthSlopes,
  warmer = s,
  enhancement = 0,
): void {
  const [
    temperature, vapor, saturated, kelvin, heatingScale, diffusivity, vaporPath, heatPath,
    slope1, slope2, slope3, slope4, condensationCoefficient, thermalAccommodation,
  ] = s;
  const [warming, vaporChange, saturatedChange, kelvinChange, heatingChange, diffusivityChange, vaporPathChange, heatPathChange] = warmer;
  for (let i = 0; i < radius.length; i++) {
    const inverse = 1 / radius[i]!;
    const dryShare = dryRadiusCubed[i]! * inverse * inverse * inverse;
    // A trial step may leave less than the dry particle; there the straight line that touches the curve leads back.
    const dilution = 1 / (dryShare < 1 ? 1 - dryShare * (1 - kappa[i]!) : kappa[i]!);
    const curvature = kelvin * inverse;
    const kelvinFactor = exponential(curvature);
    const koehler = (1 - dryShare) * dilution * kelvinFactor;
    const vaporKnudsen = vaporPath * inverse;
    const heatKnudsen = heatPath * inverse;
    const vaporResistance = gasKineticResistance(vaporKnudsen, condensationCoefficient);
    const heatResistance = gasKineticResistance(heatKnudsen, thermalAccommodation);
    const loss = heatingScale * heatResistance;
    const heating = (diffusivity * loss) / vaporResistance;

    // The linearised law is enough within 10⁻⁵ K, else starts Newton's method; after 10⁻³ K the next correction would be
    // below 10⁻⁷ K.
    let plane = saturated;
    let damping = 1 / (1 + heating * koehler * plane * slope1);
    let excess = damping * heating * (vapor - koehler * plane);
    let slope = slope1;
    let correction = 100 * excess;
    for (let turn = 0; turn < 20 && Math.abs(correction) > 1e-3; turn++) {
      plane = saturated * exponential(excess * (slope1 + excess * (slope2 + excess * (slope3 + excess * slope4))));
      slope = slope1 + excess * (2 * slope2 + excess * (3 * slope3 + excess * 4 * slope4));
      damping = 1 / (1 + heating * koehler * plane * slope);
      correction = damping * (heating * (vapor - koehler * plane) - excess);
      excess += correction;
    }
    const scale = (GROWTH_SCALE * inverse * inverse) / loss;
    const growth = scale * excess;
    rate[i] = growth;
    warmth[i] = excess;
    if (slopes === undefined) continue;

    const [byLogRadius, byLogPressure, byTemperature, byVapor] = slopes;
    // How the resistances rise with the mean free paths, as powers of these; the paths over the radius fall with it and the pressure.
    const vaporPower = gasKineticSlope(vaporKnudsen, condensationCoefficient) / vaporResistance;
    const heatPower = gasKineticSlope(heatKnudsen, thermalAccommodation) / heatResistance;
    const ease = growth * (damping * (vaporPower - heatPower) + heatPower);
    const response = scale * damping * heating;
    const surface = response * plane * koehler;
    const solute = response * plane * 3 * dryShare * kappa[i]! * dilution * dilution * kelvinFactor;
    const heatLoss = heatingChange + heatPower * heatPathChange;
    byVapor[i] = response;
    byLogRadius[i] = ease - 2 * growth + surface * curvature - solute;
    byLogPressure[i] = ease - damping * growth + response * vapor - surface * enhancement;
    byTemperature[i] =
      growth * (damping * (heatLoss + diffusivityChange - vaporPower * vaporPathChange) - heatLoss) +
      response * vapor * vaporChange -
      surface * ((slope - slope1) * temperature * warming + saturatedChange + curvature * kelvinChange);
  }
}

/** exp(x), by its series where that is exact to double precision: most drops are within a tenth of a kelvin of the gas, and above 0.1 µm. */
function exponential(x: number): number {
  if (x > 0.01 || x < -0.01) return exp(x);
  return 1 + x * (1 + x * (1 / 2 + x * (1 / 6 + x * (1 / 24 + x * (1 / 120 + x * (1 / 720))))));
}
