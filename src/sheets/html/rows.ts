/** Printed rows as HTML, whatever they were computed by. */
import type { PrintedCell, PrintedColumn, PrintedTable } from '../../tables/table.ts';
import { html, NOTHING, raw, type Raw } from './text.ts';

/** `<table>`: heads with units, rows, the marked ones named. */
export function renderRows({ columns, rows }: PrintedTable, name: string): Raw {
  const body = rows.map(({ cells, mark }) => {
    const [first, ...rest] = cells.map(renderCell);
    const label = mark === undefined ? NOTHING : html`<span class="mark-word"> ${mark}</span>`;
    return html`<tr${raw(mark === undefined ? '' : ' class="mark"')}><th scope="row">${first}${label}</th>${rest.map((cell) => html`<td>${cell}</td>`)}</tr>`;
  });
  return html`<table><caption class="unseen">${name}</caption><thead><tr>${columns.map(renderHead)}</tr></thead><tbody>${body}</tbody></table>`;
}

const renderHead = ({ label, unit, alsoUnit }: PrintedColumn): Raw =>
  html`<th scope="col"><span class="label">${label}</span>${unit === '' ? NOTHING : html` <span class="unit">${unit}${alsoUnit === undefined ? NOTHING : html` <span class="also">${alsoUnit}</span>`}</span>`}</th>`;

const renderCell = ({ text, also }: PrintedCell): Raw => html`${text}${also === undefined ? NOTHING : html`<span class="also">${also}</span>`}`;
