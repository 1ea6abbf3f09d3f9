import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moistAir, moistAirOfMixingRatio, saturationPressureInAir } from '../../src/physics/moist-air.ts';
import { celsius } from '../../src/physics/units.ts';

const STATES = fc.record({
  temperature: fc.double({ min: 243, max: 323, noNaN: true }),
  pressure: fc.double({ min: 4e4, max: 2e5, noNaN: true }),
  relativeHumidity: fc.double({ min: 0, max: 1, noNaN: true }),
});

/**
 * Density of moist air by CIPM-2007: Picard, Davis, Gläser & Fujii 2008, Metrologia 45, 149,
 * eqs. 1 and 4 and appendix A, written out here on its own as a reference.
 */
function cipm2007(t: number, p: number, h: number): number {
  const T = t + 273.15;
  const saturation = Math.exp(1.2378847e-5 * T * T - 1.9121316e-2 * T + 33.93711047 - 6343.1645 / T);
  const x = (h * (1.00062 + 3.14e-8 * p + 5.6e-7 * t * t) * saturation) / p;
  const z =
    1 -
    (p / T) * (1.58123e-6 - 2.9331e-8 * t + 1.1043e-10 * t * t + (5.707e-6 - 2.051e-8 * t) * x + (1.9898e-4 - 2.376e-6 * t) * x * x) +
    ((p * p) / (T * T)) * (1.83e-11 - 0.765e-8 * x * x);
  return ((p * 28.96546e-3) / (z * 8.314472 * T)) * (1 - x * (1 - 18.01528e-3 / 28.96546e-3));
}

describe('density against CIPM-2007', () => {
  // An ideal gas lacks the compressibility: 0.02 to 0.05 % over the formula's range of 15 to 27 °C and 60 to 110 kPa.
  it.each([15, 18, 21, 24, 27])('%d °C', (t) => {
    for (let p = 6e4; p <= 1.1e5; p += 1e4) {
      for (let h = 0; h <= 1; h += 0.25) {
        const { density } = moistAir({ temperature: celsius(t), pressure: p, relativeHumidity: h });
        const excess = 1 - density / cipm2007(t, p, h);
        expect(excess, `${p} Pa, ${h}`).toBeGreaterThan(0.0001);
        expect(excess, `${p} Pa, ${h}`).toBeLessThan(0.0006);
      }
    }
  });
});

describe('moistAir', () => {
  it('obeys Dalton’s law and the gas law', () => {
    fc.assert(
      fc.property(STATES, (state) => {
        const air = moistAir(state);
        // Gas constants by the SI Brochure and CIPM-2007, formed here anew.
        const dry = ((air.pressure - air.vaporPressure) * 0.02896546) / (8.314462618 * air.temperature);
        const vapor = (air.vaporPressure * 0.01801528) / (8.314462618 * air.temperature);
        expect(air.density / (dry + vapor)).toBeCloseTo(1, 12);
        expect(air.mixingRatio).toBeCloseTo(vapor / dry, 14);
        expect(air.specificHumidity).toBeCloseTo(vapor / (dry + vapor), 14);
        expect(air.heatCapacity * (dry + vapor)).toBeCloseTo(1005 * dry + 1860 * vapor, 9);
        expect(air.virtualTemperature * dry + air.virtualTemperature * vapor).toBeCloseTo((air.pressure * 0.02896546) / 8.314462618, 6);
      }),
      { seed: 4 },
    );
  });

  it('is one with moistAirOfMixingRatio', () => {
    fc.assert(
      fc.property(STATES, (state) => {
        const air = moistAir(state);
        const again = moistAirOfMixingRatio(air.temperature, air.pressure, air.mixingRatio);
        expect(again.vaporPressure).toBeCloseTo(air.vaporPressure, 8);
        expect(again.saturationRatio).toBeCloseTo(state.relativeHumidity, 12);
        expect(again.density).toBeCloseTo(air.density, 12);
      }),
      { seed: 5 },
    );
  });

  it('has its dew point at its temperature where saturated, below where not', () => {
    for (const t of [-30, 0, 20, 45]) {
      const saturated = moistAir({ temperature: celsius(t), pressure: 9e4, relativeHumidity: 1 });
      expect(saturated.dewPoint).toBeCloseTo(celsius(t), 9);
      const half = moistAir({ temperature: celsius(t), pressure: 9e4, relativeHumidity: 0.5 });
      expect(half.dewPoint).toBeLessThan(celsius(t));
    }
  });

  it('knows no dew point without vapor, nor above the range of the saturation vapor pressure', () => {
    expect(moistAirOfMixingRatio(330, 1e5, 0.2).dewPoint).toBeUndefined();
    expect(moistAir({ temperature: 293, pressure: 1e5, relativeHumidity: 0 }).dewPoint).toBeUndefined();
  });

  const START = { temperature: 293, pressure: 1e5, relativeHumidity: 0.5 };
  it.each([
    ['temperature', 173.15, 331],
    ['pressure', 5e3, 5e5],
    ['relativeHumidity', 0, 1],
  ] as const)('guards %s', (name, low, high) => {
    expect(moistAir({ ...START, [name]: low }).density).toBeGreaterThan(0);
    expect(moistAir({ ...START, [name]: high }).density).toBeGreaterThan(0);
    for (const value of [low - 1e-3, high * (1 + 1e-9), NaN, Infinity]) expect(() => moistAir({ ...START, [name]: value })).toThrow(RangeError);
  });

  it('refuses what would be more vapor than air', () => {
    expect(() => moistAir({ temperature: 330, pressure: 2e4, relativeHumidity: 1 })).toThrow(/vaporPressure/);
  });
});

describe('moistAirOfMixingRatio', () => {
  it('may be supersaturated', () => {
    expect(moistAirOfMixingRatio(263.15, 8e4, 0.01).saturationRatio).toBeGreaterThan(2);
  });

  it.each([
    ['temperature', 122.9, 1e5, 0.01],
    ['temperature', 332.1, 1e5, 0.01],
    ['pressure', 293, 4999, 0.01],
    ['pressure', 293, 500001, 0.01],
    ['mixingRatio', 293, 1e5, -1e-9],
    ['mixingRatio', 293, 1e5, 0.61],
    ['mixingRatio', 293, 1e5, NaN],
  ])('guards %s', (name, T, p, w) => {
    expect(() => moistAirOfMixingRatio(T, p, w)).toThrow(new RegExp(`${name} is`));
  });
});

describe('saturationPressureInAir', () => {
  it.each([[122], [333], [NaN]])('refuses %d K', (T) => {
    expect(() => saturationPressureInAir(T, 1e5)).toThrow(RangeError);
  });
  it.each([[4999], [500001], [NaN]])('refuses %d Pa', (p) => {
    expect(() => saturationPressureInAir(293, p)).toThrow(RangeError);
  });
});
