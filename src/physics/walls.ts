/**
 * Forces and stresses in the walls of a vessel. They explain why a rating matters and show a margin against it;
 * the maker's declared rating, not these numbers, permits a use. How a wall gives way from outside: collapse.ts.
 */
import { expm1, log } from './elementary.ts';
import { inRange } from './range.ts';
import type { CubicMeter, Joule, Meter, Newton, Pascal, Quantity, Ratio } from './units.ts';

export { collapseMargin, collapsePressure, MATERIALS } from './collapse.ts';
export type { Material, OutsideLoadedWall } from './collapse.ts';

export type SquareMeter = Quantity<'m²'>;

/** A thin curved wall and the pressure difference across it. */
export interface ThinWall {
  /** Inside less outside, Pa, −10⁷ to 10⁷ */
  readonly pressureDifference: Pascal;
  /** Of the middle of the wall, m, 10⁻³ to 10 */
  readonly diameter: Meter;
  /** m, at most a tenth of the diameter */
  readonly wallThickness: Meter;
}

/** A flat round lid or window and the pressure difference across it. */
export interface Pane {
  /** Pa, −10⁷ to 10⁷ */
  readonly pressureDifference: Pascal;
  /** Free diameter inside the support, m, 10⁻³ to 10 */
  readonly diameter: Meter;
  /** m, at most a fifth of the diameter */
  readonly thickness: Meter;
  /** Clamped: the edge cannot tilt. Supported: it rests and may tilt, which is the cautious assumption */
  readonly edge: 'clamped' | 'supported';
  /** 0 to 0.5 */
  readonly poissonRatio: Ratio;
}

const HIGHEST_PRESSURE = 1e7;
/** Ratio of heat capacities of air: Rogers & Yau 1989, 7/5 for a gas of two-atomic molecules. */
const ADIABATIC_EXPONENT = 1.4;

/**
 * Area of a disc.
 * @param diameter m, 10⁻⁴ to 10
 * @returns m²
 * @throws RangeError outside the range
 * Source: geometry, πd²/4.
 */
export function discArea(diameter: Meter): SquareMeter {
  return (Math.PI * inRange('diameter', diameter, 1e-4, 10, 'm') ** 2) / 4;
}

/**
 * Force of a pressure difference on a lid.
 * @param load.pressureDifference Pa, −10⁷ to 10⁷
 * @param load.area across which it acts, m², 0 to 100
 * @returns N, of the sign of the pressure difference
 * @throws RangeError outside a range
 * Source: definition of pressure.
 */
export function pressureForce(load: { readonly pressureDifference: Pascal; readonly area: SquareMeter }): Newton {
  const difference = inRange('pressureDifference', load.pressureDifference, -HIGHEST_PRESSURE, HIGHEST_PRESSURE, 'Pa');
  return difference * inRange('area', load.area, 0, 100, 'm²');
}

/**
 * Stress around a thin-walled cylinder.
 * @param wall see {@link ThinWall}
 * @returns Pa, tension positive
 * @throws RangeError outside a range
 * Source: Young & Budynas 2002, Roark's Formulas for Stress and Strain, 7th ed., table 13.1, case 1b: pr/t.
 */
export function hoopStress(wall: ThinWall): Pascal {
  return wallLoad(wall) / 2;
}

/**
 * Stress along a thin-walled cylinder with closed ends.
 * @param wall see {@link ThinWall}
 * @returns Pa, tension positive
 * @throws RangeError outside a range
 * Source: Young & Budynas 2002, table 13.1, case 1c: pr/(2t).
 */
export function axialStress(wall: ThinWall): Pascal {
  return wallLoad(wall) / 4;
}

/**
 * Stress in a thin-walled sphere, the same in every direction.
 * @param wall see {@link ThinWall}
 * @returns Pa, tension positive
 * @throws RangeError outside a range
 * Source: Young & Budynas 2002, table 13.1, case 3a: pr/(2t).
 */
export function sphereStress(wall: ThinWall): Pascal {
  return wallLoad(wall) / 4;
}

/**
 * Largest bending stress of a flat round pane: at the edge if clamped, at the center if supported.
 * @param pane see {@link Pane}
 * @returns Pa, 0 and above; valid while the deflection is below half the thickness
 * @throws RangeError outside a range
 * Source: Timoshenko & Woinowsky-Krieger 1959, Theory of Plates and Shells, art. 16; Young & Budynas 2002, table 11.2,
 *   cases 10a and 10b.
 */
export function paneStress(pane: Pane): Pascal {
  const { load, radius, thickness, poisson } = checkedPane(pane);
  const coefficient = pane.edge === 'clamped' ? 3 / 4 : (3 * (3 + poisson)) / 8;
  return coefficient * Math.abs(load) * (radius / thickness) ** 2;
}

/**
 * Deflection of the center of a flat round pane.
 * @param pane see {@link Pane}
 * @param youngsModulus Pa, 10⁸ to 10¹²
 * @returns m, 0 and above; valid while it is below half the thickness
 * @throws RangeError outside a range
 * Source: as {@link paneStress}.
 */
export function paneDeflection(pane: Pane, youngsModulus: Pascal): Meter {
  const { load, radius, thickness, poisson } = checkedPane(pane);
  const modulus = inRange('youngsModulus', youngsModulus, 1e8, 1e12, 'Pa');
  const stiffness = (modulus * thickness ** 3) / (12 * (1 - poisson ** 2));
  const clamped = (Math.abs(load) * radius ** 4) / (64 * stiffness);
  return pane.edge === 'clamped' ? clamped : (clamped * (5 + poisson)) / (1 + poisson);
}

/**
 * Energy that a vessel can release at once if it gives way. Above the surroundings: the work of its air expanding to
 * their pressure without exchange of heat. Below: the pressure difference times the volume, which the surroundings'
 * work on the closing vessel cannot exceed.
 * @param vessel.volume m³, 10⁻⁶ to 10
 * @param vessel.pressure of the air in it, absolute, Pa, 0 to 10⁷
 * @param vessel.surroundings absolute, Pa, 5·10⁴ to 1.2·10⁵
 * @returns J, 0 and above
 * @throws RangeError outside a range
 * Source: W. E. Baker et al. 1983, Explosion Hazards and Evaluation, ch. 2 (isentropic expansion).
 */
export function storedEnergy(vessel: {
  readonly volume: CubicMeter;
  readonly pressure: Pascal;
  readonly surroundings: Pascal;
}): Joule {
  const volume = inRange('volume', vessel.volume, 1e-6, 10, 'm³');
  const pressure = inRange('pressure', vessel.pressure, 0, HIGHEST_PRESSURE, 'Pa');
  const outside = inRange('surroundings', vessel.surroundings, 5e4, 1.2e5, 'Pa');
  if (pressure <= outside) return (outside - pressure) * volume;
  const exponent = (ADIABATIC_EXPONENT - 1) / ADIABATIC_EXPONENT;
  return ((pressure * volume) / (ADIABATIC_EXPONENT - 1)) * -expm1(exponent * log(outside / pressure));
}

/** Pressure difference times diameter over thickness. */
function wallLoad(wall: ThinWall): Pascal {
  const difference = inRange('pressureDifference', wall.pressureDifference, -HIGHEST_PRESSURE, HIGHEST_PRESSURE, 'Pa');
  const diameter = inRange('diameter', wall.diameter, 1e-3, 10, 'm');
  return (difference * diameter) / inRange('wallThickness', wall.wallThickness, 1e-6, diameter / 10, 'm');
}

function checkedPane(pane: Pane): { load: Pascal; radius: Meter; thickness: Meter; poisson: Ratio } {
  const diameter = inRange('diameter', pane.diameter, 1e-3, 10, 'm');
  return {
    load: inRange('pressureDifference', pane.pressureDifference, -HIGHEST_PRESSURE, HIGHEST_PRESSURE, 'Pa'),
    radius: diameter / 2,
    thickness: inRange('thickness', pane.thickness, 1e-6, diameter / 5, 'm'),
    poisson: inRange('poissonRatio', pane.poissonRatio, 0, 0.5),
  };
}
