/** The tables of a kit: as views for its numbers page, as tables.json for programs, as rows for spreadsheets. */
import { ENGINE_VERSION } from '../physics/index.ts';
import { computeTable, recordsOf, stateOf, tableKind, tableRequestOf, type Conditions, type Style, type Table, type TableKind } from '../tables/index.ts';
import { FORMULA_WORDS, KIND_TITLES, METHOD_TEXTS, REFERENCE_TEXTS } from '../texts/index.ts';
import type { KitView, TableView } from './book.ts';
import { rowsAskedBy } from './html/ask.ts';
import { dataOf, renderCurveOf, renderTable, type TableFigure } from './html/table.ts';
import { html } from './html/text.ts';
import { displayFormula } from './math.ts';
import type { Place, PlacedTable } from './kit-scene.ts';

/** A table with the sheet it stands on. */
export interface SheetTable extends PlacedTable {
  readonly sheet: string;
}

/** A figure has rows of its own only where no table has the same. */
export const withOwnRows = (tables: readonly SheetTable[]): readonly SheetTable[] => {
  const inTables = new Set(tables.flatMap(({ isCurve, attributes }) => (isCurve ? [] : [rowsAskedBy(attributes)])));
  return tables.filter(({ isCurve, attributes }) => !isCurve || !inTables.has(rowsAskedBy(attributes)));
};

/** Tables that differ only in where they stand are shown once. */
export function tableViews(place: Place, tables: readonly SheetTable[]): TableView[] {
  const seen = new Set<string>();
  const { language } = place.setting.style;
  return tables.flatMap((table) => {
    const kind = kindOf(table);
    const key = rowsAskedBy(table.attributes);
    if (seen.has(key)) return [];
    seen.add(key);
    const figure: TableFigure = { id: `table-${table.sheet}-${table.id}`, kind, request: { ...tableRequestOf(kind, table.attributes), columns: undefined }, caption: table.attributes['caption'] as string | undefined };
    return [{
      id: table.id,
      kind: kind.kind,
      title: figure.caption ?? KIND_TITLES[language][kind.kind],
      sheet: table.sheet,
      html: html`${renderTable(figure, place.setting)}${renderCurveOf({ ...figure, id: `${figure.id}-figure`, caption: undefined }, place.setting)}`.html,
      method: html`${displayFormula(place.math, kind.formula(FORMULA_WORDS[language]), language)}<p>${METHOD_TEXTS[language][kind.kind]}</p>`.html,
      sources: kind.sources.map((name) => html`${REFERENCE_TEXTS[language][name]}`.html),
    }];
  });
}

/** A table with all of its columns, whatever a sheet shows of it. */
export interface ComputedTable {
  readonly id: string;
  readonly sheet: string;
  readonly table: Table;
}

export const computedTables = (conditions: Conditions, tables: readonly SheetTable[]): ComputedTable[] =>
  tables.map((placed) => {
    const kind = kindOf(placed);
    return { id: `${placed.sheet}-${placed.id}`, sheet: placed.sheet, table: computeTable(kind, conditions, { ...tableRequestOf(kind, placed.attributes), columns: undefined }) };
  });

/** Every table of the kit for spreadsheets. */
export const tableRecords = (tables: readonly ComputedTable[], style: Style): KitView['records'] => tables.map(({ id, table }) => ({ id, ...recordsOf(table, style) }));

/** tables.json: every table of the kit in SI at full precision, with the conditions it was computed for. */
export function tablesJson(id: string, version: string, conditions: Conditions, tables: readonly ComputedTable[]): string {
  const state = stateOf(conditions);
  const data = {
    kit: id,
    edition: version,
    engine: ENGINE_VERSION,
    room: {
      title: conditions.roomTitle,
      elevation: conditions.elevation ?? null,
      pressure: state.roomPressure,
      temperature: state.roomTemperature,
      relativeHumidity: state.roomHumidity,
    },
    start: { pressure: state.startPressure, temperature: state.startTemperature, relativeHumidity: state.startHumidity },
    tables: tables.map(({ id: table, sheet, table: rows }) => dataOf(table, sheet, rows)),
  };
  return `${JSON.stringify(data, undefined, 1)}\n`;
}

function kindOf({ attributes }: PlacedTable): TableKind {
  const kind = tableKind(attributes['kind'] as string);
  if (kind === undefined) throw new Error(`there is no table kind ${String(attributes['kind'])}: lessons are checked when content is loaded`);
  return kind;
}
