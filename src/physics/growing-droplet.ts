/** One cloud droplet: how fast it grows or evaporates in given air, and how warm it is meanwhile. */
import { HOMOGENEOUS_FREEZING_POINT } from './constants.ts';
import { coefficients } from './droplet-checks.ts';
import { describeGas, growDroplets, GROWTH_HIGH } from './droplet-growth.ts';
import type { MoistAir } from './moist-air.ts';
import { inRange } from './range.ts';
import type { Kelvin, Meter, MeterPerSecond, Ratio } from './units.ts';

/** A droplet in the gas around it. */
export interface GrowingDroplet {
  /** m, 10⁻⁹ to 10⁻³ */
  readonly diameter: Meter;
  /** Of the particle dissolved in it, m, 10⁻⁹ to `diameter`; pure water unless given */
  readonly dryDiameter?: Meter;
  /** Hygroscopicity of that particle, 0 to 2; to be given with `dryDiameter` */
  readonly kappa?: Ratio;
  /** 235.15 to 325 K; may be supersaturated */
  readonly air: MoistAir;
  /** Share of the vapor molecules that stay where they hit, 0.001 to 1; 1 unless given */
  readonly condensationCoefficient?: Ratio;
  /** Share of the air molecules that leave as warm as the drop, 0.001 to 1; 1 unless given */
  readonly thermalAccommodation?: Ratio;
}

/**
 * Rate of change of a droplet's radius.
 * @param droplet see {@link GrowingDroplet}
 * @returns m/s, negative where it evaporates; the diameter changes twice as fast
 * @throws RangeError outside a range
 * Source: Pruppacher & Klett 1997, ch. 13-2, not linearised; Fuchs & Sutugin 1971 for the gas-kinetic corrections.
 */
export function growthRate(droplet: GrowingDroplet): MeterPerSecond {
  const { rate } = growthOf(droplet);
  return (rate * droplet.diameter) / 2;
}

/**
 * Temperature of a droplet while it grows or evaporates.
 * @param droplet see {@link GrowingDroplet}
 * @returns K
 * @throws RangeError outside a range
 * Source: as {@link growthRate}.
 */
export function dropletTemperature(droplet: GrowingDroplet): Kelvin {
  return droplet.air.temperature + growthOf(droplet).warmth;
}

/** Rate of change of ln(radius), 1/s, and how much warmer than the gas the droplet is, K. */
function growthOf(droplet: GrowingDroplet): { rate: number; warmth: number } {
  const { air, dryDiameter } = droplet;
  inRange('air.temperature', air.temperature, HOMOGENEOUS_FREEZING_POINT, GROWTH_HIGH, 'K');
  const diameter = inRange('diameter', droplet.diameter, 1e-9, 1e-3, 'm');
  if ((dryDiameter === undefined) !== (droplet.kappa === undefined)) {
    throw new RangeError(`dryDiameter is ${dryDiameter} and kappa is ${droplet.kappa}; give both or neither`);
  }
  const dry = dryDiameter === undefined ? 0 : inRange('dryDiameter', dryDiameter, 1e-9, diameter, 'm');
  const kappa = inRange('kappa', droplet.kappa ?? 0, 0, 2);
  // A dry insoluble particle has the vapor pressure of water of its size: as pure water it says the same without 0/0.
  const solute = kappa === 0 ? 0 : (dry / 2) ** 3;
  const [rate, warmth] = [new Float64Array(1), new Float64Array(1)];
  const gas = describeGas(air.temperature, air.pressure, air.mixingRatio, ...coefficients(droplet));
  growDroplets(gas, Float64Array.of(diameter / 2), Float64Array.of(solute), Float64Array.of(kappa), rate, warmth);
  return { rate: rate[0]!, warmth: warmth[0]! };
}
