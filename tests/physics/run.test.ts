import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { condense } from '../../src/physics/droplets.ts';
import { GAS_CONSTANT_DRY_AIR, GAS_CONSTANT_VAPOR, HEAT_CAPACITY_DRY_AIR } from '../../src/physics/constants.ts';
import { expandWithCondensation } from '../../src/physics/expansion.ts';
import { moistAir, type MoistAir } from '../../src/physics/moist-air.ts';
import { latentHeatOfVaporization } from '../../src/physics/saturation.ts';
import { pumpStrokes } from '../../src/physics/pump.ts';
import { simulateRun } from '../../src/physics/run.ts';
import type { RunEvent, TimedPressure } from '../../src/physics/run-events.ts';
import type { RunInput } from '../../src/physics/run-input.ts';
import type { RunPoint } from '../../src/physics/run-recorder.ts';

const ROOM = 294.15;
const START = moistAir({ temperature: ROOM, pressure: 1e5, relativeHumidity: 0.95 });
const PUMP_AND_HOLD: readonly TimedPressure[] = [
  { time: 0, pressure: 1e5 },
  { time: 20, pressure: 8e4 },
  { time: 60, pressure: 8e4 },
  { time: 63, pressure: 1e5 },
  { time: 120, pressure: 1e5 },
];

const airAt = (temperature: number, pressure: number, relativeHumidity = 0.95): MoistAir => moistAir({ temperature, pressure, relativeHumidity });
const last = (series: readonly RunPoint[]): RunPoint => series[series.length - 1]!;
const at = (series: readonly RunPoint[], time: number): RunPoint => series.find((point) => Math.abs(point.time - time) < 1e-9)!;
const dryDensity = (point: RunPoint): number =>
  point.pressure / ((GAS_CONSTANT_DRY_AIR + point.mixingRatio * GAS_CONSTANT_VAPOR) * point.gasTemperature);
const liquidPerDryAir = (point: RunPoint): number => point.liquidWaterContent / dryDensity(point);

/** The two equations of a clear run in dry walls by the classical method of fourth order in many steps. */
function classical(start: MoistAir, history: readonly TimedPressure[], tauWall: number, tauThermometer: number): [number, number] {
  const exponent = start.gasConstant / start.heatCapacity;
  let gas = start.temperature;
  let reading = start.temperature;
  for (let k = 1; k < history.length; k++) {
    const [from, to] = [history[k - 1]!, history[k]!];
    const steps = 5000;
    const h = (to.time - from.time) / steps;
    const rate = (to.pressure - from.pressure) / (to.time - from.time);
    const gasRate = (t: number, T: number): number =>
      (exponent * T * rate) / (from.pressure + rate * t) + (start.temperature - T) / tauWall;
    const readingRate = (T: number, Tm: number): number => (T - Tm) / tauThermometer;
    for (let i = 0; i < steps; i++) {
      const t = i * h;
      const a = gasRate(t, gas);
      const b = gasRate(t + h / 2, gas + (h / 2) * a);
      const c = gasRate(t + h / 2, gas + (h / 2) * b);
      const d = gasRate(t + h, gas + h * c);
      const p = readingRate(gas, reading);
      const q = readingRate(gas + (h / 2) * a, reading + (h / 2) * p);
      const r = readingRate(gas + (h / 2) * b, reading + (h / 2) * q);
      const s = readingRate(gas + h * c, reading + h * r);
      gas += (h / 6) * (a + 2 * b + 2 * c + d);
      reading += (h / 6) * (p + 2 * q + 2 * r + s);
    }
  }
  return [gas, reading];
}

describe('a clear run with a given pressure history', () => {
  it.each([
    [8, 45],
    [2, 10],
    [30, 5],
    [500, 90],
  ])('solves the two equations, time constants %d and %d s', (wallTimeConstant, thermometerTimeConstant) => {
    for (let length = 2; length <= PUMP_AND_HOLD.length; length++) {
      const pressureHistory = PUMP_AND_HOLD.slice(0, length);
      const end = last(simulateRun({ start: START, pressureHistory, wallTimeConstant, thermometerTimeConstant }).series);
      const [gas, reading] = classical(START, pressureHistory, wallTimeConstant, thermometerTimeConstant);
      expect(end.time).toBe(pressureHistory[length - 1]!.time);
      expect(Math.abs(end.gasTemperature - gas)).toBeLessThan(1e-6);
      expect(Math.abs(end.thermometerReading - reading)).toBeLessThan(1e-6);
    }
  });

  it.each<[string, Partial<RunInput>]>([
    ['with vessel and thermometer', { vessel: { wallTimeConstant: 8 }, thermometer: { timeConstant: 45 } }],
    ['by their full names', { vessel: { wallTimeConstant: 8 }, thermometer: { thermometerTimeConstant: 45 } }],
    ['both with the vessel', { vessel: { wallTimeConstant: 8, thermometerTimeConstant: 45 } }],
    ['beside a vessel and a thermometer', { vessel: { volume: 3e-3 }, thermometer: {}, wallTimeConstant: 8, thermometerTimeConstant: 45 }],
  ])('takes time constants %s', (_, constants) => {
    const alone = simulateRun({ start: START, pressureHistory: PUMP_AND_HOLD, wallTimeConstant: 8, thermometerTimeConstant: 45 });
    expect(simulateRun({ start: START, pressureHistory: PUMP_AND_HOLD, ...constants })).toEqual(alone);
  });

  it('is adiabatic with infinite time constants, and the thermometer never moves', () => {
    for (const point of simulateRun({
      start: START, pressureHistory: PUMP_AND_HOLD, wallTimeConstant: Infinity, thermometerTimeConstant: Infinity,
    }).series) {
      const adiabatic = ROOM * (point.pressure / 1e5) ** (START.gasConstant / START.heatCapacity);
      expect(Math.abs(point.gasTemperature - adiabatic)).toBeLessThan(1e-6);
      expect(point.thermometerReading).toBeCloseTo(ROOM, 9);
    }
  });

  it('is isothermal with a time constant of the walls of zero', () => {
    const { series } = simulateRun({ start: START, pressureHistory: PUMP_AND_HOLD, wallTimeConstant: 0, thermometerTimeConstant: 45 });
    expect(Math.max(...series.map((point) => Math.abs(point.gasTemperature - ROOM)))).toBeLessThan(1e-9);
    expect(Math.max(...series.map((point) => Math.abs(point.thermometerReading - ROOM)))).toBeLessThan(1e-9);
    expect(at(series, 20).saturationRatio).toBeCloseTo(0.95 * 0.8, 3);
  });

  it('tends to the isothermal one as the walls’ time constant does to zero', () => {
    const fall = (wallTimeConstant: number): number => {
      const { series } = simulateRun({ start: START, pressureHistory: PUMP_AND_HOLD, wallTimeConstant });
      return Math.max(...series.map((point) => Math.abs(point.gasTemperature - ROOM)));
    };
    expect(fall(1e-3) / fall(1e-2)).toBeCloseTo(0.1, 3);
    expect(fall(1e-6)).toBeLessThan(2e-5);
  });

  it('shows the gas itself with a thermometer without lag', () => {
    const { series } = simulateRun({ start: START, pressureHistory: PUMP_AND_HOLD, wallTimeConstant: 8, thermometerTimeConstant: 0 });
    expect(Math.max(...series.map((point) => Math.abs(point.gasTemperature - point.thermometerReading)))).toBeLessThan(1e-6);
  });

  it('brings the thermometer toward gas and walls by the share of each', () => {
    const { series } = simulateRun({
      start: START, pressureHistory: [{ time: 0, pressure: 1e5 }, { time: 0, pressure: 8e4 }], duration: 500,
      thermometer: { timeConstant: 10, wallShare: 0.3 },
    });
    const gas = ROOM * 0.8 ** (START.gasConstant / START.heatCapacity);
    expect(last(series).thermometerReading).toBeCloseTo(0.7 * gas + 0.3 * ROOM, 6);
  });

  it('takes two points of one time as a sudden adiabatic change', () => {
    const pressureHistory = [{ time: 0, pressure: 1e5 }, { time: 5, pressure: 1e5 }, { time: 5, pressure: 7e4 }, { time: 40, pressure: 7e4 }];
    const { series } = simulateRun({ start: START, pressureHistory, wallTimeConstant: 8, thermometerTimeConstant: 45 });
    const fall = ROOM * (1 - 0.7 ** (START.gasConstant / START.heatCapacity));
    expect(at(series, 5).gasTemperature).toBeCloseTo(ROOM - fall, 7);
    expect(last(series).gasTemperature).toBeCloseTo(ROOM - fall * Math.exp(-35 / 8), 7);
    // Two lags in a row: the classical answer of the second to the first's decay.
    const lag = ((fall * 8) / (45 - 8)) * (Math.exp(-35 / 45) - Math.exp(-35 / 8));
    expect(last(series).thermometerReading).toBeCloseTo(ROOM - lag, 6);
  });

  it('keeps the last pressure to the end of a longer run and lists every point of the history', () => {
    const { series } = simulateRun({ start: START, pressureHistory: PUMP_AND_HOLD, duration: 200, interval: 7 });
    expect(last(series).time).toBe(200);
    expect(last(series).pressure).toBeCloseTo(1e5, 6);
    for (const { time, pressure } of PUMP_AND_HOLD) expect(at(series, time).pressure).toBeCloseTo(pressure, 6);
    expect(at(series, 133).gauge).toBeCloseTo(0, 6);
  });

  it('lets the pressure follow the gas where valve and pump are left alone', () => {
    const { series } = simulateRun({
      start: START, wallTimeConstant: 8, holds: [{ from: 20, to: 60 }],
      pressureHistory: [{ time: 0, pressure: 1e5 }, { time: 20, pressure: 8e4 }, { time: 60, pressure: 8e4 }],
    });
    const [stopped, end] = [at(series, 20), last(series)];
    expect(end.pressure / stopped.pressure).toBeCloseTo(end.gasTemperature / stopped.gasTemperature, 9);
    expect(end.gasTemperature).toBeCloseTo(ROOM, 1);
  });
});

describe('pumps', () => {
  const strokes = { kind: 'stroke-pump', strokeVolume: 2e-4, deadVolume: 1e-5, strokeTime: 1, strokes: 12 } as const;

  it('follow the law of strokes where the walls keep the gas at their temperature', () => {
    const { series } = simulateRun({ start: moistAir({ ...START, relativeHumidity: 0 }), vessel: { volume: 5e-3, wallTimeConstant: 0 }, pump: strokes });
    for (const { stroke, pressure } of pumpStrokes({ ...strokes, startPressure: 1e5, vesselVolume: 5e-3 })) {
      expect(at(series, stroke).pressure / pressure).toBeCloseTo(1, 8);
    }
  });

  it('pull further without heat: the colder gas has less pressure, and gets it back', () => {
    const run = (wallTimeConstant: number): RunPoint =>
      last(simulateRun({ start: START, vessel: { volume: 5e-3, wallTimeConstant }, pump: strokes, duration: 200 }).series);
    const adiabatic = run(Infinity);
    // All the gas that stays has followed the adiabat.
    expect(adiabatic.gasTemperature).toBeCloseTo(ROOM * (adiabatic.pressure / 1e5) ** (START.gasConstant / START.heatCapacity), 4);
    expect(run(8).pressure).toBeGreaterThan(adiabatic.pressure);
    expect(run(8).gasTemperature).toBeCloseTo(ROOM, 4);
  });

  it('stop at the stroke that passes the pressure asked for', () => {
    const { series } = simulateRun({
      start: START, vessel: { volume: 5e-3, wallTimeConstant: 8 },
      pump: { kind: 'stroke-pump', strokeVolume: 2e-4, strokeTime: 1, to: 8e4 },
    });
    expect(last(series).pressure).toBeLessThanOrEqual(8e4);
    expect(at(series, last(series).time - 1).pressure).toBeGreaterThan(8e4);
  });

  it('never undershoot the ultimate pressure, steady or by strokes', () => {
    for (const pump of [
      { kind: 'steady-pump', speed: 1e-3, ultimatePressure: 6e4, duration: 300 },
      { ...strokes, ultimatePressure: 6e4, strokes: 200 },
    ] as const) {
      const { series } = simulateRun({ start: START, vessel: { volume: 5e-3, wallTimeConstant: 20 }, pump, interval: 0.5 });
      expect(Math.min(...series.map((point) => point.pressure))).toBeGreaterThan(6e4 * (1 - 1e-9));
      expect(last(series).pressure).toBeLessThan(6.1e4);
    }
  });

  it('take droplets and particles along in proportion', () => {
    const { series } = simulateRun({ start: START, nuclei: { number: 1e10 }, wallTimeConstant: 8, pump: { kind: 'pump', to: 8e4, duration: 10 } });
    const [first, end] = [series[0]!, last(series)];
    expect(end.particles / dryDensity(end) / (first.particles / dryDensity(first))).toBeCloseTo(1, 8);
    expect(end.particles).toBeLessThan(first.particles);
  });
});

describe('a closed vessel', () => {
  const clouds: RunInput = {
    start: START, nuclei: { number: 1e9 }, vessel: { volume: 2e-3 },
    events: [
      { kind: 'squeeze', volumeChange: 4e-4, duration: 0.5 }, { kind: 'hold', duration: 20 },
      { kind: 'squeeze', volumeChange: -4e-4, duration: 1 }, { kind: 'hold', duration: 60 },
    ],
  };

  it('conserves water as vapor turns into cloud and back', () => {
    const { series } = simulateRun(clouds);
    const waters = series.map((point) => point.mixingRatio + liquidPerDryAir(point));
    expect(Math.max(...waters) / Math.min(...waters) - 1).toBeLessThan(1e-9);
    expect(Math.max(...series.map(liquidPerDryAir))).toBeGreaterThan(1e-3);
    expect(last(series).liquidWaterContent).toBeLessThan(1e-5);
  });

  it('conserves energy while droplets grow without heat', () => {
    const { series, eventEnds } = simulateRun(clouds);
    // Internal energy per kg of dry air, liquid of 4190 J/(kg·K): h_v = h_l + L less the gas's p/ρ.
    const energy = (point: RunPoint): number => {
      const { gasTemperature: T, mixingRatio: vapor } = point;
      const liquid = liquidPerDryAir(point);
      const gas = (HEAT_CAPACITY_DRY_AIR - GAS_CONSTANT_DRY_AIR) * T - vapor * GAS_CONSTANT_VAPOR * T;
      return gas + (vapor + liquid) * 4190 * T + vapor * latentHeatOfVaporization(T);
    };
    const held = series.filter(({ time }) => time >= eventEnds[0]! && time <= eventEnds[1]!);
    const warming = last(held).gasTemperature - held[0]!.gasTemperature;
    expect(warming).toBeGreaterThan(1);
    const change = Math.max(...held.map(energy)) - Math.min(...held.map(energy));
    expect(change / HEAT_CAPACITY_DRY_AIR).toBeLessThan(0.002 * warming);
  });

  it('comes back to where it began when it is squeezed and let go', () => {
    const { series } = simulateRun({
      start: START, vessel: { volume: 2e-3 },
      events: [{ kind: 'squeeze', volumeChange: -5e-4, duration: 2 }, { kind: 'squeeze', volumeChange: 5e-4, duration: 3 }],
    });
    const gamma = START.heatCapacity / (START.heatCapacity - START.gasConstant);
    expect(at(series, 2).pressure / (1e5 * (4 / 3) ** gamma)).toBeCloseTo(1, 7);
    expect(last(series).pressure / 1e5).toBeCloseTo(1, 8);
    expect(last(series).gasTemperature).toBeCloseTo(ROOM, 6);
  });

  it('leaks by the time constant given', () => {
    const { series } = simulateRun({
      start: moistAir({ ...START, pressure: 8e4, relativeHumidity: 0 }), room: { pressure: 1e5, relativeHumidity: 0 },
      vessel: { wallTimeConstant: 0, leakTimeConstant: 600 }, events: [{ kind: 'hold', duration: 900 }],
    });
    expect(last(series).pressure).toBeCloseTo(1e5 - 2e4 * Math.exp(-1.5), 1);
    expect(last(series).gauge).toBeCloseTo(-2e4 * Math.exp(-1.5), 1);
  });

  it('is moistened by wet walls and not by dry ones', () => {
    const start = moistAir({ ...START, relativeHumidity: 0.5 });
    const run = (walls: 'wet' | 'dry'): RunPoint =>
      last(simulateRun({ start, vessel: { walls, wallTimeConstant: 8 }, events: [{ kind: 'hold', duration: 120 }] }).series);
    expect(run('wet').saturationRatio).toBeCloseTo(1, 3);
    expect(run('wet').pressure).toBeGreaterThan(run('dry').pressure);
    expect(run('dry').saturationRatio).toBeCloseTo(0.5, 9);
  });
});

describe('venting', () => {
  const vent = (from: number, duration: number, room: RunInput['room'] = {}): RunPoint => {
    const start = moistAir({ ...START, pressure: from, relativeHumidity: 0 });
    return last(simulateRun({ start, room: { pressure: 1e5, relativeHumidity: 0, ...room }, events: [{ kind: 'vent', duration }] }).series);
  };

  it('warms by the energy that the room’s air brings, however it flows', () => {
    // Energy of an adiabatic tank being filled: T₂ = p₂/(p₁/T₁ + (p₂ − p₁)/(γT₀)); Moran & Shapiro 2008, sect. 4.4.
    const gamma = HEAT_CAPACITY_DRY_AIR / (HEAT_CAPACITY_DRY_AIR - GAS_CONSTANT_DRY_AIR);
    for (const from of [8e4, 9e4, 9.8e4]) {
      const expected = 1e5 / (from / ROOM + (1e5 - from) / (gamma * 290));
      for (const duration of [0.1, 5, 60]) expect(vent(from, duration, { temperature: 290 }).gasTemperature).toBeCloseTo(expected, 5);
    }
  });

  it('mixes by the masses: moisture of the room, particles of the vessel', () => {
    const start = moistAir({ ...START, pressure: 8e4, relativeHumidity: 0 });
    const { series } = simulateRun({
      start, nuclei: { number: 1e10 }, room: { pressure: 1e5, relativeHumidity: 0.6, particles: 3e9 }, events: [{ kind: 'vent', duration: 3 }],
    });
    const [first, end] = [series[0]!, last(series)];
    const kept = dryDensity(first) / dryDensity(end);
    const room = moistAir({ temperature: ROOM, pressure: 1e5, relativeHumidity: 0.6 });
    expect(end.mixingRatio / ((1 - kept) * room.mixingRatio)).toBeCloseTo(1, 4);
    const perKilogram = 3e9 / (room.density / (1 + room.mixingRatio));
    const expected = kept * (1e10 / dryDensity(first)) + (1 - kept) * perKilogram;
    expect(end.particles / dryDensity(end) / expected).toBeCloseTo(1, 4);
  });

  it('from above lets gas out along the adiabat', () => {
    expect(vent(1.5e5, 2).gasTemperature).toBeCloseTo(ROOM * 1.5 ** (-GAS_CONSTANT_DRY_AIR / HEAT_CAPACITY_DRY_AIR), 5);
  });

  it('ends at the room’s pressure and leaves the valve open, until it is closed', () => {
    const { series, eventEnds } = simulateRun({
      start: START, wallTimeConstant: 8, room: { relativeHumidity: 0.5 },
      events: [{ kind: 'pump', to: 8e4, duration: 10 }, { kind: 'hold', duration: 30 }, { kind: 'vent', duration: 3 }, { kind: 'wait', duration: 60 }],
    });
    for (const point of series.filter(({ time }) => time >= eventEnds[2]!)) expect(point.pressure).toBeCloseTo(1e5, 4);
    expect(at(series, 43).gasTemperature).toBeGreaterThan(ROOM + 3);
    const closed = simulateRun({
      start: START, wallTimeConstant: 8, room: { relativeHumidity: 0.5 },
      events: [{ kind: 'pump', to: 8e4, duration: 10 }, { kind: 'hold', duration: 30 }, { kind: 'vent', duration: 3 }, { kind: 'hold', duration: 60 }],
    }).series;
    expect(last(closed).pressure).toBeLessThan(1e5 - 500); // the warm gas cools behind the closed valve
  });
});

describe('pressing air in and letting it out', () => {
  it('warms by the energy of the room’s air, cools behind the closed valve, and falls below the room on release', () => {
    const dry = airAt(ROOM, 1e5, 0);
    const { series, eventEnds } = simulateRun({
      start: dry, wallTimeConstant: 8, room: { relativeHumidity: 0 },
      events: [{ kind: 'pressurize', to: 1.5e5, duration: 0.01 }, { kind: 'hold', duration: 200 }, { kind: 'vent', duration: 0.01 }],
    });
    const [pressed, rested, released] = eventEnds.map((time) => at(series, time)) as [RunPoint, RunPoint, RunPoint];
    const gamma = HEAT_CAPACITY_DRY_AIR / (HEAT_CAPACITY_DRY_AIR - GAS_CONSTANT_DRY_AIR);
    expect(Math.abs(pressed.gasTemperature - 1.5e5 / (1e5 / ROOM + 5e4 / (gamma * ROOM)))).toBeLessThan(0.05);
    expect(rested.gasTemperature).toBeCloseTo(ROOM, 6);
    expect(rested.pressure / pressed.pressure).toBeCloseTo(ROOM / pressed.gasTemperature, 6);
    const adiabatic = ROOM * (1e5 / rested.pressure) ** (GAS_CONSTANT_DRY_AIR / HEAT_CAPACITY_DRY_AIR);
    expect(Math.abs(released.gasTemperature - adiabatic)).toBeLessThan(0.05);
  });
});

describe('bringing the pressure to a mark', () => {
  const after = (event: RunEvent): RunPoint => last(simulateRun({ start: START, wallTimeConstant: 8, events: [event] }).series);

  it.each([['pump', 8e4], ['pressurize', 1.2e5]] as const)('is to %s where that leads there', (kind, to) => {
    expect(after({ kind: 'bring', to, duration: 5 })).toEqual(after({ kind, to, duration: 5 }));
  });
});

describe('particles and cloud', () => {
  it('come to the equilibrium of a saturated expansion when there are many and it is slow', () => {
    const { series } = simulateRun({ start: START, nuclei: { number: 1e12 }, pump: { kind: 'pump', to: 8e4, duration: 300 } });
    const equilibrium = expandWithCondensation(START, 8e4);
    expect(Math.abs(last(series).gasTemperature - equilibrium.temperature)).toBeLessThan(0.05);
    expect(last(series).liquidWaterContent / equilibrium.liquidWaterContent).toBeCloseTo(1, 2);
    expect(last(series).saturationRatio).toBeGreaterThan(0.999);
    expect(last(series).saturationRatio).toBeLessThan(1.01);
  });

  it.each([1e8, 1e9, 1e10, 1e11])('of one size, %d per m³, grow as those that are computed class by class', (number) => {
    const pressureHistory = [{ time: 0, pressure: 1e5 }, { time: 1, pressure: 9e4 }, { time: 10, pressure: 9e4 }];
    const { series } = simulateRun({ start: START, nuclei: { number, dryDiameter: 1.5e-7, kappa: 0.3 }, pressureHistory, interval: 0.01 });
    const mode = { medianDryDiameter: 1.5e-7, geometricStandardDeviation: 1, kappa: 0.3, number };
    const resolved = condense({ start: START, modes: [mode], pressureHistory, outputTimes: [1, 3, 10] });
    // The run's growth law is linear in the saturation ratio, that of the classes is not.
    const peak = Math.max(...series.map((point) => point.saturationRatio));
    expect((peak - 1) / (resolved.peakSaturationRatio - 1)).toBeCloseTo(1, 1.2);
    for (const point of resolved.series) {
      expect(Math.abs(at(series, point.time).gasTemperature - point.temperature)).toBeLessThan(0.15);
    }
  });

  it('hold the saturation ratio down the more there are', () => {
    const peak = (number: number): number =>
      Math.max(...simulateRun({ start: START, nuclei: { number }, pump: { kind: 'pump', to: 9e4, duration: 1 } }).series.map((point) => point.saturationRatio));
    const peaks = [1e7, 1e8, 1e9, 1e10, 1e11].map(peak);
    peaks.forEach((value, i) => i > 0 && expect(value).toBeLessThan(peaks[i - 1]!));
    const clear = last(simulateRun({ start: START, pump: { kind: 'pump', to: 9e4, duration: 1 } }).series);
    expect(peaks[0]).toBeLessThan(clear.saturationRatio);
    expect(clear.liquidWaterContent).toBe(0);
    expect(clear.dropletDiameter).toBe(0);
  });

  it('let in between two pumpings, turn a clear run into a cloudy one', () => {
    const { series, eventEnds } = simulateRun({
      start: START, vessel: { wallTimeConstant: 8, walls: 'wet' },
      events: [
        { kind: 'pump', to: 8.5e4, duration: 10 }, { kind: 'hold', duration: 60 }, { kind: 'vent', duration: 3 }, { kind: 'wait', duration: 120 },
        { kind: 'particles', number: 2e10 }, { kind: 'pump', to: 8.5e4, duration: 10 },
      ],
    });
    const [clear, cloudy] = [at(series, eventEnds[0]!), last(series)];
    expect(clear.saturationRatio).toBeGreaterThan(1.2);
    expect(clear.liquidWaterContent).toBe(0);
    expect(cloudy.liquidWaterContent).toBeGreaterThan(1e-3);
    expect(cloudy.gasTemperature).toBeGreaterThan(clear.gasTemperature + 2);
    expect(at(series, eventEnds[4]!).particles).toBeCloseTo(2e10, -4);
  });

  it('settle out of a vessel of given height, the more the larger the drops', () => {
    const left = (number: number): number => {
      const { series } = simulateRun({
        start: START, nuclei: { number }, vessel: { wallTimeConstant: 8, walls: 'wet', height: 0.2 },
        events: [{ kind: 'pump', to: 8.5e4, duration: 10 }, { kind: 'hold', duration: 60 }],
      });
      return last(series).particles / series[0]!.particles;
    };
    expect(left(1e8)).toBeLessThan(left(1e10));
    expect(left(1e10)).toBeLessThan(0.85);
    expect(left(1e12)).toBeGreaterThan(0.8);
  });
});

describe('any lesson', () => {
  const pressure = fc.double({ min: 7.5e4, max: 1e5, noNaN: true });
  const seconds = (max: number): fc.Arbitrary<number> => fc.double({ min: 0.5, max, noNaN: true });
  const cycle = fc.record({ to: pressure, pumping: seconds(30), holding: seconds(60), venting: seconds(8), waiting: seconds(100), number: fc.double({ min: 0, max: 1e12, noNaN: true }) });
  const lesson = fc.array(cycle, { minLength: 1, maxLength: 3 }).map((cycles) =>
    cycles.flatMap(({ to, pumping, holding, venting, waiting, number }): RunEvent[] => [
      { kind: 'pump', to, duration: pumping }, { kind: 'hold', duration: holding }, { kind: 'vent', duration: venting },
      { kind: 'wait', duration: waiting }, { kind: 'particles', number },
    ]),
  );
  const vessel = fc.record({
    wallTimeConstant: fc.constantFrom(0, 1, 8, 100, Infinity),
    walls: fc.constantFrom('wet' as const, 'dry' as const),
    leakTimeConstant: fc.constantFrom(300, 1e5, Infinity),
    height: fc.constantFrom(0.2, 1),
  });
  const room = fc.record({ relativeHumidity: fc.double({ min: 0, max: 1, noNaN: true }), particles: fc.constantFrom(0, 1e8, 1e10) });

  it('gives finite numbers in order of time, water and particles never negative', () => {
    fc.assert(
      fc.property(lesson, vessel, room, fc.double({ min: 0, max: 1, noNaN: true }), (events, ofVessel, ofRoom, relativeHumidity) => {
        const start = moistAir({ ...START, relativeHumidity });
        const { series } = simulateRun({ start, vessel: ofVessel, room: ofRoom, thermometer: { timeConstant: 40, wallShare: 0.2 }, events, interval: 2 });
        const bad = series.filter((point, i) =>
          !Object.values(point).every(Number.isFinite) || point.mixingRatio < -1e-6 || point.liquidWaterContent < 0 || point.particles < 0 ||
          (i > 0 && point.time <= series[i - 1]!.time));
        expect(bad).toEqual([]);
      }),
      { seed: 41, numRuns: 60 },
    );
  }, 300_000);

  it('gives the same twice', () => {
    const input: RunInput = {
      start: START, nuclei: { number: 1e9 }, vessel: { wallTimeConstant: 8, walls: 'wet', volume: 5e-3 },
      pump: { kind: 'stroke-pump', strokeVolume: 2e-4, strokeTime: 1, strokes: 5 }, duration: 60,
    };
    expect(simulateRun(input)).toEqual(simulateRun(input));
  });

  it('keeps to its steps: with a tenth of the error allowed, the cloud is the same', () => {
    const input: RunInput = {
      start: START, nuclei: { number: 1e9 }, vessel: { wallTimeConstant: 8, walls: 'wet', height: 0.2 },
      events: [{ kind: 'pump', to: 8e4, duration: 10 }, { kind: 'hold', duration: 60 }, { kind: 'vent', duration: 3 }, { kind: 'wait', duration: 10 }],
    };
    const [usual, fine] = [simulateRun(input).series, simulateRun({ ...input, accuracy: 1e-6 }).series];
    const apart = (of: (point: RunPoint) => number): number => Math.max(...usual.map((point, i) => Math.abs(of(point) - of(fine[i]!))));
    expect(apart((point) => point.gasTemperature)).toBeLessThan(0.01);
    expect(apart((point) => point.saturationRatio)).toBeLessThan(0.002);
    expect(apart((point) => 1000 * point.liquidWaterContent)).toBeLessThan(0.01);
  });
});

describe('what a run refuses', () => {
  const history = [{ time: 0, pressure: 1e5 }, { time: 10, pressure: 8e4 }];
  const hold: RunEvent = { kind: 'hold', duration: 1 };
  it.each<[string, Partial<RunInput>]>([
    ['give exactly one', {}],
    ['give exactly one', { pressureHistory: history, events: [hold] }],
    ['pressureHistory.length', { pressureHistory: [] }],
    ['pressureHistory[1].time', { pressureHistory: [...history].reverse() }],
    ['pressureHistory[1].pressure', { pressureHistory: [history[0]!, { time: 10, pressure: 4e3 }] }],
    ['duration', { pressureHistory: history, duration: 5 }],
    ['duration', { events: [hold], duration: 0.5 }],
    ['interval', { events: [hold], interval: 0 }],
    ['accuracy', { events: [hold], accuracy: 1 }],
    ['vessel.wallTimeConstant', { events: [hold], wallTimeConstant: -1 }],
    ['vessel.wallTimeConstant', { events: [hold], vessel: { wallTimeConstant: Number.NaN } }],
    ['vessel.wallTemperature', { events: [hold], vessel: { wallTemperature: 200 } }],
    ['vessel.leakTimeConstant', { events: [hold], vessel: { leakTimeConstant: 0 } }],
    ['vessel.height', { events: [hold], vessel: { height: 0 } }],
    ['thermometerTimeConstant', { events: [hold], thermometerTimeConstant: -1 }],
    ['thermometer.wallShare', { events: [hold], thermometer: { wallShare: 1.1 } }],
    ['nuclei.number', { events: [hold], nuclei: { number: -1 } }],
    ['nuclei.dryDiameter', { events: [hold], nuclei: { number: 1e9, dryDiameter: 1e-9 } }],
    ['nuclei.kappa', { events: [hold], nuclei: { number: 1e9, kappa: 0 } }],
    ['room.particles', { events: [hold], room: { particles: -1 } }],
    ['relativeHumidity', { events: [hold], room: { relativeHumidity: 1.2 } }],
    ['vessel.volume is undefined', { pump: { kind: 'steady-pump', speed: 1e-4, duration: 1 } }],
    ['pump.to', { events: [{ kind: 'pump', to: 1.1e5, duration: 1 }] }],
    ['events[0].to', { events: [{ kind: 'bring', to: 6e5, duration: 1 }] }],
    ['pressurize.to', { events: [{ kind: 'pressurize', to: 9e4, duration: 1 }] }],
    ['events[0].kind is sing; choose', { events: [{ kind: 'sing', duration: 1 } as unknown as RunEvent] }],
    ['events[0].duration', { events: [{ kind: 'vent', duration: 0 }] }],
    ['events[0].strokeTime', { vessel: { volume: 1e-3 }, events: [{ kind: 'stroke-pump', strokeVolume: 1e-4, strokeTime: 0, strokes: 1 }] }],
    ['events[0].number', { events: [{ kind: 'particles', number: Number.NaN }] }],
    ['either strokes or to', { vessel: { volume: 1e-3 }, events: [{ kind: 'stroke-pump', strokeVolume: 1e-4, strokeTime: 1 }] }],
    ['stroke-pump.to', { vessel: { volume: 1e-3 }, events: [{ kind: 'stroke-pump', strokeVolume: 1e-4, strokeTime: 1, to: 5e4, ultimatePressure: 6e4 }] }],
    ['squeeze.volumeChange', { vessel: { volume: 1e-3 }, events: [{ kind: 'squeeze', volumeChange: -1e-3, duration: 1 }] }],
  ])('%s', (message, input) => {
    expect(() => simulateRun({ start: START, ...input })).toThrow(RangeError);
    expect(() => simulateRun({ start: START, ...input })).toThrow(message);
  });

  it('a cloud so cold that its droplets freeze, and gas hotter than the formulas hold for', () => {
    const cold: RunInput = { start: airAt(263, 1e5), nuclei: { number: 1e7 }, pump: { kind: 'pump', to: 5e4, duration: 5 } };
    expect(() => simulateRun(cold)).toThrow(/colder droplets freeze/);
    expect(() => simulateRun({ ...cold, nuclei: undefined })).not.toThrow();
    const hot: RunInput = { start: airAt(ROOM, 3e4), room: { pressure: 1e5 }, events: [{ kind: 'vent', duration: 1 }] };
    expect(() => simulateRun(hot)).toThrow(/the gas comes to 33[12]\.\d+ K/);
  });
});
