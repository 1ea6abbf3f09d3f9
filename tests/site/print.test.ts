/** On paper: what the sheets hold, on how many pages, and what names each page. */
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, oneSheet, publicSheets } from '../support/browsing.ts';
import { lettersOf } from '../support/lesson-secrets.ts';
import { endingInTitles, PAPER_SIZES, PAPERS, printerForFile, TITLES } from '../support/paper.ts';
import { readerForFile } from '../support/parsed.ts';

const open = browserForFile();
const printed = printerForFile(open);
const read = readerForFile(open);

const sheets = ['run', 'student'].flatMap((sheet) => PAPER_SIZES.flatMap((format) => publicSheets(sheet).map((built) => ({ sheet, format, built }))));

it('finds run and student sheets', () => expect(sheets.length).toBeGreaterThanOrEqual(4));

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
      for (const part of [kit, `${sheet}sheet`, 'draft', 'computedfor', lettersOf(`/kits/${id}/draft/${sheet}/`), `${at + 1}${pages.length}`]) expect(letters, `page ${at + 1}`).toContain(part);
    });
  });

  it('prints nothing that only a screen needs', async () => {
    const letters = lettersOf((await printed(built, format)).map(({ text }) => text).join(''));
    for (const part of ['skiptothesheet', 'tapasteptogotoit']) expect(letters).not.toContain(part);
  });
});

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
