/** How a table of readings is written: what parts its cells, what is a number in it and what a time. */
import type { Place } from './findings.ts';

/** A contributor's file parts columns by commas (RFC 4180); a table pasted from a spreadsheet by tabs, one of a language with decimal commas by semicolons. */
export type Separator = ',' | ';' | '\t';

export interface Cell {
  /** Outer spaces and quotation marks taken off */
  readonly text: string;
  readonly written: string;
  readonly place: Place;
  /** Of its column, from 1 */
  readonly number: number;
}

/** Spreadsheets run what begins like this. */
const FORMULA = /^[=+\-@\t\r|%]/;
const NUMBER = /^[+\-−]?(?:\d+(?:\.\d*)?|\.\d+)$/u;
/** 0:05, 12:30.5, 1:02:30 */
const CLOCK = /^(?:(\d+):)?(\d+):([0-5]?\d(?:[.,]\d+)?)$/;

/** What parts the cells of a reader's own table, by its first line. */
export const separatorOf = (first: string): Separator => (/[\t;]/.exec(first)?.[0] as Separator | undefined) ?? ',';

/**
 * The cells of one line; a separator between quotation marks parts nothing (RFC 4180, 2.6).
 * @param line without its end
 * @param at its number, from 1
 */
export function cellsOf(line: string, at: number, separator: Separator): Cell[] {
  const cells: Cell[] = [];
  let from = 0;
  let isQuoted = false;
  for (let end = 0; end <= line.length; end += 1) {
    if (line[end] === '"') isQuoted = !isQuoted;
    if (end < line.length && (isQuoted || line[end] !== separator)) continue;
    const written = line.slice(from, end);
    const text = written.replace(/^[ \u00a0]+|[ \u00a0]+$/g, '').replace(/^"(.*)"$/, '$1');
    cells.push({ text, written, number: cells.length + 1, place: { line: at, column: from + 1 + /^ */.exec(written)![0].length } });
    from = end + 1;
  }
  return cells;
}

/** A plain number; undefined where it is none. @param isOwn whether a comma may be the decimal sign, and a dash a minus sign */
export function numberIn(text: string, isOwn: boolean): number | undefined {
  const plain = isOwn ? text.replace(',', '.').replace('–', '-') : text;
  return NUMBER.test(plain) ? Number(plain.replace('−', '-')) : undefined;
}

/** A time written with colons, s; undefined where it is none. */
export function clockIn(text: string): number | undefined {
  const [isClock, hours = '0', minutes, seconds = ''] = CLOCK.exec(text) ?? [];
  return isClock === undefined ? undefined : Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds.replace(',', '.'));
}

export const isFormula = (text: string, isOwn: boolean): boolean => FORMULA.test(text) && numberIn(text, isOwn) === undefined;
