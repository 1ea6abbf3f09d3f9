/** Every table of a kit as a file for a spreadsheet, read back as one would. */
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { readBook } from '../../src/commands/read-book.ts';
import { csv } from '../../src/exports/index.ts';
import type { KitView } from '../../src/sheets/index.ts';
import { TABLE_KIND_NAMES } from '../../src/tables/index.ts';
import type { TablesFile } from '../support/tables-file.ts';
import { ROOT } from '../support/root.ts';

/** From a printed unit to SI: NIST Special Publication 811 (2008), appendix B.8; inHg and mmHg are the conventional ones at 0 °C. */
const TO_SI: Readonly<Record<string, (value: number) => number>> = {
  '°C': (value) => value + 273.15,
  '°F': (value) => (value + 459.67) / 1.8,
  K: (value) => value,
  kPa: (value) => value * 1000,
  hPa: (value) => value * 100,
  mbar: (value) => value * 100,
  inHg: (value) => value * 3386.389,
  mmHg: (value) => value * 133.3224,
  psi: (value) => value * 6894.757,
  MPa: (value) => value * 1e6,
  m: (value) => value,
  km: (value) => value * 1000,
  cm: (value) => value / 100,
  ft: (value) => value * 0.3048,
  'µm': (value) => value / 1e6,
  nm: (value) => value / 1e9,
  L: (value) => value / 1000,
  'g/m³': (value) => value / 1000,
  '%': (value) => value / 100,
  min: (value) => value * 60,
  h: (value) => value * 3600,
  s: (value) => value,
  '/cm³': (value) => value * 1e6,
  'cm/s': (value) => value / 100,
  'm/s': (value) => value,
  '°': (value) => (value * Math.PI) / 180,
  N: (value) => value,
  J: (value) => value,
  '': (value) => value,
};
/** Those factors have seven digits. */
const RELATIVE = 1e-6;

/** RFC 4180, section 2: fields in quotes may hold commas, line ends and doubled quotes. */
function read(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    row.push(quoted === undefined ? plain! : quoted.replaceAll('""', '"'));
    if (end === ',') continue;
    rows.push(row);
    row = [];
  }
  return rows;
}

let kits: readonly KitView[];
beforeAll(async () => {
  // Between them they have every kind of table, in English and in Spanish.
  const books = await Promise.all([join(ROOT, 'content'), join(ROOT, 'tests', 'content', 'good', 'valle')].map(readBook));
  kits = books.flatMap((result) => {
    if ('findings' in result) throw new Error('The content has findings.');
    return result.book.kits;
  });
});

const unitOf = (head: string): string => / \(([^()]*)\)$/.exec(head)?.[1] ?? '';
const labelOf = (head: string): string => head.replace(/ \([^()]*\)$/, '');

describe('tables for spreadsheets', () => {
  it('say the numbers of tables.json in the units of the page', () => {
    const kinds = new Set<string>();
    for (const kit of kits) {
      const { tables } = JSON.parse(kit.tablesJson) as TablesFile;
      expect(kit.records.map(({ id }) => id)).toEqual(tables.map(({ id }) => id));
      for (const [t, table] of tables.entries()) {
        const [head = [], ...rows] = read(csv(kit.records[t]!).slice(1));
        expect(rows).toHaveLength(table.rows.length);
        expect(new Set(head).size, table.id).toBe(head.length);
        // Units of one column stand side by side under the same label.
        let column = -1;
        for (const [at, title] of head.entries()) {
          if (at === 0 || labelOf(title) !== labelOf(head[at - 1]!)) column += 1;
          const { unit } = table.columns[column] ?? {};
          if (unit === undefined) continue; // the last one, for what a marked row is
          const isDifference = unit === 'K' && table.rows.every((row) => Math.abs(Number(row[column])) < 150);
          for (const [r, row] of rows.entries()) {
            const expected = table.rows[r]![column];
            if (expected === null) expect(row[at]).toBe('');
            if (typeof expected !== 'number') continue;
            const toSi = TO_SI[unitOf(title)];
            if (toSi === undefined) throw new Error(`${title} is in no known unit.`);
            const value = toSi(Number(row[at])) - (isDifference ? toSi(0) : 0);
            expect(Math.abs(value - expected), `${table.id}: ${title}, row ${r + 1}`).toBeLessThanOrEqual(RELATIVE * Math.max(Math.abs(expected), 1e-9));
            kinds.add(table.kind);
          }
        }
        expect(column + 1 - table.columns.length, table.id).toBeLessThanOrEqual(1);
      }
    }
    expect([...kinds].sort()).toEqual([...TABLE_KIND_NAMES].sort());
  });

  it('have rows of one length, a byte order mark, and nothing that a spreadsheet would run', () => {
    for (const kit of kits) {
      for (const records of kit.records) {
        const text = csv(records);
        expect([...new TextEncoder().encode(text).subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]); // RFC 3629, section 6
        const rows = read(text.slice(1));
        expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
        // OWASP, CSV injection: from memory.
        for (const cell of rows.flat()) expect(cell).toMatch(/^(?:-?\d+(?:\.\d+)?(?:e[+-]?\d+)?|[^=+\-@\t\r].*|)$/s);
      }
    }
  });

  it('quotes what would part a cell', () => {
    expect(csv({ head: ['a, b', 'c "d"'], rows: [[1.5, null], ['x\ny', -2e-7]] })).toBe('\ufeff"a, b","c ""d"""\r\n1.5,\r\n"x\ny",-2e-7\r\n');
  });
});
