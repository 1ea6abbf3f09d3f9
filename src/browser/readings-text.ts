/** The text of a table of readings as a reader enters it: its columns, a row more, and what a spreadsheet may be given. */
import { STYLES } from '../tables/display.ts';
import { READINGS_FILE_TEXTS, type Language } from '../texts/index.ts';

/** How a table is written in the language of a page. */
export interface TableFormat {
  readonly header: string;
  readonly separator: ',' | ';';
}

/** A spreadsheet in a language of decimal commas parts its columns by semicolons. */
export function tableFormat(language: Language): TableFormat {
  const { time, gauge, thermometer } = READINGS_FILE_TEXTS[language].columns;
  const separator = STYLES[language].decimal === ',' ? ';' : ',';
  return { separator, header: [`${time} (s)`, `${gauge} (kPa)`, `${thermometer} (°C)`].join(separator) };
}

/** The sign that parts the cells of a text: the format's own, or a comma where its first line has none. */
const parting = (text: string, { separator }: TableFormat): string => (/^[^\n\r]*;/.test(text.trimStart()) || text.trim() === '' ? separator : ',');

const PLAIN_NUMBER = /^[+\-−]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/u;
/** Spreadsheets run what begins like this. */
const FORMULA = /^[=+\-@\t\r|%]/;

const unquoted = (cell: string): string => cell.trim().replace(/^"(.*)"$/, '$1');

/** The columns as the first line names them; those that a table needs where there is no line yet. */
export function columnsOf(text: string, format: TableFormat): string[] {
  const [first = ''] = text.trimStart().split(/\r\n|\n|\r/);
  return (first.trim() === '' ? format.header : first).split(parting(text, format)).map(unquoted);
}

/** The text with one row more; with a header where it had none. */
export function withRow(text: string, cells: readonly string[], format: TableFormat): string {
  const before = text.trim() === '' ? format.header : text.replace(/\s+$/, '');
  return `${before}\n${cells.map((cell) => cell.trim()).join(parting(text, format))}\n`;
}

/**
 * The text as a file that a spreadsheet may open: lines end as RFC 4180 says, and a cell that begins like a formula
 * and is no number becomes text by an apostrophe before it.
 */
export function asFile(text: string, format: TableFormat): string {
  const separator = parting(text, format);
  const lines = text.replace(/\s+$/, '').split(/\r\n|\n|\r/);
  return `${lines.map((line) => line.split(separator).map(guarded).join(separator)).join('\r\n')}\r\n`;
}

const guarded = (cell: string): string => {
  const content = unquoted(cell);
  return FORMULA.test(content) && !PLAIN_NUMBER.test(content) ? `"'${content.replaceAll('"', '""')}"` : cell;
};
