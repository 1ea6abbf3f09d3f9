/** Pumps, a squeezed vessel and a gauge: pressure by the laws of constant temperature. */
import { exp, log } from './elementary.ts';
import { inRange, wholeInRange } from './range.ts';
import type { CubicMeter, Pascal, Ratio, Second } from './units.ts';

/** A pump that works by strokes, as it stands at a vessel. */
export interface StrokePump {
  /** Pressure in the vessel before the first stroke, absolute, Pa, 10² to 10⁶ */
  readonly startPressure: Pascal;
  /** Of the gas in the vessel and its tube, m³, above 0 to 10 */
  readonly vesselVolume: CubicMeter;
  /** Swept by the piston, m³, above 0 to 1 */
  readonly strokeVolume: CubicMeter;
  /** Left before the piston at the end of its way, m³, 0 to the stroke volume; 0 unless given */
  readonly deadVolume?: CubicMeter;
  /** Lowest pressure that the pump reaches, absolute, Pa, 0 to the start pressure; 0 unless given */
  readonly ultimatePressure?: Pascal;
  /** Pressure that the pump works against (that of the room), absolute, Pa; the start pressure unless given */
  readonly roomPressure?: Pascal;
}

/** The vessel after a stroke. */
export interface Stroke {
  /** 1 for the first */
  readonly stroke: number;
  /** Absolute, Pa */
  readonly pressure: Pascal;
}

const MOST_STROKES = 100_000;

/**
 * Pressure after each stroke of a pump that takes gas out, the gas back at the room's temperature each time.
 * The gas in the dead volume, left at the room's pressure, expands with that of the vessel; so the pressure approaches
 * a limit in equal ratios, and the higher of this limit and of the ultimate pressure given is never undershot.
 * @param pump see {@link StrokePump}
 * @param pump.strokes whole number, 0 to 10⁵
 * @returns one entry per stroke, from stroke 1
 * @throws RangeError outside a range
 * Source: Boyle's law: p′(V + V_s + V_d) = pV + p_room V_d; e.g. Jousten 2016, Handbook of Vacuum Technology, ch. 7.
 */
export function pumpStrokes(pump: StrokePump & { readonly strokes: number }): readonly Stroke[] {
  const { start, limit, ratio } = strokeLaw(pump);
  const strokes = wholeStrokes(pump.strokes);
  return afterEach(strokes, (stroke) => Math.max(limit, limit + (start - limit) * ratio ** stroke));
}

/**
 * Least number of strokes after which the pressure is at or below a target.
 * @param pump see {@link StrokePump}
 * @param targetPressure absolute, Pa, above the pump's limit, to the start pressure
 * @returns whole number, 0 to 10⁵
 * @throws RangeError outside a range, or if the pump does not reach the target
 * Source: as {@link pumpStrokes}.
 */
export function strokesTo(pump: StrokePump, targetPressure: Pascal): number {
  const { start, limit, ratio } = strokeLaw(pump);
  const target = inRange('targetPressure', targetPressure, limit, start, 'Pa');
  if (target === limit && start > limit) {
    throw new RangeError(`targetPressure is ${target} Pa, which the pump never reaches; take one above it`);
  }
  if (target === start) return 0;
  // A target that a stroke reaches up to rounding counts as reached.
  const strokes = Math.ceil(log((target - limit) / (start - limit)) / log(ratio) - 1e-9);
  return inRange('number of strokes', strokes, 0, MOST_STROKES);
}

/**
 * What one stroke does to the pressure: it moves toward a limit by a fixed ratio.
 * @throws RangeError outside a range
 * Source: as {@link pumpStrokes}.
 */
export function strokeLaw(pump: StrokePump): { start: Pascal; limit: Pascal; ratio: Ratio } {
  const start = inRange('startPressure', pump.startPressure, 100, 1e6, 'Pa');
  const room = inRange('roomPressure', pump.roomPressure ?? start, 100, 1e6, 'Pa');
  const volume = volumeOf('vesselVolume', pump.vesselVolume, 10);
  const swept = volumeOf('strokeVolume', pump.strokeVolume, 1);
  const dead = inRange('deadVolume', pump.deadVolume ?? 0, 0, swept, 'm³');
  const ultimate = inRange('ultimatePressure', pump.ultimatePressure ?? 0, 0, start, 'Pa');
  const limit = Math.min(start, Math.max(ultimate, (room * dead) / (swept + dead)));
  return { start, limit, ratio: volume / (volume + swept + dead) };
}

/**
 * Pressure after each stroke of a pump that presses room air into the vessel, the gas back at the room's temperature.
 * @param pump as in {@link StrokePump}, without an ultimate pressure
 * @param pump.strokes whole number, 0 to 10⁵
 * @returns one entry per stroke, from stroke 1
 * @throws RangeError outside a range, or if the start is above what the dead volume lets the pump reach
 * Source: Boyle's law: p′(V + V_d) = pV + p_room(V_s + V_d).
 */
export function compressionStrokes(
  pump: Omit<StrokePump, 'ultimatePressure'> & { readonly strokes: number },
): readonly Stroke[] {
  const start = inRange('startPressure', pump.startPressure, 100, 1e6, 'Pa');
  const room = inRange('roomPressure', pump.roomPressure ?? start, 100, 1e6, 'Pa');
  const volume = volumeOf('vesselVolume', pump.vesselVolume, 10);
  const swept = volumeOf('strokeVolume', pump.strokeVolume, 1);
  const dead = inRange('deadVolume', pump.deadVolume ?? 0, 0, swept, 'm³');
  const strokes = wholeStrokes(pump.strokes);
  if (dead === 0) return afterEach(strokes, (stroke) => start + (stroke * room * swept) / volume);
  const highest = (room * (swept + dead)) / dead;
  inRange('startPressure', start, 100, highest, 'Pa');
  const ratio = volume / (volume + dead);
  return afterEach(strokes, (stroke) => highest - (highest - start) * ratio ** stroke);
}

/**
 * Pressure in a vessel after a pump of steady speed has run for a time, at constant temperature.
 * @param pump.startPressure absolute, Pa, 10² to 10⁶
 * @param pump.vesselVolume m³, above 0 to 10
 * @param pump.speed volume per time at the pump's inlet, m³/s, 0 to 1
 * @param pump.ultimatePressure absolute, Pa, 0 to the start pressure; 0 unless given
 * @param pump.time s, 0 or more
 * @returns absolute, Pa; never below the ultimate pressure
 * @throws RangeError outside a range
 * Source: dp/dt = −(S/V)(p − p_ultimate); e.g. Jousten 2016, Handbook of Vacuum Technology, ch. 3.
 */
export function steadyPumpPressure(pump: {
  readonly startPressure: Pascal;
  readonly vesselVolume: CubicMeter;
  readonly speed: number;
  readonly ultimatePressure?: Pascal;
  readonly time: Second;
}): Pascal {
  const start = inRange('startPressure', pump.startPressure, 100, 1e6, 'Pa');
  const volume = volumeOf('vesselVolume', pump.vesselVolume, 10);
  const speed = inRange('speed', pump.speed, 0, 1, 'm³/s');
  const ultimate = inRange('ultimatePressure', pump.ultimatePressure ?? 0, 0, start, 'Pa');
  const time = inRange('time', pump.time, 0, 1e9, 's');
  return ultimate + (start - ultimate) * exp((-speed * time) / volume);
}

/**
 * Pressure in a closed vessel whose volume is changed, at constant temperature.
 * @param vessel.startPressure absolute, Pa, 10² to 10⁶
 * @param vessel.volume before the change, m³, above 0 to 10
 * @param vessel.volumeChange m³, negative where it is squeezed; at least 1 % of the volume must be left
 * @returns absolute, Pa
 * @throws RangeError outside a range
 * Source: Boyle's law.
 */
export function squeezePressure(vessel: {
  readonly startPressure: Pascal;
  readonly volume: CubicMeter;
  readonly volumeChange: CubicMeter;
}): Pascal {
  const start = inRange('startPressure', vessel.startPressure, 100, 1e6, 'Pa');
  const volume = volumeOf('volume', vessel.volume, 10);
  return (start * volume) / (volume + inRange('volumeChange', vessel.volumeChange, -0.99 * volume, 10, 'm³'));
}

/**
 * What a gauge shows: pressure relative to the room.
 * @param pressure absolute, Pa, 0 to 10⁷
 * @param roomPressure absolute, Pa, 10² to 10⁶
 * @returns Pa, negative below the room's pressure
 * @throws RangeError outside a range
 * Source: definition of gauge pressure; ISO 80000-4.
 */
export function gaugeReading(pressure: Pascal, roomPressure: Pascal): Pascal {
  return inRange('pressure', pressure, 0, 1e7, 'Pa') - inRange('roomPressure', roomPressure, 100, 1e6, 'Pa');
}

function afterEach(strokes: number, pressureAfter: (stroke: number) => Pascal): Stroke[] {
  return Array.from({ length: strokes }, (_, i) => ({ stroke: i + 1, pressure: pressureAfter(i + 1) }));
}

function volumeOf(name: string, volume: CubicMeter, highest: number): CubicMeter {
  return inRange(name, volume, 1e-9, highest, 'm³');
}

function wholeStrokes(strokes: number): number {
  return wholeInRange('strokes', strokes, 0, MOST_STROKES);
}
