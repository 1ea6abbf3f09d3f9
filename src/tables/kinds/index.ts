/** The list of table kinds: one line each. */
import type { TableKind } from '../table-kind.ts';
import { elevations } from './elevations.ts';
import { gaugeReadings } from './gauge-readings.ts';
import { pressureSteps } from './pressure-steps.ts';
import { risingParcelTable } from './rising-parcel.ts';
import { startingHumidity } from './starting-humidity.ts';

export const TABLE_KINDS: readonly TableKind[] = [pressureSteps, risingParcelTable, startingHumidity, elevations, gaugeReadings];

export const TABLE_KIND_NAMES: readonly string[] = TABLE_KINDS.map(({ kind }) => kind);

/** The kind of this name, or undefined. */
export const tableKind = (name: string): TableKind | undefined => TABLE_KINDS.find(({ kind }) => kind === name);
