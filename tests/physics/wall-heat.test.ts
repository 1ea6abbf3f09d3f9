import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wallHeatTransferCoefficient, wallTimeConstantOf, type VesselShape } from '../../src/physics/wall-heat.ts';

const CYLINDER: VesselShape = { shape: 'cylinder', volume: 5e-3, diameter: 0.17, pressure: 101325, temperatureDifference: 10 };
const SPHERE: VesselShape = { shape: 'sphere', volume: 5e-3, pressure: 101325, temperatureDifference: 10 };

// Air at 20 °C and 1 atm: Incropera & DeWitt 2007, table A.4, between 250 and 300 K.
const AIR = { conductivity: 0.0257, viscosity: 1.52e-5, diffusivity: 2.15e-5, density: 1.204, heatCapacity: 1007 };

const rayleighByHand = (difference: number, length: number): number =>
  (9.81 * difference * length ** 3) / (293.15 * AIR.viscosity * AIR.diffusivity);

describe('wallHeatTransferCoefficient', () => {
  it('is the correlation with handbook air, for a cylinder', () => {
    const height = (4 * 5e-3) / (Math.PI * 0.17 ** 2);
    const byHand = (0.55 * rayleighByHand(10, height) ** 0.25 * AIR.conductivity) / height;
    expect(wallHeatTransferCoefficient(CYLINDER) / byHand).toBeCloseTo(1, 1.7);
  });

  it('is the correlation with handbook air, for a sphere, below and above a Rayleigh number of 10⁹', () => {
    const small = Math.cbrt((6 * 5e-3) / Math.PI);
    expect(wallHeatTransferCoefficient(SPHERE) / ((0.59 * rayleighByHand(10, small) ** 0.25 * AIR.conductivity) / small)).toBeCloseTo(1, 1.7);
    const large = Math.cbrt((6 * 0.5) / Math.PI);
    expect(rayleighByHand(30, large)).toBeGreaterThan(1e9);
    const coefficient = wallHeatTransferCoefficient({ ...SPHERE, volume: 0.5, temperatureDifference: 30 });
    expect(coefficient / ((0.13 * Math.cbrt(rayleighByHand(30, large)) * AIR.conductivity) / large)).toBeCloseTo(1, 1.7);
  });
});

describe('wallTimeConstantOf', () => {
  it('is that of conduction alone where there is no difference to drive a flow', () => {
    // Carslaw & Jaeger 1959, sect. 9.3 and 7.6: slowest modes of a sphere, R²/(π²α), and of a cylinder.
    const radius = Math.cbrt((3 * 5e-3) / (4 * Math.PI));
    const sphere = wallTimeConstantOf({ ...SPHERE, temperatureDifference: 0 });
    expect((sphere * Math.PI ** 2 * AIR.diffusivity) / radius ** 2).toBeCloseTo(1, 1.5);
    const height = (4 * 5e-3) / (Math.PI * 0.17 ** 2);
    const cylinder = wallTimeConstantOf({ ...CYLINDER, temperatureDifference: 0 });
    expect(cylinder * AIR.diffusivity * ((2.4048 / 0.085) ** 2 + (Math.PI / height) ** 2)).toBeCloseTo(1, 1.5);
  });

  it('goes with the fourth root of one over the difference, of either sign, and with the root of the pressure', () => {
    const time = wallTimeConstantOf(CYLINDER);
    expect(wallTimeConstantOf({ ...CYLINDER, temperatureDifference: 5 }) / time).toBeCloseTo(2 ** 0.25, 9);
    expect(wallTimeConstantOf({ ...CYLINDER, temperatureDifference: -10 })).toBe(time);
    expect(wallTimeConstantOf({ ...CYLINDER, pressure: 101325 / 4 }) / time).toBeCloseTo(0.5, 9);
  });

  it('rises with the size and falls with the water in the vessel', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(CYLINDER, SPHERE),
        fc.double({ min: 1e-3, max: 0.1, noNaN: true }),
        fc.double({ min: 0, max: 0.8, noNaN: true }),
        (vessel, volume, fill) => {
          const ofSize = (v: number, f: number): number =>
            wallTimeConstantOf({ ...vessel, volume: v, diameter: Math.cbrt(v), fill: f });
          expect(ofSize(2 * volume, fill)).toBeGreaterThan(ofSize(volume, fill));
          expect(ofSize(volume, fill + 0.1)).toBeLessThan(ofSize(volume, fill));
        },
      ),
      { seed: 31, numRuns: 100 },
    );
  });

  it('takes a half-full sphere as two half-balls: half the volume, half the wall and the disk of water', () => {
    const radius = Math.cbrt((3 * 5e-3) / (4 * Math.PI));
    const half = { ...SPHERE, fill: 0.5 };
    const heat = wallTimeConstantOf(half) * wallHeatTransferCoefficient(half);
    const expected = (AIR.density * AIR.heatCapacity * 2.5e-3) / (3 * Math.PI * radius ** 2);
    expect(heat / expected).toBeCloseTo(1, 1.7);
  });

  it.each<[string, Partial<VesselShape>]>([
    ['volume', { volume: 0 }],
    ['diameter', { diameter: 5 }],
    ['height', { height: 0 }],
    ['fill', { fill: 1 }],
    ['pressure', { pressure: 1e3 }],
    ['temperature', { temperature: 400 }],
    ['temperatureDifference', { temperatureDifference: Number.NaN }],
  ])('refuses a %s outside its range', (name, change) => {
    expect(() => wallTimeConstantOf({ ...CYLINDER, ...change })).toThrow(RangeError);
    expect(() => wallTimeConstantOf({ ...CYLINDER, ...change })).toThrow(name);
  });

  it('needs the diameter of a cylinder', () => {
    expect(() => wallTimeConstantOf({ shape: 'cylinder', volume: 5e-3, pressure: 1e5, temperatureDifference: 5 })).toThrow(/diameter/);
  });
});
