import { describe, expect, it } from 'vitest';
import {
  gasKineticResistance,
  meanFreePathOfAir,
  meanFreePathOfHeat,
  meanFreePathOfVapor,
  thermalConductivityOfAir,
  vaporDiffusivity,
  viscosityOfAir,
} from '../../src/physics/diffusion.ts';

describe('transport in air', () => {
  it('makes diffusivity and mean free paths inverse to the pressure', () => {
    for (const f of [vaporDiffusivity, meanFreePathOfAir, meanFreePathOfVapor, meanFreePathOfHeat]) {
      expect(f(290, 5e4) / f(290, 1e5)).toBeCloseTo(2, 12);
    }
  });

  it('gives a Prandtl number near 0.71, as tables of air do (CRC Handbook)', () => {
    expect((viscosityOfAir(300) * 1005) / thermalConductivityOfAir(300)).toBeGreaterThan(0.7);
    expect((viscosityOfAir(300) * 1005) / thermalConductivityOfAir(300)).toBeLessThan(0.72);
  });

  it('refuses what is outside its range, and NaN', () => {
    expect(() => vaporDiffusivity(100, 1e5)).toThrow(RangeError);
    expect(() => vaporDiffusivity(290, 1e3)).toThrow(/pressure is 1000 Pa/);
    expect(() => viscosityOfAir(Number.NaN)).toThrow(RangeError);
    expect(() => thermalConductivityOfAir(400)).toThrow(RangeError);
  });
});

describe('gas-kinetic resistance', () => {
  it('is 1 for large drops and that of free molecules for small ones', () => {
    expect(gasKineticResistance(0, 1)).toBe(1);
    expect(gasKineticResistance(1e6, 0.1) / ((4 / 3) * 1e7)).toBeCloseTo(1, 6);
  });

  it('agrees with the transition regime of Fuchs & Sutugin as printed in Seinfeld & Pandis 2006, eq. 12.43', () => {
    for (const knudsen of [0.01, 0.3, 1, 10]) {
      for (const accommodation of [0.05, 0.5, 1]) {
        const printed =
          (0.75 * accommodation * (1 + knudsen)) /
          (knudsen * knudsen + knudsen + 0.283 * knudsen * accommodation + 0.75 * accommodation);
        // The printed constant 0.283 is 0.377 × 0.75 to three digits.
        expect(gasKineticResistance(knudsen, accommodation) * printed).toBeCloseTo(1, 3);
      }
    }
  });
});
