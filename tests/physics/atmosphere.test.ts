import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { geopotentialAltitude, pressureAltitude, standardAtmosphere, stationPressure, thickness } from '../../src/physics/atmosphere.ts';

const LAYER = { bottomPressure: 1e5, topPressure: 5e4, virtualTemperature: 273.15 };
const RANGES: readonly (readonly [string, (x: number) => number, number, number])[] = [
  ['standardAtmosphere', (h) => standardAtmosphere(h).pressure, -5000, 32_000],
  ['pressureAltitude', pressureAltitude, standardAtmosphere(32_000).pressure, standardAtmosphere(-5000).pressure],
  ['stationPressure', stationPressure, -4000, 9000],
  ['geopotentialAltitude', geopotentialAltitude, -5000, 86_000],
  ['thickness by its bottom pressure', (bottomPressure) => thickness({ ...LAYER, topPressure: 100, bottomPressure }), 100, 5e5],
  ['thickness by its top pressure', (topPressure) => thickness({ ...LAYER, topPressure }), 100, 1e5],
  ['thickness by its temperature', (virtualTemperature) => thickness({ ...LAYER, virtualTemperature }), 150, 350],
];

describe.each(RANGES)('%s', (_, f, low, high) => {
  it('answers at both edges and refuses beyond, and what is not a number', () => {
    expect(Number.isFinite(f(low))).toBe(true);
    expect(Number.isFinite(f(high))).toBe(true);
    const step = 1e-9 * (high - low);
    for (const x of [low - step, high + step, NaN, Infinity, -Infinity]) expect(() => f(x)).toThrow(RangeError);
  });
});

const ALTITUDES = fc.double({ min: -5000, max: 32_000, noNaN: true });

describe('standard atmosphere', () => {
  it('is inverted by pressureAltitude', () => {
    fc.assert(
      fc.property(ALTITUDES, (h) => {
        expect(Math.abs(pressureAltitude(standardAtmosphere(h).pressure) - h)).toBeLessThan(1e-8);
      }),
      { seed: 18, numRuns: 500 },
    );
  });

  it.each([[0], [11_000], [20_000]])('is continuous at %d m', (h) => {
    const below = standardAtmosphere(h - 1e-6);
    const above = standardAtmosphere(h + 1e-6);
    expect(above.pressure / below.pressure).toBeCloseTo(1, 9);
    expect(above.temperature).toBeCloseTo(below.temperature, 7);
    expect(pressureAltitude(standardAtmosphere(h).pressure)).toBeCloseTo(h, 9);
  });

  // Hydrostatic equation and gas law of the standard, with its gas constant: 287.05307 J/(kg·K) by
  // US Standard Atmosphere 1976, 287.05287 by ISO 2533.
  it('is in hydrostatic balance with the gas law', () => {
    fc.assert(
      fc.property(fc.double({ min: -4990, max: 31_990, noNaN: true }), (h) => {
        const { temperature, pressure, density } = standardAtmosphere(h);
        const step = Math.abs(h - 11_000) < 2 || Math.abs(h - 20_000) < 2 ? 0.01 : 1;
        const slope = (standardAtmosphere(h + step).pressure - standardAtmosphere(h - step).pressure) / (2 * step);
        expect(slope / (-density * 9.80665)).toBeCloseTo(1, 6);
        expect(pressure / (density * temperature)).toBeCloseTo(287.05307, 5);
      }),
      { seed: 19, numRuns: 300 },
    );
  });
});

describe('stationPressure', () => {
  it('lies above that of the same number as geopotential altitude, and is 101 325 Pa at sea level', () => {
    expect(stationPressure(0)).toBe(101325);
    expect(stationPressure(3000)).toBeGreaterThan(standardAtmosphere(3000).pressure);
  });
});

describe('thickness', () => {
  it('adds up over layers and is zero for none', () => {
    const whole = thickness(LAYER);
    const parts = thickness({ ...LAYER, topPressure: 7e4 }) + thickness({ ...LAYER, bottomPressure: 7e4 });
    expect(parts).toBeCloseTo(whole, 9);
    expect(thickness({ ...LAYER, topPressure: 1e5 })).toBe(0);
  });

  // The isothermal layer of the standard atmosphere: another gas constant by 6 parts in 10⁵ at most.
  it('gives the standard atmosphere’s isothermal layer', () => {
    const bottomPressure = standardAtmosphere(11_000).pressure;
    const topPressure = standardAtmosphere(20_000).pressure;
    expect(Math.abs(thickness({ bottomPressure, topPressure, virtualTemperature: 216.65 }) / 9000 - 1)).toBeLessThan(6e-5);
  });
});
