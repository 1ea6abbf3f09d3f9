/**
 * Against PsychroLib (Meyer & Thevenard 2019, J. Open Source Softw. 4, 1137), which follows the ASHRAE
 * Handbook Fundamentals 2017, ch. 1: Hyland & Wexler's saturation pressure, and no enhancement factor.
 */
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { standardAtmosphere } from '../../src/physics/atmosphere.ts';
import { moistAir, moistAirOfMixingRatio } from '../../src/physics/moist-air.ts';
import { dewPoint, enhancementFactor, saturationVaporPressure, saturationVaporPressureIce } from '../../src/physics/saturation.ts';
import { celsius, toCelsius } from '../../src/physics/units.ts';

/** What is called of the library, which ships without types. */
interface Psychrometrics {
  readonly SI: number;
  SetUnitSystem(system: number): void;
  GetSatVapPres(celsius: number): number;
  GetHumRatioFromRelHum(celsius: number, relativeHumidity: number, pressure: number): number;
  GetHumRatioFromVapPres(vaporPressure: number, pressure: number): number;
  GetTDewPointFromVapPres(celsius: number, vaporPressure: number): number;
  GetMoistAirDensity(celsius: number, humidityRatio: number, pressure: number): number;
  GetStandardAtmPressure(meters: number): number;
  GetStandardAtmTemperature(meters: number): number;
}

const psychrolib = createRequire(import.meta.url)('psychrolib') as Psychrometrics;
psychrolib.SetUnitSystem(psychrolib.SI);

const range = (first: number, last: number, step: number): number[] =>
  Array.from({ length: Math.round((last - first) / step) + 1 }, (_, i) => first + i * step);
const relative = (computed: number, reference: number): number => Math.abs(computed / reference - 1);

const PRESSURES = range(6e4, 1.1e5, 1e4);
const HUMIDITIES = range(0.05, 1, 0.05);

describe('saturation vapor pressure', () => {
  // ASHRAE states 300 ppm, Murphy & Koop 0.05 %.
  it.each(range(1, 50, 1))('over water at %d °C', (t) => {
    expect(relative(saturationVaporPressure(celsius(t)), psychrolib.GetSatVapPres(t))).toBeLessThan(4e-4);
  });
  it.each(range(-20, 0, 1))('over ice at %d °C', (t) => {
    expect(relative(saturationVaporPressureIce(celsius(t)), psychrolib.GetSatVapPres(t))).toBeLessThan(4e-4);
  });
});

describe.each(range(5, 50, 5))('moist air at %d °C', (t) => {
  // PsychroLib leaves the enhancement factor out, so it is given the humidity times the factor. The rest is
  // the saturation pressure's 4 parts in 10⁴, magnified by p/(p − e), up to 1.26, and its ratio of molar masses.
  it('has the same humidity ratio', () => {
    for (const p of PRESSURES) {
      const factor = enhancementFactor(celsius(t), p);
      for (const h of HUMIDITIES.filter((share) => share * factor <= 1)) {
        const { mixingRatio } = moistAir({ temperature: celsius(t), pressure: p, relativeHumidity: h });
        expect(relative(mixingRatio, psychrolib.GetHumRatioFromRelHum(t, h * factor, p)), `${p} Pa, ${h}`).toBeLessThan(5e-4);
      }
    }
  });

  // 4 parts in 10⁴ of vapor pressure are 0.007 K.
  it('has the same dew point', () => {
    for (const h of HUMIDITIES) {
      const e = h * psychrolib.GetSatVapPres(t);
      if (e < 620) continue; // below the triple point PsychroLib's dew point is a frost point
      expect(Math.abs(toCelsius(dewPoint(e)) - psychrolib.GetTDewPointFromVapPres(t, e)), `${h}`).toBeLessThan(0.007);
    }
  });
});

describe.each(range(-20, 50, 10))('density at %d °C', (t) => {
  // Ideal gases on both sides: gas constant 287.042 there, 287.048 here, and ratio of molar masses 0.621945 against 0.62196.
  it('is the same', () => {
    for (const p of PRESSURES) {
      for (const w of range(0, 0.03, 0.005)) {
        const { density } = moistAirOfMixingRatio(celsius(t), p, w);
        expect(relative(density, psychrolib.GetMoistAirDensity(t, w, p)), `${p} Pa, ${w}`).toBeLessThan(4e-5);
      }
    }
  });

  it('has the same humidity ratio for a vapor pressure', () => {
    for (const p of PRESSURES) {
      const { mixingRatio, vaporPressure } = moistAirOfMixingRatio(celsius(t), p, 0.01);
      expect(relative(mixingRatio, psychrolib.GetHumRatioFromVapPres(vaporPressure, p))).toBeLessThan(4e-5);
    }
  });
});

describe('standard atmosphere', () => {
  // ASHRAE's fit 101 325·(1 − 2.25577·10⁻⁵·Z)^5.2559 has rounded coefficients.
  it.each(range(-2000, 10_000, 500))('at %d m', (h) => {
    const { pressure, temperature } = standardAtmosphere(h);
    expect(relative(pressure, psychrolib.GetStandardAtmPressure(h))).toBeLessThan(3e-5);
    expect(toCelsius(temperature)).toBeCloseTo(psychrolib.GetStandardAtmTemperature(h), 9);
  });
});
