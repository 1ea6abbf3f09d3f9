/** A table kind at given conditions: rows in SI with uncertainties, and the same as formatted cells. */
import { noting } from './asked.ts';
import { stateOf, type Conditions, type State } from './conditions.ts';
import { CELLS, LABELS, MARKS, type MarkName } from '../texts/index.ts';
import { decimalsIn, DISPLAY_UNITS, formatIn, inOrder, type Style, type UnitName } from './display.ts';
import type { Parameters } from './parameters.ts';
import { spreadOver, uncertaintiesOf, type Cell, type Spread } from './spread.ts';
import type { Column, RowAt, TableKind } from './table-kind.ts';

/** What an author asked for: parameters, rows and columns; absent parts by default. SI. */
export interface TableRequest {
  readonly at: Parameters;
  readonly list?: readonly number[];
  readonly columns?: readonly string[];
}

export interface Table {
  readonly kind: TableKind;
  readonly columns: readonly Column[];
  readonly rowsAt: readonly RowAt[];
  /** SI, full precision. */
  readonly rows: readonly (readonly Cell[])[];
  /** Standard uncertainties, SI. */
  readonly uncertainties: readonly (readonly number[])[];
}

const known = new WeakMap<Conditions, Map<string, Table>>();

/**
 * A table. Pure: the same conditions and request give the same digits everywhere; since several
 * pages show one table, in part or with its figure, what is computed for some conditions is kept as long as they are.
 */
export function computeTable(kind: TableKind, conditions: Conditions, { columns, ...request }: TableRequest): Table {
  const ofConditions = known.get(conditions) ?? new Map<string, Table>();
  known.set(conditions, ofConditions);
  const key = JSON.stringify([kind.kind, request]);
  const table = ofConditions.get(key) ?? compute(kind, conditions, request);
  ofConditions.set(key, table);
  return columns === undefined ? table : shownOf(table, columns);
}

/** A table with some of its columns. */
function shownOf(table: Table, names: readonly string[]): Table {
  const shown = table.columns.flatMap(({ key }, index) => (names.includes(key) ? [index] : []));
  const pick = <T>(cells: readonly T[]): T[] => shown.map((index) => cells[index]!);
  return { ...table, columns: pick(table.columns), rows: table.rows.map(pick), uncertainties: table.uncertainties.map(pick) };
}

function compute(kind: TableKind, conditions: Conditions, request: TableRequest): Table {
  const rowsAt = rowsOf(kind, conditions, request);
  const { rows, uncertainties } = spreadOfRows(kind, conditions, request.at, rowsAt);
  const certain = uncertainties.map((row, r) =>
    row.map((fromInputs, c) => {
      const { given, model } = kind.columns[c]!;
      if (given) return rowsAt[r]!.uncertainty ?? 0;
      const cell = rows[r]![c];
      return typeof cell === 'number' && model !== undefined ? Math.hypot(fromInputs, model(cell, rows[r]!, rows[0]!)) : fromInputs;
    }),
  );
  return { kind, columns: kind.columns, rowsAt, rows, uncertainties: certain };
}

/** All rows at the estimates. How uncertain they are is found at a few of them, since it changes little from row to row and costs a table for each input. */
function spreadOfRows(kind: TableKind, conditions: Conditions, at: Parameters, rowsAt: readonly RowAt[]): Spread {
  const list = rowsAt.map((row) => row.at);
  const probes = probesAmong(rowsAt);
  if (probes.length === list.length) return spreadOver(conditions, (state) => kind.rows(state, at, list), kind.varies);
  const { result: rows, asked } = noting(() => kind.rows(stateOf(conditions), at, list));
  const probed = probes.map((row) => rows[row]!);
  const uncertainties = uncertaintiesOf(probed, asked, conditions, (state) => kind.rows(state, at, probes.map((row) => list[row]!)), kind.varies, 'one');
  const found = kind.columns.map((_, c) => probes.flatMap((row, probe): Known[] => (typeof probed[probe]![c] === 'number' ? [{ row, value: uncertainties[probe]![c]! }] : [])));
  return { rows, uncertainties: rows.map((cells, row) => cells.map((_, c) => between(found[c]!, row))) };
}

/** The first, the middle and the last row, and the marked ones, which are rounded on their own. */
function probesAmong(rowsAt: readonly RowAt[]): readonly number[] {
  const last = rowsAt.length - 1;
  return rowsAt.flatMap(({ mark }, row) => (mark !== undefined || row === 0 || row === Math.floor(last / 2) || row === last ? [row] : []));
}

/** A number that is known of a row. */
interface Known {
  readonly row: number;
  readonly value: number;
}

/** A number of a row, on the straight line between those known of the rows around it; of the nearest where one side has none. */
function between(known: readonly Known[], row: number): number {
  const below = known.findLast((one) => one.row <= row);
  const above = known.find((one) => one.row >= row);
  if (below === undefined || above === undefined || above.row === below.row) return (below ?? above)?.value ?? 0;
  return below.value + ((above.value - below.value) * (row - below.row)) / (above.row - below.row);
}

/** The listed rows with the marked ones in their place, in the order of the list. */
function rowsOf(kind: TableKind, conditions: Conditions, { at, list }: TableRequest): readonly RowAt[] {
  const state = stateOf(conditions);
  const listed = (list ?? kind.defaultList(state, at)).map((value): RowAt => ({ at: value }));
  const marked = markedRows(kind, state, at);
  if (marked.length === 0) return listed;
  const { uncertainties } = spreadOver(conditions, (moved) => [markedRows(kind, moved, at).map((row) => row.at)], kind.varies);
  const { model } = kind.columns[0]!;
  const placed = marked.map((row, i): RowAt => ({ ...row, uncertainty: Math.hypot(uncertainties[0]![i]!, model?.(row.at, [], []) ?? 0) }));
  const descending = listed.length > 1 && listed[0]!.at > listed.at(-1)!.at;
  const others = listed.filter(({ at: value }) => !placed.some((row) => row.at === value));
  return [...others, ...placed].sort((a, b) => (descending ? b.at - a.at : a.at - b.at));
}

function markedRows(kind: TableKind, state: State, at: Parameters): readonly RowAt[] {
  try {
    return kind.marked?.(state, at) ?? [];
  } catch (error) {
    if (error instanceof RangeError) return []; // so dry that there is no cloud base to mark
    throw error;
  }
}

/** A cell as printed: main number, and the same in the second unit. */
export interface PrintedCell {
  readonly text: string;
  readonly also?: string;
}

/** A printed column: several where a column is shown in several units side by side. */
export interface PrintedColumn {
  readonly label: string;
  readonly unit: string;
  readonly alsoUnit?: string;
}

export interface PrintedTable {
  readonly columns: readonly PrintedColumn[];
  readonly rows: readonly { readonly cells: readonly PrintedCell[]; readonly mark?: string }[];
}

const NOT_APPLICABLE = '–';
const wordsOf = (mark: MarkName | undefined, language: Style['language']): string | undefined => mark && MARKS[language][mark];

/** Which columns a reader is shown: a column with units beside it is several. */
export function printedColumns({ columns }: Table, style: Style): { readonly label: string; readonly index: number; readonly units: readonly [UnitName, UnitName?] }[] {
  return columns.flatMap((column, index) => {
    const label = LABELS[style.language][column.label];
    const [main, also] = inOrder(column.units, style);
    const units: readonly (readonly [UnitName, UnitName?])[] = [also === undefined ? [main] : [main, also], ...(column.beside ?? []).map((unit) => [unit] as const)];
    return units.map((shown) => ({ label, index, units: shown }));
  });
}

/** The digits of a table: no more than the uncertainty of its conditions supports, the same number all down a column. */
export function printTable(table: Table, style: Style): PrintedTable {
  const { language } = style;
  const plan = printedColumns(table, style).map(({ label, index, units: [main, also] }) => {
    const printed = (unit: UnitName) => ({ unit, decimals: columnDecimals(table, index, unit, unit === table.columns[index]!.units[0]) });
    return { label, index, main: printed(main), also: also === undefined ? undefined : printed(also) };
  });
  return {
    columns: plan.map(({ label, main, also }) => ({ label, unit: DISPLAY_UNITS[main.unit].symbol, alsoUnit: also && DISPLAY_UNITS[also.unit].symbol })),
    rows: table.rows.map((row, r) => ({
      mark: wordsOf(table.rowsAt[r]!.mark, language),
      cells: plan.map(({ index, main, also }) => {
        const value = row[index] ?? null;
        if (value === null) return { text: NOT_APPLICABLE };
        const { given, spans, words } = table.columns[index]!;
        if (typeof value === 'boolean') return { text: CELLS[language][value ? words![0] : words![1]] };
        // A marked row stands at a computed place among chosen ones, and is rounded on its own.
        const own = spans || (given && table.rowsAt[r]!.uncertainty !== undefined);
        const print = ({ unit, decimals }: { unit: UnitName; decimals: number }): string =>
          formatIn(unit, value, own ? decimalsIn(unit, value, table.uncertainties[r]![index]!) : decimals, style);
        return { text: print(main), also: also && print(also) };
      }),
    })),
  };
}

/**
 * Decimals of a column: as many as its least certain cell supports. Where all are exact, as many as
 * any of them needs in the unit it was chosen in, and three digits of the largest in any other.
 */
function columnDecimals(table: Table, index: number, unit: UnitName, chosen: boolean): number {
  const cells = table.rows.flatMap((row, r) => {
    const value = row[index];
    if (typeof value !== 'number' || table.rowsAt[r]!.mark !== undefined) return [];
    return [{ value, uncertainty: table.uncertainties[r]![index]! }];
  });
  const uncertain = cells.filter(({ uncertainty }) => uncertainty > 0);
  const counted = uncertain.length > 0 ? uncertain : cells.filter(({ value }) => value !== 0);
  const decimals = counted.map(({ value, uncertainty }) => decimalsIn(unit, value, uncertainty));
  if (decimals.length === 0) return 0;
  return uncertain.length > 0 || !chosen ? Math.min(...decimals) : Math.max(...decimals);
}
