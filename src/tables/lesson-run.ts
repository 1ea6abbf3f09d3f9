/** A lesson's steps as a simulated run: what gauge, thermometer and gas do, minute by minute. */
import { simulateRun, type Run, type RunEvent } from '../physics/index.ts';
import { stateOf, stateWith, type Conditions, type State } from './conditions.ts';
import { startsAbove } from './release.ts';
import { PLAIN_PUMPING, pumpingTime, runSetting } from './vessel-run.ts';

/** A step of a run sheet, as far as the vessel is concerned. Seconds from the bell, SI. */
export interface PlannedStep {
  readonly at: number;
  readonly duration: number;
  readonly action: string;
  /** Fall of pressure below the start that is reached at its end, Pa. */
  readonly drop?: number;
  readonly particles?: string;
}

/** A vessel opened to the room has its pressure within a few seconds. */
const VENT_DURATION = 5;

/** The run of a lesson in its room and vessel. Lasts until the end of the last step. */
export function lessonRun(conditions: Conditions, steps: readonly PlannedStep[]): Run {
  const state = stateOf(conditions);
  // A bottle that will be let go has the pressure of the room until a step presses air into it.
  return simulateRun({
    ...runSetting(stateWith(state, { startPressure: state.roomPressure })),
    nuclei: nucleiOf(state, steps),
    events: eventsOf(state, steps),
    duration: Math.max(0, ...steps.map(({ at, duration }) => at + duration)),
    interval: 2,
  });
}

/** What droplets form on, once it is let in: that of the first step that lets particles in. None at the start. */
function nucleiOf(state: State, steps: readonly PlannedStep[]): { number: number; dryDiameter: number; kappa: number } | undefined {
  const named = steps.find(({ action }) => action === 'particles');
  const particles = state.particles.find(({ id }) => id === named?.particles) ?? (named === undefined ? undefined : state.particles[0]);
  return particles && { number: 0, dryDiameter: particles.dryDiameter, kappa: particles.kappa };
}

/** The steps as events without gaps: what is done, then waiting until the next step. */
function eventsOf(state: State, steps: readonly PlannedStep[]): RunEvent[] {
  const events: RunEvent[] = [];
  let pressure = state.roomPressure;
  let now = 0;
  for (const step of [...steps].sort((a, b) => a.at - b.at)) {
    if (step.at > now) events.push({ kind: 'wait', duration: step.at - now });
    const done = eventsOfStep(state, step, pressure);
    events.push(...done.events);
    pressure = done.pressure;
    now = step.at + step.duration;
  }
  return events;
}

/** A step's events, which fill its duration, and the pressure it leaves. */
function eventsOfStep(state: State, step: PlannedStep, pressure: number): { events: RunEvent[]; pressure: number } {
  const { action, duration } = step;
  const rest = (used: number): RunEvent => ({ kind: 'wait', duration: Math.max(0, duration - used) });
  if (action === 'pump') {
    const target = state.startPressure - (step.drop ?? (startsAbove(state.apparatus) ? 0 : state.plannedDrop));
    const time = Math.min(duration, target < pressure ? pumpingTime(state, pressure, target) : PLAIN_PUMPING);
    // A closed vessel does not keep the pressure it was brought to: its air warms or cools to the walls and takes up vapor.
    return { events: [{ kind: 'bring', to: target, duration: time }, rest(time)], pressure: target };
  }
  if (action === 'vent') {
    const opening = Math.min(duration, state.apparatus.source.kind === 'pressurise' ? state.apparatus.source.releaseTime : VENT_DURATION);
    return { events: [{ kind: 'vent', duration: opening }, rest(opening)], pressure: state.roomPressure };
  }
  if (action === 'particles') {
    const number = (state.particles.find(({ id }) => id === step.particles) ?? state.particles[0])?.number ?? 0;
    // Low pressure draws them in with air of the room, until the gauge is back at zero.
    const opening = pressure < state.roomPressure ? Math.min(duration, VENT_DURATION) : 0;
    if (opening === 0) return { events: [{ kind: 'particles', number }, rest(0)], pressure };
    return { events: [{ kind: 'vent', duration: opening }, { kind: 'particles', number }, { kind: 'hold', duration: duration - opening }], pressure: state.roomPressure };
  }
  return { events: [action === 'hold' ? { kind: 'hold', duration } : rest(0)], pressure };
}
