/** The cloud that a number of particles makes when a kit's vessel is pumped down. */
import { condense, coronaRadius, extinctionCoefficient, opticalDepth, settlingVelocity, visibleContrast } from '../physics/index.ts';
import { answered } from './answered.ts';
import { onset, pressureAfter, vesselAir } from './air.ts';
import type { Particles, State } from './conditions.ts';
import { remembered } from './remembered.ts';
import { pumpingTime } from './vessel-run.ts';

/** The cloud as pumping ends. SI. */
export interface Cloud {
  readonly peakSaturationRatio: number;
  /** Droplets and haze. */
  readonly waterContent: number;
  /** Third over second moment of all sizes; undefined where there are no drops. */
  readonly diameter: number | undefined;
  readonly temperature: number;
  readonly pressure: number;
}

/** What droplets form on where a kit names no particles: common aged particles of room air (Seinfeld & Pandis 2006, ch. 8; kappa: Petters & Kreidenweis 2007). */
const ROOM_PARTICLES: Particles = { id: '', title: 'particles of room air', dryDiameter: 0.1e-6, spread: 1.8, kappa: 0.3, number: 5e9 };
/** Size classes: with 20 the peak of the supersaturation is within 0.3 % of its value with 100. */
const CLASSES = 20;
/** Smaller than this it is haze, m: the usual bound between haze and cloud droplets (Pruppacher & Klett 1997, ch. 2). */
const SMALLEST_DROP = 1e-6;
const SHORTEST_PUMPING = 0.1;

/**
 * The particles of this name, the kit's first without a name.
 * @throws RangeError if the kit does not list them
 */
export function particlesOf(state: State, id?: string): Particles {
  if (id === undefined) return state.particles[0] ?? ROOM_PARTICLES;
  const found = state.particles.find((particles) => particles.id === id);
  if (found === undefined) throw new RangeError(`particles is ${id}; the kit lists ${state.particles.map((one) => one.id).join(', ')}`);
  return found;
}

/** The cloud at a drop, with so many particles (the kit's number without one) of one kind. */
export const cloudAt = /* @__PURE__ */ remembered(
  (state, drop: number, number: number | undefined, id: string | undefined): Cloud => {
    const particles = particlesOf(state, id);
    const start = vesselAir(state);
    const pressure = pressureAfter(state, drop);
    const time = Math.max(SHORTEST_PUMPING, pumpingTime(state, state.startPressure, pressure));
    const run = condense({
      start,
      modes: [{ medianDryDiameter: particles.dryDiameter, geometricStandardDeviation: particles.spread, kappa: particles.kappa, number: number ?? particles.number }],
      pressureHistory: [{ time: 0, pressure: start.pressure }, { time, pressure }],
      classes: CLASSES,
      outputTimes: [time],
    });
    const end = run.series.at(-1)!;
    const saturated = answered(() => pressure <= onset(state).pressure) ?? false;
    return {
      peakSaturationRatio: run.peakSaturationRatio,
      waterContent: end.liquidWaterContent,
      diameter: saturated && 2 * end.effectiveRadius >= SMALLEST_DROP ? 2 * end.effectiveRadius : undefined,
      temperature: end.temperature,
      pressure: end.pressure,
    };
  },
);

/** Optical depth of droplets across the vessel; 0 without droplets. */
export function depthAcross({ apparatus }: State, waterContent: number, diameter: number | undefined): number {
  if (diameter === undefined || waterContent === 0) return 0;
  return opticalDepth(extinctionCoefficient({ liquidWaterContent: waterContent, effectiveRadius: diameter / 2 }), apparatus.vessel.diameter);
}

/** Whether a cloud is seen across the vessel with the kit's light and backing; a backing is black unless its text says white. */
export function isSeen(state: State, { waterContent, diameter }: Pick<Cloud, 'waterContent' | 'diameter'>): boolean {
  const { light, backing } = state.apparatus;
  return visibleContrast({ opticalDepth: depthAcross(state, waterContent, diameter), lighting: light.from, backing: /white|blanc/i.test(backing) ? 'white' : 'black' }).visible;
}

/** Speed at which its droplets fall. */
export const fallSpeed = ({ diameter, temperature, pressure }: Cloud): number =>
  diameter === undefined ? Number.NaN : settlingVelocity(diameter, { temperature, pressure });

/** Angular radius of the first dark ring around a small lamp seen through it. */
export const ringRadius = ({ diameter }: Cloud): number => (diameter === undefined ? Number.NaN : coronaRadius({ dropletDiameter: diameter }));
