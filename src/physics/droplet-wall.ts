/** Walls of a vessel that warm or cool the air inside, and moisten it if they are wet. */
import { HOMOGENEOUS_FREEZING_POINT } from './constants.ts';
import { GROWTH_HIGH } from './droplet-growth.ts';
import { inRange } from './range.ts';
import type { Kelvin, Second } from './units.ts';

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
