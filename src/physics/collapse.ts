/**
 * Elastic collapse of a thin wall under pressure from outside. The formulas hold for perfect shapes: real cylinders
 * give way at about three quarters of them (NASA SP-8007, 1968), real spheres at a fifth (NASA SP-8032, 1969), plastics
 * under lasting load and scratched glass sooner. A maker's declared rating, not these numbers, permits a use.
 */
import { inRange } from './range.ts';
import type { Meter, Pascal, Ratio } from './units.ts';

export interface Material {
  /** Pa */
  readonly youngsModulus: Pascal;
  readonly poissonRatio: Ratio;
}

/** A thin cylinder or sphere that is pressed from outside. */
export interface OutsideLoadedWall extends Material {
  /** A cylinder unless given */
  readonly shape?: 'cylinder' | 'sphere';
  /** Of the middle of the wall, m, 10⁻³ to 10 */
  readonly diameter: Meter;
  /** m, from a ten-thousandth to a tenth of the diameter */
  readonly wallThickness: Meter;
  /** Of a cylinder between ends or rings that keep it round, m, from a quarter of the diameter to 1000; endless unless given */
  readonly length?: Meter;
}

/** The shortest and thinnest cylinder allowed buckles into 33. */
const MOST_LOBES = 60;

/**
 * Typical properties at room temperature, from the lower part of the published ranges since a softer wall collapses
 * sooner. Sources: M. F. Ashby 2011, Materials Selection in Mechanical Design, 4th ed., appendix A (moduli in GPa:
 * polycarbonate 2.0–2.4, acrylic 2.2–3.8, PET 2.8–4.1, borosilicate glass 61–64, stainless steel 189–210); Poisson's
 * ratios from makers' data sheets and, for glass 3.3, ISO 3585.
 */
export const MATERIALS = {
  polycarbonate: { youngsModulus: 2.3e9, poissonRatio: 0.37 },
  acrylic: { youngsModulus: 3.0e9, poissonRatio: 0.37 },
  PET: { youngsModulus: 2.8e9, poissonRatio: 0.38 },
  glass: { youngsModulus: 63e9, poissonRatio: 0.2 },
  steel: { youngsModulus: 193e9, poissonRatio: 0.29 },
} as const satisfies Record<string, Material>;

/**
 * Pressure difference at which a perfect thin wall buckles elastically.
 * @param wall see {@link OutsideLoadedWall}; youngsModulus Pa, 10⁸ to 10¹²; poissonRatio 0 to 0.5
 * @returns Pa, outside less inside, with pressure on sides and ends; the ends keep their circle and may tilt
 * @throws RangeError outside a range
 * Source: endless cylinder Bresse 1866, 2E/(1−ν²)·(t/D)³; cylinder with ends R. von Mises 1929, least over the number
 *   of lobes (as in Windenburg & Trilling 1934, Trans. ASME 56, 819); sphere Zoelly 1915 (Timoshenko & Gere 1961,
 *   Theory of Elastic Stability, art. 11.13).
 */
export function collapsePressure(wall: OutsideLoadedWall): Pascal {
  const modulus = inRange('youngsModulus', wall.youngsModulus, 1e8, 1e12, 'Pa');
  const plate = 1 - inRange('poissonRatio', wall.poissonRatio, 0, 0.5) ** 2;
  const diameter = inRange('diameter', wall.diameter, 1e-3, 10, 'm');
  const slenderness = inRange('wallThickness', wall.wallThickness, diameter / 1e4, diameter / 10, 'm') / diameter;
  if (wall.shape === 'sphere') return (8 * modulus * slenderness ** 2) / Math.sqrt(3 * plate);
  if (wall.length === undefined) return ((2 * modulus) / plate) * slenderness ** 3;
  const length = inRange('length', wall.length, diameter / 4, 1e3, 'm');
  const wave = ((Math.PI * diameter) / (2 * length)) ** 2;
  const bending = slenderness ** 2 / (3 * plate);
  let least = Infinity;
  for (let lobes = 2; lobes <= MOST_LOBES; lobes++) {
    const around = lobes ** 2;
    const stretched = (wave / (around + wave)) ** 2;
    const bent = bending * (around - 1 + wave) ** 2;
    least = Math.min(least, (stretched + bent) / (around - 1 + wave / 2));
  }
  return 2 * modulus * slenderness * least;
}

/**
 * How many times the pressure difference would have to grow before a perfect wall collapses.
 * @param wall see {@link OutsideLoadedWall}
 * @param pressureDifference outside less inside, Pa, 1 to 10⁷
 * @returns pure number; below about 4 (sphere: 15) a real wall is not safe whatever it was sold for
 * @throws RangeError outside a range
 * Source: {@link collapsePressure}.
 */
export function collapseMargin(wall: OutsideLoadedWall, pressureDifference: Pascal): Ratio {
  return collapsePressure(wall) / inRange('pressureDifference', pressureDifference, 1, 1e7, 'Pa');
}
