/** What a table kind is: rows over one parameter, columns of quantities. A new kind is one file in kinds/ and one line in its list. */
import type { CellWord, FormulaWords, KindName, LabelName, MarkName, ReferenceName } from '../texts/index.ts';
import type { InputName, State } from './conditions.ts';
import type { Curve } from './curve.ts';
import { UNITS_OF, type DimensionName, type Style, type UnitName } from './display.ts';
import type { NumberParameter, ParameterName, Parameters } from './parameters.ts';
import { QUANTITIES, valueIn, type QuantityName } from './quantities.ts';
import type { QuantityKind } from './quantity-kind.ts';
import { startsAbove } from './release.ts';
import type { Cell } from './spread.ts';

export interface Column {
  /** In tables.json; SI. */
  readonly key: string;
  readonly label: LabelName;
  readonly dimension: DimensionName;
  /** Main unit and the second one printed small; the dimension's own where absent. */
  readonly units: readonly [UnitName, UnitName?];
  /** Further units, each in a printed column of its own. */
  readonly beside?: readonly UnitName[];
  /** Chosen by the author, not computed: printed as exact. */
  readonly given?: boolean;
  /** What the model itself may be wrong by beside the inputs: standard uncertainty, SI. */
  readonly model?: (value: number, row: readonly Cell[], firstRow: readonly Cell[]) => number;
  /** Its cells span decades: each is rounded on its own. */
  readonly spans?: boolean;
  /** How a yes and a no are printed. */
  readonly words?: readonly [yes: CellWord, no: CellWord];
}

/** One row asked for: where it stands, and a word if it is a marked one. */
export interface RowAt {
  readonly at: number;
  readonly mark?: MarkName;
  /** Standard uncertainty of where a marked row stands, SI. */
  readonly uncertainty?: number;
}

export interface TableKind {
  readonly kind: KindName;
  /** The parameter that differs from row to row, and the attribute that lists its values. */
  readonly over: NumberParameter;
  readonly listAttribute: string;
  /** Further parameters that the table can be given. */
  readonly takes: readonly ParameterName[];
  readonly columns: readonly Column[];
  /** Rows where the author lists none; SI. */
  readonly defaultList: (state: State, at: Parameters) => readonly number[];
  /** Rows that stand there whatever the list: the cloud base, the planned drop. */
  readonly marked?: (state: State, at: Parameters) => readonly RowAt[];
  /** The cells of all rows, SI, one per column. */
  readonly rows: (state: State, at: Parameters, list: readonly number[]) => readonly (readonly Cell[])[];
  /** Inputs whose uncertainty it is worth to follow through a simulation; all where absent. */
  readonly varies?: readonly InputName[];
  /** The figure drawn from the same rows, and from what else the state tells; nothing where none of them has an answer. */
  readonly curve?: (rows: readonly (readonly Cell[])[], id: string, style: Style, state: State, at: Parameters) => Curve | undefined;
  /** How it is computed: a formula in TeX. What a reader should know beside it is told by the texts. */
  readonly formula: (words: FormulaWords) => string;
  /** Where formulas and constants come from. */
  readonly sources: readonly ReferenceName[];
}

/** A column that shows a quantity. */
export function columnOf(key: string, quantity: QuantityName, options: Partial<Column> = {}): Column & { readonly quantity: QuantityName } {
  const { dimension, model }: QuantityKind = QUANTITIES[quantity];
  return { key, label: quantity, dimension, units: UNITS_OF[dimension], model, ...options, quantity };
}

/** A column of yes or no. */
export const columnOfWords = (key: string, label: LabelName, words: readonly [yes: CellWord, no: CellWord]): Column =>
  ({ key, label, dimension: 'count', units: UNITS_OF.count, words });

/** Rows that show one quantity per column, asked at one value of the row's parameter. */
export function rowsOfQuantities(
  over: TableKind['over'],
  columns: readonly { readonly quantity: QuantityName }[],
): TableKind['rows'] {
  return (state, at, list) => list.map((value) => columns.map(({ quantity }) => valueIn(state, quantity, { ...at, [over]: value })));
}

/** Rises from 0 to `end` in about `count` steps of 1, 2, 2.5 or 5 times a power of ten; `end` closes it. */
export function roundSteps(end: number, count: number): number[] {
  const rough = end / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 2.5, 5, 10].map((factor) => factor * power).find((candidate) => candidate >= rough * (1 - 1e-9))!;
  const steps = Array.from({ length: Math.floor(end / step + 1e-9) + 1 }, (_, i) => Number((i * step).toPrecision(12)));
  return steps.at(-1)! < end * (1 - 1e-9) ? [...steps, end] : steps;
}

/** Gauge readings from the room's pressure to the planned drop, on its side. */
export function gaugeSteps({ apparatus, plannedDrop }: State): number[] {
  const sign = startsAbove(apparatus) ? 1 : -1;
  return roundSteps(plannedDrop, 4).map((step) => (step === 0 ? 0 : sign * step));
}

/** A column of rows, in the unit that an axis has. */
export interface Along {
  readonly index: number;
  readonly fromSi: (value: number) => number;
}

/** Points of a curve: two columns in their printed units, rows with a null left out. */
export function pointsOf(rows: readonly (readonly Cell[])[], x: Along, y: Along): [number, number][] {
  return rows.flatMap((row): [number, number][] => {
    const [a, b] = [row[x.index], row[y.index]];
    return typeof a === 'number' && typeof b === 'number' ? [[x.fromSi(a), y.fromSi(b)]] : [];
  });
}

/** A curve without the series that no row has an answer for; undefined where none is left. */
export function withPoints(curve: Curve): Curve | undefined {
  const series = curve.series.filter(({ points }) => points.length > 0);
  return series.length === 0 ? undefined : { ...curve, series };
}
