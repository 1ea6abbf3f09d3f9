import { describe, expect, it } from 'vitest';
import { randomSource } from '../../src/physics/random.ts';
import { leakRate, type HoldReading } from '../../src/physics/leak.ts';
import { equalizingTime, openingMassFlow } from '../../src/physics/opening.ts';

const TIMES = Array.from({ length: 20 }, (_, i) => 15 * i);

describe('leakRate', () => {
  it('reads the rate of a straight rise, as throughput too', () => {
    const readings = TIMES.map((time) => ({ time, pressure: -2e4 + 3 * time }));
    const leak = leakRate({ readings, volume: 5e-3, roomPressure: 0 });
    expect(leak.pressureRate).toBeCloseTo(3, 10);
    expect(leak.leakRate).toBeCloseTo(0.015, 12);
    expect(leak.residualStandardDeviation).toBeCloseTo(0, 6);
    expect(leak.timeConstant).toBeCloseTo((2e4 - 3 * 142.5) / 3, 6);
  });

  it('knows the time constant of an exponential rise, within what the straight line leaves out', () => {
    const readings = TIMES.map((time) => ({ time, pressure: -2e4 * Math.exp(-time / 3600) }));
    expect(leakRate({ readings, volume: 5e-3, roomPressure: 0 }).timeConstant! / 3600).toBeCloseTo(1, 2);
  });

  it('states a standard error that the truth keeps to', () => {
    const deviations = Array.from({ length: 300 }, (_, seed) => {
      const random = randomSource(seed, 'hold');
      const leak = leakRate({ readings: TIMES.map((time) => ({ time, pressure: 8e4 + 2 * time + 50 * random.normal() })), volume: 5e-3 });
      return (leak.pressureRate - 2) / leak.pressureRateStandardError;
    });
    const meanSquare = deviations.reduce((sum, deviation) => sum + deviation ** 2, 0) / deviations.length;
    expect(meanSquare).toBeGreaterThan(0.8); // Student's t with 18 degrees of freedom has a variance of 18/16
    expect(meanSquare).toBeLessThan(1.5);
  });

  it('has no time constant without a room, and an infinite one where nothing leaks in', () => {
    const falling = TIMES.map((time) => ({ time, pressure: -2e4 - time }));
    expect(leakRate({ readings: falling, volume: 5e-3 }).timeConstant).toBeUndefined();
    expect(leakRate({ readings: falling, volume: 5e-3, roomPressure: 0 }).timeConstant).toBe(Infinity);
  });

  it.each<[string, readonly HoldReading[], number]>([
    ['number of readings', [{ time: 0, pressure: 1 }, { time: 1, pressure: 2 }], 5e-3],
    ['one time', TIMES.map((pressure) => ({ time: 3, pressure })), 5e-3],
    ['time', TIMES.map((pressure) => ({ time: Number.NaN, pressure })), 5e-3],
    ['pressure', TIMES.map((time) => ({ time, pressure: Infinity })), 5e-3],
    ['volume', TIMES.map((time) => ({ time, pressure: time })), 0],
  ])('refuses: %s', (name, readings, volume) => {
    expect(() => leakRate({ readings, volume })).toThrow(RangeError);
    expect(() => leakRate({ readings, volume })).toThrow(name);
  });
});

describe('openingMassFlow', () => {
  const flow = (upstreamPressure: number, downstreamPressure: number): number =>
    openingMassFlow({ area: 1e-4, upstreamPressure, downstreamPressure, temperature: 293.15 });

  it('tends to Bernoulli’s law for small differences', () => {
    const density = 1e5 / (287.05 * 293.15);
    expect(flow(1e5, 99_990) / (0.6 * 1e-4 * Math.sqrt(2 * density * 10))).toBeCloseTo(1, 3);
  });

  it('does not depend on what is behind it once it is choked, and stops without a difference', () => {
    expect(flow(2e5, 1e5)).toBe(flow(2e5, 0));
    expect(flow(1e5, 1e5)).toBe(0);
    expect(flow(1e5, 6e4)).toBeLessThan(flow(1e5, 5e4));
  });

  it.each<[string, object]>([
    ['area', { area: 0 }],
    ['dischargeCoefficient', { dischargeCoefficient: 1.1 }],
    ['upstreamPressure', { upstreamPressure: 0 }],
    ['downstreamPressure', { downstreamPressure: 2e5 }],
    ['temperature', { temperature: 100 }],
  ])('refuses %s outside its range', (name, change) => {
    const opening = { area: 1e-4, upstreamPressure: 1e5, downstreamPressure: 9e4, temperature: 293, ...change };
    expect(() => openingMassFlow(opening)).toThrow(RangeError);
    expect(() => openingMassFlow(opening)).toThrow(name);
  });
});

describe('equalizingTime', () => {
  const VESSEL = { volume: 5e-3, area: 2e-5, roomPressure: 1e5, temperature: 293.15 };

  it('is that of Bernoulli’s law for small differences, from above as from below', () => {
    // V dp/dt = −γRT·CA√(2ρΔ), integrated to Δ = 0.
    const density = 1e5 / (287.05 * 293.15);
    const byHand = (2 * 5e-3 * Math.sqrt(100)) / (1.4 * 287.05 * 293.15 * 0.6 * 2e-5 * Math.sqrt(2 * density));
    expect(equalizingTime({ ...VESSEL, pressure: 100_100 }) / byHand).toBeCloseTo(1, 2);
    expect(equalizingTime({ ...VESSEL, pressure: 99_900 }) / byHand).toBeCloseTo(1, 2);
  });

  it('is the closed form of blowing down while the flow is choked', () => {
    // Adiabatic blowdown: (p₁/p)^((γ−1)/2γ) = 1 + (γ−1)/2 · CA a₁/V · (2/(γ+1))^((γ+1)/(2(γ−1))) · t; Shapiro 1953.
    const gamma = 1.4;
    const speed = 0.6 * 2e-5 * Math.sqrt(gamma * 287.05 * 293.15) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1)));
    const byHand = ((5 / 2.5) ** ((gamma - 1) / (2 * gamma)) - 1) / (((gamma - 1) / 2) * (speed / 5e-3));
    // From 5 to 2.5 atmospheres; what follows is the same vessel starting at 2.5, colder by the adiabat.
    const colder = 293.15 * 0.5 ** ((gamma - 1) / gamma);
    const whole = equalizingTime({ ...VESSEL, pressure: 5e5 });
    const rest = equalizingTime({ ...VESSEL, pressure: 2.5e5, temperature: colder });
    expect((whole - rest) / byHand).toBeCloseTo(1, 3);
  });

  it('is nothing without a difference, and half for twice the opening', () => {
    expect(equalizingTime({ ...VESSEL, pressure: 1e5 })).toBe(0);
    const once = equalizingTime({ ...VESSEL, pressure: 8e4 });
    expect(equalizingTime({ ...VESSEL, pressure: 8e4, area: 4e-5 }) / once).toBeCloseTo(0.5, 12);
  });
});
