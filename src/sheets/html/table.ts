/** A worked-example table as HTML, with the figure drawn from its rows. Pure: drawn at build and again in the browser. */
import { renderCurve } from '../../figures/draw-curve.ts';
import { computeTable, printTable, stateOf, type Conditions, type Curve, type Style, type Table, type TableKind, type TableRequest } from '../../tables/index.ts';
import { KIND_TITLES, LESSON_TEXTS } from '../../texts/index.ts';
import { writeTableRequest } from './ask.ts';
import { computedFor } from '../conditions-text.ts';
import { renderRows } from './rows.ts';
import { html, NOTHING, raw, type Raw } from './text.ts';

export interface TableFigure {
  readonly id: string;
  readonly kind: TableKind;
  readonly request: TableRequest;
  readonly caption?: string;
}

/** What a page is computed for, and how it is written. */
export interface Setting {
  readonly conditions: Conditions;
  readonly style: Style;
}

/** `<figure class="worked">`: title, for which room, the table. */
export function renderTable({ id, kind, request, caption }: TableFigure, { conditions, style }: Setting): Raw {
  const title = caption ?? KIND_TITLES[style.language][kind.kind];
  const table = computeTable(kind, conditions, request);
  return html`<figure class="worked" id="${id}" data-table="${writeTableRequest(kind, request)}"><figcaption><span class="title">${title}</span> <span class="for">${computedFor(conditions, style, request.at)}</span></figcaption><div class="scroll" tabindex="0" role="group" aria-label="${title}">${renderRows(printTable(table, style), title)}</div></figure>`;
}

/**
 * The figure of a table kind, from all of its columns; nothing where the kind has none.
 * @param below what else stands in it
 */
export function renderCurveOf({ id, kind, request, caption }: TableFigure, { conditions, style }: Setting, below = NOTHING): Raw {
  const curve = curveOf(kind, request, conditions, id, style);
  if (curve === undefined) return NOTHING;
  return html`<figure class="worked" id="${id}" data-curve="${writeTableRequest(kind, request)}"><figcaption><span class="title">${caption ?? curve.title}</span> <span class="for">${computedFor(conditions, style, request.at)}</span></figcaption><div class="curve">${raw(renderCurve(curve, style))}</div>${below}</figure>`;
}

/** The rows behind a figure, for who would rather read them. It is drawn again like any table. */
export function renderRowsBehind({ kind, request, caption }: Pick<TableFigure, 'kind' | 'request' | 'caption'>, { conditions, style }: Setting): Raw {
  const all = { ...request, columns: undefined };
  const name = LESSON_TEXTS[style.language].asTable(caption ?? KIND_TITLES[style.language][kind.kind]);
  return html`<details class="as-table" data-table="${writeTableRequest(kind, all)}"><summary>${name}</summary><div class="scroll" tabindex="0" role="group" aria-label="${name}">${renderRows(printTable(computeTable(kind, conditions, all), style), name)}</div></details>`;
}

/** What the figure of a table shows. */
export const curveOf = (kind: TableKind, request: TableRequest, conditions: Conditions, id: string, style: Style): Curve | undefined =>
  kind.curve?.(computeTable(kind, conditions, { ...request, columns: undefined }).rows, id, style, stateOf(conditions), request.at);

/** A table's rows as tables.json gives them: SI at full precision. */
export function dataOf(id: string, sheet: string, table: Table): object {
  return {
    id,
    kind: table.kind.kind,
    sheet,
    columns: table.columns.map(({ key, dimension }) => ({ key, unit: SI_UNITS[dimension] })),
    rows: table.rows,
  };
}

const SI_UNITS: Record<PrintedDimension, string> = {
  temperature: 'K', temperatureDifference: 'K', pressure: 'Pa', height: 'm', length: 'm', diameter: 'm', volume: 'm3', waterContent: 'kg/m3', ratio: '1',
  fraction: '1', time: 's', clock: 's', numberDensity: '1/m3', speed: 'm/s', angle: 'rad', force: 'N', stress: 'Pa', energy: 'J', count: '1',
};
type PrintedDimension = Table['columns'][number]['dimension'];
