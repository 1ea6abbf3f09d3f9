import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coagulationCoefficient,
  coagulationTime,
  diffusionCoefficient,
  settlingVelocity,
  slipCorrection,
  wallLoss,
  type ParticleVessel,
} from '../../src/physics/aerosol.ts';
import { BOLTZMANN_CONSTANT } from '../../src/physics/constants.ts';
import { viscosityOfAir } from '../../src/physics/diffusion.ts';

const SEEDED = { seed: 20261125, numRuns: 200 };
const JAR: ParticleVessel = { shape: 'cylinder', volume: 3e-3, diameter: 0.15 };
const FLASK: ParticleVessel = { shape: 'sphere', volume: 3e-3 };
const diameters = fc.double({ min: 1.1e-9, max: 1.5e-4, noNaN: true });

/** Each argument with its range, both ends allowed. */
const RANGES: readonly (readonly [string, (x: number) => number, number, number])[] = [
  ['diameter for the slip', slipCorrection, 1e-9, 2e-4],
  ['diameter for settling', settlingVelocity, 1e-9, 2e-4],
  ['diameter for diffusion', diffusionCoefficient, 1e-9, 2e-4],
  ['first diameter', (d) => coagulationCoefficient(d, 1e-7), 1e-9, 2e-4],
  ['second diameter', (d) => coagulationCoefficient(1e-7, d), 1e-9, 2e-4],
  ['temperature', (temperature) => settlingVelocity(1e-6, { temperature }), 173.15, 332],
  ['pressure', (pressure) => slipCorrection(1e-6, { pressure }), 5e3, 5e5],
  ['density', (density) => settlingVelocity(1e-6, { density }), 100, 2e4],
  ['number', (n) => coagulationTime(n, 1e-15), 1, 1e20],
  ['coefficient', (K) => coagulationTime(1e12, K), 1e-20, 1e-8],
  ['volume', (volume) => wallLoss(1e-7, { ...JAR, volume }, 0.01).diffusion, 1e-5, 1e4],
  ['diameter of a cylinder', (diameter) => wallLoss(1e-7, { shape: 'cylinder', volume: 3e-3, diameter }, 0.01).settling, 0.01, 20],
  ['eddy parameter', (eddy) => wallLoss(1e-7, FLASK, eddy).diffusion, 1e-5, 100],
];

describe.each(RANGES)('%s', (_, f, low, high) => {
  it('answers at both edges and refuses beyond, and what is not a number', () => {
    expect(f(low)).toBeGreaterThan(0);
    expect(f(high)).toBeGreaterThan(0);
    for (const x of [low * (1 - 1e-6), high * (1 + 1e-9), NaN, Infinity, -Infinity]) expect(() => f(x)).toThrow(RangeError);
  });
});

describe('slip, settling and diffusion', () => {
  it('change one way with size: slip and diffusion fall, settling rises', () => {
    fc.assert(
      fc.property(diameters, (d) => {
        expect(slipCorrection(d * 1.01)).toBeLessThan(slipCorrection(d));
        expect(diffusionCoefficient(d * 1.01)).toBeLessThan(diffusionCoefficient(d));
        expect(settlingVelocity(d * 1.01)).toBeGreaterThan(settlingVelocity(d));
      }),
      SEEDED,
    );
  });

  it('agrees with the older fits of the slip above 20 nm', () => {
    for (let d = 2e-8; d < 1e-5; d *= 1.5) {
      const knudsen = (2 * 67.3e-9) / d;
      // Allen & Raabe 1985, at 23 °C; Hinds 1999, eq. 3.20, at 20 °C, pressure in kPa and diameter in µm.
      const allenRaabe = 1 + knudsen * (1.142 + 0.558 * Math.exp(-0.999 / knudsen));
      const hinds = 1 + (15.6 + 7 * Math.exp(-0.059 * 101.325 * d * 1e6)) / (101.325 * d * 1e6);
      const close = d > 2e-7 ? 0.015 : 0.025;
      expect(Math.abs(slipCorrection(d, { temperature: 296.15 }) / allenRaabe - 1)).toBeLessThan(close);
      expect(Math.abs(slipCorrection(d) / hinds - 1)).toBeLessThan(close);
    }
  });

  it('slips more where the air is thin', () => {
    expect(slipCorrection(1e-7, { pressure: 8e4 })).toBeGreaterThan(slipCorrection(1e-7));
    // In the free-molecule range the excess goes as the inverse of the pressure.
    expect((slipCorrection(1e-9, { pressure: 5e4 }) - 1) / (slipCorrection(1e-9, { pressure: 1e5 }) - 1)).toBeCloseTo(2, 2);
  });

  it('falls as Stokes says at small Reynolds numbers and slower beyond, without a step between', () => {
    const stokes = (d: number): number =>
      ((1000 - 1.2041) * 9.80665 * d ** 2 * slipCorrection(d)) / (18 * viscosityOfAir(293.15));
    for (const d of [1e-8, 1e-6, 5e-6]) expect(settlingVelocity(d) / stokes(d)).toBeCloseTo(1, 3);
    // Hinds 1999, section 3.7: Stokes' law is 10 % high near a Reynolds number of 0.8 (unit density, 80 µm) at the latest.
    expect(settlingVelocity(8e-5) / stokes(8e-5)).toBeLessThan(0.92);
    for (let d = 1e-6; d < 1.9e-4; d *= 1.001) {
      const slope = Math.log(settlingVelocity(d * 1.001) / settlingVelocity(d)) / Math.log(1.001);
      expect(slope).toBeGreaterThan(1);
      expect(slope).toBeLessThan(2.05);
    }
  });

  it('refuses what would fall too fast for its drag law', () => {
    expect(() => settlingVelocity(2e-4, { density: 2e4 })).toThrow(/Reynolds/);
  });
});

describe('coagulation', () => {
  it('does not care which particle is first, and is slowest between equals', () => {
    fc.assert(
      fc.property(diameters, diameters, (d1, d2) => {
        const K = coagulationCoefficient(d1, d2);
        expect(coagulationCoefficient(d2, d1) / K).toBeCloseTo(1, 12);
        const equals = Math.min(coagulationCoefficient(d1, d1), coagulationCoefficient(d2, d2));
        expect(K).toBeGreaterThanOrEqual(equals * (1 - 1e-12));
      }),
      SEEDED,
    );
  });

  it('goes to the continuum and the free-molecule coefficient at the ends', () => {
    // Seinfeld & Pandis 2006, eq. 13.50 and 13.56.
    const continuum = (8 * BOLTZMANN_CONSTANT * 293.15) / (3 * viscosityOfAir(293.15));
    expect(coagulationCoefficient(1e-4, 1e-4) / continuum).toBeCloseTo(1, 2);
    const d = 1e-9;
    const speed = Math.sqrt((8 * BOLTZMANN_CONSTANT * 293.15) / (Math.PI * ((1000 * Math.PI * d ** 3) / 6)));
    const freeMolecule = Math.PI * d ** 2 * Math.SQRT2 * speed;
    expect(coagulationCoefficient(d, d) / freeMolecule).toBeCloseTo(1, 1);
  });
});

describe('loss to the walls', () => {
  const eddies = fc.double({ min: 1e-4, max: 10, noNaN: true });

  it('settles by weight alone over the depth of the vessel', () => {
    for (const d of [1e-7, 1e-6, 2e-5]) {
      // Hinds 1999, eq. 3.51: height of the cylinder; of a sphere, volume over its shadow.
      expect(wallLoss(d, JAR, 0.01).settling * (3e-3 / (Math.PI * 0.075 ** 2))).toBeCloseTo(settlingVelocity(d), 12);
      const radius = Math.cbrt((3 * 3e-3) / (4 * Math.PI));
      expect(wallLoss(d, FLASK, 0.01).settling * (3e-3 / (Math.PI * radius ** 2))).toBeCloseTo(settlingVelocity(d), 12);
    }
  });

  it('without weight reaches every wall alike: area over volume times the same speed, whatever the shape', () => {
    fc.assert(
      fc.property(eddies, (eddy) => {
        const d = 1e-9;
        const speed = (2 / Math.PI) * Math.sqrt(eddy * diffusionCoefficient(d));
        const radius = Math.cbrt((3 * 3e-3) / (4 * Math.PI));
        const jarArea = (4 * 3e-3) / 0.15 + (2 * Math.PI * 0.15 ** 2) / 4;
        expect((wallLoss(d, FLASK, eddy).diffusion * 3e-3) / (4 * Math.PI * radius ** 2 * speed)).toBeCloseTo(1, 3);
        expect((wallLoss(d, JAR, eddy).diffusion * 3e-3) / (jarArea * speed)).toBeCloseTo(1, 3);
      }),
      SEEDED,
    );
  });

  it('grows with the stirring, and is least where neither weight nor diffusion does much', () => {
    fc.assert(
      fc.property(diameters, eddies, fc.constantFrom(JAR, FLASK), (d, eddy, vessel) => {
        expect(wallLoss(d, vessel, eddy * 2).diffusion).toBeGreaterThanOrEqual(wallLoss(d, vessel, eddy).diffusion);
      }),
      SEEDED,
    );
    const total = (d: number): number => wallLoss(d, JAR, 0.01).settling + wallLoss(d, JAR, 0.01).diffusion;
    expect(total(2e-7)).toBeLessThan(total(2e-8));
    expect(total(2e-7)).toBeLessThan(total(2e-6));
  });

  it('has no step where the sphere’s integral passes from its series to its sum', () => {
    for (let d = 1e-8; d < 1e-5; d *= 1.01) {
      const ratio = wallLoss(d * 1.01, FLASK, 0.05).diffusion / wallLoss(d, FLASK, 0.05).diffusion;
      expect(ratio).toBeGreaterThan(0.95);
      expect(ratio).toBeLessThan(1);
    }
  });
});
