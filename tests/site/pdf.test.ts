/** `npm run build -- --pdf`: files on the paper that was asked for, and a clear word where there is no browser. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCommand, type Ended } from '../support/command.ts';
import { findChromium } from '../support/chromium.ts';
import { exclusively } from '../support/exclusive.ts';
import { filesBelow, newFolder, removeFolder } from '../support/folders.ts';
import { lettersOf } from '../support/lesson-secrets.ts';
import { PAPERS } from '../support/paper.ts';
import { pagesOfPdf } from '../support/printed.ts';
import { ROOT } from '../support/root.ts';

const CONTENT = join(ROOT, 'tests', 'content', 'good', 'minimal');
const SHEETS = ['booklet', 'numbers', 'questions', 'run', 'safety', 'student'];
const LIMIT = 180_000;

let place: string;
beforeAll(() => {
  place = newFolder();
});
afterAll(() => removeFolder(place));

const build = (site: string, args: readonly string[], chromium = findChromium()): Promise<Ended> =>
  exclusively(() => runCommand('build', args, { env: { LAPSEBOOK_CONTENT: CONTENT, LAPSEBOOK_OUT: site, CHROMIUM_PATH: chromium } }));

const pdfsOf = (folder: string): string[] => filesBelow(folder).filter((path) => path.endsWith('.pdf')).sort();

describe.each([['A4', ['--pdf']], ['Letter', ['--pdf', '--paper', 'letter']]] as const)('on %s', (paper, args) => {
  it('writes each sheet beside its kit in both folders, and says so', { timeout: LIMIT }, async () => {
    const site = join(place, paper);
    const { code, stdout, stderr } = await build(site, args);
    expect(stderr).toBe('');
    expect(code).toBe(0);
    for (const folder of [site, `${site}-teachers`]) {
      const files = pdfsOf(folder);
      expect(files.map((path) => path.split('/').pop()?.replace('.pdf', ''))).toEqual(SHEETS);
      for (const path of files) {
        expect(existsSync(join(folder, path, '..', 'index.html'))).toBe(true);
        expect(stdout).toContain(path);
        const pages = await pagesOfPdf(readFileSync(join(folder, path)));
        expect(pages.length, path).toBeGreaterThan(0);
        pages.forEach(({ size, text }, at) => {
          expect(Math.abs(size[0] - PAPERS[paper][0])).toBeLessThan(1);
          expect(Math.abs(size[1] - PAPERS[paper][1])).toBeLessThan(1);
          expect(lettersOf(text), `${path}, page ${at + 1}`).toContain(`${at + 1}${pages.length}`);
        });
      }
    }
  });
});

it('builds the site where there is no browser, says what to do, and ends with 2', { timeout: LIMIT }, async () => {
  const site = join(place, 'without');
  const { code, stderr } = await build(site, ['--pdf'], join(place, 'no-browser'));
  expect(code).toBe(2);
  expect(stderr).toContain('no PDF is made');
  expect(stderr).toContain('CHROMIUM_PATH');
  expect(existsSync(join(site, 'index.html'))).toBe(true);
  expect(pdfsOf(site)).toEqual([]);
});

it.each([[['--pdf', '--paper', 'A5'], 'A5'], [['--paper', 'letter'], '--pdf']])('refuses %j before it builds', async (args, named) => {
  const { code, stderr } = await build(join(place, 'refused'), args);
  expect(code).toBe(2);
  expect(stderr).toContain(named);
  expect(existsSync(join(place, 'refused'))).toBe(false);
});
