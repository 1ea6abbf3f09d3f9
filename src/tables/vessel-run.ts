/** How a kit's vessel is pumped, and what a simulated run of it is given. */
import { simulateRun, strokesTo, wallTimeConstantOf, type Run, type RunInput, type RunPoint } from '../physics/index.ts';
import { pressureAfter, vesselAir } from './air.ts';
import type { Particles, State } from './conditions.ts';
import { remembered } from './remembered.ts';

/** A gentle source takes this long where nothing else says so, s. */
export const PLAIN_PUMPING = 10;
/** Hands that squeezed a bottle let go of it in this time, s. */
const LETTING_GO = 0.5;
/** Between gas and walls while a class watches, K; the time constant goes with its fourth root. */
const TYPICAL_DIFFERENCE = 5;
/** From this humidity on a vessel is one with water in it, and its walls are wet. */
const WET_FROM = 0.9;
/** How long a class waits for the thermometer with the valve closed, s. */
const WATCHED = 60;

/** As measured, else estimated at half of the planned drop. */
export const wallTimeConstant = ({ apparatus, startPressure, plannedDrop }: State): number =>
  apparatus.vessel.wallTimeConstant ??
  wallTimeConstantOf({ ...apparatus.vessel, pressure: startPressure - plannedDrop / 2, temperatureDifference: TYPICAL_DIFFERENCE });

/** Vessel, thermometer and room as a run needs them. */
export function runSetting(state: State): Required<Pick<RunInput, 'start' | 'vessel' | 'thermometer' | 'room'>> {
  const { vessel, thermometer } = state.apparatus;
  return {
    start: vesselAir(state),
    vessel: {
      volume: vessel.volume,
      wallTimeConstant: wallTimeConstant(state),
      wallTemperature: state.roomTemperature,
      walls: state.startHumidity >= WET_FROM ? 'wet' : 'dry',
    },
    thermometer: { timeConstant: thermometer.timeConstant, wallShare: thermometer.wallShare },
    room: { pressure: state.roomPressure, temperature: state.roomTemperature, relativeHumidity: state.roomHumidity },
  };
}

/** Time in which the apparatus's own source brings the vessel from one pressure down to another, s. */
export function pumpingTime({ apparatus }: State, from: number, to: number): number {
  const { source, vessel } = apparatus;
  if (to >= from) return 0;
  switch (source.kind) {
    case 'stroke-pump':
      return source.strokeTime * strokesTo({ ...source, startPressure: from, vesselVolume: vessel.volume }, to);
    case 'steady-pump':
      return (vessel.volume / source.speed) * Math.log((from - source.ultimatePressure) / (to - source.ultimatePressure));
    case 'squeeze':
      return LETTING_GO;
    case 'pressurise':
      return source.releaseTime;
  }
}

/** A clean vessel pumped evenly to a drop and watched: as pumping ends, and when the thermometer stands lowest. */
export const pumpedAndWatched = /* @__PURE__ */ remembered((state, drop: number): { readonly end: RunPoint; readonly lowest: RunPoint } => {
  const to = pressureAfter(state, drop);
  const duration = pumpingTime(state, state.startPressure, to);
  const { series } = simulateRun({ ...runSetting(state), events: [{ kind: 'pump', to, duration }, { kind: 'hold', duration: WATCHED }], interval: 2 });
  const lowest = series.reduce((low, point) => (point.thermometerReading < low.thermometerReading ? point : low));
  return { end: series.find(({ time }) => time >= duration) ?? series.at(-1)!, lowest };
});

/**
 * A run of pump strokes from the start; its series has a point at the end of each stroke.
 * @throws RangeError where the apparatus has no pump of strokes, or the pump does not reach the pressure
 */
export function strokeRun(state: State, until: { readonly strokes: number } | { readonly to: number }, particles?: Particles): { readonly run: Run; readonly strokeTime: number } {
  const { source } = state.apparatus;
  if (source.kind !== 'stroke-pump') throw new RangeError(`source is ${source.kind}; only a stroke-pump has strokes`);
  const run = simulateRun({
    ...runSetting(state),
    nuclei: particles && { number: particles.number, dryDiameter: particles.dryDiameter, kappa: particles.kappa },
    pump: { ...source, ...until },
    interval: Infinity,
  });
  return { run, strokeTime: source.strokeTime };
}

/** Strokes after which the gauge has passed a drop. */
export const strokesToDrop = /* @__PURE__ */ remembered((state, drop: number): number => {
  const { run, strokeTime } = strokeRun(state, { to: pressureAfter(state, drop) });
  return Math.round(run.eventEnds.at(-1)! / strokeTime);
});

/** Time in which the gauge comes to a drop, in whole strokes where the pump has them, s. */
export function timeToDrop(state: State, drop: number): number {
  const { source } = state.apparatus;
  return source.kind === 'stroke-pump' ? source.strokeTime * strokesToDrop(state, drop) : pumpingTime(state, state.startPressure, pressureAfter(state, drop));
}
