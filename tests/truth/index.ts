/**
 * The published values the physics is held to, module by module. The tests run every row, and the
 * site shows them: nothing here needs a file system or a test runner.
 * A module joins with its two imports and its line in `modules`.
 */
import type { Evaluator, TruthRow } from './row.ts';

import aerosol from './aerosol.json' with { type: 'json' };
import { evaluators as aerosolEvaluators } from './aerosol.ts';
import atmosphere from './atmosphere.json' with { type: 'json' };
import { evaluators as atmosphereEvaluators } from './atmosphere.ts';
import droplets from './droplets.json' with { type: 'json' };
import { evaluators as dropletsEvaluators } from './droplets.ts';
import expansion from './expansion.json' with { type: 'json' };
import { evaluators as expansionEvaluators } from './expansion.ts';
import fit from './fit.json' with { type: 'json' };
import { evaluators as fitEvaluators } from './fit.ts';
import moistAir from './moist-air.json' with { type: 'json' };
import { evaluators as moistAirEvaluators } from './moist-air.ts';
import nucleation from './nucleation.json' with { type: 'json' };
import { evaluators as nucleationEvaluators } from './nucleation.ts';
import optics from './optics.json' with { type: 'json' };
import { evaluators as opticsEvaluators } from './optics.ts';
import parcel from './parcel.json' with { type: 'json' };
import { evaluators as parcelEvaluators } from './parcel.ts';
import saturation from './saturation.json' with { type: 'json' };
import { evaluators as saturationEvaluators } from './saturation.ts';
import uncertainty from './uncertainty.json' with { type: 'json' };
import { evaluators as uncertaintyEvaluators } from './uncertainty.ts';
import units from './units.json' with { type: 'json' };
import { evaluators as unitsEvaluators } from './units.ts';
import vessel from './vessel.json' with { type: 'json' };
import { evaluators as vesselEvaluators } from './vessel.ts';
import walls from './walls.json' with { type: 'json' };
import { evaluators as wallsEvaluators } from './walls.ts';

export type { Evaluator, Inputs, Tolerance, TruthRow } from './row.ts';

/** The published rows of one module of the library and how to compute them. */
export interface TruthModule {
  readonly module: string;
  readonly rows: readonly TruthRow[];
  readonly evaluators: Readonly<Record<string, Evaluator>>;
}

/** A row with the name of its module. */
export interface PublishedCheck extends TruthRow {
  readonly module: string;
}

/** How a row came out. */
export interface CheckResult {
  readonly computed: number;
  /** Computed less published: as a fraction of the published value where the tolerance is relative, else in the row's unit */
  readonly deviation: number;
  /** Of the tolerance that is used up: at most 1 if the row holds */
  readonly share: number;
}

/** How a module's rows came out together. */
export interface ModuleSummary {
  readonly module: string;
  readonly rows: number;
  readonly worstShare: number;
  readonly worstId: string;
  /** Number of distinct sources */
  readonly sources: number;
}

/** All modules, in the order in which they build on each other. */
export const modules: readonly TruthModule[] = [
  truthModule(units, unitsEvaluators),
  truthModule(saturation, saturationEvaluators),
  truthModule(moistAir, moistAirEvaluators),
  truthModule(expansion, expansionEvaluators),
  truthModule(atmosphere, atmosphereEvaluators),
  truthModule(parcel, parcelEvaluators),
  truthModule(nucleation, nucleationEvaluators),
  truthModule(uncertainty, uncertaintyEvaluators),
  truthModule(walls, wallsEvaluators),
  truthModule(aerosol, aerosolEvaluators),
  truthModule(optics, opticsEvaluators),
  truthModule(droplets, dropletsEvaluators),
  truthModule(vessel, vesselEvaluators),
  truthModule(fit, fitEvaluators),
];

/** All rows of all modules. */
export const checks: readonly PublishedCheck[] = modules.flatMap(({ module, rows }) => rows.map((row) => ({ module, ...row })));

/** Some rows take a second to compute: each does so once. */
const results = new WeakMap<PublishedCheck, CheckResult>();

/**
 * Computes a row and compares.
 * @throws RangeError if the row names no evaluator of its module
 */
export function checkRow(row: PublishedCheck): CheckResult {
  const evaluator = modules.find(({ module }) => module === row.module)?.evaluators[row.check];
  if (evaluator === undefined) throw new RangeError(`${row.module}/${row.id}: no evaluator is named ${row.check}`);
  const known = results.get(row);
  if (known !== undefined) return known;
  const result = compareRow(row, evaluator({ ...row.inputs }));
  results.set(row, result);
  return result;
}

/** One line for each module. */
export function summary(): ModuleSummary[] {
  return modules.map(({ module, rows }) => {
    const outcomes = checks.filter((row) => row.module === module).map((row) => ({ id: row.id, share: checkRow(row).share }));
    const worst = outcomes.reduce((most, result) => (result.share > most.share ? result : most), { id: '', share: -1 });
    return { module, rows: rows.length, worstShare: worst.share, worstId: worst.id, sources: new Set(rows.map(({ source }) => source)).size };
  });
}

/** Compares a computed value, in the row's unit, with a row. */
export function compareRow({ value, tolerance }: TruthRow, computed: number): CheckResult {
  const difference = computed - value;
  switch (tolerance.kind) {
    case 'rel':
      return { computed, deviation: difference / value, share: Math.abs(difference / value) / tolerance.value };
    case 'abs':
      return { computed, deviation: difference, share: Math.abs(difference) / tolerance.value };
    // Bounds are positive: the nearer to the bound, the more of it is used.
    case 'max':
      return { computed, deviation: difference, share: computed / value };
    case 'min':
      return { computed, deviation: difference, share: value / computed };
  }
}

function truthModule(file: { module: string; rows: readonly unknown[] }, evaluators: Record<string, Evaluator>): TruthModule {
  return { module: file.module, rows: file.rows as readonly TruthRow[], evaluators };
}
