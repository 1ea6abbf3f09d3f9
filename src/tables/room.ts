/** A room put in place of another: what of the conditions follows from it. */
import { stationPressure } from '../physics/index.ts';
import type { Apparatus, Conditions, Measured } from './conditions.ts';

/**
 * How far the weather moves the pressure of a place from that of the standard atmosphere: standard
 * deviation at mid-latitudes about 8 hPa, from memory of daily sea-level pressure. It counts where
 * a pressure is given by an elevation.
 */
export const WEATHER_SPREAD_OF_PRESSURE = 800;

/** Station pressure at an elevation above the sea, m, in the standard atmosphere and any weather; Pa, absolute. */
export function pressureAtElevation({ value: elevation, uncertainty }: Measured): Measured {
  const perMeter = (stationPressure(elevation + 1) - stationPressure(elevation - 1)) / 2;
  return { value: stationPressure(elevation), uncertainty: Math.hypot(WEATHER_SPREAD_OF_PRESSURE, perMeter * uncertainty) };
}

/** Pressure levels of an apparatus that do not stay as they are when the room's pressure changes, by name. */
export type Level = 'lowest' | 'highest' | 'gaugeLowest' | 'gaugeHighest' | 'pumpHighest' | 'ultimatePressure';

/** The air of a room. */
export interface Room {
  readonly title: string;
  readonly elevation?: number;
  readonly temperature: Measured;
  /** Absolute. */
  readonly pressure: Measured;
  readonly humidity: Measured;
}

/**
 * The conditions in another room.
 * @param moving levels whose maker gave them the other way than the conditions keep them: a rating in absolute pressure, a pump's end against the room
 */
export function inRoom(conditions: Conditions, { title, elevation, temperature, pressure, humidity }: Room, moving: readonly Level[]): Conditions {
  const { inputs, apparatus } = conditions;
  return {
    ...conditions,
    roomTitle: title,
    elevation,
    inputs: { ...inputs, roomTemperature: temperature, roomPressure: pressure, roomHumidity: humidity },
    apparatus: moving.length === 0 ? apparatus : withLevelsMoved(apparatus, pressure.value - inputs.roomPressure.value, moving),
  };
}

function withLevelsMoved(apparatus: Apparatus, by: number, moving: readonly Level[]): Apparatus {
  const { vessel, gauge, source } = apparatus;
  const moved = (level: Level, value: number): number => (moving.includes(level) ? value + (level === 'ultimatePressure' ? by : -by) : value);
  return {
    ...apparatus,
    vessel: { ...vessel, lowestGauge: moved('lowest', vessel.lowestGauge), highestGauge: moved('highest', vessel.highestGauge) },
    gauge: { ...gauge, lowestGauge: moved('gaugeLowest', gauge.lowestGauge), highestGauge: moved('gaugeHighest', gauge.highestGauge) },
    source: 'ultimatePressure' in source
      ? { ...source, ultimatePressure: moved('ultimatePressure', source.ultimatePressure) }
      : source.kind === 'pressurise' ? { ...source, highestGauge: moved('pumpHighest', source.highestGauge) } : source,
  };
}
