/** What a quantity or a table may be asked at, in place of the kit's own conditions. */
import type { DimensionName } from './display.ts';

/** SI. */
export interface Parameters {
  /** Fall of pressure below the start, Pa. */
  readonly drop?: number;
  /** Height above the room, m. */
  readonly height?: number;
  /** A gauge's reading against the room, Pa. */
  readonly reading?: number;
  /** Relative humidity in the vessel in place of the kit's, fraction. */
  readonly humidity?: number;
  /** Temperature of room and vessel in place of the kit's, K. */
  readonly temperature?: number;
  /** Elevation of a room in the standard atmosphere in place of the kit's, m. */
  readonly elevation?: number;
  /** Strokes of the pump since the start. */
  readonly stroke?: number;
  /** Particles per m³ in place of the kit's. */
  readonly number?: number;
  /** Dry diameter of a particle, m. */
  readonly diameter?: number;
  /** Time since the particles were let in, s. */
  readonly wait?: number;
  /** Time from one cloud to the next while waiting, s; no clouds without it. */
  readonly cloudEvery?: number;
  /** Which air rises: that of the vessel or that of the room. */
  readonly air?: 'vessel' | 'room';
  /** Which of the kit's particles. */
  readonly particles?: string;
}

export type ParameterName = keyof Parameters;
/** Parameters that are words. */
export type WordParameter = 'air' | 'particles';
export type NumberParameter = Exclude<ParameterName, WordParameter>;

/** What each parameter is: its dimension for reading and printing, its range in SI. */
export const PARAMETERS: Record<NumberParameter, { dimension: DimensionName; low: number; high: number; meaning: string }> = {
  drop: { dimension: 'pressure', low: 0, high: 4e5, meaning: 'fall of pressure below the start' },
  height: { dimension: 'height', low: 0, high: 8000, meaning: 'height above the room' },
  reading: { dimension: 'pressure', low: -1e5, high: 4e5, meaning: 'gauge reading against the room' },
  humidity: { dimension: 'fraction', low: 0.01, high: 1, meaning: 'relative humidity in the vessel' },
  temperature: { dimension: 'temperature', low: 243.15, high: 328.15, meaning: 'temperature of room and vessel' },
  elevation: { dimension: 'height', low: -430, high: 5000, meaning: 'elevation of the room' },
  stroke: { dimension: 'count', low: 0, high: 200, meaning: 'strokes of the pump' },
  number: { dimension: 'numberDensity', low: 1e6, high: 1e13, meaning: 'particles in the vessel' },
  diameter: { dimension: 'diameter', low: 1e-8, high: 1e-5, meaning: 'dry diameter of a particle' },
  wait: { dimension: 'time', low: 0, high: 604_800, meaning: 'time since the particles were let in' },
  cloudEvery: { dimension: 'time', low: 60, high: 28_800, meaning: 'time from one cloud to the next' },
};
