/** The content that the benchmark measures is what it says it is. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkContent } from '../../src/commands/read-book.ts';
import { contentsOf, newFolder, removeFolder } from '../support/folders.ts';
import { generateContent, generateMarkdown, SHEET_SIZE } from './generate-content.ts';

const SHEETS = ['run.mdx', 'student.mdx', 'background.mdx'];
/** As many as there are simulated table kinds, so that each is among them. */
const KITS = 5;

let place: string;
beforeAll(async () => {
  place = newFolder();
  expect(await generateContent(join(place, 'lessons'), KITS * SHEETS.length)).toBe(KITS * SHEETS.length);
});
afterAll(() => removeFolder(place));

const textOf = (kit: string, sheet: string): string => readFileSync(join(place, 'lessons', 'kits', kit, sheet), 'utf8');
const timesIn = (text: string, what: string): number => text.split(what).length - 1;

describe('generated content', () => {
  it('passes every gate', async () => {
    const { content, findings } = await checkContent(join(place, 'lessons'));
    expect(findings).toEqual([]);
    expect(content?.kits.size).toBe(KITS);
  });

  it('has three computed tables, five formulas and about 6 kB in each sheet', () => {
    const kits = readdirSync(join(place, 'lessons', 'kits'));
    expect(kits).toHaveLength(KITS);
    for (const kit of kits) {
      for (const sheet of SHEETS) {
        const text = textOf(kit, sheet);
        expect(timesIn(text, '<WorkedTable '), `${kit} ${sheet}`).toBe(3);
        expect(timesIn(text, '$$\n') / 2, `${kit} ${sheet}`).toBe(5);
        expect(Math.abs(text.length - SHEET_SIZE), `${kit} ${sheet}`).toBeLessThan(0.1 * SHEET_SIZE);
      }
    }
  });

  it('is the same for the same seed and another for another', async () => {
    await generateContent(join(place, 'again'), KITS * SHEETS.length);
    await generateContent(join(place, 'other'), KITS * SHEETS.length, 2);
    const first = contentsOf(join(place, 'lessons'));
    expect(contentsOf(join(place, 'again'))).toEqual(first);
    const other = contentsOf(join(place, 'other'));
    for (const path of Object.keys(first).filter((one) => one.endsWith('run.mdx'))) expect(other[path], path).not.toBe(first[path]);
  });

  it('stands beside plain pages of the same size', async () => {
    await generateMarkdown(join(place, 'plain'), 3);
    for (const path of readdirSync(join(place, 'plain'))) {
      expect(Math.abs(readFileSync(join(place, 'plain', path), 'utf8').length - SHEET_SIZE), path).toBeLessThan(0.1 * SHEET_SIZE);
    }
  });
});
