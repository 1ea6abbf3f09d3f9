import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expandWithCondensation, expandWithoutCondensation } from '../../src/physics/expansion.ts';
import { moistAir, type MoistAir } from '../../src/physics/moist-air.ts';
import {
  boltonCondensationTemperature,
  cloudBase,
  heightOfEqualPressure,
  heightOfEqualTemperature,
  liftingCondensationLevel,
  liftingDepositionLevel,
  risingParcel,
  type ParcelState,
} from '../../src/physics/parcel.ts';
import { celsius } from '../../src/physics/units.ts';

const GRAVITY = 9.80665;
const ROOM = moistAir({ temperature: celsius(22), pressure: 9.5e4, relativeHumidity: 0.6 });
const AIR = fc
  .record({
    temperature: fc.double({ min: celsius(0), max: celsius(40), noNaN: true }),
    pressure: fc.double({ min: 7e4, max: 1.05e5, noNaN: true }),
    relativeHumidity: fc.double({ min: 0.2, max: 1, noNaN: true }),
  })
  .map(moistAir);

function at(air: MoistAir, height: number): ParcelState {
  const [state] = risingParcel(air, { heights: [height] });
  if (state === undefined) throw new Error('no state');
  return state;
}

describe('risingParcel', () => {
  it('starts where the air is', () => {
    expect(at(ROOM, 0)).toMatchObject({ height: 0, pressure: 9.5e4, liquidWater: 0, liquidWaterContent: 0 });
    expect(at(ROOM, 0).temperature).toBeCloseTo(ROOM.temperature, 10);
  });

  it('is, at its pressure, the expanded air', () => {
    fc.assert(
      fc.property(AIR, fc.double({ min: 0, max: 3000, noNaN: true }), (air, height) => {
        const state = at(air, height);
        const expanded = expandWithCondensation(air, state.pressure);
        expect(state.temperature).toBe(expanded.temperature);
        expect(state.relativeHumidity).toBe(expanded.saturationRatio);
        expect(state.liquidWater).toBe(expanded.liquidWater);
        expect(state.liquidWaterContent).toBe(expanded.liquidWaterContent);
      }),
      { seed: 20, numRuns: 50 },
    );
  });

  it('cools by g/c_p below the base: 9.8 K/km (Wallace & Hobbs 2006, eq. 3.53)', () => {
    const dry = moistAir({ temperature: 300, pressure: 1e5, relativeHumidity: 0 });
    expect(300 - at(dry, 1000).temperature).toBeCloseTo(9.8, 1);
    expect(at(dry, 1000)).toMatchObject({ relativeHumidity: 0, liquidWater: 0 });
  });

  // Hydrostatic balance with the weight of air, vapor and droplets, by central differences.
  it('carries its own weight, droplets included', () => {
    const step = 0.5;
    for (const height of [200, 700, 1500, 2500, 4000]) {
      const [below, here, above] = risingParcel(ROOM, { heights: [height - step, height, height + step] });
      if (below === undefined || here === undefined || above === undefined) throw new Error('no states');
      const { density } = expandWithCondensation(ROOM, here.pressure);
      const weight = (density + here.liquidWaterContent) * GRAVITY;
      expect((above.pressure - below.pressure) / (-2 * step * weight), `${height} m`).toBeCloseTo(1, 7);
    }
  });

  // The same integral by the trapezoidal rule in very short steps, as an independent quadrature.
  it('integrates the column to a tenth of a millimeter', () => {
    const { pressure: base, height } = cloudBase(ROOM);
    const top = 5.5e4;
    const steps = 4000;
    const step = Math.log(base / top) / steps;
    let sum = 0;
    for (let i = 0; i <= steps; i++) {
      const p = base * Math.exp(-i * step);
      const { density, liquidWaterContent } = expandWithCondensation(ROOM, p);
      sum += ((i === 0 || i === steps ? 0.5 : 1) * step * p) / ((density + liquidWaterContent) * GRAVITY);
    }
    expect(Math.abs(heightOfEqualPressure(ROOM, top) - height - sum)).toBeLessThan(1e-4);
  });

  it('begins to carry water at its cloud base', () => {
    fc.assert(
      fc.property(AIR, (air) => {
        const { height, temperature, pressure } = cloudBase(air);
        const above = at(air, height + 0.01);
        expect(above.liquidWater).toBeGreaterThan(0);
        expect(above.relativeHumidity).toBe(1);
        expect(Math.abs(above.temperature - temperature)).toBeLessThan(1e-3);
        expect(Math.abs(above.pressure - pressure)).toBeLessThan(0.2);
        if (height > 0.01) expect(at(air, height - 0.01).liquidWater).toBe(0);
      }),
      { seed: 21, numRuns: 50 },
    );
  });

  it('rises from the highest pressure of the range', () => {
    const dense = moistAir({ temperature: 300, pressure: 5e5, relativeHumidity: 1 });
    expect(at(dense, 0).pressure).toBe(5e5);
    expect(at(dense, 10).liquidWater).toBeGreaterThan(0);
    expect(heightOfEqualPressure(dense, 5e5)).toBe(0);
  });

  it('answers in the order it is asked', () => {
    expect(risingParcel(ROOM, { heights: [3000, 0, 1000] }).map(({ height }) => height)).toEqual([3000, 0, 1000]);
    expect(risingParcel(ROOM, { heights: [] })).toEqual([]);
  });

  it('goes on from a cloud', () => {
    const start = at(ROOM, 2000);
    const cloud = expandWithCondensation(ROOM, start.pressure);
    expect(at(cloud, 1000).temperature).toBeCloseTo(at(ROOM, 3000).temperature, 6);
    expect(at(cloud, 0).pressure).toBe(cloud.pressure);
    expect(heightOfEqualPressure(cloud, cloud.pressure)).toBe(0);
  });

  it.each([[-1e-9], [20_001], [NaN], [Infinity]])('refuses a height of %d m', (height) => {
    expect(() => at(ROOM, height)).toThrow(RangeError);
  });

  it('refuses droplets colder than −38 °C', () => {
    const cold = moistAir({ temperature: celsius(-25), pressure: 8e4, relativeHumidity: 0.9 });
    expect(at(cold, 1000).liquidWater).toBeGreaterThan(0);
    expect(() => at(cold, 4000)).toThrow(/freeze/);
  });

  it('answers close to where it must refuse', () => {
    const cold = moistAir({ temperature: celsius(-37), pressure: 8e4, relativeHumidity: 1 });
    const { temperature } = at(cold, 100);
    expect(temperature).toBeGreaterThan(235.15);
    const coldest = 100 * ((cold.temperature - 235.15) / (cold.temperature - temperature));
    expect(at(cold, coldest - 0.5).temperature).toBeCloseTo(235.15, 1);
  });

  it('refuses a pressure below 5000 Pa', () => {
    const dry = moistAir({ temperature: 250, pressure: 2e4, relativeHumidity: 0 });
    expect(() => at(dry, 15_000)).toThrow(/5000/);
  });

  it('refuses supersaturated air', () => {
    const cold = expandWithoutCondensation(moistAir({ temperature: 293, pressure: 1e5, relativeHumidity: 1 }), 9e4);
    expect(() => at(cold, 100)).toThrow(/saturationRatio/);
  });
});

describe('heightOfEqualPressure', () => {
  it('is the inverse of the rise', () => {
    fc.assert(
      fc.property(AIR, fc.double({ min: 0, max: 4000, noNaN: true }), (air, height) => {
        expect(Math.abs(heightOfEqualPressure(air, at(air, height).pressure) - height)).toBeLessThan(1e-6);
      }),
      { seed: 22, numRuns: 50 },
    );
  });

  // Isentropic dry air: z = c_p·T/g·(1 − (p/p₀)^κ), the standard formula with a constant heat capacity.
  it('is the closed form for dry air', () => {
    const dry = moistAir({ temperature: 290, pressure: 1e5, relativeHumidity: 0 });
    const kappa = 8.314462618 / 0.02896546 / 1005;
    expect(heightOfEqualPressure(dry, 6e4)).toBeCloseTo(((1005 * 290) / GRAVITY) * (1 - 0.6 ** kappa), 6);
  });

  it('is higher where droplets warm the column', () => {
    const dry = moistAir({ temperature: 295, pressure: 1e5, relativeHumidity: 0 });
    const wet = moistAir({ temperature: 295, pressure: 1e5, relativeHumidity: 1 });
    expect(heightOfEqualPressure(wet, 7e4)).toBeGreaterThan(heightOfEqualPressure(dry, 7e4) + 50);
  });

  it.each([[4999], [9.5e4 + 0.01], [NaN], [0]])('refuses %d Pa', (pressure) => {
    expect(() => heightOfEqualPressure(ROOM, pressure)).toThrow(RangeError);
  });

  it('refuses droplets colder than −38 °C', () => {
    expect(() => heightOfEqualPressure(ROOM, 1.5e4)).toThrow(/freeze/);
  });
});

describe('heightOfEqualTemperature', () => {
  it('is the inverse of the clear rise', () => {
    const height = 0.9 * cloudBase(ROOM).height;
    expect(heightOfEqualTemperature(ROOM, at(ROOM, height).temperature)).toBeCloseTo(height, 6);
    expect(heightOfEqualTemperature(ROOM, ROOM.temperature)).toBe(0);
  });

  it.each([[122.9], [ROOM.temperature + 1e-6], [NaN], [0]])('refuses %d K', (temperature) => {
    expect(() => heightOfEqualTemperature(ROOM, temperature)).toThrow(RangeError);
  });

  it('refuses a rise to less than 5000 Pa, and air that carries droplets', () => {
    const low = moistAir({ temperature: 300, pressure: 1e4, relativeHumidity: 0 });
    expect(() => heightOfEqualTemperature(low, 150)).toThrow(/pressure/);
    const cloud = expandWithCondensation(ROOM, 7e4);
    expect(() => heightOfEqualTemperature(cloud, 260)).toThrow(/liquid water/);
  });
});

describe('cloudBase', () => {
  // Romps 2017 has his own constants: his gravity alone, 9.81, makes 0.03 %.
  it('agrees with the lifting condensation level to 0.3 % and 1 m', () => {
    fc.assert(
      fc.property(AIR, (air) => {
        const base = cloudBase(air);
        const level = liftingCondensationLevel(air);
        expect(Math.abs(base.height - level.height)).toBeLessThan(1 + 0.003 * level.height);
      }),
      { seed: 23 },
    );
  });

  it('is at the start for saturated air', () => {
    const air = moistAir({ temperature: 280, pressure: 9e4, relativeHumidity: 1 });
    expect(cloudBase(air)).toEqual({ height: 0, pressure: 9e4, temperature: 280 });
    expect(liftingCondensationLevel(air).height).toBeCloseTo(0, 6);
  });

  it('refuses dry air', () => {
    expect(() => cloudBase(moistAir({ temperature: 293, pressure: 1e5, relativeHumidity: 0 }))).toThrow(RangeError);
  });
});

describe('lifting levels', () => {
  it('has the deposition level below the condensation level where it is cold', () => {
    const cold = moistAir({ temperature: celsius(-10), pressure: 9e4, relativeHumidity: 0.7 });
    expect(liftingDepositionLevel(cold).height).toBeLessThan(liftingCondensationLevel(cold).height);
    expect(liftingDepositionLevel(cold).height).toBeGreaterThan(0);
  });

  it('refuses what is supersaturated over ice, or too dry', () => {
    expect(() => liftingDepositionLevel(moistAir({ temperature: celsius(-10), pressure: 9e4, relativeHumidity: 1 }))).toThrow(RangeError);
    for (const relativeHumidity of [0, 1e-7]) {
      expect(() => liftingCondensationLevel(moistAir({ temperature: 293, pressure: 9e4, relativeHumidity }))).toThrow(RangeError);
    }
    const supersaturated = expandWithoutCondensation(moistAir({ temperature: 293, pressure: 1e5, relativeHumidity: 1 }), 9e4);
    expect(() => liftingCondensationLevel(supersaturated)).toThrow(RangeError);
  });
});

describe('boltonCondensationTemperature', () => {
  // Bolton states 0.1 K over −35 to 35 °C; the reference is the exact level of air with that dew point.
  it('is within 0.1 K of the exact level', () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 35, noNaN: true }), fc.double({ min: 0.2, max: 1, noNaN: true }), (t, relativeHumidity) => {
        const air = moistAir({ temperature: celsius(t), pressure: 1e5, relativeHumidity });
        if (air.dewPoint === undefined) throw new Error('no dew point');
        const bolton = boltonCondensationTemperature(air.temperature, Math.min(air.dewPoint, air.temperature));
        expect(Math.abs(bolton - liftingCondensationLevel(air).temperature)).toBeLessThan(0.1);
      }),
      { seed: 24 },
    );
  });

  it('is the temperature of saturated air', () => {
    expect(boltonCondensationTemperature(290, 290)).toBeCloseTo(290, 12);
  });

  it.each([
    [238, 230],
    [318.2, 300],
    [290, 218],
    [290, 290.1],
    [NaN, 280],
    [290, NaN],
  ])('refuses %d K with a dew point of %d K', (temperature, dewPoint) => {
    expect(() => boltonCondensationTemperature(temperature, dewPoint)).toThrow(RangeError);
  });
});
