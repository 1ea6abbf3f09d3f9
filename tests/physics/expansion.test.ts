import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEAT_CAPACITY_DRY_AIR } from '../../src/physics/constants.ts';
import { cloudOnset, entropy, expandWithCondensation, expandWithoutCondensation } from '../../src/physics/expansion.ts';
import { liftingCondensationLevel } from '../../src/physics/lifting-levels.ts';
import { moistAir, type MoistAir } from '../../src/physics/moist-air.ts';
import { celsius } from '../../src/physics/units.ts';

/** Rooms and vessels, and how far each is pumped: its droplets stay above −38 °C. */
const EXPANSIONS = fc
  .record({
    temperature: fc.double({ min: celsius(10), max: celsius(45), noNaN: true }),
    pressure: fc.double({ min: 6e4, max: 2e5, noNaN: true }),
    relativeHumidity: fc.double({ min: 0.2, max: 1, noNaN: true }),
    ratio: fc.double({ min: 0.62, max: 1, noNaN: true }),
  })
  .map(({ ratio, ...state }) => ({ air: moistAir(state), pressure: ratio * state.pressure }));

const check = (property: (air: MoistAir, pressure: number) => void, seed: number, numRuns = 200): void =>
  fc.assert(fc.property(EXPANSIONS, ({ air, pressure }) => property(air, pressure)), { seed, numRuns });

describe.each([
  ['expandWithoutCondensation', expandWithoutCondensation],
  ['expandWithCondensation', expandWithCondensation],
] as const)('%s', (_, expand) => {
  it('conserves entropy', () => {
    check((air, pressure) => {
      expect(Math.abs(entropy(expand(air, pressure)) - entropy(air)) / HEAT_CAPACITY_DRY_AIR).toBeLessThan(1e-10);
    }, 7);
  });

  it('conserves water', () => {
    check((air, pressure) => {
      const end = expand(air, pressure);
      const liquid = 'liquidWater' in end ? Number(end.liquidWater) : 0;
      expect(Math.abs((end.mixingRatio + liquid) / air.mixingRatio - 1)).toBeLessThan(1e-12);
    }, 8);
  });

  it('gives the same by two stages as by one', () => {
    check((air, pressure) => {
      const between = Math.sqrt(air.pressure * pressure);
      const start = expand(air, between);
      if (start.saturationRatio > 1 && !('liquidWater' in start)) return; // only the clear state may be supersaturated, and it may go on
      expect(Math.abs(expand(start, pressure).temperature - expand(air, pressure).temperature)).toBeLessThan(1e-8);
    }, 9);
  });

  it('comes back to the start on compression', () => {
    check((air, pressure) => {
      const back = expand(expand(air, pressure), air.pressure);
      expect(Math.abs(back.temperature - air.temperature)).toBeLessThan(1e-8);
      expect(Math.abs(back.mixingRatio / air.mixingRatio - 1)).toBeLessThan(1e-9);
    }, 10);
  });

  it('leaves air at its own pressure as it is', () => {
    check((air) => {
      expect(expand(air, air.pressure).temperature).toBeCloseTo(air.temperature, 9);
    }, 11, 50);
  });

  const room = moistAir({ temperature: 320, pressure: 1e5, relativeHumidity: 0.3 });
  it.each([[4999], [500001], [0], [-1], [NaN], [Infinity]])('refuses a pressure of %d Pa', (pressure) => {
    expect(() => expand(room, pressure)).toThrow(/pressure is/);
  });

  it('refuses to heat the air beyond the range of its saturation vapor pressure', () => {
    expect(() => expand(room, 2e5)).toThrow(/temperature .*332/);
  });
});

describe('expandWithoutCondensation', () => {
  it('heats air without any vapor further, for it has no saturation', () => {
    const hot = expandWithoutCondensation(moistAir({ temperature: 291, pressure: 3e4, relativeHumidity: 0 }), 1e5);
    expect(hot).toMatchObject({ vaporPressure: 0, saturationRatio: 0, mixingRatio: 0, dewPoint: undefined });
    expect(hot.density).toBeCloseTo(1e5 / (287.05 * hot.temperature), 4);
    expect(() => expandWithoutCondensation(hot, 2e5)).toThrow(/temperature .*450/);
  });

  it('may pass saturation, and goes on from there', () => {
    const start = moistAir({ temperature: 293, pressure: 1e5, relativeHumidity: 0.9 });
    const half = expandWithoutCondensation(start, 8.5e4);
    expect(half.saturationRatio).toBeGreaterThan(1.5);
    expect(expandWithoutCondensation(half, 7e4).temperature).toBeCloseTo(expandWithoutCondensation(start, 7e4).temperature, 10);
  });

  it('keeps each gas’s share: vapor pressure falls with pressure', () => {
    check((air, pressure) => {
      const end = expandWithoutCondensation(air, pressure);
      expect(end.vaporPressure / air.vaporPressure).toBeCloseTo(pressure / air.pressure, 12);
    }, 12);
  });

  it('refuses air that carries droplets', () => {
    const cloud = expandWithCondensation(moistAir({ temperature: 293, pressure: 1e5, relativeHumidity: 1 }), 9e4);
    expect(() => expandWithoutCondensation(cloud, 8e4)).toThrow(/liquid water/);
  });

  it('refuses what would be colder than 123 K', () => {
    expect(() => expandWithoutCondensation(moistAir({ temperature: 250, pressure: 1e5, relativeHumidity: 0 }), 5e3)).toThrow(/123/);
  });
});

describe('expandWithCondensation', () => {
  it('is never colder than without', () => {
    check((air, pressure) => {
      expect(expandWithCondensation(air, pressure).temperature).toBeGreaterThanOrEqual(expandWithoutCondensation(air, pressure).temperature - 1e-9);
    }, 13);
  });

  it('is either clear and unsaturated or cloudy and saturated', () => {
    check((air, pressure) => {
      const end = expandWithCondensation(air, pressure);
      if (end.liquidWater === 0) {
        expect(end.saturationRatio).toBeLessThanOrEqual(1);
        expect(end.liquidWaterContent).toBe(0);
      } else {
        expect(end.saturationRatio).toBe(1);
        expect(end.liquidWater).toBeGreaterThan(0);
        expect(end.liquidWaterContent / (end.liquidWater * (end.density - end.vaporPressure * 0.01801528 / (8.314462618 * end.temperature)))).toBeCloseTo(1, 10);
      }
    }, 14);
  });

  // Near room temperature the latent heat halves the fall of temperature, roughly.
  it('about halves the cooling of saturated air near room temperature', () => {
    const air = moistAir({ temperature: celsius(22), pressure: 1e5, relativeHumidity: 1 });
    const clear = air.temperature - expandWithoutCondensation(air, 8e4).temperature;
    const cloudy = air.temperature - expandWithCondensation(air, 8e4).temperature;
    expect(clear / cloudy).toBeGreaterThan(2);
    expect(clear / cloudy).toBeLessThan(2.6);
  });

  it('refuses a supersaturated start', () => {
    const cold = expandWithoutCondensation(moistAir({ temperature: 293, pressure: 1e5, relativeHumidity: 1 }), 9e4);
    expect(() => expandWithCondensation(cold, 8e4)).toThrow(/saturationRatio/);
  });

  it('refuses droplets colder than −38 °C, and says so', () => {
    const air = moistAir({ temperature: celsius(-20), pressure: 1e5, relativeHumidity: 1 });
    expect(expandWithCondensation(air, 8.5e4).liquidWater).toBeGreaterThan(0);
    expect(() => expandWithCondensation(air, 6e4)).toThrow(/freeze/);
  });

  it('answers for dry air at any cold, since nothing freezes', () => {
    const air = moistAir({ temperature: celsius(-20), pressure: 1e5, relativeHumidity: 0 });
    expect(expandWithCondensation(air, 5e4)).toMatchObject({ liquidWater: 0, liquidWaterContent: 0 });
  });
});

describe('cloudOnset', () => {
  it('lies where air without droplets is just saturated', () => {
    check((air) => {
      const onset = cloudOnset(air);
      const there = expandWithoutCondensation(air, onset.pressure);
      expect(Math.abs(there.saturationRatio - 1)).toBeLessThan(1e-9);
      expect(there.temperature).toBe(onset.temperature);
    }, 15);
  });

  it('divides clear from cloudy', () => {
    check((air) => {
      const { pressure, temperature } = cloudOnset(air);
      const above = expandWithCondensation(air, Math.min(air.pressure, pressure * (1 + 1e-7)));
      if (pressure * (1 + 1e-7) < air.pressure) {
        expect(above.liquidWater).toBe(0);
        expect(above.saturationRatio).toBeLessThan(1);
      }
      const below = expandWithCondensation(air, pressure * (1 - 1e-7));
      expect(below.liquidWater).toBeGreaterThan(0);
      expect(below.saturationRatio).toBe(1);
      expect(Math.abs(above.temperature - temperature)).toBeLessThan(1e-4);
      expect(Math.abs(below.temperature - temperature)).toBeLessThan(1e-4);
    }, 16);
  });

  // Independent thermodynamics: Romps's constants and vapor pressure, no enhancement factor, closed form.
  it('agrees with the lifting condensation level to 0.04 K and 0.1 %', () => {
    check((air) => {
      const onset = cloudOnset(air);
      const level = liftingCondensationLevel(air);
      expect(Math.abs(onset.temperature - level.temperature)).toBeLessThan(0.04);
      expect(Math.abs(onset.pressure / level.pressure - 1)).toBeLessThan(0.001);
    }, 17, 400);
  });

  it('is found from cold starts, whose expansion to the lowest pressure would leave the range', () => {
    for (const t of [-30, -10, 0, 10]) {
      const air = moistAir({ temperature: celsius(t), pressure: 1e5, relativeHumidity: 0.8 });
      expect(Math.abs(cloudOnset(air).temperature - liftingCondensationLevel(air).temperature)).toBeLessThan(0.06);
    }
  });

  it.each([
    [5e5, 0.5],
    [5e5, 0.9],
    [7e3, 0.3],
    [6.5e3, 0.8],
  ])('is found at the ends of the range of pressure: from %d Pa at %d', (pressure, relativeHumidity) => {
    const air = moistAir({ temperature: 300, pressure, relativeHumidity });
    expect(Math.abs(cloudOnset(air).temperature - liftingCondensationLevel(air).temperature)).toBeLessThan(0.06);
  });

  it('is the start itself where the air is saturated', () => {
    const air = moistAir({ temperature: 290, pressure: 9e4, relativeHumidity: 1 });
    expect(cloudOnset(air)).toEqual({ pressure: 9e4, temperature: 290 });
  });

  it.each([
    ['dry air', 293, 0],
    ['air so dry that it would freeze first', 293, 0.005],
    ['air below −38 °C', 230, 0.9],
    ['air that would have to thin to less than 5000 Pa', 300, 0.6, 5.5e3],
  ])('refuses %s', (_, temperature, relativeHumidity, pressure = 1e5) => {
    expect(() => cloudOnset(moistAir({ temperature, pressure, relativeHumidity }))).toThrow(RangeError);
  });
});
