/** On paper: what the sheets hold, on how many pages, and what names each page. */
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, oneSheet, publicSheets } from '../support/browsing.ts';
import { lettersOf } from '../support/lesson-secrets.ts';
import { endingInTitles, PAPER_SIZES, PAPERS, printerForFile, TITLES } from '../support/paper.ts';
import { readerForFile } from '../support/parsed.ts';
import { pagesOfPdf } from '../support/printed.ts';

const open = browserForFile();
const printed = printerForFile(open);
const read = readerForFile(open);

const NAMES = { run: 'runsheet', student: 'studentsheet', readings: 'readings' } as const;
const sheets = (Object.keys(NAMES) as (keyof typeof NAMES)[]).flatMap((sheet) => PAPER_SIZES.flatMap((format) => publicSheets(sheet).map((built) => ({ sheet, format, built }))));

it('finds run and student sheets and pages of readings', () => expect(sheets.length).toBeGreaterThanOrEqual(6));

describe.each(sheets)('$built.path on $format', ({ sheet, format, built }) => {
  it('is on that paper, and every page names kit, sheet, edition, room and address, and counts itself', async () => {
    const pages = await printed(built, format);
    const [title = ''] = await read(built.file, 'title');
    const kit = lettersOf(title.split('·')[0]?.split(':').slice(1).join(':') ?? '');
    expect(kit.length).toBeGreaterThan(3);
    const [, id] = built.path.split('/');
    pages.forEach(({ size, text }, at) => {
      const letters = lettersOf(text);
      expect(Math.abs(size[0] - PAPERS[format][0])).toBeLessThan(1);
      expect(Math.abs(size[1] - PAPERS[format][1])).toBeLessThan(1);
      for (const part of [kit, NAMES[sheet], 'draft', 'computedfor', lettersOf(`/kits/${id}/draft/${sheet}/`), `${at + 1}${pages.length}`]) expect(letters, `page ${at + 1}`).toContain(part);
    });
  });

  it('prints no words on other words', async () => expect((await printed(built, format)).flatMap(({ overlaps }) => overlaps)).toEqual([]));

  it('prints nothing that only a screen needs', async () => {
    const letters = lettersOf((await printed(built, format)).map(({ text }) => text).join(''));
    for (const part of ['skiptothesheet', 'tapasteptogotoit']) expect(letters).not.toContain(part);
  });
});

/** Lines set as close as any here, an index and a power, a label on its halo. */
const CLOSE = '<p style="margin: 0; font: 12px/1.2 serif">Wait until the needle rests,<br>and read <i>p<sub>0</sub></i><sup>2</sup> again.</p><svg><text y="20">cloud base</text><text y="20">cloud base</text></svg>';
/** A note that was pushed down onto the second line. */
const PUSHED = '<p style="position: absolute; inset: 25px auto auto 20px; margin: 0; font: 12px/1.2 serif">A note.</p>';

it.each([['close', CLOSE, []], ['on each other', CLOSE + PUSHED, ['and read | A note.']]])('sees words that stand %s as such', (_, html, found) =>
  open({}, async (page) => {
    await page.setContent(html);
    expect((await pagesOfPdf(await page.pdf())).flatMap(({ overlaps }) => overlaps)).toEqual(found);
  }));

describe.each(publicSheets('run'))('$path', (built) => {
  it('has every step on paper, in order', async () => {
    const letters = lettersOf((await printed(built, 'A4')).map(({ text }) => text).join('\n'));
    const steps = await read(built.file, '.step :is(h2, h3, h4)');
    expect(steps.length).toBeGreaterThan(3);
    expect(steps.map(lettersOf).filter((step) => !letters.includes(step))).toEqual([]);
  });
});

describe.each(builtPages().filter(({ path }) => path.endsWith('/student/index.html')))('$name', (built) => {
  it.each(PAPER_SIZES)('fills exactly two pages of %s', async (format) => {
    expect(await printed(built, format)).toHaveLength(2);
  });
});

const kept = [...['run', 'background'].flatMap(publicSheets), ...['numbers', 'safety'].flatMap(oneSheet)];
const held = PAPER_SIZES.flatMap((format) => kept.map((built) => ({ format, built })));

describe.each(held)('$built.path on $format', ({ format, built }) => {
  it('leaves no heading, no title of a table or figure and no signal word alone at the foot of a page', async () => {
    const titles = await read(built.file, TITLES);
    expect(titles.length).toBeGreaterThan(3);
    expect(endingInTitles(await printed(built, format), titles.map(lettersOf))).toEqual([]);
  });
});

describe.each(held.filter(({ built }) => !built.path.endsWith('/safety/index.html')))('$built.path on $format', ({ format, built }) => {
  it('leaves no more than two fifths of a page empty before the last', async () => {
    const pages = (await printed(built, format)).slice(0, -1);
    expect(pages.flatMap(({ left }, at) => (left > 0.4 ? [`page ${at + 1}: ${Math.round(left * 100)} %`] : []))).toEqual([]);
  });
});

const runs = PAPER_SIZES.flatMap((format) => publicSheets('run').map((built) => ({ format, built })));

describe.each(runs)('$built.path on $format', ({ format, built }) => {
  it('does not take one more page for a few lines', async () => expect((await printed(built, format)).at(-1)!.left).toBeLessThan(0.8));
});

const forms = PAPER_SIZES.flatMap((format) => oneSheet('safety').map((built) => ({ format, built })));

describe.each(forms)('$built.path on $format', ({ format, built }) => {
  it('ends in the form to sign, on one page', async () => {
    const last = lettersOf((await printed(built, format)).at(-1)?.text ?? '');
    const words = (await read(built.file, '.risk-form :is(h2, dt, thead th, tbody th:not(:has(.unseen)))')).map(lettersOf);
    expect(words.length).toBeGreaterThan(10);
    expect(words.filter((word) => !last.includes(word))).toEqual([]);
  });
});
