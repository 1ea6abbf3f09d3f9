/** On paper: what the sheets hold, on how many pages, and what names each page. */
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, publicSheets } from '../support/browsing.ts';
import { lettersOf } from '../support/lesson-secrets.ts';
import { endingInTitles, PAPER_SIZES, PAPERS, printerForFile, TITLES } from '../support/paper.ts';

const open = browserForFile();
const printed = printerForFile(open);

const sheets = ['run', 'student'].flatMap((sheet) => PAPER_SIZES.flatMap((format) => publicSheets(sheet).map((built) => ({ sheet, format, built }))));

it('finds run and student sheets', () => expect(sheets.length).toBeGreaterThanOrEqual(4));

describe.each(sheets)('$built.path on $format', ({ sheet, format, built }) => {
  it('is on that paper, and every page names kit, sheet, edition, room and address, and counts itself', async () => {
    const pages = await printed(built.address, format);
    const kit = lettersOf((await titleOfKit(built.address)) ?? '');
    expect(kit.length).toBeGreaterThan(3);
    const [, id] = built.path.split('/');
    pages.forEach(({ size, text }, at) => {
      const letters = lettersOf(text);
      expect(Math.abs(size[0] - PAPERS[format][0])).toBeLessThan(1);
      expect(Math.abs(size[1] - PAPERS[format][1])).toBeLessThan(1);
      for (const part of [kit, `${sheet}sheet`, 'draft', 'computedfor', lettersOf(`/kits/${id}/draft/${sheet}/`), `${at + 1}${pages.length}`]) expect(letters, `page ${at + 1}`).toContain(part);
    });
  });

  it('prints nothing that only a screen needs', async () => {
    const letters = lettersOf((await printed(built.address, format)).map(({ text }) => text).join(''));
    for (const part of ['skiptothesheet', 'tapasteptogotoit']) expect(letters).not.toContain(part);
  });
});

describe.each(publicSheets('run'))('$path', ({ address }) => {
  it('has every step on paper, in order', async () => {
    const letters = lettersOf((await printed(address, 'A4')).map(({ text }) => text).join('\n'));
    const steps = await stepsOf(address);
    expect(steps.length).toBeGreaterThan(3);
    expect(steps.map(lettersOf).filter((step) => !letters.includes(step))).toEqual([]);
  });
});

describe.each(builtPages().filter(({ path }) => path.endsWith('/student/index.html')))('$name', ({ address }) => {
  it.each(PAPER_SIZES)('fills exactly two pages of %s', async (format) => {
    expect(await printed(address, format)).toHaveLength(2);
  });
});

const held = ['run', 'background', 'numbers', 'safety'].flatMap((sheet) => PAPER_SIZES.flatMap((format) => publicSheets(sheet).map((built) => ({ format, built }))));

describe.each(held)('$built.path on $format', ({ format, built }) => {
  it('leaves no heading, no title of a table or figure and no signal word alone at the foot of a page', async () => {
    const titles = await titlesOf(built.address);
    expect(titles.length).toBeGreaterThan(3);
    expect(endingInTitles(await printed(built.address, format), titles.map(lettersOf))).toEqual([]);
  });
});

async function titlesOf(address: string): Promise<string[]> {
  let titles: string[] = [];
  await open({}, async (page) => {
    await page.goto(address, { waitUntil: 'load' });
    titles = await page.locator(TITLES).allTextContents();
  });
  return titles;
}

/** The names of the steps, as the screen has them. */
async function stepsOf(address: string): Promise<string[]> {
  let steps: string[] = [];
  await open({}, async (page) => {
    await page.goto(address, { waitUntil: 'load' });
    steps = await page.locator('.step :is(h2, h3, h4)').allInnerTexts();
  });
  return steps;
}

async function titleOfKit(address: string): Promise<string | undefined> {
  let title: string | undefined;
  await open({}, async (page) => {
    await page.goto(address, { waitUntil: 'domcontentloaded' });
    title = (await page.title()).split('·')[0]?.split(':').slice(1).join(':').trim();
  });
  return title;
}
