/** A run under way: it advances the vessel's state through stretches of time and keeps the series. */
import { cbrt, exp, log } from './elementary.ts';
import { dryAirDensity, saturationRatioOf } from './moist-air.ts';
import { gaugeReading } from './pump.ts';
import { inRange } from './range.ts';
import { hazeRadius, radiusOf, sizeOf, waterMass } from './run-droplets.ts';
import { initialState, perKilogram, vesselConstants, type RunInput } from './run-input.ts';
import { stiffIntegrator, type Derivative, type Integrator, type Interpolant } from './runge-kutta.ts';
import type { Kelvin, KelvinDifference, KilogramPerCubicMeter, Meter, Pascal, PerCubicMeter, Ratio, Second } from './units.ts';
import {
  airOf,
  DRAWN,
  heatCapacityOf,
  LN_PARTICLES,
  PRESSURE,
  rangeOf,
  SIZE,
  TEMPERATURE,
  THERMOMETER,
  vesselDerivative,
  WATER,
  type Action,
  type VesselConstants,
} from './vessel-equations.ts';

/** A moment of a run. */
export interface RunPoint {
  /** s */
  readonly time: Second;
  /** Absolute, Pa */
  readonly pressure: Pascal;
  /** Pressure relative to the room, Pa */
  readonly gauge: Pascal;
  /** K */
  readonly gasTemperature: Kelvin;
  /** K */
  readonly thermometerReading: Kelvin;
  /** Vapor pressure over that of saturation over liquid water */
  readonly saturationRatio: Ratio;
  /** Vapor, kg per kg of dry air */
  readonly mixingRatio: Ratio;
  /** kg per m³ of vessel, the haze on particles included; exactly 0 without particles */
  readonly liquidWaterContent: KilogramPerCubicMeter;
  /** Of the one size that stands for all, m; 0 without particles */
  readonly dropletDiameter: Meter;
  /** Particles, each with its droplet, per m³ */
  readonly particles: PerCubicMeter;
}

/** See {@link startRecorder}. */
export interface RunRecorder {
  readonly series: readonly RunPoint[];
  readonly time: () => Second;
  /** Absolute, Pa */
  readonly pressure: () => Pascal;
  /** The same action until a time; the series gets a point there. */
  readonly advance: (until: Second, action: Action) => void;
  /** A sudden adiabatic change of the gas to a pressure. */
  readonly jumpTo: (pressure: Pascal) => void;
  /** Particles added, per m³, with the water they hold in the room's air. */
  readonly addParticles: (number: PerCubicMeter) => void;
}

// Largest error of a step. Without droplets the equations are smooth and the digits cost little.
const CLEAR_ACCURACY: KelvinDifference = 2e-7;
const CLOUDY_ACCURACY: KelvinDifference = 1e-4;
/** Of the droplets' size, and as a share of it: 3·10⁻⁴ of the radius. */
const SIZE_ACCURACY: Ratio = 6e-4;
/** Of the logarithm of the particles' number, and of the room's particles that come in. */
const PARTICLE_ACCURACY: Ratio = 1e-5;
/** Fewer per kg of dry air are none. */
const FEWEST_PARTICLES = 1e-3;
// Sizes of the unknowns: temperature, pressure, water, thermometer, the droplets' size, logarithm of the particles.
const SCALES = [300, 1e5, 1e-2, 300, 1, 20];

/**
 * A run at its first moment.
 * @param input see {@link RunInput}
 * @param from time of the start, s
 * @param span expected length of the run, s: sets the interval of the series unless the input does
 * @throws RangeError outside a range
 */
export function startRecorder(input: RunInput, from: Second, span: Second): RunRecorder {
  const vessel = vesselConstants(input);
  const { droplets, room } = vessel;
  const state = initialState(input, vessel);
  const interval = inRange('interval', input.interval ?? Math.min(1, Math.max(span, 1e-3) / 200), 1e-6, Infinity, 's');
  const accuracy = inRange(
    'accuracy', input.accuracy ?? (droplets === undefined ? CLEAR_ACCURACY : CLOUDY_ACCURACY), 1e-9, 0.01, 'K',
  );
  const roomVapor = room.mixingRatio;
  const hazeInRoom =
    droplets === undefined
      ? 0
      : hazeRadius(droplets, room.temperature, saturationRatioOf(room.temperature, room.pressure, roomVapor));

  let time = from;
  let nextSample = 1;
  const sampled = new Float64Array(state.length);
  const series: RunPoint[] = [];

  const record = (at: Second, of: Float64Array): void => {
    const pressure = of[PRESSURE]!;
    const gasTemperature = of[TEMPERATURE]!;
    const { vapor, liquid } = airOf(of, droplets);
    const dryDensity = dryAirDensity(gasTemperature, pressure, vapor);
    const own = droplets === undefined ? 0 : exp(of[LN_PARTICLES]!);
    const hasDroplets = own > FEWEST_PARTICLES;
    const point: RunPoint = {
      time: at,
      pressure,
      gauge: gaugeReading(pressure, room.pressure),
      gasTemperature,
      thermometerReading: of[THERMOMETER]!,
      saturationRatio: saturationRatioOf(gasTemperature, pressure, vapor),
      mixingRatio: vapor,
      liquidWaterContent: hasDroplets ? liquid * dryDensity : 0,
      dropletDiameter: hasDroplets ? 2 * radiusOf(droplets!, of[SIZE]!) : 0,
      particles: droplets === undefined ? 0 : ((hasDroplets ? own : 0) + Math.max(0, of[DRAWN]!)) * dryDensity,
    };
    // What happens suddenly replaces the point before it, so that no time stands twice.
    if (series.length > 0 && series[series.length - 1]!.time === at) series.pop();
    series.push(point);
  };
  record(from, state);

  const followers: Follower[] = [];
  /** Only what there is takes part: droplets once there are particles, particles from the room where it has any. */
  const unknowns = (): number => {
    if (room.particles > 0) return DRAWN + 1;
    return droplets !== undefined && exp(state[LN_PARTICLES]!) > FEWEST_PARTICLES ? LN_PARTICLES + 1 : THERMOMETER + 1;
  };

  const advance = (until: Second, action: Action): void => {
    if (until <= time) return;
    const count = unknowns();
    const inPlay = count > LN_PARTICLES ? droplets : undefined;
    const follow = (followers[count] ??= followerOf({ ...vessel, droplets: inPlay }, count, accuracy));
    const keepSamples = (_: Second, to: Second, interpolate: Interpolant): void => {
      for (; from + nextSample * interval < to; nextSample++) {
        interpolate(from + nextSample * interval, sampled);
        record(from + nextSample * interval, sampled);
      }
    };
    sampled.set(state);
    try {
      follow(action)(state.subarray(0, count), time, until, keepSamples);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      throw new RangeError(`the gas comes to ${state[TEMPERATURE]!} K and ${state[PRESSURE]!} Pa; ${rangeOf(inPlay)}`, { cause: error });
    }
    if (from + nextSample * interval === until) nextSample++;
    time = until;
    if (droplets !== undefined) {
      join(state[DRAWN]!);
      state[DRAWN] = 0;
    }
    record(time, state);
  };

  const jumpTo = (pressure: Pascal): void => {
    if (pressure === state[PRESSURE]) return;
    const { vapor, liquid, gasConstant } = airOf(state, droplets);
    if (vessel.wallTimeConstant > 0) state[TEMPERATURE]! *= (pressure / state[PRESSURE]!) ** (gasConstant / heatCapacityOf(vapor, liquid));
    state[PRESSURE] = pressure;
    record(time, state);
  };

  /** One size for all: the mean of the volumes. What comes in brings the water that it holds in the room's air. */
  const join = (added: number): void => {
    if (droplets === undefined || added <= 0) return;
    const before = exp(state[LN_PARTICLES]!);
    const share = added / (before + added);
    const cube = (1 - share) * radiusOf(droplets, state[SIZE]!) ** 3 + share * hazeInRoom ** 3;
    state[SIZE] = sizeOf(droplets, cbrt(cube));
    state[LN_PARTICLES] = log(before + added);
    state[WATER]! += added * waterMass(droplets, hazeInRoom);
  };

  const addParticles = (number: PerCubicMeter): void => {
    join(perKilogram(number, state[TEMPERATURE]!, state[PRESSURE]!, airOf(state, droplets).vapor));
    record(time, state);
  };

  return { series, time: () => time, pressure: () => state[PRESSURE]!, advance, jumpTo, addParticles };
}

/** An integrator for each action, one after the other on the same vessel. */
type Follower = (action: Action) => Integrator;

function followerOf(vessel: VesselConstants, unknowns: number, accuracy: KelvinDifference): Follower {
  const roomParticles = Math.max(1, vessel.room.particles);
  // What a kelvin is worth: 1000 Pa and 1 g/kg, about as an adiabat and the saturation curve have it.
  const clear = [accuracy, 1000 * accuracy, 1e-3 * accuracy, accuracy];
  let derivative: Derivative;
  const integrate = stiffIntegrator({
    dimension: unknowns,
    derivative: (time, state, out) => derivative(time, state, out),
    tolerances: [...clear, SIZE_ACCURACY, PARTICLE_ACCURACY, PARTICLE_ACCURACY * roomParticles].slice(0, unknowns),
    shares: [0, 0, 0, 0, SIZE_ACCURACY, 0, 0],
    scales: [...SCALES, roomParticles].slice(0, unknowns),
  });
  return (action) => {
    derivative = vesselDerivative(vessel, action);
    return integrate;
  };
}
