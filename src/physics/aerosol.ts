/** Motion and meeting of single particles in air: slip, settling, diffusion, coagulation, loss to a vessel's walls. */
import { BOLTZMANN_CONSTANT, GAS_CONSTANT_DRY_AIR, STANDARD_GRAVITY, STANDARD_PRESSURE } from './constants.ts';
import { meanFreePathOfAir, viscosityOfAir } from './diffusion.ts';
import { cbrt, exp, expm1, log } from './elementary.ts';
import { inRange } from './range.ts';
import { findRoot } from './roots.ts';
import type { CubicMeter, Kelvin, KilogramPerCubicMeter, Meter, MeterPerSecond, Pascal, PerCubicMeter, Ratio, Second } from './units.ts';

/** The air around a particle. */
export interface SurroundingAir {
  /** K, 173.15 to 332; 293.15 if not given */
  readonly temperature?: Kelvin;
  /** Absolute, Pa, 5·10³ to 5·10⁵; 101325 if not given */
  readonly pressure?: Pascal;
}

/** A particle's material and the air around it. */
export interface ParticleInAir extends SurroundingAir {
  /** kg/m³, 100 to 2·10⁴; 1000 if not given */
  readonly density?: KilogramPerCubicMeter;
}

const ROOM_TEMPERATURE: Kelvin = 293.15;
const UNIT_DENSITY: KilogramPerCubicMeter = 1000;
/** Mean free path at 23 °C and 1 atm that goes with the constants of the slip correction: Kim et al. 2005, ISO 15900:2020. */
const FREE_PATH_OF_FIT: Meter = 67.3e-9;
const SMALLEST: Meter = 1e-9;
const LARGEST: Meter = 2e-4;

function airOf({ temperature = ROOM_TEMPERATURE, pressure = STANDARD_PRESSURE }: SurroundingAir): { T: Kelvin; p: Pascal } {
  return { T: inRange('temperature', temperature, 173.15, 332, 'K'), p: inRange('pressure', pressure, 5e3, 5e5, 'Pa') };
}

function densityOf({ density = UNIT_DENSITY }: ParticleInAir): KilogramPerCubicMeter {
  return inRange('density', density, 100, 2e4, 'kg/m³');
}

/**
 * Cunningham slip correction: how much less drag a small sphere meets than Stokes' law says.
 * @param diameter m, 10⁻⁹ to 2·10⁻⁴
 * @param air temperature and pressure
 * @returns pure number, 1 for large particles
 * @throws RangeError outside a range
 * Source: Kim et al. 2005, J. Res. NIST 110, 31, eq. 12, as in ISO 15900:2020; within 2.5 % of Allen & Raabe 1985
 *   and of Hinds 1999, eq. 3.20, above 20 nm, and within 1.5 % above 200 nm.
 */
export function slipCorrection(diameter: Meter, air: SurroundingAir = {}): Ratio {
  const d = inRange('diameter', diameter, SMALLEST, LARGEST, 'm');
  const { T, p } = airOf(air);
  // Free paths differ by convention: the fit's own, carried from its state to this one as kinetic theory has it.
  const freePath = (FREE_PATH_OF_FIT * meanFreePathOfAir(T, p)) / meanFreePathOfAir(296.15, STANDARD_PRESSURE);
  const knudsen = (2 * freePath) / d;
  return 1 + knudsen * (1.165 + 0.483 * exp(-0.997 / knudsen));
}

/**
 * Speed at which a sphere settles in still air, buoyancy included.
 * @param diameter m, 10⁻⁹ to 2·10⁻⁴
 * @param particle density of the particle, temperature and pressure of the air
 * @returns m/s
 * @throws RangeError outside a range, or where the Reynolds number would pass 20
 * Source: Stokes–Cunningham (Hinds 1999, eq. 3.21); drag beyond Stokes' law by Clift, Grace & Weber 1978, Bubbles,
 *   Drops and Particles, table 5.2.
 */
export function settlingVelocity(diameter: Meter, particle: ParticleInAir = {}): MeterPerSecond {
  const slip = slipCorrection(diameter, particle);
  const { T, p } = airOf(particle);
  const viscosity = viscosityOfAir(T);
  const airDensity = p / (GAS_CONSTANT_DRY_AIR * T);
  const stokes = ((densityOf(particle) - airDensity) * STANDARD_GRAVITY * diameter ** 2 * slip) / (18 * viscosity);
  const stokesReynolds = (airDensity * stokes * diameter) / viscosity;
  // The true Reynolds number times its drag factor is the Reynolds number by Stokes' law.
  const greatest = 20 * dragFactor(20);
  inRange('Reynolds number by Stokes’ law', stokesReynolds, 0, greatest);
  return stokesReynolds < 1e-4 ? stokes : stokes * (findRoot((Re) => Re * dragFactor(Re) - stokesReynolds, 0, 20) / stokesReynolds);
}

/** Drag on a sphere over that by Stokes' law, at a Reynolds number of 0 to 20. */
function dragFactor(Re: number): Ratio {
  if (Re <= 0.01) return 1 + (3 / 16) * Re;
  return 1 + 0.1315 * Re ** (0.82 - 0.05 * (log(Re) / Math.LN10));
}

/**
 * Coefficient of a particle's Brownian diffusion.
 * @param diameter m, 10⁻⁹ to 2·10⁻⁴
 * @param air temperature and pressure
 * @returns m²/s
 * @throws RangeError outside a range
 * Source: Stokes–Einstein with slip; Hinds 1999, eq. 7.7.
 */
export function diffusionCoefficient(diameter: Meter, air: SurroundingAir = {}): number {
  const { T } = airOf(air);
  return (BOLTZMANN_CONSTANT * T * slipCorrection(diameter, air)) / (3 * Math.PI * viscosityOfAir(T) * diameter);
}

/**
 * Coefficient of Brownian coagulation: K₁₂ n₁ n₂ particles of sizes 1 and 2 meet per volume and time. Among particles
 * of one size the number falls as dn/dt = −K n²/2; books that write dn/dt = −K n² (Hinds) print half of this K.
 * @param diameter1 m, 10⁻⁹ to 2·10⁻⁴
 * @param diameter2 m, the same
 * @param particle density of both, temperature and pressure of the air
 * @returns m³/s
 * @throws RangeError outside a range
 * Source: Fuchs 1964, Mechanics of Aerosols, section 49, in the form of Seinfeld & Pandis 2006, table 13.1; every
 *   meeting sticks. Meeting by unequal settling and by eddies is left out: it matters above some micrometers.
 */
export function coagulationCoefficient(diameter1: Meter, diameter2: Meter, particle: ParticleInAir = {}): number {
  const first = brownian(diameter1, particle);
  const second = brownian(diameter2, particle);
  const sum = diameter1 + diameter2;
  const diffusion = first.diffusion + second.diffusion;
  const jump = Math.hypot(first.jump, second.jump);
  const speed = Math.hypot(first.speed, second.speed);
  return (2 * Math.PI * sum * diffusion) / (sum / (sum + 2 * jump) + (8 * diffusion) / (speed * sum));
}

/** Diffusion coefficient, mean thermal speed, and Fuchs' mean distance from a sphere after one free path. */
function brownian(d: Meter, particle: ParticleInAir): { diffusion: number; speed: MeterPerSecond; jump: Meter } {
  const diffusion = diffusionCoefficient(d, particle);
  const mass = (densityOf(particle) * Math.PI * d ** 3) / 6;
  const speed = Math.sqrt((8 * BOLTZMANN_CONSTANT * airOf(particle).T) / (Math.PI * mass));
  const path = (8 * diffusion) / (Math.PI * speed);
  const ratio = path / d;
  // Fuchs' [(1 + r)³ − (1 + r²)^(3/2)]/(3r) − 1, rearranged so that nothing cancels for a short path.
  const root = Math.sqrt(1 + ratio ** 2);
  const jump = d * (ratio + ratio ** 2 / 3 - (ratio * (root ** 2 + root + 1)) / (3 * (root + 1)));
  return { diffusion, speed, jump };
}

/**
 * Time in which coagulation halves the number of particles of one size, their coefficient held constant:
 * n = n₀/(1 + t/τ).
 * @param number at the start, per m³, 1 to 10²⁰
 * @param coefficient m³/s as {@link coagulationCoefficient} gives it, 10⁻²⁰ to 10⁻⁸
 * @returns s
 * @throws RangeError outside a range
 * Source: Smoluchowski 1917; Seinfeld & Pandis 2006, eq. 13.67.
 */
export function coagulationTime(number: PerCubicMeter, coefficient: number): Second {
  return 2 / (inRange('number', number, 1, 1e20, '1/m³') * inRange('coefficient', coefficient, 1e-20, 1e-8, 'm³/s'));
}

/** A closed vessel: an upright cylinder, or a sphere. */
export type ParticleVessel =
  | { readonly shape: 'cylinder'; readonly volume: CubicMeter; readonly diameter: Meter }
  | { readonly shape: 'sphere'; readonly volume: CubicMeter };

/** Rates at which particles of one size leave well-mixed air, each a share of those present per second. */
export interface WallLoss {
  /** To the floor, by weight, 1/s */
  readonly settling: number;
  /** To all walls, by diffusion through the still layer at them, 1/s */
  readonly diffusion: number;
}

/**
 * Rates of loss to the walls of a vessel whose air is stirred, be it only by the warmth of a hand.
 * @param diameter of the particles, m, 10⁻⁹ to 2·10⁻⁴
 * @param vessel.volume m³, 10⁻⁵ to 10⁴; a cylinder's `diameter` m, 0.01 to 20
 * @param eddyParameter growth of the eddy diffusivity with the square of the distance from a wall, 1/s, 10⁻⁵ to 100
 * @param particle density, temperature and pressure
 * @throws RangeError outside a range
 * Source: cylinder by Corner & Pendlebury 1951, Proc. Phys. Soc. B 64, 645; sphere by Crump & Seinfeld 1981,
 *   J. Aerosol Sci. 12, 405. Settling alone is Hinds 1999, eq. 3.51: n = n₀ exp(−v t/H), H volume over floor area.
 */
export function wallLoss(diameter: Meter, vessel: ParticleVessel, eddyParameter: number, particle: ParticleInAir = {}): WallLoss {
  const volume = inRange('volume', vessel.volume, 1e-5, 1e4, 'm³');
  const eddy = inRange('eddyParameter', eddyParameter, 1e-5, 100, '1/s');
  const speed = settlingVelocity(diameter, particle);
  const layer = Math.sqrt(eddy * diffusionCoefficient(diameter, particle));
  const x = (Math.PI * speed) / (2 * layer);
  if (vessel.shape === 'sphere') {
    const radius = cbrt((3 * volume) / (4 * Math.PI));
    return { settling: (3 * speed) / (4 * radius), diffusion: ((6 * layer) / (Math.PI * radius)) * debye(x) };
  }
  const width = inRange('vessel.diameter', vessel.diameter, 0.01, 20, 'm');
  const floor = (Math.PI * width ** 2) / 4;
  const side = (4 * volume) / width;
  // Floor and ceiling together take v·coth(x/2); v of it is weight, the rest diffusion.
  const ends = x < 1e-8 ? (4 * layer) / Math.PI : (2 * speed) / expm1(x);
  return { settling: (speed * floor) / volume, diffusion: ((2 / Math.PI) * layer * side + ends * floor) / volume };
}

/** First Debye function, (1/x)·∫₀ˣ t/(eᵗ − 1) dt: Abramowitz & Stegun 1964, eq. 27.1.1, 27.1.2. */
function debye(x: number): number {
  if (x < 2) {
    const y = x ** 2;
    return 1 - x / 4 + y / 36 - y ** 2 / 3600 + y ** 3 / 211680 - y ** 4 / 10886400 + y ** 5 / 526901760 - (691 * y ** 6) / 16999766784000;
  }
  let tail = 0;
  for (let k = 1; k * x < 40; k++) tail += exp(-k * x) * (x / k + 1 / k ** 2);
  return (Math.PI ** 2 / 6 - tail) / x;
}
