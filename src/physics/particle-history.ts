/** What becomes of particles let into a closed vessel: number and size over minutes and hours. */
import { coagulationCoefficient, settlingVelocity, wallLoss, type ParticleInAir, type ParticleVessel } from './aerosol.ts';
import { DENSITY_LIQUID_WATER } from './constants.ts';
import { cbrt } from './elementary.ts';
import { coagulationAmong, populate, sizeClasses, type ParticleMode, type SizeClasses } from './particle-classes.ts';
import { advance, COAGULATED, DIFFUSED, CLOUDED, LOSSES, SETTLED, type Cloud, type Processes } from './particle-losses.ts';
import { inRange } from './range.ts';
import type { KilogramPerCubicMeter, Meter, PerCubicMeter, Ratio, Second } from './units.ts';

/** A cloud made and undone: particles sit in droplets, and those whose droplet reaches the floor stay there. */
export type CloudCycle = {
  /** When the droplets form, s from the start */
  readonly time: Second;
  /** How long they last, s */
  readonly duration: Second;
  /** Share of the particles, the largest first, on which droplets form; 1 if not given */
  readonly activatedFraction?: Ratio;
} & (
  | { /** m */ readonly dropletDiameter: Meter }
  | { /** Shared out among the droplets, kg/m³ */ readonly liquidWaterContent: KilogramPerCubicMeter }
);

export type ParticleLoss = 'settling' | 'walls' | 'coagulation' | 'clouds';

export interface ParticleHistoryInput extends ParticleInAir {
  /** Lognormal modes, or one mode given by its three fields beside these */
  readonly modes?: readonly ParticleMode[];
  readonly number?: PerCubicMeter;
  readonly medianDiameter?: Meter;
  readonly geometricStandardDeviation?: Ratio;
  readonly vessel: ParticleVessel;
  /** Rising, s from the start */
  readonly times: readonly Second[];
  /** Air kept moving by pumping or shaking; if not, by small differences of temperature only */
  readonly stirred?: boolean;
  /** 1/s, in place of the value that goes with `stirred`; see `wallLoss` */
  readonly eddyParameter?: number;
  readonly cloudCycles?: readonly CloudCycle[];
  /** Losses left out, to see what each does */
  readonly without?: readonly ParticleLoss[];
  /** Share of the particles that one step of the calculation may change, 10⁻⁴ to 0.2; 0.05 if not given */
  readonly stepShare?: Ratio;
  /** Size classes for each doubling of a particle's volume, 1 to 8; 2 if not given */
  readonly classesPerDoubling?: number;
}

/** The particles at one time. Numbers are per m³ of the vessel; losses are counted from the start. */
export interface ParticleState {
  /** s */
  readonly time: Second;
  /** In the air, droplets' kernels included, 1/m³ */
  readonly number: PerCubicMeter;
  /** Mean by number, m */
  readonly meanDiameter: Meter;
  /** m³ of particle per m³ */
  readonly volume: Ratio;
  /** Reached the floor by their own weight, 1/m³ */
  readonly lostToSettling: PerCubicMeter;
  /** Reached a wall by diffusion, 1/m³ */
  readonly lostToWalls: PerCubicMeter;
  /** Joined to another, 1/m³ */
  readonly lostToCoagulation: PerCubicMeter;
  /** Carried down in a droplet or caught by one, 1/m³ */
  readonly lostToClouds: PerCubicMeter;
}

/**
 * Eddy parameters that give the walls of a vessel of some liters, within a factor of two, the mass transfer of a
 * natural-convection layer: 6 mm thick for heat where pumping leaves 3–5 W/(m²·K), 20 mm where a tenth of a kelvin is
 * left to drive it; for particles thinner by the cube root of their diffusivity over air's. An estimate: give
 * `eddyParameter` where it is known.
 */
const EDDY_STIRRED = 0.1;
const EDDY_STILL = 0.01;

/**
 * Number and size of particles in a closed vessel whose air mixes: Brownian coagulation, settling, diffusion to the
 * walls, and clouds that carry them down.
 * Diameters are those in the vessel: over a wet floor a soluble particle of 0.1 µm is two to three times as large as
 * when dry. The expansion's own thinning of the air is undone when air is let in and is left out; so are charge,
 * meeting by unequal settling, and clouds that warm and cold spots of a wet wall make by themselves.
 * What it says: smoke of 0.1–0.3 µm is slow to go. Of a hundred thousand per cm³ in three still liters a fifth is left
 * after six hours and a hundredth after a day; clouds made and settled clean far faster, the more so the fewer remain.
 * @param input.number per m³, 1 to 10¹⁶, `medianDiameter` m, 2·10⁻⁹ to 2·10⁻⁵, `geometricStandardDeviation` 1 to 3;
 *   or the same as `modes`
 * @param input.vessel, `density`, `temperature`, `pressure` and `eddyParameter` as in `wallLoss`
 * @param input.times s, rising, 0 to 10⁷
 * @param input.cloudCycles in order, not overlapping: `time` s, `duration` s, 0 to 10⁴, and `dropletDiameter` m,
 *   10⁻⁶ to 2·10⁻⁴, or `liquidWaterContent` kg/m³, 0 to 0.1
 * @returns one state for each time
 * @throws RangeError outside a range, for times or cycles out of order, or where no mode is given
 * Source: general dynamic equation of a well-mixed vessel, Seinfeld & Pandis 2006, ch. 13, with `coagulationCoefficient`
 *   and `wallLoss`; a droplet settles as a stirred cloud does and collects by Brownian motion.
 */
export function particleHistory(input: ParticleHistoryInput): ParticleState[] {
  const modes = modesOf(input);
  const classes = sizeClasses(modes, inRange('classesPerDoubling', input.classesPerDoubling ?? 2, 1, 8));
  const times = inOrder('times', input.times, 1e7);
  const cycles = cyclesOf(input);
  const size = classes.diameters.length;
  const state = new Float64Array(2 * size + LOSSES);
  for (const mode of modes) populate(classes, mode).forEach((n, i) => (state[i]! += n));
  const processes = processesFor(input, classes);
  const stepShare = inRange('stepShare', input.stepShare ?? 0.05, 1e-4, 0.2);
  const history: ParticleState[] = [];
  let time = 0;
  let cloud: Cloud | undefined;

  const events = [
    ...times.map((at) => ({ at, act: () => void history.push(describe(at, classes, state)) })),
    ...cycles.flatMap((cycle) => [
      { at: cycle.time, act: () => void (cloud = formCloud(cycle, input, classes, state)) },
      { at: cycle.time + cycle.duration, act: () => void (cloud = evaporate(size, state)) },
    ]),
  ].sort((first, second) => first.at - second.at);
  for (const { at, act } of events) {
    if (at > (times.at(-1) ?? 0)) break;
    advance(state, at - time, processes, cloud, size, stepShare);
    time = at;
    act();
  }
  return history;
}

function processesFor(input: ParticleHistoryInput, classes: SizeClasses): Processes {
  const without = new Set(input.without);
  const eddy = input.eddyParameter ?? (input.stirred ? EDDY_STIRRED : EDDY_STILL);
  const losses = classes.diameters.map((d) => wallLoss(d, input.vessel, eddy, input));
  return {
    settling: losses.map(({ settling }) => (without.has('settling') ? 0 : settling)),
    diffusion: losses.map(({ diffusion }) => (without.has('walls') ? 0 : diffusion)),
    coagulation: without.has('coagulation')
      ? undefined
      : coagulationAmong(classes, (d1, d2) => coagulationCoefficient(d1, d2, input)),
  };
}

/** Moves the largest particles into droplets. */
function formCloud(cycle: CloudCycle, input: ParticleHistoryInput, classes: SizeClasses, state: Float64Array): Cloud {
  const size = classes.diameters.length;
  let wanted = (cycle.activatedFraction ?? 1) * state.subarray(0, size).reduce((sum, n) => sum + n, 0);
  let droplets = 0;
  for (let i = size - 1; i >= 0 && wanted > 0; i--) {
    const moved = Math.min(wanted, state[i]!);
    state[i]! -= moved;
    state[size + i]! += moved;
    wanted -= moved;
    droplets += moved;
  }
  const diameter =
    'dropletDiameter' in cycle
      ? cycle.dropletDiameter
      : Math.min(2e-4, Math.max(1e-6, cbrt((6 * cycle.liquidWaterContent) / (Math.PI * DENSITY_LIQUID_WATER * Math.max(droplets, 1)))));
  const water = { ...input, density: DENSITY_LIQUID_WATER };
  return {
    settling: settlingVelocity(diameter, water) / meanDepth(input.vessel),
    capture: classes.diameters.map((d) => coagulationCoefficient(d, diameter, water)),
  };
}

/** Gives the particles of the droplets still in the air back to it. */
function evaporate(size: number, state: Float64Array): undefined {
  for (let i = 0; i < size; i++) {
    state[i]! += state[size + i]!;
    state[size + i] = 0;
  }
}

/** Volume over the area seen from above. */
function meanDepth(vessel: ParticleVessel): Meter {
  if (vessel.shape === 'cylinder') return (4 * vessel.volume) / (Math.PI * vessel.diameter ** 2);
  return (4 / 3) * cbrt((3 * vessel.volume) / (4 * Math.PI));
}

function describe(time: Second, { diameters, volumes }: SizeClasses, state: Float64Array): ParticleState {
  const size = diameters.length;
  let [number, length, volume] = [0, 0, 0];
  for (let i = 0; i < size; i++) {
    const n = state[i]! + state[size + i]!;
    number += n;
    length += n * diameters[i]!;
    volume += n * volumes[i]!;
  }
  const lost = (place: number): PerCubicMeter => state[2 * size + place]!;
  const meanDiameter = number > 0 ? length / number : 0;
  return {
    time,
    number,
    meanDiameter,
    volume,
    lostToSettling: lost(SETTLED),
    lostToWalls: lost(DIFFUSED),
    lostToCoagulation: lost(COAGULATED),
    lostToClouds: lost(CLOUDED),
  };
}

function modesOf(input: ParticleHistoryInput): readonly ParticleMode[] {
  const modes = input.modes ?? [input as ParticleMode];
  inRange('modes.length', modes.length, 1, Infinity);
  for (const mode of modes) {
    inRange('number', mode.number, 1, 1e16, '1/m³');
    inRange('medianDiameter', mode.medianDiameter, 2e-9, 2e-5, 'm');
    inRange('geometricStandardDeviation', mode.geometricStandardDeviation, 1, 3);
  }
  return modes;
}

/** Checked and with nothing overlapping. */
function cyclesOf({ cloudCycles = [], without = [] }: ParticleHistoryInput): readonly CloudCycle[] {
  inOrder('cloudCycles[].time', cloudCycles.map(({ time }) => time), 1e7);
  cloudCycles.forEach((cycle, i) => {
    const end = cycle.time + inRange('duration', cycle.duration, 0, 1e4, 's');
    inRange('activatedFraction', cycle.activatedFraction ?? 1, 0, 1);
    if ('dropletDiameter' in cycle) inRange('dropletDiameter', cycle.dropletDiameter, 1e-6, 2e-4, 'm');
    else inRange('liquidWaterContent', cycle.liquidWaterContent, 0, 0.1, 'kg/m³');
    const next = cloudCycles[i + 1]?.time ?? Infinity;
    if (end > next) throw new RangeError(`a cloud cycle ends at ${end} s; the next begins at ${next} s`);
  });
  return without.includes('clouds') ? [] : cloudCycles;
}

function inOrder(name: string, times: readonly Second[], latest: Second): readonly Second[] {
  times.forEach((time, i) => inRange(name, time, times[i - 1] ?? 0, latest, 's'));
  return times;
}
