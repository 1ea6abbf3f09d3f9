/** The text of a table of readings as a reader enters it: its columns, a row more, and what a spreadsheet may be given. */
import { cellsOf, isFormula, separatorOf, type Separator } from '../authoring/readings-form.ts';
import { STYLES } from '../tables/display.ts';
import { READINGS_FILE_TEXTS, type Language } from '../texts/index.ts';

/** How a new table is written in the language of a page and the units of a reader. */
export interface TableFormat {
  readonly header: string;
  readonly separator: Separator;
}

/** A spreadsheet in a language of decimal commas parts its columns by semicolons. @param customary inches of mercury and degrees Fahrenheit */
export function tableFormat(language: Language, customary = false): TableFormat {
  const { time, gauge, thermometer } = READINGS_FILE_TEXTS[language].columns;
  const [pressure, temperature] = customary ? ['inHg', '°F'] : ['kPa', '°C'];
  const separator = STYLES[language].decimal === ',' ? ';' : ',';
  return { separator, header: [`${time} (s)`, `${gauge} (${pressure})`, `${thermometer} (${temperature})`].join(separator) };
}

const linesOf = (text: string): string[] => text.trimEnd().split(/\r\n|\n|\r/);
const isWritten = (line: string): boolean => line.trim() !== '';
const firstOf = (text: string, format: TableFormat): string => linesOf(text).find(isWritten) ?? format.header;

/** The columns as the first line names them; those that a table needs where there is no line yet. */
export function columnsOf(text: string, format: TableFormat): string[] {
  const first = firstOf(text, format);
  return cellsOf(first, 1, separatorOf(first)).map((cell) => cell.text);
}

/** The text with one row more; with a header where it had none. */
export function withRow(text: string, cells: readonly string[], format: TableFormat): string {
  const first = firstOf(text, format);
  const separator = separatorOf(first);
  const row = cells.map((cell) => cell.trim()).map((cell) => (cell.includes(separator) ? `"${cell}"` : cell));
  return `${isWritten(text) ? text.trimEnd() : first}\n${row.join(separator)}\n`;
}

/**
 * The text as a file that a spreadsheet may open: lines end as RFC 4180 says, and a cell that begins like a formula
 * and is no number becomes text by an apostrophe before it. Columns parted by tabs are parted as their numbers allow.
 */
export function asFile(text: string, format: TableFormat): string {
  const separator = separatorOf(firstOf(text, format));
  const parted = separator !== '\t' ? separator : text.includes(',') ? ';' : ',';
  return linesOf(text).map((line) => `${cellsOf(line, 1, separator).map(({ text: cell, written }) => (isFormula(cell, true) ? `"'${cell.replaceAll('"', '""')}"` : written)).join(parted)}\r\n`).join('');
}
