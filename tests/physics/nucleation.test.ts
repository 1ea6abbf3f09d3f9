import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expandWithoutCondensation } from '../../src/physics/expansion.ts';
import { moistAir } from '../../src/physics/moist-air.ts';
import {
  criticalCluster,
  criticalDryDiameter,
  criticalPoint,
  criticalSaturation,
  equilibriumDiameter,
  homogeneousNucleationRate,
  homogeneousOnset,
  ionLimit,
  kelvinDiameter,
  kelvinLength,
  kelvinSaturation,
  koehlerSaturation,
  noParticleLimit,
} from '../../src/physics/nucleation.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const temperatures = between(235, 332);
/** From 1 nm to 100 µm */
const diameters = between(-9, -4).map((power) => 10 ** power);
const kappas = between(-4, Math.log10(2)).map((power) => 10 ** power);
const particles = fc.record({ dryDiameter: diameters, kappa: kappas, temperature: temperatures });

describe('Köhler curve', () => {
  it('has its top where criticalPoint says', () => {
    fc.assert(
      fc.property(particles, (particle) => {
        const top = criticalPoint(particle);
        for (const step of [1e-3, 1e-2, 0.1, 1]) {
          const growth = top.wetDiameter - particle.dryDiameter;
          for (const wetDiameter of [particle.dryDiameter + growth / (1 + step), particle.dryDiameter + growth * (1 + step)]) {
            expect(koehlerSaturation({ ...particle, wetDiameter })).toBeLessThanOrEqual(top.saturationRatio * (1 + 1e-15));
          }
        }
      }),
      { seed: 1 },
    );
  });

  it('comes to the small-solute form exp√(4A³/27κd³) as particles grow (Petters & Kreidenweis 2007, eq. 10)', () => {
    const deviation = (dryDiameter: number): number => {
      const particle = { dryDiameter, kappa: 0.6, temperature: 298.15 };
      const small = Math.sqrt((4 * kelvinLength(298.15) ** 3) / (27 * 0.6 * dryDiameter ** 3));
      return Math.abs(Math.log(criticalSaturation(particle)) / small - 1);
    };
    const deviations = [1e-8, 1e-7, 1e-6, 1e-5].map(deviation);
    expect(deviations.toSorted((a, b) => b - a)).toEqual(deviations);
    expect(deviations.at(-1)).toBeLessThan(1e-3);
  });

  it('runs back from saturation to size on the stable branch', () => {
    fc.assert(
      fc.property(particles, between(0.001, 1), (particle, part) => {
        const top = criticalPoint(particle);
        const saturationRatio = top.saturationRatio * part;
        const wetDiameter = equilibriumDiameter({ ...particle, saturationRatio });
        expect(wetDiameter).toBeGreaterThanOrEqual(particle.dryDiameter);
        expect(wetDiameter).toBeLessThanOrEqual(top.wetDiameter * (1 + 1e-12));
        // A diameter of sixteen digits fixes little water on a big particle only to some of them.
        const water = (wetDiameter - particle.dryDiameter) / particle.dryDiameter;
        const back = koehlerSaturation({ ...particle, wetDiameter });
        expect(Math.abs(back / saturationRatio - 1)).toBeLessThan(1e-12 + 1e-15 / water);
      }),
      { seed: 2 },
    );
  });

  it('gives the haze its exact limits', () => {
    const particle = { dryDiameter: 1e-7, kappa: 0.6, temperature: 283 };
    for (const saturationRatio of [0, 5e-324, 1e-20]) expect(equilibriumDiameter({ ...particle, saturationRatio })).toBe(1e-7);
    expect(equilibriumDiameter({ ...particle, kappa: 0, saturationRatio: 0.9 })).toBe(1e-7);
    expect(koehlerSaturation({ ...particle, wetDiameter: 1e-7 })).toBe(0);
    const top = criticalPoint(particle);
    expect(equilibriumDiameter({ ...particle, saturationRatio: top.saturationRatio }) / top.wetDiameter).toBeCloseTo(1, 6);
    expect(() => equilibriumDiameter({ ...particle, saturationRatio: top.saturationRatio * 1.0001 })).toThrow(RangeError);
  });

  it('runs back from the critical saturation to the particle', () => {
    fc.assert(
      fc.property(particles.filter(({ dryDiameter }) => dryDiameter > 5e-9), (particle) => {
        const saturationRatio = criticalSaturation(particle);
        const back = criticalDryDiameter({ ...particle, saturationRatio });
        // The digits of the supersaturation are those that a ratio near 1 leaves.
        expect(Math.abs(back / particle.dryDiameter - 1)).toBeLessThan(1e-12 + 1e-15 / (saturationRatio - 1));
      }),
      { seed: 3 },
    );
  });

  it('comes to Kelvin for an insoluble particle, and without a jump', () => {
    const particle = { dryDiameter: 5e-8, temperature: 280 };
    const insoluble = criticalPoint({ ...particle, kappa: 0 });
    expect(insoluble).toEqual({ saturationRatio: kelvinSaturation(5e-8, 280), wetDiameter: 5e-8 });
    expect(criticalSaturation({ ...particle, kappa: 1e-9 })).toBeCloseTo(insoluble.saturationRatio, 4);
    expect(criticalDryDiameter({ saturationRatio: 1.02, kappa: 0, temperature: 280 })).toBe(kelvinDiameter(1.02, 280));
  });

  it('lets bigger, more soluble and warmer particles through sooner', () => {
    fc.assert(
      fc.property(particles.filter(({ dryDiameter, kappa, temperature }) => dryDiameter < 9e-6 && kappa < 1.8 && temperature < 331), (particle) => {
        const start = criticalSaturation(particle);
        expect(criticalSaturation({ ...particle, dryDiameter: particle.dryDiameter * 1.05 })).toBeLessThan(start);
        expect(criticalSaturation({ ...particle, kappa: particle.kappa * 1.05 })).toBeLessThan(start);
        expect(criticalSaturation({ ...particle, temperature: particle.temperature + 1 })).toBeLessThan(start);
      }),
      { seed: 4 },
    );
  });

  it('runs from Kelvin saturation to diameter and back', () => {
    fc.assert(
      fc.property(between(-8.9, -6), temperatures, (power, T) => {
        expect(kelvinDiameter(kelvinSaturation(10 ** power, T), T) / 10 ** power).toBeCloseTo(1, 10);
      }),
      { seed: 5 },
    );
  });

  it('refuses what is outside', () => {
    const particle = { dryDiameter: 1e-7, kappa: 0.6, temperature: 283 };
    const wrong: Partial<typeof particle & { surfaceTension: number }>[] = [
      { dryDiameter: 0.9e-9 }, { dryDiameter: 1.1e-4 }, { dryDiameter: NaN }, { kappa: -0.01 }, { kappa: 2.01 }, { kappa: NaN },
      { temperature: 234.9 }, { temperature: 332.1 }, { temperature: NaN }, { surfaceTension: 0.009 }, { surfaceTension: 0.21 }, { surfaceTension: NaN },
    ];
    for (const change of wrong) {
      expect(() => criticalSaturation({ ...particle, ...change })).toThrow(RangeError);
      expect(() => koehlerSaturation({ ...particle, wetDiameter: 1e-6, ...change })).toThrow(RangeError);
      expect(() => equilibriumDiameter({ ...particle, saturationRatio: 0.9, ...change })).toThrow(RangeError);
    }
    for (const wetDiameter of [0.99e-7, 1.1, NaN]) expect(() => koehlerSaturation({ ...particle, wetDiameter })).toThrow(RangeError);
    for (const S of [-0.1, NaN]) expect(() => equilibriumDiameter({ ...particle, saturationRatio: S })).toThrow(RangeError);
    for (const S of [1, 0.9, 1 + 1e-15, 5.1, NaN]) expect(() => criticalDryDiameter({ saturationRatio: S, kappa: 0.6, temperature: 283 })).toThrow(RangeError);
    for (const S of [1, 20.1, NaN]) expect(() => kelvinDiameter(S, 283)).toThrow(RangeError);
    for (const D of [0.9e-9, 1.1e-4, NaN]) expect(() => kelvinSaturation(D, 283)).toThrow(RangeError);
  });
});

describe('nucleation without particles', () => {
  it('rises with saturation ratio and with temperature', () => {
    fc.assert(
      fc.property(between(235, 330), between(2.5, 20), (T, S) => {
        expect(homogeneousNucleationRate(T, S * 1.02)).toBeGreaterThan(homogeneousNucleationRate(T, S));
        expect(homogeneousOnset(T + 1)).toBeLessThan(homogeneousOnset(T));
        expect(ionLimit(T + 1)).toBeLessThan(ionLimit(T));
      }),
      { seed: 6 },
    );
  });

  it('obeys the nucleation theorem: d ln J / d ln S is the critical number of molecules and one (Kashchiev 1982)', () => {
    fc.assert(
      fc.property(between(240, 320), between(3, 12), (T, S) => {
        const h = 1e-5;
        const slope = Math.log(homogeneousNucleationRate(T, S * (1 + h)) / homogeneousNucleationRate(T, S * (1 - h))) / (2 * h);
        expect(slope / (criticalCluster(T, S).molecules + 1)).toBeCloseTo(1, 4);
      }),
      { seed: 7 },
    );
  });

  it('reaches the stated rate at the onset', () => {
    fc.assert(
      fc.property(temperatures, between(0, 14), (T, power) => {
        const S = homogeneousOnset(T, { rate: 10 ** power });
        expect(Math.log10(homogeneousNucleationRate(T, S))).toBeCloseTo(power, 8);
      }),
      { seed: 8 },
    );
  });

  it('is nothing, not NaN, close to saturation', () => {
    expect(homogeneousNucleationRate(293, 1.0001)).toBe(0);
  });

  it('bounds clear air where the expansion meets the curves', () => {
    fc.assert(
      fc.property(between(283, 313), between(6e4, 1.05e5), between(0.6, 1), (temperature, pressure, relativeHumidity) => {
        const air = moistAir({ temperature, pressure, relativeHumidity });
        const { ion, homogeneous } = noParticleLimit(air);
        for (const [limit, curve] of [[ion, ionLimit], [homogeneous, homogeneousOnset]] as const) {
          if (limit === undefined) throw new Error('not reached');
          expect(limit.pressure).toBeLessThan(pressure);
          expect(limit.saturationRatio / curve(limit.temperature)).toBeCloseTo(1, 8);
          expect(expandWithoutCondensation(air, limit.pressure).temperature).toBe(limit.temperature);
        }
      }),
      { seed: 9, numRuns: 50 },
    );
  });

  it('says so where a limit is not reached, and answers at once where it is passed', () => {
    expect(noParticleLimit(moistAir({ temperature: 293, pressure: 1e5, relativeHumidity: 0 }))).toEqual({ ion: undefined, homogeneous: undefined });
    const passed = expandWithoutCondensation(moistAir({ temperature: 293, pressure: 1e5, relativeHumidity: 1 }), 6e4);
    expect(noParticleLimit(passed).ion?.pressure).toBe(6e4);
  });

  it('refuses what is outside', () => {
    for (const T of [234.9, 332.1, NaN]) {
      for (const f of [() => homogeneousNucleationRate(T, 4), () => criticalCluster(T, 4), () => homogeneousOnset(T), () => ionLimit(T)]) {
        expect(f).toThrow(RangeError);
      }
    }
    for (const S of [1, 0.5, 101, NaN]) {
      expect(() => homogeneousNucleationRate(273, S)).toThrow(RangeError);
      expect(() => criticalCluster(273, S)).toThrow(RangeError);
    }
    for (const rate of [0.9, 1e21, NaN]) expect(() => homogeneousOnset(273, { rate })).toThrow(RangeError);
    for (const given of [{ surfaceTension: 0 }, { saturationPressure: NaN }, { moleculeVolume: 1 }]) {
      expect(() => homogeneousNucleationRate(273, 4, given)).toThrow(RangeError);
    }
  });
});
