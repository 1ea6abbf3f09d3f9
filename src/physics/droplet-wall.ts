/** Walls of a vessel that warm or cool the air inside, and moisten it if they are wet; and how air changes by these and by its pressure. */
import {
  GAS_CONSTANT_DRY_AIR,
  GAS_CONSTANT_VAPOR,
  HEAT_CAPACITY_DRY_AIR,
  HEAT_CAPACITY_VAPOR,
  HOMOGENEOUS_FREEZING_POINT,
} from './constants.ts';
import { GROWTH_HIGH } from './droplet-growth.ts';
import { saturationMixingRatio } from './moist-air.ts';
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

/**
 * Rates of enthalpy and of total water, both per kg of dry air, of air in a vessel.
 * @param T K
 * @param p absolute, Pa
 * @param q mixing ratio, kg of vapor per kg of dry air
 * @param pressureRate Pa/s
 * @param wall none: no exchange
 * @returns J/(kg·s) and 1/s
 * Source: first law for an open parcel, dH = v dp + heat; Bohren & Albrecht 1998, ch. 6.
 */
export function gasRates(T: Kelvin, p: Pascal, q: Ratio, pressureRate: number, wall: Wall | undefined): readonly [enthalpy: number, water: number] {
  let heat = 0;
  let vapor = 0;
  if (wall !== undefined) {
    heat = ((HEAT_CAPACITY_DRY_AIR + q * HEAT_CAPACITY_VAPOR) * (wall.temperature - T)) / wall.timeConstant;
    if (wall.wet) vapor = (saturationMixingRatio(wall.temperature, p) - q) / wall.timeConstant;
  }
  return [((GAS_CONSTANT_DRY_AIR + q * GAS_CONSTANT_VAPOR) * T * pressureRate) / p + heat + HEAT_CAPACITY_VAPOR * T * vapor, vapor];
}
