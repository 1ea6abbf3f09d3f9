import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mieSphere } from '../../src/physics/mie.ts';
import {
  coronaRadius,
  dropletDiameterFromCorona,
  extinctionCoefficient,
  extinctionEfficiency,
  opticalDepth,
  transmittance,
  visibleContrast,
  visualRange,
  type Lighting,
} from '../../src/physics/optics.ts';

const SEEDED = { seed: 20261125, numRuns: 200 };
const DEGREE = Math.PI / 180;

/** Each argument with its range, both ends allowed. */
const RANGES: readonly (readonly [string, (x: number) => number, number, number])[] = [
  ['size parameter', (x) => mieSphere(x, 1.333).extinctionEfficiency, 0.01, 6000],
  ['refractive index', (x) => mieSphere(10, x).asymmetry, 0.5, 2.5],
  ['angle of scattering', (x) => mieSphere(10, 1.333).phase(x), 0, Math.PI],
  ['diameter for the efficiency', (x) => extinctionEfficiency({ diameter: x }), 1e-8, 2e-4],
  ['wavelength for the efficiency', (x) => extinctionEfficiency({ diameter: 1e-5, wavelength: x }), 3e-7, 1e-6],
  ['number', (x) => extinctionCoefficient({ number: x, diameter: 1e-5 }), 0, 1e14],
  ['diameter', (x) => extinctionCoefficient({ number: 1e9, diameter: x }), 1e-8, 1e-3],
  ['efficiency', (x) => extinctionCoefficient({ number: 1e9, diameter: 1e-5, efficiency: x }), 0, 5],
  ['liquid water content', (x) => extinctionCoefficient({ liquidWaterContent: x, effectiveRadius: 1e-5 }), 0, 0.1],
  ['effective radius', (x) => extinctionCoefficient({ liquidWaterContent: 1e-3, effectiveRadius: x }), 5e-9, 5e-4],
  ['extinction', (x) => opticalDepth(x, 1), 0, 1e4],
  ['path', (x) => opticalDepth(1, x), 0, 1e5],
  ['optical depth', transmittance, 0, 700],
  ['extinction for the visual range', visualRange, 1e-6, 1e4],
  ['threshold', (x) => visualRange(1, x), 0.001, 0.9],
  ['lamp over room', (x) => visibleContrast({ opticalDepth: 0.1, lighting: 'side', backing: 'black', lampOverRoom: x }).contrast, 0, 1e5],
  ['droplet diameter of a ring', (x) => coronaRadius({ dropletDiameter: x }), 2e-6, 2e-4],
  ['wavelength of a ring', (x) => coronaRadius({ dropletDiameter: 1e-5, wavelength: x }), 3e-7, 1e-6],
  ['number of a ring', (x) => coronaRadius({ dropletDiameter: 1e-5, ring: x }), 1, 3],
];

describe.each(RANGES)('%s', (_, f, low, high) => {
  it('answers at both edges and refuses beyond, and what is not a number', () => {
    expect(Number.isFinite(f(low))).toBe(true);
    expect(Number.isFinite(f(high))).toBe(true);
    for (const x of [low - 1e-6 * Math.max(low, 1e-3), high * (1 + 1e-9), NaN, Infinity, -Infinity]) expect(() => f(x)).toThrow(RangeError);
  });
});

describe('scattering by a sphere', () => {
  it('sends out as much as its phase function says: mean 1 over all directions, mean cosine the asymmetry', () => {
    for (const x of [0.1, 3, 20]) {
      const sphere = mieSphere(x, 1.333);
      const steps = 4000;
      let [mean, cosine] = [0, 0];
      for (let i = 0; i < steps; i++) {
        const angle = (Math.PI * (i + 0.5)) / steps;
        const share = (sphere.phase(angle) * Math.sin(angle) * Math.PI) / (2 * steps);
        mean += share;
        cosine += share * Math.cos(angle);
      }
      expect(mean).toBeCloseTo(1, 5);
      expect(cosine).toBeCloseTo(sphere.asymmetry, 5);
    }
  });

  it('follows Rayleigh where the sphere is small: fourth power, forward like backward', () => {
    const small = mieSphere(0.02, 1.333);
    // Bohren & Huffman 1983, eq. 5.8.
    const rayleigh = (8 / 3) * 0.02 ** 4 * ((1.333 ** 2 - 1) / (1.333 ** 2 + 2)) ** 2;
    expect(small.extinctionEfficiency / rayleigh).toBeCloseTo(1, 3);
    expect(small.phase(0) / small.phase(Math.PI)).toBeCloseTo(1, 2);
    expect(small.phase(Math.PI / 2)).toBeCloseTo(0.75, 3);
  });

  it('follows anomalous diffraction, with the edge term, where the index is near 1 and the sphere large', () => {
    // van de Hulst 1957, section 11.22; edge term 1.99 x^(−2/3): Nussenzveig & Wiscombe 1980.
    for (let x = 30; x <= 300; x *= 1.5) {
      const rho = 2 * x * 0.05;
      const anomalous = 2 - (4 / rho) * Math.sin(rho) + (4 / rho ** 2) * (1 - Math.cos(rho)) + 1.99 * x ** (-2 / 3);
      expect(Math.abs(mieSphere(x, 1.05).extinctionEfficiency / anomalous - 1)).toBeLessThan(0.06);
    }
  });

  it('gives the constants by which the contrast is computed, for drops of 4 to 20 µm', () => {
    const sums = { side: 0, back: 0, front: 0, beyond45: 0, weight: 0 };
    for (let i = 0; i < 40; i++) {
      const x = (Math.PI * 4e-6 * 5 ** ((i + 0.5) / 40)) / 555e-9;
      const sphere = mieSphere(x, 1.333);
      const weight = x ** 2 * sphere.extinctionEfficiency;
      const mean = (from: number, to: number): number => {
        let [sum, solid] = [0, 0];
        for (let angle = from + 0.25; angle < to; angle += 0.5) {
          sum += sphere.phase(angle * DEGREE) * Math.sin(angle * DEGREE);
          solid += Math.sin(angle * DEGREE);
        }
        return sum / solid;
      };
      sums.side += weight * mean(75, 105);
      sums.back += weight * mean(25, 35);
      sums.front += weight * mean(145, 155);
      sums.beyond45 += (weight * mean(45, 180) * (1 + Math.SQRT1_2)) / 2;
      sums.weight += weight;
    }
    // The contrast of a thin cloud on black, its backing 0.05 and the vessel's glare 0.16 of white, by hand.
    const expected = (phase: number): number =>
      ((sums.beyond45 / sums.weight) * 0.95 + (30 * phase) / sums.weight / 4) / 0.21;
    const depth = 1e-4;
    const slope = (lighting: Lighting): number =>
      visibleContrast({ opticalDepth: depth, lighting, backing: 'black' }).contrast / (1 - Math.exp(-depth));
    expect(slope('side') / expected(sums.side)).toBeCloseTo(1, 1);
    expect(slope('back') / expected(sums.back)).toBeCloseTo(1, 1);
    expect(slope('room') / expected(0)).toBeCloseTo(1, 1);
    expect(sums.front / sums.weight).toBeCloseTo(0.17, 2);
  });
});

describe('extinction of a cloud', () => {
  it('is the same by number and diameter as by water and effective radius, for drops of one size', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-7, max: 1e-4, noNaN: true }), fc.double({ min: 1e6, max: 1e11, noNaN: true }), (radius, number) => {
        const water = (number * 999.7 * 4 * Math.PI * radius ** 3) / 3;
        fc.pre(water <= 0.1);
        const byNumber = extinctionCoefficient({ number, diameter: 2 * radius });
        const byWater = extinctionCoefficient({ liquidWaterContent: water, effectiveRadius: radius });
        expect(byWater / byNumber).toBeCloseTo(1, 9);
      }),
      SEEDED,
    );
  });

  it('takes less light from a beam the fewer drops share the same water', () => {
    const lost = (radius: number): number =>
      1 - transmittance(opticalDepth(extinctionCoefficient({ liquidWaterContent: 2e-3, effectiveRadius: radius }), 0.15));
    for (let radius = 1e-6; radius < 1e-4; radius *= 1.3) expect(lost(radius * 1.3)).toBeLessThan(lost(radius));
  });
});

describe('what is seen', () => {
  const cases = fc.record({
    lighting: fc.constantFrom<Lighting>('room', 'side', 'front', 'back'),
    backing: fc.constantFrom<'black' | 'white'>('black', 'white'),
    depth: fc.double({ min: 1e-6, max: 3, noNaN: true }),
  });

  it('grows with the optical depth, and nothing is seen where there is no cloud', () => {
    fc.assert(
      fc.property(cases, ({ lighting, backing, depth }) => {
        const at = (opticalDepth: number): number => Math.abs(visibleContrast({ opticalDepth, lighting, backing }).contrast);
        expect(at(depth * 1.1)).toBeGreaterThan(at(depth));
        expect(at(0)).toBe(0);
        expect(visibleContrast({ opticalDepth: depth, lighting, backing }).visible).toBe(at(depth) >= 0.05);
      }),
      SEEDED,
    );
  });

  it('is plainer on black than on white, and with a lamp at the side than without', () => {
    const contrast = (lighting: Lighting, backing: 'black' | 'white'): number =>
      visibleContrast({ opticalDepth: 0.06, lighting, backing }).contrast;
    expect(contrast('side', 'black')).toBeGreaterThan(5 * contrast('side', 'white'));
    expect(contrast('side', 'black')).toBeGreaterThan(3 * contrast('room', 'black'));
    expect(contrast('front', 'white')).toBeLessThan(0);
  });

  it('agrees with practice: a thousand drops per cm³ are easily seen with light from the side, ten thousand without a beam', () => {
    // Drops that share the 2.1 g/m³ of a 10 kPa fall, seen through 15 cm. Common practice, no source.
    const view = (perCubicCentimeter: number, lighting: Lighting) => {
      const number = perCubicCentimeter * 1e6;
      const diameter = Math.cbrt((6 * 2.1e-3) / (Math.PI * 1000 * number));
      return visibleContrast({ opticalDepth: opticalDepth(extinctionCoefficient({ number, diameter }), 0.15), lighting, backing: 'black' });
    };
    expect(view(1000, 'side').contrast).toBeGreaterThan(2 * 0.05);
    expect(view(1000, 'room').visible).toBe(false);
    expect(view(10_000, 'room').visible).toBe(true);
    expect(view(10, 'side').visible).toBe(false);
  });
});

describe('colored rings', () => {
  it('give back the diameter', () => {
    const rings = fc.record({
      dropletDiameter: fc.double({ min: 4e-6, max: 1.9e-4, noNaN: true }),
      ring: fc.constantFrom(1, 2, 3),
      feature: fc.constantFrom<'dark' | 'bright' | 'red'>('dark', 'bright', 'red'),
    });
    fc.assert(
      fc.property(rings, ({ dropletDiameter, ring, feature }) => {
        const angle = coronaRadius({ dropletDiameter, ring, feature });
        fc.pre(angle >= 0.002 && angle <= 1);
        expect(dropletDiameterFromCorona(angle, { ring, feature }) / dropletDiameter).toBeCloseTo(1, 10);
      }),
      SEEDED,
    );
  });

  it('are wider for smaller drops, longer waves and later rings, dark and bright in turn', () => {
    const angle = (feature: 'dark' | 'bright', ring: number, d = 1e-5, wavelength = 5.7e-7): number =>
      coronaRadius({ dropletDiameter: d, ring, feature, wavelength });
    expect(angle('dark', 1, 9e-6)).toBeGreaterThan(angle('dark', 1));
    expect(angle('dark', 1, 1e-5, 6e-7)).toBeGreaterThan(angle('dark', 1));
    const inTurn = [1, 2, 3].flatMap((ring) => [angle('dark', ring), angle('bright', ring)]);
    expect(inTurn).toEqual([...inTurn].sort((a, b) => a - b));
  });

  it('fall on the dark and bright angles of the exact theory for a large drop', () => {
    const sphere = mieSphere((Math.PI * 4e-5) / 5.7e-7, 1.333);
    const bright = coronaRadius({ dropletDiameter: 4e-5, feature: 'bright' });
    const dark = coronaRadius({ dropletDiameter: 4e-5 });
    let highest = dark;
    for (let angle = dark; angle < 1.8 * dark; angle += dark / 500) if (sphere.phase(angle) > sphere.phase(highest)) highest = angle;
    expect(highest / bright).toBeCloseTo(1, 1);
  });

  it.each([
    ['lighting', () => visibleContrast({ opticalDepth: 0.1, lighting: 'below' as 'side', backing: 'black' })],
    ['backing', () => visibleContrast({ opticalDepth: 0.1, lighting: 'side', backing: 'gray' as 'black' })],
    ['feature', () => coronaRadius({ dropletDiameter: 1e-5, feature: 'blue' as 'red' })],
  ])('names a %s that there is not, and what there is', (name, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(new RegExp(`^${name} is .*; choose \\w+, `));
  });

  it('refuses a ring that is no whole number, a wavelength for white light, and a ring wider than a right angle', () => {
    expect(() => coronaRadius({ dropletDiameter: 1e-5, ring: 1.5 })).toThrow(/whole number/);
    expect(() => coronaRadius({ dropletDiameter: 1e-5, feature: 'red', wavelength: 5e-7 })).toThrow(/white light/);
    expect(() => coronaRadius({ dropletDiameter: 2e-6, ring: 3, wavelength: 1e-6 })).toThrow(/sine/);
    for (const angle of [0.0019, 1.01, NaN]) expect(() => dropletDiameterFromCorona(angle)).toThrow(RangeError);
  });
});
