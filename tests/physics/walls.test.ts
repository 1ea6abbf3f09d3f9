import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axialStress,
  collapseMargin,
  collapsePressure,
  discArea,
  hoopStress,
  MATERIALS,
  paneDeflection,
  paneStress,
  pressureForce,
  sphereStress,
  storedEnergy,
  type OutsideLoadedWall,
  type Pane,
} from '../../src/physics/walls.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const acrylicTube = { ...MATERIALS.acrylic, diameter: 0.15, wallThickness: 0.004, length: 0.3 };

/** Windenburg & Trilling 1934, Trans. ASME 56, 819: an approximation to the theory, made for ship hulls. */
function windenburgTrilling({ diameter, wallThickness, length, youngsModulus, poissonRatio }: Required<Omit<OutsideLoadedWall, 'shape'>>): number {
  const slenderness = wallThickness / diameter;
  return (2.42 * youngsModulus * slenderness ** 2.5) / ((1 - poissonRatio ** 2) ** 0.75 * (length / diameter - 0.45 * Math.sqrt(slenderness)));
}

describe('collapsePressure', () => {
  it('agrees with the approximation of Windenburg & Trilling within 8 % for short, thin cylinders', () => {
    fc.assert(
      fc.property(between(0.5, 2), between(0.002, 0.02), between(0.2, 0.4), (slimness, thickness, poissonRatio) => {
        const wall = { diameter: 0.2, wallThickness: 0.2 * thickness, length: 0.2 * slimness, youngsModulus: 3e9, poissonRatio };
        expect(Math.abs(collapsePressure(wall) / windenburgTrilling(wall) - 1)).toBeLessThan(0.08);
      }),
      { seed: 1, numRuns: 1000 },
    );
  });

  it('comes to that of an endless tube as the length grows, and falls on the way', () => {
    const { length: _, ...endless } = acrylicTube;
    expect(collapsePressure({ ...acrylicTube, length: 1000 }) / collapsePressure(endless)).toBeCloseTo(1, 6);
    fc.assert(
      fc.property(between(0.04, 20), (length) => {
        const pressure = collapsePressure({ ...acrylicTube, length });
        expect(pressure).toBeGreaterThan(collapsePressure({ ...acrylicTube, length: length * 1.01 }));
      }),
      { seed: 2 },
    );
  });

  it('grows with thickness and stiffness and falls with length', () => {
    const base = collapsePressure(acrylicTube);
    expect(collapsePressure({ ...acrylicTube, wallThickness: 0.005 })).toBeGreaterThan(base);
    expect(collapsePressure({ ...acrylicTube, youngsModulus: 4e9 }) / base).toBeCloseTo(4 / 3, 12);
    expect(collapsePressure({ ...acrylicTube, length: 0.4 })).toBeLessThan(base);
  });

  it('makes a margin that halves as the pressure difference doubles', () => {
    expect(collapseMargin(acrylicTube, 2e4) / collapseMargin(acrylicTube, 4e4)).toBeCloseTo(2, 12);
    expect(collapseMargin(acrylicTube, collapsePressure(acrylicTube))).toBe(1);
  });

  it('refuses what is outside', () => {
    const wrong: Partial<OutsideLoadedWall>[] = [
      { diameter: 0 }, { diameter: 11 }, { diameter: NaN }, { wallThickness: 0 }, { wallThickness: 0.016 }, { wallThickness: NaN },
      { length: 0.03 }, { length: NaN }, { youngsModulus: 1e7 }, { youngsModulus: NaN }, { poissonRatio: -0.1 }, { poissonRatio: 0.51 }, { poissonRatio: NaN },
    ];
    for (const change of wrong) expect(() => collapsePressure({ ...acrylicTube, ...change })).toThrow(RangeError);
    for (const difference of [0, 1.1e7, NaN]) expect(() => collapseMargin(acrylicTube, difference)).toThrow(RangeError);
  });
});

describe('stresses and forces', () => {
  const wall = { pressureDifference: 1e5, diameter: 0.1, wallThickness: 0.001 };

  it('hold a cut vessel in balance: stress times cut wall is pressure times cut area', () => {
    fc.assert(
      fc.property(between(-1e6, 1e6), between(0.01, 1), between(0.001, 0.1), (pressureDifference, diameter, slenderness) => {
        const any = { pressureDifference, diameter, wallThickness: diameter * slenderness };
        const end = pressureForce({ pressureDifference, area: discArea(diameter) });
        const ring = Math.PI * diameter * any.wallThickness;
        expect(axialStress(any) * ring).toBeCloseTo(end, 6);
        expect(sphereStress(any) * ring).toBeCloseTo(end, 6);
        expect(hoopStress(any) * 2 * any.wallThickness).toBeCloseTo(pressureDifference * diameter, 6);
      }),
      { seed: 3 },
    );
  });

  it('press 10,130 N on a square meter for a tenth of an atmosphere, either way', () => {
    expect(pressureForce({ pressureDifference: 10132.5, area: 1 })).toBe(10132.5);
    expect(pressureForce({ pressureDifference: -10132.5, area: 1 })).toBe(-10132.5);
  });

  it('bend a supported pane more than a clamped one, whatever its Poisson ratio', () => {
    fc.assert(
      fc.property(between(0, 0.5), between(0.002, 0.02), (poissonRatio, thickness) => {
        const pane = { pressureDifference: 3e4, diameter: 0.12, thickness, poissonRatio };
        expect(paneStress({ ...pane, edge: 'supported' })).toBeGreaterThan(paneStress({ ...pane, edge: 'clamped' }));
        expect(paneDeflection({ ...pane, edge: 'supported' }, 3e9)).toBeGreaterThan(3 * paneDeflection({ ...pane, edge: 'clamped' }, 3e9));
      }),
      { seed: 4 },
    );
  });

  it('refuse what is outside', () => {
    for (const f of [hoopStress, axialStress, sphereStress]) {
      for (const change of [{ pressureDifference: 1.1e7 }, { pressureDifference: NaN }, { diameter: 0 }, { diameter: NaN }, { wallThickness: 0.011 }, { wallThickness: 0 }, { wallThickness: NaN }]) {
        expect(() => f({ ...wall, ...change })).toThrow(RangeError);
      }
    }
    for (const area of [-1, 101, NaN]) expect(() => pressureForce({ pressureDifference: 1, area })).toThrow(RangeError);
    for (const diameter of [0, 11, NaN]) expect(() => discArea(diameter)).toThrow(RangeError);
    const pane: Pane = { pressureDifference: 1e4, diameter: 0.1, thickness: 0.005, edge: 'clamped', poissonRatio: 0.3 };
    for (const change of [{ pressureDifference: NaN }, { diameter: 11 }, { thickness: 0.03 }, { thickness: NaN }, { poissonRatio: 0.6 }]) {
      expect(() => paneStress({ ...pane, ...change })).toThrow(RangeError);
      expect(() => paneDeflection({ ...pane, ...change }, 3e9)).toThrow(RangeError);
    }
    for (const modulus of [1e7, 1e13, NaN]) expect(() => paneDeflection(pane, modulus)).toThrow(RangeError);
  });
});

describe('storedEnergy', () => {
  it('is the work of expansion, summed step by step along pV^1.4', () => {
    const [pressure, surroundings, volume] = [301_325, 101_325, 0.002];
    const steps = 20_000;
    const end = volume * (pressure / surroundings) ** (1 / 1.4);
    const width = (end - volume) / steps;
    let work = 0;
    for (let i = 0; i < steps; i++) work += pressure * (volume / (volume + (i + 0.5) * width)) ** 1.4 * width;
    expect(storedEnergy({ volume, pressure, surroundings })).toBeCloseTo(work, 4);
  });

  it('is the pressure difference times the volume of an evacuated vessel, and nothing at rest', () => {
    expect(storedEnergy({ volume: 0.002, pressure: 0, surroundings: 1e5 })).toBe(200);
    expect(storedEnergy({ volume: 0.002, pressure: 1e5, surroundings: 1e5 })).toBe(0);
    expect(storedEnergy({ volume: 0.002, pressure: 1e5 + 1e-3, surroundings: 1e5 })).toBeGreaterThan(0);
  });

  it('exceeds what the air outside gains on a vessel that closes on its remaining air', () => {
    fc.assert(
      fc.property(between(1e3, 1e5), (pressure) => {
        const [surroundings, volume] = [101_325, 0.002];
        const closed = volume * (pressure / surroundings) ** (1 / 1.4);
        const gained = surroundings * (volume - closed) - (surroundings * closed - pressure * volume) / 0.4;
        return storedEnergy({ volume, pressure, surroundings }) >= gained;
      }),
      { seed: 5 },
    );
  });

  it('refuses what is outside', () => {
    const vessel = { volume: 0.002, pressure: 5e4, surroundings: 1e5 };
    for (const change of [{ volume: 0 }, { volume: 11 }, { volume: NaN }, { pressure: -1 }, { pressure: 1.1e7 }, { pressure: NaN }, { surroundings: 4e4 }, { surroundings: NaN }]) {
      expect(() => storedEnergy({ ...vessel, ...change })).toThrow(RangeError);
    }
  });
});
