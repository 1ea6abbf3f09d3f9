/** What a pressure difference does to a vessel's wall, and how that stands to its maker's rating. */
import { hoopStress, sphereStress } from '../physics/index.ts';
import type { State } from './conditions.ts';
import { startsAbove } from './release.ts';

/** Inside less outside at a drop, Pa. */
export const acrossWall = (state: State, drop: number): number => state.startPressure - drop - state.gaugeError - state.roomPressure;

/** Tension positive, Pa. */
export function stressAround({ apparatus: { vessel } }: State, pressureDifference: number): number {
  const wall = { pressureDifference, diameter: vessel.diameter, wallThickness: vessel.wallThickness };
  return vessel.shape === 'sphere' ? sphereStress(wall) : hoopStress(wall);
}

/** Smaller than this, a difference is rounding and the planned side decides, Pa. */
const NO_DIFFERENCE = 1;

/** The rated pressure on the side of a difference, against the room; where there is none, on the side to which the kit goes. */
export function ratingToward({ apparatus, gaugeError }: State, difference: number): number {
  const read = difference + gaugeError;
  const isAbove = Math.abs(read) < NO_DIFFERENCE ? startsAbove(apparatus) : read > 0;
  return isAbove ? apparatus.vessel.highestGauge : apparatus.vessel.lowestGauge;
}

/** What is left before the rating; negative beyond it, Pa. */
export function marginLeft(state: State, difference: number): number {
  const rating = ratingToward(state, difference);
  return Math.sign(rating) * (rating - difference);
}
