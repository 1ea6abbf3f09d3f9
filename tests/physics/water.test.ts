import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { densityOfWater, surfaceTension, WATER_HIGH, WATER_LOW } from '../../src/physics/water.ts';

describe.each([
  ['surfaceTension', surfaceTension],
  ['densityOfWater', densityOfWater],
])('%s', (_, f) => {
  it('answers at both edges and refuses beyond, and what is not a number', () => {
    for (const T of [WATER_LOW, WATER_HIGH]) expect(f(T)).toBeGreaterThan(0);
    for (const T of [WATER_LOW - 1e-6, WATER_HIGH + 1e-6, NaN, Infinity]) expect(() => f(T)).toThrow(RangeError);
  });
});

describe('water', () => {
  it('pulls its surface together the less the warmer it is', () => {
    fc.assert(
      fc.property(fc.double({ min: WATER_LOW, max: WATER_HIGH - 1, noNaN: true }), (T) => surfaceTension(T + 1) < surfaceTension(T)),
      { seed: 1 },
    );
  });

  it('is densest at 3.98 °C (CRC Handbook, density of water)', () => {
    const top = densityOfWater(273.15 + 3.98);
    fc.assert(
      fc.property(fc.double({ min: WATER_LOW, max: WATER_HIGH, noNaN: true }), (T) => densityOfWater(T) <= top + 1e-4),
      { seed: 2 },
    );
  });
});
