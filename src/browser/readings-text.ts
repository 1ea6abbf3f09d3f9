/** The text of a table of readings as a reader enters it: its columns, a row more, and what a spreadsheet may be given. */

export const HEADER = 'time (s),gauge (kPa),thermometer (°C)';

const PLAIN_NUMBER = /^[+\-−]?(?:\d+(?:\.\d*)?|\.\d+)$/u;
/** Spreadsheets run what begins like this. */
const FORMULA = /^[=+\-@\t\r|%]/;

const unquoted = (cell: string): string => cell.trim().replace(/^"(.*)"$/, '$1');

/** The columns as the first line names them; those that a table needs where there is no line yet. */
export function columnsOf(text: string): string[] {
  const [first = ''] = text.trimStart().split(/\r\n|\n|\r/);
  return (first.trim() === '' ? HEADER : first).split(',').map(unquoted);
}

/** The text with one row more; with a header where it had none. */
export function withRow(text: string, cells: readonly string[]): string {
  const before = text.trim() === '' ? HEADER : text.replace(/\s+$/, '');
  return `${before}\n${cells.map((cell) => cell.trim()).join(',')}\n`;
}

/**
 * The text as a file that a spreadsheet may open: lines end as RFC 4180 says, and a cell that begins like a formula
 * and is no number becomes text by an apostrophe before it.
 */
export function asFile(text: string): string {
  const lines = text.replace(/\s+$/, '').split(/\r\n|\n|\r/);
  return `${lines.map((line) => line.split(',').map(guarded).join(',')).join('\r\n')}\r\n`;
}

const guarded = (cell: string): string => {
  const content = unquoted(cell);
  return FORMULA.test(content) && !PLAIN_NUMBER.test(content) ? `"'${content.replaceAll('"', '""')}"` : cell;
};
