/** A lesson's run in a vessel as a series in time: pressure, gas, thermometer, vapor and cloud. */
import { inRange } from './range.ts';
import { performer } from './run-actions.ts';
import { checkedEvents, checkedHistory, type RunEvent, type TimedPressure } from './run-events.ts';
import type { RunInput } from './run-input.ts';
import { startRecorder, type RunPoint } from './run-recorder.ts';
import type { Second } from './units.ts';

/** A run as computed. */
export interface Run {
  /** In order of time, no time twice: every interval, every point of the history, every end of an event and of a stroke */
  readonly series: readonly RunPoint[];
  /** When each event ends, s, in the order of the events */
  readonly eventEnds: readonly Second[];
}

/**
 * A run of the demonstration: what the gauge, the gas, the thermometer and the cloud do in time.
 * @param input see {@link RunInput}; a vessel without a time constant of the walls is adiabatic, a thermometer without
 *   one shows the gas
 * @returns see {@link Run}; with a pressure history, dry walls and no particles it solves
 *   dT/dt = (R/c_p)(T/p) dp/dt + (T_wall − T)/τ_wall and dT_m/dt = (T − T_m)/τ_m
 * @throws RangeError outside a range, or where gas or droplets leave the range of the formulas
 * Source: see vessel-equations.ts.
 */
export function simulateRun(input: RunInput): Run {
  const given = [input.pressureHistory, input.pump, input.events].filter((way) => way !== undefined).length;
  if (given !== 1) throw new RangeError(`${given} of pressureHistory, pump and events are given; give exactly one`);
  const { pressureHistory } = input;
  if (pressureHistory !== undefined) return followHistory(input, checkedHistory(pressureHistory));
  return followEvents(input, checkedEvents(input.pump !== undefined ? [input.pump] : input.events ?? []));
}

function followHistory(input: RunInput, history: readonly TimedPressure[]): Run {
  const from = Math.min(0, history[0]!.time);
  const last = history[history.length - 1]!;
  const to = input.duration === undefined ? last.time : inRange('duration', input.duration, last.time, 1e6, 's');
  const recorder = startRecorder(input, from, to - from);
  const isHeld = (since: Second, until: Second): boolean =>
    (input.holds ?? []).some((hold) => since >= hold.from && until <= hold.to);
  history.forEach((point, i) => {
    // Up to the first point the pressure is that of the start.
    if (i === 0) {
      recorder.advance(point.time, { pressureRate: () => 0 });
      return recorder.jumpTo(point.pressure);
    }
    const before = history[i - 1]!;
    const span = point.time - before.time;
    if (isHeld(before.time, point.time)) return recorder.advance(point.time, {});
    if (span === 0) return recorder.jumpTo(point.pressure);
    const rate = (point.pressure - recorder.pressure()) / span;
    recorder.advance(point.time, { pressureRate: () => rate });
  });
  recorder.advance(to, { pressureRate: () => 0 });
  return { series: recorder.series, eventEnds: [] };
}

function followEvents(input: RunInput, events: readonly RunEvent[]): Run {
  const known = events.reduce((sum, event) => sum + knownDuration(event), 0);
  const recorder = startRecorder(input, 0, Math.max(known, input.duration ?? 0));
  const perform = performer(input, recorder);
  const eventEnds = events.map((event) => {
    perform(event);
    return recorder.time();
  });
  if (input.duration !== undefined) {
    const end = recorder.time();
    perform({ kind: 'wait', duration: inRange('duration', input.duration, end, 1e6, 's') - end });
  }
  return { series: recorder.series, eventEnds };
}

/** How long an event takes; strokes up to a pressure count as ten, which only sets the default interval. */
function knownDuration(event: RunEvent): Second {
  if (event.kind === 'particles') return 0;
  return event.kind === 'stroke-pump' ? event.strokeTime * (event.strokes ?? 10) : event.duration;
}
