import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { withoutTables } from '../../src/layouts/lean-font.ts';

const font = readFileSync(new URL('../../node_modules/@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-400-normal.woff2', import.meta.url));

/** Fields of a WOFF 2.0 header: W3C Recommendation (2018), section 4. */
const header = (file: Buffer) => ({
  signature: file.toString('latin1', 0, 4),
  length: file.readUInt32BE(8),
  tables: file.readUInt16BE(12),
  compressed: file.readUInt32BE(20),
});

const PLEX_TABLES = 18;

describe('a font without some tables', () => {
  test('keeps everything where nothing is dropped', () => {
    const same = Buffer.from(withoutTables(font, ['fvar']));
    expect(header(same)).toMatchObject({ signature: 'wOF2', length: same.length, tables: PLEX_TABLES });
    expect(Buffer.from(withoutTables(same, [])).equals(same)).toBe(true);
    expect(Math.abs(same.length - font.length)).toBeLessThan(font.length * 0.02);
  });

  test('is shorter by what was dropped, and says so in its header', () => {
    const lean = Buffer.from(withoutTables(font, ['GPOS', 'GSUB']));
    expect(header(lean)).toMatchObject({ signature: 'wOF2', length: lean.length, tables: PLEX_TABLES - 2 });
    expect(lean.length).toBeLessThan(font.length * 0.75);
    expect(lean.length % 4).toBe(0);
  });

  test('drops a table once: dropping it again changes nothing', () => {
    const once = withoutTables(font, ['GPOS']);
    expect(Buffer.from(withoutTables(once, ['GPOS'])).equals(Buffer.from(once))).toBe(true);
  });

  test('refuses another kind of file', () => {
    expect(() => withoutTables(Buffer.alloc(100), [])).toThrow(RangeError);
  });
});
