import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GAS_CONSTANT_VAPOR } from '../../src/physics/constants.ts';
import {
  dewPoint,
  enhancementFactor,
  latentHeatOfVaporization,
  saturationVaporPressure,
  saturationVaporPressureIce,
} from '../../src/physics/saturation.ts';

/** Each function of one argument with its range. */
const RANGES: readonly (readonly [string, (x: number) => number, number, number])[] = [
  ['saturationVaporPressure', saturationVaporPressure, 123, 332],
  ['saturationVaporPressureIce', saturationVaporPressureIce, 111, 273.16],
  ['enhancementFactor of temperature', (T) => enhancementFactor(T, 1e5), 123, 332],
  ['enhancementFactor of pressure', (p) => enhancementFactor(293, p), 5e3, 5e5],
  ['dewPoint', dewPoint, 1e-3, 1.89e4],
  ['latentHeatOfVaporization', latentHeatOfVaporization, 230, 332],
];

describe.each(RANGES)('%s', (_, f, low, high) => {
  it('answers at both edges and refuses beyond, and what is not a number', () => {
    expect(Number.isFinite(f(low))).toBe(true);
    expect(Number.isFinite(f(high))).toBe(true);
    for (const x of [low - 1e-6 * Math.abs(low), high * (1 + 1e-9), NaN, Infinity, -Infinity]) expect(() => f(x)).toThrow(RangeError);
  });
});

describe('saturation', () => {
  it('is higher over supercooled water than over ice, and equal at the triple point', () => {
    for (let T = 150; T < 273; T += 1) expect(saturationVaporPressure(T)).toBeGreaterThan(saturationVaporPressureIce(T));
    expect(saturationVaporPressure(273.16) / saturationVaporPressureIce(273.16)).toBeCloseTo(1, 6);
  });

  it('gives back the temperature as dew point', () => {
    fc.assert(
      fc.property(fc.double({ min: 168.5, max: 331, noNaN: true }), (T) => {
        expect(dewPoint(saturationVaporPressure(T))).toBeCloseTo(T, 9);
      }),
      { seed: 3 },
    );
  });

  // Two equations of one paper must agree by the Clausius–Clapeyron equation;
  // ideal vapor and the neglect of the liquid's volume cost up to 0.3 % at 50 °C.
  it('rises with temperature as its latent heat demands', () => {
    for (let T = 236; T <= 323; T += 3) {
      const slope = (Math.log(saturationVaporPressure(T + 0.01)) - Math.log(saturationVaporPressure(T - 0.01))) / 0.02;
      const latent = slope * GAS_CONSTANT_VAPOR * T * T;
      expect(Math.abs(latent / latentHeatOfVaporization(T) - 1), `${T} K`).toBeLessThan(0.004);
    }
  });

  it('is raised by the presence of air, the more the denser', () => {
    expect(enhancementFactor(293, 5e4)).toBeGreaterThan(1);
    expect(enhancementFactor(293, 1e5)).toBeGreaterThan(enhancementFactor(293, 5e4));
  });
});
