/** `npm run build -- --pdf`: files on the paper that was asked for. Where there is no browser: tests/build/same-bytes.test.ts. */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { sharedBuild } from '../support/builds.ts';
import { findChromium } from '../support/chromium.ts';
import { buildContent, type Ended } from '../support/command.ts';
import { filesBelow, newFolder, removeFolder } from '../support/folders.ts';
import { lettersOf } from '../support/lesson-secrets.ts';
import { PAPERS, type PaperSize } from '../support/paper.ts';
import { pagesOfPdf, type PrintedPage } from '../support/printed.ts';
import { ROOT } from '../support/root.ts';

const CONTENT = join(ROOT, 'tests', 'content', 'good', 'minimal');
const SHEETS = ['booklet', 'numbers', 'questions', 'run', 'safety', 'student'];
const LIMIT = 180_000;

let place: string;
beforeAll(() => {
  place = newFolder();
});
afterAll(() => removeFolder(place));

const build = (site: string, args: readonly string[]): Promise<Ended> => buildContent(CONTENT, site, { env: { CHROMIUM_PATH: findChromium() } }, args);

const pdfsOf = (folder: string): string[] => filesBelow(folder).filter((path) => path.endsWith('.pdf')).sort();

/** Pages of a file, read once for all tests. */
const known = new Map<string, Promise<PrintedPage[]>>();
function pagesOf(file: string): Promise<PrintedPage[]> {
  const pages = known.get(file) ?? pagesOfPdf(readFileSync(file));
  known.set(file, pages);
  return pages;
}

/** Each sheet of each kit of a folder, on this paper, its pages counted. @returns their paths */
async function expectPrints(folder: string, paper: PaperSize): Promise<string[]> {
  const files = pdfsOf(folder);
  const kits = [...new Set(files.map((path) => dirname(path)))];
  expect(kits.length).toBeGreaterThan(0);
  expect(files).toEqual(kits.flatMap((kit) => SHEETS.map((sheet) => `${kit}/${sheet}.pdf`)));
  for (const path of files) {
    expect(existsSync(join(folder, path, '..', 'index.html'))).toBe(true);
    const pages = await pagesOf(join(folder, path));
    expect(pages.length, path).toBeGreaterThan(0);
    pages.forEach(({ size, text }, at) => {
      expect(Math.abs(size[0] - PAPERS[paper][0])).toBeLessThan(1);
      expect(Math.abs(size[1] - PAPERS[paper][1])).toBeLessThan(1);
      expect(lettersOf(text), `${path}, page ${at + 1}`).toContain(`${at + 1}${pages.length}`);
    });
  }
  return files;
}

it.each(['', '-teachers'])('writes each sheet beside its kit on A4 where no paper is named (own%s)', { timeout: LIMIT }, async (ending) => {
  await expectPrints(`${await sharedBuild(inject('builds'), 'own')}${ending}`, 'A4');
});

it.each(['', '-teachers'])('prints no empty page and no words on other words (own%s)', { timeout: LIMIT }, async (ending) => {
  const folder = `${await sharedBuild(inject('builds'), 'own')}${ending}`;
  for (const path of pdfsOf(folder)) (await pagesOf(join(folder, path))).forEach(({ lastLine, overlaps }, at) => {
    expect(lastLine, `${path}, page ${at + 1}`).not.toBe('');
    expect(overlaps, `${path}, page ${at + 1}`).toEqual([]);
  });
});

it('writes each sheet beside its kit in both folders on the paper that is named, and says so', { timeout: LIMIT }, async () => {
  const site = join(place, 'letter');
  const { code, stdout, stderr } = await build(site, ['--pdf', '--paper', 'letter']);
  expect(stderr).toBe('');
  expect(code).toBe(0);
  for (const folder of [site, `${site}-teachers`]) for (const path of await expectPrints(folder, 'Letter')) expect(stdout).toContain(path);
});

it.each([[['--pdf', '--paper', 'A5'], 'A5'], [['--paper', 'letter'], '--pdf']])('refuses %j before it builds', async (args, named) => {
  const { code, stderr } = await build(join(place, 'refused'), args);
  expect(code).toBe(2);
  expect(stderr).toContain(named);
  expect(existsSync(join(place, 'refused'))).toBe(false);
});
