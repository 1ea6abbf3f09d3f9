/** The rows of a table for a spreadsheet: the printed columns at full precision, each unit in a column of its own. */
import { CELLS, MARKS, TABLE_TEXTS } from '../texts/index.ts';
import { DISPLAY_UNITS, type Style, type UnitName } from './display.ts';
import { printedColumns, type Table } from './table.ts';

export interface Records {
  readonly head: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** A table's rows in the units of a style; marked rows say in a last column what they are. */
export function recordsOf(table: Table, style: Style): Records {
  const { language } = style;
  const columns = printedColumns(table, style).flatMap(({ label, index, units }) => units.flatMap((unit) => (unit === undefined ? [] : [{ label, index, unit }])));
  const marks = table.rowsAt.map(({ mark }) => (mark === undefined ? null : MARKS[language][mark]));
  const hasMarks = marks.some((mark) => mark !== null);
  return {
    head: [...columns.map(({ label, unit }) => headOf(label, DISPLAY_UNITS[unit].symbol)), ...(hasMarks ? [TABLE_TEXTS[language].mark] : [])],
    rows: table.rows.map((row, r) => [
      ...columns.map(({ index, unit }) => {
        const value = row[index] ?? null;
        if (typeof value !== 'boolean') return value === null ? null : inPlainUnit(value, unit);
        const [yes, no] = table.columns[index]!.words!;
        return CELLS[language][value ? yes : no];
      }),
      ...(hasMarks ? [marks[r]!] : []),
    ]),
  };
}

const headOf = (label: string, symbol: string): string => (symbol === '' ? label : `${label} (${symbol})`);

/** Digits that conversion leaves exact. */
const DIGITS = 12;

const inPlainUnit = (value: number, unit: UnitName): number => Number(DISPLAY_UNITS[unit].fromSi(value).toPrecision(DIGITS));
