/** A table whose numbers alone have changed: rewritten cell by cell, which is several times as fast as laying out another one. */
import type { PrintedCell, PrintedTable } from '../tables/table.ts';

/**
 * Rewrites the cells that differ.
 * @param table as `renderRows` of sheets/html/rows.ts draws one: a cell begins with a text that is the number alone
 * @returns whether that was enough; a table of other rows, columns or marks has to be drawn
 */
export function rewriteCells(table: HTMLTableElement, last: PrintedTable, printed: PrintedTable): boolean {
  if (shapeOf(last) !== shapeOf(printed)) return false;
  const rows = table.tBodies[0]?.rows;
  printed.rows.forEach(({ cells }, r) => {
    const before = last.rows[r]!.cells;
    cells.forEach((cell, c) => {
      if (cell.text !== before[c]!.text || cell.also !== before[c]!.also) rewrite(rows![r]!.cells[c]!, cell);
    });
  });
  return true;
}

function rewrite(place: HTMLTableCellElement, { text, also }: PrintedCell): void {
  place.firstChild!.nodeValue = text;
  if (also !== undefined) place.querySelector('.also')!.firstChild!.nodeValue = also;
}

/** Heads, marks, and which cells have a second unit. */
const shapeOf = ({ columns, rows }: PrintedTable): string =>
  JSON.stringify([columns, rows.map(({ cells, mark }) => [mark, cells.map(({ also }) => also === undefined)])]);
