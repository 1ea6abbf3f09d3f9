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
/** Those that are no words. */
export type NumberParameter = Exclude<ParameterName, 'air' | 'particles'>;

/** What each of them is measured in. */
export const PARAMETERS: Readonly<Record<NumberParameter, DimensionName>> = {
  drop: 'pressure',
  height: 'height',
  reading: 'pressure',
  humidity: 'fraction',
  temperature: 'temperature',
  elevation: 'height',
  stroke: 'count',
  number: 'numberDensity',
  diameter: 'diameter',
  wait: 'time',
  cloudEvery: 'time',
};
