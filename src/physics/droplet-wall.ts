/** Walls of a vessel that warm or cool the air inside, and moisten it if they are wet. */
import { HOMOGENEOUS_FREEZING_POINT, MOLAR_MASS_RATIO } from './constants.ts';
import { GROWTH_HIGH } from './droplet-growth.ts';
import { saturationPressureInAir } from './moist-air.ts';
import { inRange } from './range.ts';
import type { Kelvin, Pascal, Ratio, Second } from './units.ts';

/** Walls of the vessel around the air. */
export interface Wall {
  /** In which the air gives up its difference from the walls, s, 10⁻² to 10⁶ */
  readonly timeConstant: Second;
  /** K, 235.15 to 325 */
  readonly temperature: Kelvin;
  /** Wet walls keep, in the same time, vapor of saturation at their temperature against them; dry ones neither give nor take */
  readonly wet: boolean;
}

/** @throws RangeError for a wall outside its ranges */
export function checkWall(wall: Wall): void {
  inRange('wall.timeConstant', wall.timeConstant, 1e-2, 1e6, 's');
  inRange('wall.temperature', wall.temperature, HOMOGENEOUS_FREEZING_POINT, GROWTH_HIGH, 'K');
}

/** Mixing ratio of air saturated at the temperature of a wet wall. */
export function saturatedMixingRatio(T: Kelvin, p: Pascal): Ratio {
  const e = saturationPressureInAir(T, p);
  return (MOLAR_MASS_RATIO * e) / (p - e);
}

/** Its derivative to the pressure, by a difference towards the middle of the range of pressures. */
export function saturatedMixingRatioSlope(T: Kelvin, p: Pascal): number {
  const other = p < 5e4 ? p * (1 + 1e-5) : p * (1 - 1e-5);
  return (saturatedMixingRatio(T, other) - saturatedMixingRatio(T, p)) / (other - p);
}
