/** On paper: what the sheets hold, on how many pages, and what names each page. */
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, publicSheets } from '../support/browsing.ts';
import { lettersOf } from '../support/lesson-secrets.ts';
import { pagesOfPdf, type PrintedPage } from '../support/printed.ts';

const open = browserForFile();

/** ISO 216 and ANSI/ASME Y14.1, mm. */
const PAPERS = { A4: [210, 297], Letter: [215.9, 279.4] } as const;
type Paper = keyof typeof PAPERS;

/** A page as printed, and what the screen says. */
async function printed(address: string, format: Paper): Promise<{ pages: PrintedPage[]; steps: string[]; headings: string[] }> {
  let result: { pages: PrintedPage[]; steps: string[]; headings: string[] } | undefined;
  await open({}, async (page) => {
    await page.goto(address, { waitUntil: 'load' });
    const steps = await page.locator('.step :is(h2, h3, h4)').allInnerTexts();
    const headings = await page.locator('h1').allInnerTexts();
    result = { pages: pagesOfPdf(await page.pdf({ format })), steps, headings };
  });
  if (result === undefined) throw new Error(`${address} was not printed.`);
  return result;
}

const sheets = ['run', 'student'].flatMap((sheet) => (['A4', 'Letter'] as const).flatMap((format) => publicSheets(sheet).map((built) => ({ sheet, format, built }))));

it('finds run and student sheets', () => expect(sheets.length).toBeGreaterThanOrEqual(4));

describe.each(sheets)('$built.path on $format', ({ sheet, format, built }) => {
  it('is on that paper, and every page names kit, sheet, edition, room and address, and counts itself', async () => {
    const { pages } = await printed(built.address, format);
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
    const letters = lettersOf((await printed(built.address, format)).pages.map(({ text }) => text).join(''));
    for (const part of ['skiptothesheet', 'tapasteptogotoit']) expect(letters).not.toContain(part);
  });
});

describe.each(publicSheets('run'))('$path', ({ address }) => {
  it('has every step on paper, in order', async () => {
    const { pages, steps } = await printed(address, 'A4');
    const letters = lettersOf(pages.map(({ text }) => text).join('\n'));
    expect(steps.length).toBeGreaterThan(3);
    expect(steps.map(lettersOf).filter((step) => !letters.includes(step))).toEqual([]);
  });
});

describe.each(builtPages().filter(({ path }) => path.endsWith('/student/index.html')))('$name', ({ address }) => {
  it.each(['A4', 'Letter'] as const)('fills exactly two pages of %s', async (format) => {
    expect((await printed(address, format)).pages).toHaveLength(2);
  });
});

async function titleOfKit(address: string): Promise<string | undefined> {
  let title: string | undefined;
  await open({}, async (page) => {
    await page.goto(address, { waitUntil: 'commit' });
    title = (await page.title()).split('·')[0]?.split(':').slice(1).join(':').trim();
  });
  return title;
}
