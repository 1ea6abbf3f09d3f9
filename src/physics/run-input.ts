/** What a run is given: vessel, thermometer, particles, room; checked, with the values that stand where nothing is said. */
import { log } from './elementary.ts';
import { dryAirDensity, moistAir, type MoistAir } from './moist-air.ts';
import { inRange } from './range.ts';
import { dropletLaw, hazeRadius, sizeOf, waterMass } from './run-droplets.ts';
import type { RunEvent, TimedPressure } from './run-events.ts';
import type { CubicMeter, Kelvin, KelvinDifference, Meter, Pascal, PerCubicMeter, Ratio, Second } from './units.ts';
import { LN_PARTICLES, NO_PARTICLES, PRESSURE, SIZE, TEMPERATURE, THERMOMETER, WATER, type VesselConstants } from './vessel-equations.ts';

/** The vessel of a run. */
export interface RunVessel {
  /** Of the gas, m³, 10⁻⁹ to 10; needed for pumps given by strokes or speed and for squeezing */
  readonly volume?: CubicMeter;
  /** In which the gas gives up its difference from the walls, s, 0 (always at the walls' temperature) to Infinity (no heat) */
  readonly wallTimeConstant?: Second;
  /** As `thermometer.timeConstant`, for those who keep both constants together */
  readonly thermometerTimeConstant?: Second;
  /** K, 235 to 331; that of the air at the start unless given */
  readonly wallTemperature?: Kelvin;
  /** Whether the walls are wet; dry unless given. Wet walls bring the vapor toward saturation at their temperature */
  readonly walls?: 'dry' | 'wet';
  /** In which wet walls do so, s, 0 to Infinity; from the walls' time constant unless given */
  readonly vaporTimeConstant?: Second;
  /** In which a leak would equalize the vessel at its first rate, s, above 0 to Infinity; Infinity unless given */
  readonly leakTimeConstant?: Second;
  /** That droplets fall through, m, 0.01 to 10; without it none settle */
  readonly height?: Meter;
}

/** The thermometer of a run. */
export interface RunThermometer {
  /** s, 0 (shows the gas at once) to Infinity (never moves) */
  readonly timeConstant?: Second;
  /** The same by its full name */
  readonly thermometerTimeConstant?: Second;
  /** Share of the walls' temperature, by radiation, in what it relaxes to, 0 to 1; 0 unless given */
  readonly wallShare?: Ratio;
}

/** Particles that droplets form on. */
export interface RunNuclei {
  /** At the start, per m³, 0 to 10¹⁴ */
  readonly number: PerCubicMeter;
  /** m, 10⁻⁸ to 10⁻⁵; 0.15 µm unless given */
  readonly dryDiameter?: Meter;
  /** Hygroscopicity, 10⁻³ to 2; 0.3 unless given */
  readonly kappa?: Ratio;
}

/** The room around the vessel. */
export interface RunRoom {
  /** Absolute, Pa; that of the air at the start unless given */
  readonly pressure?: Pascal;
  /** K; that of the walls unless given */
  readonly temperature?: Kelvin;
  /** Fraction, 0 to 1; 0.5 unless given */
  readonly relativeHumidity?: Ratio;
  /** Particles per m³ of room air, 0 to 10¹⁴; 0 unless given */
  readonly particles?: PerCubicMeter;
}

/** What {@link simulateRun} needs. Exactly one of `pressureHistory`, `pump` and `events` says what is done. */
export interface RunInput {
  /** The air in the vessel; it does not count the water on the particles */
  readonly start: MoistAir;
  readonly vessel?: RunVessel;
  readonly thermometer?: RunThermometer;
  readonly nuclei?: RunNuclei;
  readonly room?: RunRoom;
  /** Absolute pressure, linear between points, times not falling; two points of one time are a sudden change */
  readonly pressureHistory?: readonly TimedPressure[];
  /** With a history: times between which valve and pump are left alone. There the pressure follows from the gas and a leak, and the history's points only mark times */
  readonly holds?: readonly { readonly from: Second; readonly to: Second }[];
  /** A single pumping; what is left of `duration` is a hold */
  readonly pump?: Extract<RunEvent, { readonly kind: 'pump' | 'stroke-pump' | 'steady-pump' }>;
  /** A whole lesson, one event after the other */
  readonly events?: readonly RunEvent[];
  /** Of the whole run, s; with a pressure history its end unless given, and its last pressure is kept */
  readonly duration?: Second;
  /** Between the points of the series, s, above 0; 1/200 of the run, at most 1 s, unless given */
  readonly interval?: Second;
  /** Largest error of one step of the computation, K, 10⁻⁹ to 0.01; 2·10⁻⁷ without particles and 10⁻⁴ with them unless given */
  readonly accuracy?: KelvinDifference;
  /** As in `vessel` */
  readonly wallTimeConstant?: Second;
  /** As `thermometer.timeConstant` */
  readonly thermometerTimeConstant?: Second;
}

/** A thermometer without lag, or walls that moisten at once, take this time: it leaves less than 10⁻⁶ K or 10⁻⁴ of the vapor. */
const SHORTEST: Second = 1e-7;
const SHORTEST_MOISTENING: Second = 1e-4;
const LONGEST = Infinity;
/** Lewis number of vapor in air, 0.85 at 20 °C (Incropera & DeWitt 2007, tables A.4 and A.8), to the power that likens mass to heat. */
const VAPOR_OVER_HEAT_TIME = 0.85 ** (2 / 3);
const MOST_PARTICLES: PerCubicMeter = 1e14;

/**
 * The constants of a run, every one checked.
 * @throws RangeError outside a range
 */
export function vesselConstants(input: RunInput): VesselConstants {
  const { start, thermometer = {}, nuclei, room = {}, events = [] } = input;
  // A constant is found by its full name wherever it stands.
  const vessel = { ...input, ...input.vessel, ...thermometer };
  const wallTemperature = inRange('vessel.wallTemperature', vessel.wallTemperature ?? start.temperature, 235, 331, 'K');
  const wallTimeConstant = inRange(
    'vessel.wallTimeConstant', vessel.wallTimeConstant ?? Infinity, 0, LONGEST, 's',
  );
  const roomAir = moistAir({
    temperature: room.temperature ?? wallTemperature,
    pressure: room.pressure ?? start.pressure,
    relativeHumidity: room.relativeHumidity ?? 0.5,
  });
  const roomParticles = inRange('room.particles', room.particles ?? 0, 0, MOST_PARTICLES, '1/m³');
  const hasParticles = nuclei !== undefined || roomParticles > 0 || events.some((event) => event.kind === 'particles');
  return {
    wallTemperature,
    wallTimeConstant,
    vaporTimeConstant:
      vessel.walls === 'wet'
        ? Math.max(
            SHORTEST_MOISTENING,
            inRange('vessel.vaporTimeConstant', vessel.vaporTimeConstant ?? VAPOR_OVER_HEAT_TIME * wallTimeConstant, 0, LONGEST, 's'),
          )
        : Infinity,
    leakTimeConstant: inRange('vessel.leakTimeConstant', vessel.leakTimeConstant ?? Infinity, 1e-3, LONGEST, 's'),
    thermometerTimeConstant: Math.max(
      SHORTEST,
      inRange('thermometerTimeConstant', thermometer.timeConstant ?? vessel.thermometerTimeConstant ?? 0, 0, LONGEST, 's'),
    ),
    wallShare: inRange('thermometer.wallShare', vessel.wallShare ?? 0, 0, 1),
    room: {
      pressure: roomAir.pressure,
      temperature: roomAir.temperature,
      mixingRatio: roomAir.mixingRatio,
      particles: perKilogram(roomParticles, roomAir.temperature, roomAir.pressure, roomAir.mixingRatio),
    },
    droplets: hasParticles ? dropletLaw(nuclei?.dryDiameter ?? 0.15e-6, nuclei?.kappa ?? 0.3) : undefined,
    settlingHeight: inRange('vessel.height', vessel.height ?? Infinity, 0.01, LONGEST, 'm'),
  };
}

/**
 * The state at the start: air as given, particles with the water they hold in it, the thermometer at rest.
 * @throws RangeError outside a range
 */
export function initialState(input: RunInput, vessel: VesselConstants): Float64Array {
  const { start } = input;
  const { droplets, wallTemperature, wallShare } = vessel;
  inRange('start.saturationRatio', start.saturationRatio, 0, 10);
  const state = new Float64Array(droplets === undefined ? 4 : 7);
  const startTemperature = inRange('start.temperature', start.temperature, 235.15, 331, 'K');
  state[TEMPERATURE] = vessel.wallTimeConstant === 0 ? wallTemperature : startTemperature;
  state[PRESSURE] = inRange('start.pressure', start.pressure, 5e3, 5e5, 'Pa');
  state[WATER] = start.mixingRatio;
  state[THERMOMETER] = start.temperature + wallShare * (wallTemperature - start.temperature);
  if (droplets !== undefined) {
    const radius = hazeRadius(droplets, start.temperature, start.saturationRatio);
    const number = inRange('nuclei.number', input.nuclei?.number ?? 0, 0, MOST_PARTICLES, '1/m³');
    state[SIZE] = sizeOf(droplets, radius);
    const particles = perKilogram(number, start.temperature, start.pressure, start.mixingRatio);
    state[LN_PARTICLES] = Math.max(NO_PARTICLES, log(particles));
    state[WATER] += particles * waterMass(droplets, radius);
  }
  return state;
}

/** Particles per kg of dry air from particles per m³. */
export function perKilogram(number: PerCubicMeter, temperature: Kelvin, pressure: Pascal, vapor: Ratio): number {
  return number / dryAirDensity(temperature, pressure, vapor);
}
