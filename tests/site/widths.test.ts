/** On a phone and on a wide screen: no heading breaks inside a word, nothing is ruled or titled twice. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserForFile, oneSheet, publicSheets, type BuiltPage } from '../support/browsing.ts';

const open = browserForFile();
const WIDTHS = [360, 1280] as const;

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
      const rules = await page.locator('.hazard-sheet').evaluateAll((all) => all.slice(1).map((one) => [...one.children].filter((part) => getComputedStyle(part).borderTopStyle !== 'none').length));
      expect(rules.length).toBeGreaterThan(1);
      expect(rules.every((count) => count === 1)).toBe(true);
    }));

  it.each(oneSheet('numbers'))('each title stands over its table once ($path)', (built) =>
    look(built, 360, async (page) => {
      const titles = await page.locator('main :is(h2, figcaption > .title):visible').allInnerTexts();
      expect(titles.length).toBeGreaterThan(4);
      expect(titles.filter((title, at) => titles.indexOf(title) !== at)).toEqual([]);
    }));
});
