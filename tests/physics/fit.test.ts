import { describe, expect, it } from 'vitest';
import { fitVessel, type FitOptions, type VesselFit, type VesselReading } from '../../src/physics/fit.ts';
import { moistAir } from '../../src/physics/moist-air.ts';
import { randomSource } from '../../src/physics/random.ts';
import { simulateRun } from '../../src/physics/run.ts';
import type { RunEvent } from '../../src/physics/run-events.ts';
import type { RunInput } from '../../src/physics/run-input.ts';

const START = moistAir({ temperature: 294.15, pressure: 1e5, relativeHumidity: 0.5 });
const TRUTH = { wallTimeConstant: 7.5, thermometerTimeConstant: 42, leak: 1 / 2400, offset: 0.3 } as const;
const QUICK: readonly RunEvent[] = [{ kind: 'hold', duration: 5 }, { kind: 'pump', to: 8e4, duration: 10 }, { kind: 'hold', duration: 105 }];
const HOLDS = [{ from: 15, to: 120 }] as const;

interface Instruments {
  readonly gauge: number;
  readonly thermometer: number;
}

/** A run as a class would write it down: true values with noise of the instruments and the thermometer's offset. */
function recorded(events: readonly RunEvent[], interval: number, noise: Instruments, seed: number, change: Partial<RunInput> = {}): VesselReading[] {
  const { series } = simulateRun({
    start: START,
    vessel: { wallTimeConstant: TRUTH.wallTimeConstant, leakTimeConstant: 1 / TRUTH.leak },
    thermometer: { timeConstant: TRUTH.thermometerTimeConstant },
    events,
    interval,
    ...change,
  });
  const random = randomSource(seed, 'class');
  return series.map(({ time, gauge, thermometerReading }) => ({
    time,
    gauge: gauge + noise.gauge * random.normal(),
    thermometer: thermometerReading + TRUTH.offset + noise.thermometer * random.normal(),
  }));
}

const CLASSROOM: Instruments = { gauge: 50, thermometer: 0.05 };

describe('over 120 seeded runs with a hold', () => {
  const names = ['wallTimeConstant', 'thermometerTimeConstant', 'leak', 'offset'] as const;
  /** So many that an interval which holds the truth in four of five is found out. */
  const RUNS = 120;
  const fits: VesselFit[] = [];
  const all = (): readonly VesselFit[] => {
    for (let seed = fits.length; seed < RUNS; seed++) {
      fits.push(fitVessel(recorded(QUICK, 5, CLASSROOM, seed), { start: START, holds: HOLDS }));
    }
    return fits;
  };

  it.each(names)('its 95-percent interval holds the %s nine times in ten', (name) => {
    const inside = all().filter((fit) => fit[name]!.low <= TRUTH[name] && TRUTH[name] <= fit[name]!.high).length;
    expect(inside).toBeGreaterThanOrEqual(0.9 * RUNS);
  }, 300_000);

  it.each(names)('the standard error of the %s is neither too small nor too large', (name) => {
    const meanSquare = all().reduce((sum, fit) => sum + ((fit[name]!.value - TRUTH[name]) / fit[name]!.standardError) ** 2, 0) / RUNS;
    expect(meanSquare).toBeGreaterThan(0.7);
    expect(meanSquare).toBeLessThan(1.5);
  }, 300_000);

  it('finds the scatter of both instruments, and says that all is determined', () => {
    const mean = (of: (fit: VesselFit) => number): number => all().reduce((sum, fit) => sum + of(fit), 0) / RUNS;
    expect(mean((fit) => fit.residualStandardDeviation) / CLASSROOM.thermometer).toBeCloseTo(1, 1);
    expect(mean((fit) => fit.pressureStandardDeviation!) / CLASSROOM.gauge).toBeCloseTo(1, 1);
    expect(all().filter((fit) => fit.undetermined.length === 0 && fit.inseparable.length === 0 && !fit.hasCourse).length).toBeGreaterThan(0.95 * RUNS);
    expect(mean((fit) => fit.explained)).toBeGreaterThan(0.98);
  }, 300_000);
});

describe('over 60 seeded runs without a hold', () => {
  it('holds the truth nine times in ten as well, by the thermometer alone', () => {
    const fits = Array.from({ length: 60 }, (_, seed) => fitVessel(recorded(QUICK, 2.5, CLASSROOM, seed, { vessel: { wallTimeConstant: 7.5 } }), { start: START }));
    for (const name of ['wallTimeConstant', 'thermometerTimeConstant', 'offset'] as const) {
      expect(fits.filter((fit) => fit[name].low <= TRUTH[name] && TRUTH[name] <= fit[name].high).length).toBeGreaterThanOrEqual(54);
    }
    expect(fits[0]!.leak).toBeUndefined();
    expect(fits[0]!.pressureStandardDeviation).toBeUndefined();
  }, 300_000);
});

describe('without noise', () => {
  const silent: Instruments = { gauge: 0, thermometer: 0 };

  it('finds the constants themselves, from gauge or absolute pressure, whenever the clock started', () => {
    const readings = recorded(QUICK, 2.5, silent, 0, { vessel: { wallTimeConstant: 7.5 } });
    const later = readings.map(({ time, gauge, thermometer }) => ({ time: time + 1000, pressure: 1e5 + gauge!, thermometer }));
    for (const fit of [
      fitVessel(readings, { start: START, holds: HOLDS }),
      fitVessel(later, { start: START, holds: [{ from: 1015, to: 1120 }] }),
      fitVessel(readings, { start: START, initial: { wallTimeConstant: 20, thermometerTimeConstant: 20 } }),
    ]) {
      // Without a hold the pressure counts as straight between readings 2.5 s apart, while it curves back with the gas.
      expect(Math.abs(fit.wallTimeConstant.value / 7.5 - 1)).toBeLessThan(fit.leak === undefined ? 2e-3 : 1e-5);
      expect(Math.abs(fit.thermometerTimeConstant.value / 42 - 1)).toBeLessThan(fit.leak === undefined ? 2e-3 : 1e-5);
      expect(fit.offset.value).toBeCloseTo(0.3, 3);
      expect(fit.leak?.value ?? 0).toBeCloseTo(0, 8);
      expect(fit.explained).toBeCloseTo(1, 5);
      expect(fit.undetermined).toEqual([]);
    }
  });

  it('takes the walls’ share in a thermometer, and a cloud, as given', () => {
    const start = moistAir({ temperature: 294.15, pressure: 1e5, relativeHumidity: 0.97 });
    const nuclei = { number: 2e10 };
    const readings = recorded(QUICK, 2.5, silent, 0, {
      start, nuclei, vessel: { wallTimeConstant: 7.5, walls: 'wet' }, thermometer: { timeConstant: 42, wallShare: 0.3 },
    });
    const known: FitOptions = { start, nuclei, vessel: { walls: 'wet' }, wallShare: 0.3 };
    const fit = fitVessel(readings, known);
    expect(fit.wallTimeConstant.value).toBeCloseTo(7.5, 1);
    expect(fit.thermometerTimeConstant.value).toBeCloseTo(42, 0);
    // Taken for clear air, the same readings leave something unexplained.
    const clear = fitVessel(readings, { ...known, nuclei: undefined });
    expect(clear.residualStandardDeviation).toBeGreaterThan(10 * fit.residualStandardDeviation);
    expect(clear.hasCourse).toBe(true);
    expect(fit.hasCourse).toBe(false);
  });
});

describe('what the readings cannot say', () => {
  it('is said so where nothing was pumped', () => {
    const fit = fitVessel(recorded([{ kind: 'hold', duration: 120 }], 5, CLASSROOM, 1), { start: START });
    expect(fit.undetermined).toEqual(['wallTimeConstant', 'thermometerTimeConstant']);
    expect(fit.offset.value).toBeCloseTo(TRUTH.offset, 1);
    for (const value of [fit.wallTimeConstant, fit.thermometerTimeConstant, fit.offset]) {
      for (const number of Object.values(value)) expect(number).not.toBeNaN();
    }
  });

  it('is said so where pumping was slow against both lags', () => {
    const slow: readonly RunEvent[] = [{ kind: 'hold', duration: 20 }, { kind: 'pump', to: 8e4, duration: 600 }, { kind: 'hold', duration: 20 }];
    const fit = fitVessel(recorded(slow, 10, { gauge: 50, thermometer: 0.1 }, 2), { start: START });
    expect(fit.undetermined).toContain('thermometerTimeConstant');
  });

  it('is said so where two constants take each other’s place: readings that stop with the pump', () => {
    const short: readonly RunEvent[] = [{ kind: 'hold', duration: 2 }, { kind: 'pump', to: 8e4, duration: 10 }];
    const fit = fitVessel(recorded(short, 0.5, { gauge: 20, thermometer: 0.02 }, 3), { start: START });
    expect(fit.inseparable).toContainEqual(['wallTimeConstant', 'thermometerTimeConstant']);
    expect(Math.abs(fit.correlation.wallTimeConstant!.thermometerTimeConstant!)).toBeGreaterThan(0.95);
  });
});

describe('what a fit refuses', () => {
  const readings = recorded(QUICK, 5, CLASSROOM, 4);
  const put = (index: number, change: Partial<VesselReading>): VesselReading[] => readings.map((reading, i) => (i === index ? { ...reading, ...change } : reading));
  it.each<[string, readonly VesselReading[], Partial<FitOptions>]>([
    ['number of readings', readings.slice(0, 7), {}],
    ['readings[3] has two pressures', put(3, { pressure: 1e5 }), {}],
    ['readings[3] has no pressures', put(3, { gauge: undefined }), {}],
    ['readings[3].time', put(3, { time: 0 }), {}],
    ['readings[0].time', put(0, { time: Number.NaN }), {}],
    ['readings[3].thermometer', put(3, { thermometer: 21 }), {}],
    ['readings[3].pressure', put(3, { gauge: -9.9e4 }), {}],
    ['roomPressure', readings, { roomPressure: 1 }],
    ['wallShare', readings, { wallShare: 1 }],
    ['number of readings from 15 to 20 s is 2', readings, { holds: [{ from: 15, to: 20 }] }],
    ['initial.wallTimeConstant', readings, { initial: { wallTimeConstant: 0 } }],
    ['initial.thermometerTimeConstant', readings, { initial: { thermometerTimeConstant: 1e9 } }],
  ])('%s', (message, given, options) => {
    expect(() => fitVessel(given, { start: START, ...options })).toThrow(RangeError);
    expect(() => fitVessel(given, { start: START, ...options })).toThrow(message);
  });
});
