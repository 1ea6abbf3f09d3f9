/** A run as a class would write it down: a simulated one of known constants, with the noise of its instruments, as the text of a table. */
import { randomSource } from '../../src/physics/random.ts';
import { simulateRun } from '../../src/physics/run.ts';
import { stateOf, type Conditions } from '../../src/tables/conditions.ts';
import { runSetting } from '../../src/tables/vessel-run.ts';

export const TRUTH = { walls: 9, thermometer: 36, leak: 1 / 2500, offset: 0.25 } as const;
/** Scatter of what is read: Pa, K */
const NOISE = { gauge: 60, thermometer: 0.05 };
export const CLOSED = { from: 30, to: 150 } as const;

/** How a class brings its vessel to another pressure, s; and how often it reads. */
export interface ClassWay {
  readonly duration: number;
  readonly interval: number;
}

export function classRun(conditions: Conditions, seed: number, { duration, interval }: ClassWay = { duration: 20, interval: 5 }): string {
  const state = stateOf(conditions);
  const setting = runSetting(state);
  const { series } = simulateRun({
    ...setting,
    vessel: { ...setting.vessel, wallTimeConstant: TRUTH.walls, leakTimeConstant: 1 / TRUTH.leak },
    thermometer: { ...setting.thermometer, timeConstant: TRUTH.thermometer },
    events: [{ kind: 'hold', duration: 10 }, { kind: 'pump', to: state.startPressure - 20e3, duration }, { kind: 'hold', duration: 120 }],
    interval,
  });
  const random = randomSource(seed, 'class run');
  const rows = series.map(({ time, gauge, thermometerReading }) =>
    [time, ((gauge + NOISE.gauge * random.normal()) / 1000).toFixed(2), (thermometerReading - 273.15 + TRUTH.offset + NOISE.thermometer * random.normal()).toFixed(2)].join(','));
  return ['time (s),gauge (kPa),thermometer (°C)', ...rows].join('\n');
}
