/** What is done in a run, event by event. */
import { chosen, inRange } from './range.ts';
import type { CubicMeter, Pascal, PerCubicMeter, Second } from './units.ts';

/** A point of a pressure history. */
export interface TimedPressure {
  /** s */
  readonly time: Second;
  /** Absolute, Pa, 5·10³ to 5·10⁵ */
  readonly pressure: Pascal;
}

/** Gas is taken out, the pressure falling evenly to a value; the valve is closed afterwards. */
export interface Pump {
  readonly kind: 'pump';
  /** Absolute, Pa, not above the pressure at that time */
  readonly to: Pascal;
  /** s, 0 (suddenly) or more */
  readonly duration: Second;
}

/** Gas is taken out by strokes, half of each stroke's time drawing; the valve is closed afterwards. */
export interface StrokePumping {
  readonly kind: 'stroke-pump';
  /** m³ */
  readonly strokeVolume: CubicMeter;
  /** m³; 0 unless given */
  readonly deadVolume?: CubicMeter;
  /** Absolute, Pa; 0 unless given */
  readonly ultimatePressure?: Pascal;
  /** s, above 0 */
  readonly strokeTime: Second;
  /** How many; or `to` */
  readonly strokes?: number;
  /** Absolute, Pa: strokes go on until the gauge has passed it */
  readonly to?: Pascal;
}

/** Gas is taken out at a steady speed; the valve is closed afterwards. */
export interface SteadyPumping {
  readonly kind: 'steady-pump';
  /** Volume per time at the inlet, m³/s */
  readonly speed: number;
  /** Absolute, Pa; 0 unless given */
  readonly ultimatePressure?: Pascal;
  /** s */
  readonly duration: Second;
}

/** The closed vessel's volume changes evenly and stays so. */
export interface Squeeze {
  readonly kind: 'squeeze';
  /** m³, negative where it is squeezed, positive where it is let go */
  readonly volumeChange: CubicMeter;
  /** s, above 0 */
  readonly duration: Second;
}

/** Room air is pressed in, the pressure rising evenly to a value; the valve is closed afterwards. */
export interface Pressurize {
  readonly kind: 'pressurize';
  /** Absolute, Pa, not below the pressure at that time */
  readonly to: Pascal;
  /** s, above 0 */
  readonly duration: Second;
}

/** Gas is taken out or room air is pressed in, whichever brings the pressure evenly to a value; the valve is closed afterwards. */
export interface Bring {
  readonly kind: 'bring';
  /** Absolute, Pa, 5·10³ to 5·10⁵ */
  readonly to: Pascal;
  /** s, 0 (suddenly) or more */
  readonly duration: Second;
}

/** The valve is opened and stays open: the difference from the room falls as through a small opening, to nothing at the end. */
export interface Vent {
  readonly kind: 'vent';
  /** s, above 0; `equalizingTime` gives that of an opening */
  readonly duration: Second;
}

/** The valve is closed, and time passes. */
export interface Hold {
  readonly kind: 'hold';
  /** s, 0 or more */
  readonly duration: Second;
}

/** Time passes, the valve as it was left. */
export interface Wait {
  readonly kind: 'wait';
  /** s, 0 or more */
  readonly duration: Second;
}

/** Particles are let in, with the water they hold in the room's air. */
export interface LetParticlesIn {
  readonly kind: 'particles';
  /** Added to those in the vessel, per m³ of it, 0 to 10¹⁴ */
  readonly number: PerCubicMeter;
}

/** Something done, or left to itself, during a run. */
export type RunEvent =
  | Pump
  | StrokePumping
  | SteadyPumping
  | Squeeze
  | Pressurize
  | Bring
  | Vent
  | Hold
  | Wait
  | LetParticlesIn;

const LONGEST_RUN: Second = 1e6;
/** That each event, or a stroke of it, may take; nothing for what may be sudden. */
const SHORTEST: Record<RunEvent['kind'], Second> = {
  pump: 0, 'stroke-pump': 1e-3, 'steady-pump': 1e-3, squeeze: 1e-3, pressurize: 1e-3, bring: 0, vent: 1e-3, hold: 0, wait: 0, particles: 0,
};

/**
 * The events as given, each duration checked.
 * @throws RangeError outside a range
 */
export function checkedEvents(events: readonly RunEvent[]): readonly RunEvent[] {
  events.forEach((event, i) => {
    const name = `events[${i}].`;
    const shortest = chosen(`${name}kind`, event.kind, SHORTEST);
    if (event.kind === 'particles') inRange(`${name}number`, event.number, 0, 1e14, '1/m³');
    else if (event.kind === 'stroke-pump') inRange(`${name}strokeTime`, event.strokeTime, shortest, 1e4, 's');
    else inRange(`${name}duration`, event.duration, shortest, LONGEST_RUN, 's');
    if ('to' in event && event.kind !== 'stroke-pump') inRange(`${name}to`, event.to, 5e3, 5e5, 'Pa');
    if (event.kind === 'steady-pump') inRange(`${name}speed`, event.speed, 0, 1, 'm³/s');
  });
  return events;
}

/**
 * A pressure history as given, checked.
 * @throws RangeError outside a range, if times fall, or if it is empty
 */
export function checkedHistory(history: readonly TimedPressure[]): readonly TimedPressure[] {
  inRange('pressureHistory.length', history.length, 1, Infinity);
  history.forEach(({ time, pressure }, i) => {
    inRange(`pressureHistory[${i}].time`, time, i === 0 ? -LONGEST_RUN : history[i - 1]!.time, LONGEST_RUN, 's');
    inRange(`pressureHistory[${i}].pressure`, pressure, 5e3, 5e5, 'Pa');
  });
  return history;
}
