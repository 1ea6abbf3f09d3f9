/** The booklet: everything of a kit in one document, its pages counted through, no answer in the public one. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, distinctPages, ofOneKit, pageForTests, type BuiltPage } from '../support/browsing.ts';
import { lettersOf, questionsOf, secretsOf } from '../support/lesson-secrets.ts';
import { endingInTitles, PAPER_SIZES, PAPERS, printerForFile, TITLES } from '../support/paper.ts';
import { readerForFile } from '../support/parsed.ts';
import { readCode } from '../support/read-code.ts';
import { ROOT } from '../support/root.ts';

const open = browserForFile();
const printed = printerForFile(open);
const read = readerForFile(open);
const CONTENT = join(ROOT, 'content');
const PARTS = ['kit', 'run', 'student', 'background', 'numbers', 'questions', 'safety'];
const all = builtPages().filter(({ path }) => path.endsWith('/booklet/index.html'));
const booklets = ofOneKit(all);
const sister = (booklet: BuiltPage, sheet: string): string => booklet.file.replace('/booklet/', `/${sheet}/`);

/** The letters of all that a selector finds on a page. */
const texts = async (file: string, selector: string): Promise<string[]> => (await read(file, selector)).map(lettersOf);

it('finds one booklet for each kit and edition', () => expect(all.length).toBe(builtPages().filter(({ path }) => path.endsWith('/run/index.html')).length));

describe.each(booklets)('$name', (booklet) => {
  const { address, file, served } = booklet;
  const shown = pageForTests(address, { reducedMotion: 'reduce' });
  // Both look alike on paper: one of them is tried on each.
  const papers = served.name === 'public' ? PAPER_SIZES : PAPER_SIZES.slice(0, 1);

  it.each(papers)('counts its pages through on %s, and names itself on each', async (format) => {
    const pages = await printed(booklet, format);
    const kit = lettersOf((await texts(file, 'h1'))[0] ?? '');
    expect(kit.length).toBeGreaterThan(3);
    expect(pages.length).toBeGreaterThan(10);
    pages.forEach(({ size, text }, at) => {
      const letters = lettersOf(text);
      expect(Math.abs(size[0] - PAPERS[format][0])).toBeLessThan(1);
      expect(Math.abs(size[1] - PAPERS[format][1])).toBeLessThan(1);
      for (const named of [kit, 'draft', 'computedfor', `${at + 1}${pages.length}`]) expect(letters, `page ${at + 1}`).toContain(named);
    });
  });

  it('has on paper every step of the run sheet and the title of every table, in order', async () => {
    const letters = lettersOf((await printed(booklet, 'A4')).map(({ text }) => text).join('\n'));
    const steps = await texts(sister(booklet, 'run'), '.step h3');
    const tables = await texts(sister(booklet, 'numbers'), '.worked > figcaption > .title');
    expect(steps.length).toBeGreaterThan(3);
    expect(tables.length).toBeGreaterThan(2);
    expect([...steps, ...tables].filter((title) => !letters.includes(title))).toEqual([]);
  });

  it.each(papers)('splits no row of a table on %s', async (format) => {
    const pages = (await printed(booklet, format)).map(({ text }) => lettersOf(text));
    const rows = (await texts(file, '.worked tbody tr, .words tbody tr')).filter((row) => row.length > 8);
    expect(rows.length).toBeGreaterThan(20);
    expect(rows.filter((row) => !pages.some((page) => page.includes(row)))).toEqual([]);
  });

  it.each(papers)('leaves no title alone at the foot of a page of %s', async (format) => {
    // The first page lists the titles.
    expect(endingInTitles((await printed(booklet, format)).slice(1), await texts(file, TITLES))).toEqual([]);
  });

  it.each(papers)('prints no words on other words on %s', async (format) => {
    expect((await printed(booklet, format)).flatMap(({ overlaps }) => overlaps)).toEqual([]);
  });

  it('says everything that the sheets say', async () => {
    const [whole = ''] = await texts(file, 'main');
    for (const sheet of PARTS.slice(1)) {
      const blocks = await texts(sister(booklet, sheet), 'article > :not(.title-block, .printed-code, .chooser, .paper) :is(p, li, td, th, h2, h3)');
      expect(blocks.length, sheet).toBeGreaterThan(5);
      expect(blocks.filter((text) => !whole.includes(text)), sheet).toEqual([]);
    }
  });

  it('leads from its contents to each part, and starts each on a page of its own', async () => {
    const page = shown();
    expect(await read(file, '.contents-part', 'href')).toEqual(PARTS.map((slug) => `#${slug}`));
    for (const slug of PARTS) expect(await page.locator(`#${slug} > .part-title`).count(), slug).toBe(1);
    await page.emulateMedia({ media: 'print' });
    await expect.poll(() => page.locator('.booklet-part').evaluateAll((parts) => parts.map((part) => getComputedStyle(part).breakBefore))).toEqual(PARTS.map(() => 'page'));
    await page.emulateMedia({ media: null });
  });

  it('names in its contents, as the build has printed it, the page on which each of them stands', async () => {
    const pages = (await printed(booklet, 'A4')).map(({ text }) => text);
    const contents = pages[0]!.replace(/\s+/g, ' ');
    const named = (await read(file, '.contents a')).map((entry) => {
      const [before = '', after = ''] = contents.split(`${entry.trim()} `);
      const page = Number.parseInt(after);
      // A step has its minute beside it, a part its number.
      const title = lettersOf(entry.replace(/^[\d.]+ (?:min: )?/, ''));
      return { entry, stands: before !== '' && lettersOf(pages[page - 1] ?? '').includes(title) };
    });
    expect(named.length).toBeGreaterThan(30);
    expect(named.filter(({ stands }) => !stands)).toEqual([]);
  });

  it('stays inside itself where a link goes to another of its sheets', async () => {
    const outward = await read(file, '.booklet-part a', 'href');
    expect(outward.length).toBeGreaterThan(10);
    expect(outward.filter((href) => PARTS.some((slug) => href.startsWith(`../${slug}/`)))).toEqual([]);
  });

  it('has answers only where it is for teachers', async () => {
    const [whole = ''] = await texts(file, 'main');
    const secrets = secretsOf(CONTENT).filter(({ where }) => where.startsWith(`kits/${booklet.path.split('/')[1]}/`));
    expect(secrets.length).toBeGreaterThan(10);
    const told = secrets.filter(({ letters }) => whole.includes(letters));
    if (served.name === 'public') expect(told).toEqual([]);
    else expect(told.length).toBeGreaterThan(secrets.length / 2);
    expect(questionsOf(CONTENT).length).toBeGreaterThan(0);
  });

  it('carries the code of its permanent address', () => expectCode(shown(), booklet));
});

const SHEETS_WITH_CODE = ['run', 'student', 'numbers', 'safety'];

describe.each(ofOneKit(distinctPages()).filter(({ path }) => SHEETS_WITH_CODE.some((sheet) => path.endsWith(`/${sheet}/index.html`) && path.startsWith('kits/'))))('$name', (built) => {
  it('carries on paper, and only there, the code and the words of its permanent address', () =>
    open({}, async (page) => {
      await page.goto(built.address, { waitUntil: 'load' });
      await expectCode(page, built);
    }));
});

async function expectCode(page: Page, built: BuiltPage): Promise<void> {
  const site = /^address: (\S+?)\/?$/m.exec(readFileSync(join(CONTENT, 'site.yaml'), 'utf8'))?.[1] ?? '';
  const permanent = `${site}/${built.path.replace(/index\.html$/, '')}`;
  const code = page.locator('.printed-code');
  expect(await code.count()).toBe(1);
  expect(await code.isVisible()).toBe(false);
  await page.emulateMedia({ media: 'print' });
  await expect.poll(() => code.isVisible()).toBe(true);
  expect(readCode(await code.locator('svg').evaluate((svg) => svg.outerHTML))).toBe(permanent);
  expect(lettersOf(await code.innerText())).toContain(lettersOf(permanent.replace('https://', '')));
  // 18 mm at 96 px an inch; a large page takes a while to be laid out for paper.
  await expect.poll(() => code.locator('svg').evaluate((svg) => svg.getBoundingClientRect().width)).toBeCloseTo((18 / 25.4) * 96, 0);
  await page.emulateMedia({ media: null });
}
