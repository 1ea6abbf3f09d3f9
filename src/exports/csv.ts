/** A table as a file for spreadsheets: RFC 4180, UTF-8, a decimal point in every language. */
import type { Records } from '../tables/index.ts';

/** Spreadsheets take a file without it for one of their own country's letters, and ° and µ are lost. */
const BYTE_ORDER_MARK = '\ufeff';

/** Numbers as they are, at full precision; an empty cell where physics has no answer. */
export const csv = ({ head, rows }: Records): string => BYTE_ORDER_MARK + [head, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');

const cell = (value: string | number | null): string => {
  const text = value === null ? '' : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};
