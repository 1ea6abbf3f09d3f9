/** Heat between the gas in a closed vessel and its walls, by natural convection: an estimate where none is measured. */
import { GAS_CONSTANT_DRY_AIR, HEAT_CAPACITY_DRY_AIR, STANDARD_GRAVITY } from './constants.ts';
import { thermalConductivityOfAir, viscosityOfAir } from './diffusion.ts';
import { cbrt } from './elementary.ts';
import { inRange } from './range.ts';
import { findRoot } from './roots.ts';
import type { CubicMeter, Kelvin, KelvinDifference, Meter, Pascal, Quantity, Ratio, Second } from './units.ts';

/** Heat flow per area and temperature difference, W/(m²·K). */
export type WattPerSquareMeterKelvin = Quantity<'W/(m²·K)'>;

/** A vessel and the air in it, as far as the heat of its walls asks. */
export interface VesselShape {
  /** A standing cylinder or a sphere */
  readonly shape: 'cylinder' | 'sphere';
  /** Of the empty vessel, m³, 10⁻⁵ to 1 */
  readonly volume: CubicMeter;
  /** Inside, m, 0.01 to 2; for a sphere that of its volume unless given */
  readonly diameter?: Meter;
  /** Of a cylinder inside, m, 0.01 to 4; from volume and diameter unless given */
  readonly height?: Meter;
  /** Share of the volume that water fills, 0 to 0.95; 0 unless given */
  readonly fill?: Ratio;
  /** Of the gas, absolute, Pa, 5·10³ to 5·10⁵ */
  readonly pressure: Pascal;
  /** Of the gas, K, 230 to 331; 293.15 unless given */
  readonly temperature?: Kelvin;
  /** Between gas and walls, either sign, K, at most 60 */
  readonly temperatureDifference: KelvinDifference;
}

/** Room of the gas: what is not filled with water. */
interface GasSpace {
  readonly volume: CubicMeter;
  /** Walls and water surface, m² */
  readonly area: number;
  /** Length that the Rayleigh number is formed with, m */
  readonly length: Meter;
  /** Sum of squares of the wave numbers of the slowest mode of conduction, 1/m² */
  readonly slowestMode: number;
}

/**
 * Heat transfer coefficient between the gas of a closed vessel and its walls, averaged over the surface.
 * @param vessel see {@link VesselShape}
 * @returns W/(m²·K), 3 to 5 in vessels of a few liters; correct within about a third
 * @throws RangeError outside a range
 * Source: cylinders: Evans & Stefany 1966, Chem. Eng. Prog. Symp. Ser. 62 (64), 209: Nu = 0.55 Ra^¼ with the height as
 *   length, for heights of 0.75 to 2 diameters (used here beyond, where it is an extrapolation). Spheres: Kreith, Manglik &
 *   Bohn 2011, Principles of Heat Transfer, ch. 5: 0.59 Ra^¼ up to Ra = 10⁹, then 0.13 Ra^⅓, with the diameter. Never
 *   less than conduction alone: Carslaw & Jaeger 1959, ch. 7 and 9, slowest mode.
 */
export function wallHeatTransferCoefficient(vessel: VesselShape): WattPerSquareMeterKelvin {
  const p = inRange('pressure', vessel.pressure, 5e3, 5e5, 'Pa');
  const T = inRange('temperature', vessel.temperature ?? 293.15, 230, 331, 'K');
  const difference = Math.abs(inRange('temperatureDifference', vessel.temperatureDifference, -60, 60, 'K'));
  const space = gasSpace(vessel);
  const density = p / (GAS_CONSTANT_DRY_AIR * T);
  const conductivity = thermalConductivityOfAir(T);
  const diffusivity = conductivity / (density * HEAT_CAPACITY_DRY_AIR);
  const kinematicViscosity = viscosityOfAir(T) / density;
  const rayleigh = (STANDARD_GRAVITY * difference * space.length ** 3) / (T * kinematicViscosity * diffusivity);
  const convection = (nusselt(vessel.shape, rayleigh) * conductivity) / space.length;
  const conduction = (conductivity * space.slowestMode * space.volume) / space.area;
  return Math.max(convection, conduction);
}

/**
 * Time constant in which the gas of a closed vessel gives up its difference from the walls: an estimate.
 * It rises as the difference falls, by a fifth for half of it; take the difference that matters, some kelvin.
 * @param vessel see {@link VesselShape}
 * @returns s, 5 to 10 in vessels of a few liters; correct within about a third
 * @throws RangeError outside a range
 * Source: heat capacity of the gas over coefficient times area; see {@link wallHeatTransferCoefficient}.
 */
export function wallTimeConstantOf(vessel: VesselShape): Second {
  const coefficient = wallHeatTransferCoefficient(vessel);
  const { volume, area } = gasSpace(vessel);
  const density = vessel.pressure / (GAS_CONSTANT_DRY_AIR * (vessel.temperature ?? 293.15));
  return (density * HEAT_CAPACITY_DRY_AIR * volume) / (coefficient * area);
}

function nusselt(shape: VesselShape['shape'], rayleigh: number): Ratio {
  if (shape === 'cylinder') return 0.55 * rayleigh ** 0.25;
  return rayleigh < 1e9 ? 0.59 * rayleigh ** 0.25 : 0.13 * cbrt(rayleigh);
}

function gasSpace(vessel: VesselShape): GasSpace {
  const full = inRange('volume', vessel.volume, 1e-5, 1, 'm³');
  const fill = inRange('fill', vessel.fill ?? 0, 0, 0.95);
  return vessel.shape === 'cylinder' ? inCylinder(vessel, full, fill) : inSphere(vessel, full, fill);
}

const FIRST_ZERO_OF_BESSEL_J0 = 2.404825557695773;

function inCylinder(vessel: VesselShape, full: CubicMeter, fill: Ratio): GasSpace {
  const diameter = inRange('diameter', vessel.diameter!, 0.01, 2, 'm');
  const height = inRange('height', vessel.height ?? (4 * full) / (Math.PI * diameter ** 2), 0.01, 4, 'm');
  const length = height * (1 - fill);
  return {
    volume: full * (1 - fill),
    area: Math.PI * diameter * (length + diameter / 2),
    length,
    slowestMode: (FIRST_ZERO_OF_BESSEL_J0 / (diameter / 2)) ** 2 + (Math.PI / length) ** 2,
  };
}

function inSphere(vessel: VesselShape, full: CubicMeter, fill: Ratio): GasSpace {
  const diameter = inRange('diameter', vessel.diameter ?? cbrt((6 * full) / Math.PI), 0.01, 2, 'm');
  // Share of the water's depth in the diameter: a cap of this share x fills 3x² − 2x³ of the sphere.
  const depth = fill === 0 ? 0 : findRoot((x) => x * x * (3 - 2 * x) - fill, 0, 1);
  const volume = full * (1 - fill);
  const area = Math.PI * diameter ** 2 * (1 - depth + depth * (1 - depth));
  // The space above the water counts as a sphere of its volume where the length of its convection is asked for.
  const length = diameter * cbrt(1 - fill);
  return { volume, area, length, slowestMode: (Math.PI / (length / 2)) ** 2 };
}
