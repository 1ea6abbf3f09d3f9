/** The list of table kinds: one line each. */
import type { TableKind } from '../table-kind.ts';
import { droplets } from './droplets.ts';
import { elevations } from './elevations.ts';
import { gaugeReadings } from './gauge-readings.ts';
import { noParticleLimitTable } from './no-particle-limit.ts';
import { particleLifetime } from './particle-lifetime.ts';
import { particleSizes } from './particle-sizes.ts';
import { pressureSteps } from './pressure-steps.ts';
import { risingParcelTable } from './rising-parcel.ts';
import { startingHumidity } from './starting-humidity.ts';
import { strokes } from './strokes.ts';
import { wallForces } from './wall-forces.ts';

export const TABLE_KINDS: readonly TableKind[] = [
  pressureSteps,
  strokes,
  elevations,
  startingHumidity,
  particleSizes,
  droplets,
  particleLifetime,
  risingParcelTable,
  noParticleLimitTable,
  gaugeReadings,
  wallForces,
];

export const TABLE_KIND_NAMES: readonly string[] = TABLE_KINDS.map(({ kind }) => kind);

/** The kind of this name, or undefined. */
export const tableKind = (name: string): TableKind | undefined => TABLE_KINDS.find(({ kind }) => kind === name);
