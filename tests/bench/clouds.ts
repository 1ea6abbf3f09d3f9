/** Times of whole computations: clouds in a vessel, a lesson's run, a fit, a Monte Carlo propagation. */
import * as lib from '../../src/physics/index.ts';
import { processorTimes, quantile, type BenchRow, type BenchSection } from './section.ts';

const random = lib.randomSource(20261125, 'bench');
const between = (low: number, high: number): number => low + (high - low) * random.uniform();
const decades = (low: number, high: number): number => 10 ** between(Math.log10(low), Math.log10(high));

/** 60 s in a vessel whose pressure follows what `history` gives; particles of 100 classes and walls at random. */
function vesselRun(history: (pressure: number) => lib.PressurePoint[]): lib.Condensation {
  const temperature = between(283, 296);
  const pressure = between(8e4, 1.03e5);
  const pressureHistory = history(pressure);
  const walls = random.uniform();
  return {
    start: lib.moistAir({ temperature, pressure, relativeHumidity: between(0.5, 1) }),
    modes: [
      {
        medianDryDiameter: decades(3e-8, 5e-7),
        geometricStandardDeviation: between(1.2, 2.2),
        kappa: decades(0.02, 1.28),
        number: decades(1e6, 3e12),
      },
    ],
    pressureHistory,
    classes: 100,
    ...(walls < 1 / 3 ? {} : { wall: { timeConstant: between(3, 10), temperature, wet: walls < 2 / 3 } }),
  };
}

/** Pumping, holding and letting air back in. */
function pumped(pressure: number): lib.PressurePoint[] {
  const end = between(1, 40);
  const lowest = pressure - between(3e3, 2.5e4);
  const released = between(end + 5, 55);
  return [
    { time: 0, pressure },
    { time: end, pressure: lowest },
    { time: released, pressure: lowest },
    { time: released + 2, pressure },
    { time: 60, pressure },
  ];
}

/** Up and down in six legs of 10 s, each to a pressure at random: clouds that form, fade and form again. */
function zigzag(pressure: number): lib.PressurePoint[] {
  const corners = Array.from({ length: 6 }, (_, leg) => ({ time: 10 * (leg + 1), pressure: pressure - between(0, 2.5e4) }));
  return [{ time: 0, pressure }, ...corners];
}

/** A lesson of 50 minutes: ten trials of pumping, looking, letting air in and waiting, with wet walls. */
function lesson(particles: number): lib.RunInput {
  const start = lib.moistAir({ temperature: between(290, 296), pressure: between(8e4, 1.02e5), relativeHumidity: 0.9 });
  const trial = [
    { kind: 'pump', to: start.pressure - between(5e3, 2e4), duration: 20 },
    { kind: 'hold', duration: 30 },
    { kind: 'vent', duration: 2 },
    { kind: 'hold', duration: 248 },
  ] as const;
  return {
    start,
    vessel: { volume: 0.003, wallTimeConstant: between(4, 10), walls: 'wet', height: 0.2 },
    thermometer: { timeConstant: between(5, 30) },
    ...(particles > 0 ? { nuclei: { number: particles } } : {}),
    events: Array.from({ length: 10 }, () => trial).flat(),
  };
}

/** Readings every two seconds of a run of known constants. */
function recorded(): { readings: lib.VesselReading[]; start: lib.MoistAir } {
  const start = lib.moistAir({ temperature: 294, pressure: 1e5, relativeHumidity: 0.5 });
  const { series } = lib.simulateRun({
    start,
    pressureHistory: [{ time: 0, pressure: 1e5 }, { time: 16, pressure: 7.5e4 }, { time: 120, pressure: 7.5e4 }],
    wallTimeConstant: between(4, 10),
    thermometerTimeConstant: between(5, 30),
    interval: 2,
  });
  return { start, readings: series.map(({ time, pressure, thermometerReading }) => ({ time, pressure, thermometer: thermometerReading + 0.05 * random.normal() })) };
}

/** Name, number of runs, and a function that makes ready and gives what is to be timed. */
const RUNS: readonly (readonly [name: string, runs: number, prepare: () => () => unknown])[] = [
  ['condense, 100 classes, 60 s', 200, () => { const input = vesselRun(pumped); return () => lib.condense(input); }],
  ['the same, six legs of pressure', 200, () => { const input = vesselRun(zigzag); return () => lib.condense(input); }],
  ['simulateRun, 50 minutes, no particles', 20, () => { const input = lesson(0); return () => lib.simulateRun(input); }],
  ['simulateRun, 50 minutes, with a cloud', 20, () => { const input = lesson(decades(1e8, 1e11)); return () => lib.simulateRun(input); }],
  ['fitVessel, 61 readings', 10, () => { const { readings, start } = recorded(); return () => lib.fitVessel(readings, { start }); }],
  [
    'particleHistory, 6 hours', 20,
    () => {
      const input = { number: decades(1e9, 1e12), medianDiameter: 2e-7, geometricStandardDeviation: 1.6, vessel: { shape: 'sphere', volume: 0.003 }, times: [21600] } as const;
      return () => lib.particleHistory(input);
    },
  ],
  [
    'propagateMonteCarlo, 200,000 trials', 5,
    () => {
      const seed = Math.floor(1e6 * random.uniform());
      const inputs = { a: { value: 5, standardUncertainty: 0.1 }, b: { value: 3, standardUncertainty: 0.2, distribution: 'rectangular' } } as const;
      return () => lib.propagateMonteCarlo(({ a, b }) => a * b, inputs, { seed });
    },
  ],
];

function timeOf(name: string, runs: number, prepare: () => () => unknown): BenchRow {
  for (let i = 0; i < Math.ceil(runs / 10); i++) prepare()();
  const times = processorTimes(Array.from({ length: runs }, prepare), (run) => run());
  return [name, String(runs), ...[0.5, 0.9, 1].map((share) => quantile(times, share).toFixed(1))];
}

export const clouds: BenchSection = {
  name: 'clouds',
  title: 'Whole computations: milliseconds of processor time on one core, over runs at random (seeded).',
  head: ['computation', 'runs', 'median', 'nine in ten below', 'worst'],
  measure: (progress) =>
    RUNS.map(([name, runs, prepare]) => {
      progress(name);
      return timeOf(name, runs, prepare);
    }),
};
