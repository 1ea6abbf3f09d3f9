/** Will it work here? What a room and an apparatus let happen, and where it ends. */
import { clear, onset, pressureAfter } from './air.ts';
import { answered } from './answered.ts';
import { cloudAt, isSeen } from './cloud.ts';
import { stateOf, stateWith, type Conditions, type State } from './conditions.ts';
import { startsAbove } from './release.ts';
import { pumpedAndWatched, timeToDrop, strokesToDrop } from './vessel-run.ts';

/** What stands in the way, the gravest first. */
export type Obstacle = 'rating' | 'gauge' | 'pump' | 'dry' | 'shallow' | 'frozen' | 'unseen';

/** Pressure drops and differences in Pa, below the start; null where there is no answer. */
export interface Verdict {
  readonly works: boolean;
  readonly obstacles: readonly Obstacle[];
  readonly drop: number;
  /** Drop at which the air becomes saturated. */
  readonly onsetDrop: number | null;
  /** Smallest drop at which the cloud is seen. */
  readonly seenDrop: number | null;
  /** Deepest drop that rating, gauge and pump all allow. */
  readonly deepestDrop: number;
  /** What the gauge shows furthest from the room. */
  readonly gauge: number;
  /** Left before the rating; negative beyond it. */
  readonly ratingMargin: number;
  /** On the side of the room to which the kit goes. */
  readonly rated: number;
  readonly strokes: number | null;
  readonly seconds: number | null;
  /** Fall of the air at the planned drop without droplets, of the thermometer as pumping ends and at most, K. */
  readonly airFall: number | null;
  readonly thermometerFall: number | null;
  readonly thermometerLargestFall: number | null;
  /** A humidity of the vessel with which the planned drop would do, where the air is too dry. */
  readonly neededHumidity: number | null;
}

/** Parts of the way to the deepest drop that are tried first: near its end droplets would freeze. */
const TRIED = [1, 0.7, 0.5, 0.3, 0.2, 0.1, 0.05];
/** Steps of a search for a drop: finer than a gauge is read. */
const SEARCHES = 9;
/** A pump takes ever longer toward its end: this far above it, it still gets anywhere. */
const ABOVE_PUMP_END = 1.05;
const DAMPEST = 0.99;

/** What the conditions let happen at their planned drop. */
export function verdictOn(conditions: Conditions): Verdict {
  const state = stateOf(conditions);
  const { apparatus: { vessel, gauge }, plannedDrop: drop, startPressure, roomPressure } = state;
  const above = startPressure - roomPressure;
  const reading = above - drop;
  const isAbove = startsAbove(state.apparatus);
  const rated = isAbove ? vessel.highestGauge : vessel.lowestGauge;
  const pumpDrop = deepestOfSource(state);
  const deepestDrop = isAbove ? Math.min(vessel.highestGauge, gauge.highestGauge, pumpDrop) : Math.min(above - vessel.lowestGauge, above - gauge.lowestGauge, pumpDrop);
  const onsetDrop = answered(() => startPressure - onset(state).pressure);
  const seenDrop = onsetDrop === null || onsetDrop > deepestDrop ? null : firstSeen(state, onsetDrop, deepestDrop);
  const frozen = onsetDrop !== null && onsetDrop < drop && answered(() => cloudAt(state, drop, undefined, undefined).waterContent) === null;
  const within = drop <= pumpDrop;
  const obstacles = ([
    ['rating', reading < vessel.lowestGauge || above > vessel.highestGauge],
    ['gauge', reading < gauge.lowestGauge || above > gauge.highestGauge],
    ['pump', !within],
    ['dry', onsetDrop === null || onsetDrop > deepestDrop],
    ['shallow', onsetDrop !== null && onsetDrop <= deepestDrop && drop < (seenDrop ?? onsetDrop)],
    ['frozen', within && frozen],
    ['unseen', onsetDrop !== null && onsetDrop <= Math.min(drop, deepestDrop) && seenDrop === null && !frozen],
  ] as const).flatMap(([obstacle, stands]) => (stands ? [obstacle] : []));
  return {
    works: obstacles.length === 0, obstacles, drop, onsetDrop, seenDrop, deepestDrop, gauge: isAbove ? above : reading,
    ratingMargin: isAbove ? rated - above : reading - rated, rated,
    strokes: within && state.apparatus.source.kind === 'stroke-pump' ? answered(() => strokesToDrop(state, drop)) : null,
    seconds: within ? answered(() => timeToDrop(state, drop)) : null,
    airFall: answered(() => state.startTemperature - clear(state, drop).temperature),
    thermometerFall: within ? answered(() => state.startTemperature - pumpedAndWatched(state, drop).end.thermometerReading) : null,
    thermometerLargestFall: within ? answered(() => state.startTemperature - pumpedAndWatched(state, drop).lowest.thermometerReading) : null,
    neededHumidity: onsetDrop === null || onsetDrop > drop ? humidityFor(state) : null,
  };
}

/** How far the source brings the pressure down, Pa below the start. */
function deepestOfSource({ apparatus: { source, vessel }, startPressure, roomPressure }: State): number {
  switch (source.kind) {
    case 'stroke-pump': case 'steady-pump': return startPressure - ABOVE_PUMP_END * source.ultimatePressure;
    // Boyle's law, at the room's temperature, for the air of a bottle squeezed and let go.
    case 'squeeze': return (roomPressure * source.volumeChange) / Math.max(vessel.volume - source.volumeChange, Number.MIN_VALUE);
    case 'pressurise': return source.highestGauge;
  }
}

const seenAt = (state: State, drop: number): boolean => answered(() => isSeen(state, cloudAt(state, drop, undefined, undefined))) ?? false;

/** The smallest drop, between where the air becomes saturated and the deepest, at which a cloud is seen; by halving, which the first visible cloud allows. */
function firstSeen(state: State, from: number, deepest: number): number | null {
  const furthest = TRIED.map((part) => from + part * (deepest - from)).find((drop) => seenAt(state, drop));
  if (furthest === undefined) return null;
  let [low, high] = [from, furthest];
  for (let i = 0; i < SEARCHES; i++) {
    const middle = (low + high) / 2;
    if (seenAt(state, middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** The lowest humidity, to a whole percent, whose air is saturated at half of the planned drop; null where even moist air is not. */
function humidityFor(state: State): number | null {
  for (let percent = 1; percent <= 100 * DAMPEST; percent++) {
    const damp = stateWith(state, { startHumidity: percent / 100 });
    if ((answered(() => onset(damp).pressure) ?? 0) >= pressureAfter(damp, state.plannedDrop / 2)) return percent / 100;
  }
  return null;
}
