/** On a phone and on a wide screen: no heading breaks inside a word, nothing is ruled or titled twice. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, ofOneKit, oneSheet, publicSheets, type BuiltPage } from '../support/browsing.ts';

const open = browserForFile();
const WIDTHS = [360, 1280] as const;
/** A kit's own page. */
const kitPage = ofOneKit(builtPages().filter(({ served, path }) => served.name === 'public' && /(?:^|\/)kits\/[^/]+\/[^/]+\/index\.html$/.test(path)));

const look = (built: BuiltPage, width: number, at: (page: Page) => Promise<void>): Promise<void> =>
  open({ viewport: { width, height: 900 } }, async (page) => {
    await page.goto(built.address, { waitUntil: 'load' });
    await at(page);
  });

/** Words of headings that stand on two lines. */
const brokenWords = (page: Page): Promise<string[]> =>
  page.locator('main :is(h1, h2, h3)').evaluateAll((headings) =>
    headings.flatMap((heading) =>
      [...heading.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE).flatMap((node) =>
        [...(node.textContent ?? '').matchAll(/[\p{L}\p{N}]+/gu)].flatMap(({ 0: word, index }) => {
          const range = document.createRange();
          range.setStart(node, index);
          range.setEnd(node, index + word.length);
          return range.getClientRects().length > 1 ? [word] : [];
        }))));

describe.each(['student', 'run', 'safety'].flatMap(publicSheets))('$path', (built) => {
  it.each(WIDTHS)('breaks no word of a heading at %i px', (width) => look(built, width, async (page) => expect(await brokenWords(page)).toEqual([])));
});

describe('on a phone', () => {
  it.each(oneSheet('safety'))('one rule stands between hazards ($path)', (built) =>
    look(built, 360, async (page) => {
      const rules = await page.locator('.hazard-sheet').evaluateAll((all) =>
        all.slice(1).map((one) => [one, ...one.children].map((part) => getComputedStyle(part)).filter(({ display, borderTopStyle }) => display !== 'contents' && borderTopStyle !== 'none').length));
      expect(rules.length).toBeGreaterThan(1);
      expect(rules.every((count) => count === 1)).toBe(true);
    }));

  it.each(oneSheet('safety'))('a hazard is named right below its signal word, before its signs ($path)', (built) =>
    look(built, 360, async (page) => {
      const places = await page.locator('.hazard-sheet').evaluateAll((all) =>
        all.map((one) => ['.signal-word', 'h2', '.sign-row', '.margin-note', 'h2 + *'].map((part) => one.querySelector(part)!.getBoundingClientRect().top)));
      expect(places.length).toBeGreaterThan(1);
      for (const tops of places) expect(tops).toEqual([...tops].sort((a, b) => a - b));
    }));
});

describe('on any screen', () => {
  it.each([...kitPage, ...oneSheet('run')])('title, first conditions, sheets, room and text begin at one edge ($path)', (built) =>
    look(built, 1280, async (page) => {
      const edges = await page.evaluate(() =>
        ['h1', '.cells > div:nth-child(2) > dt', '.conditions > div:nth-child(2) > dt', '.sheets li:first-child a', '.your-room .asks', '.run-chart, .summary'].map((part) => {
          const one = document.querySelector(`main ${part}`)!;
          const inner = part === '.your-room .asks' ? 0 : parseFloat(getComputedStyle(one).paddingInlineStart);
          return Math.round(one.getBoundingClientRect().left + inner);
        }));
      expect(edges.slice(1).filter((edge) => Math.abs(edge - edges[0]!) > 1)).toEqual([]);
    }));

  it.each(kitPage.flatMap((built) => [1280, 1000, 800].map((width) => ({ ...built, width }))))('conditions in a row have their values beside each other at $width px ($path)', (built) =>
    look(built, built.width, async (page) => {
      const cells = await page.locator('.conditions.whole > div:not(.room)').evaluateAll((all) => all.map((one) => [one, one.querySelector('dd')!].map((part) => part.getBoundingClientRect().top).join(' ')));
      const rows = new Set(cells.map((cell) => cell.split(' ')[0]));
      expect(rows.size).toBeGreaterThan(1);
      expect(new Set(cells).size).toBe(rows.size);
    }));

  it.each(oneSheet('numbers').flatMap((built) => WIDTHS.map((width) => ({ ...built, width }))))('each title stands at its table once at $width px ($path)', (built) =>
    look(built, built.width, async (page) => {
      const titles = await page.locator('main :is(h2, figcaption > .title):visible').allInnerTexts();
      expect(titles.length).toBeGreaterThan(4);
      expect(titles.filter((title, at) => titles.indexOf(title) !== at)).toEqual([]);
    }));
});
