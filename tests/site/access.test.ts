/** Every page may be read by everybody: WCAG 2.2 AA as axe sees it, small and large windows, headings, language, keyboard. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, distinctPages, isOneFile, pageForTests } from '../support/browsing.ts';

const open = browserForFile();

/** 320 px is a window of 1,280 px at 400 %: WCAG 2.2, 1.4.10 Reflow. */
const WIDTHS = [320, 360, 1280];

/** One of hundreds that are made alike: the first of each list stand for them. */
const ALIKE = '.check:nth-child(n+5)';
const COLORS = 'color-contrast';

/** What axe objects to, one line each. */
async function objections(page: Page, choose: (axe: AxeBuilder) => AxeBuilder): Promise<string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode().exclude(ALIKE).options({ resultTypes: ['violations'] });
  const { violations, passes } = await choose(axe).analyze();
  expect(passes.length).toBeGreaterThan(0);
  return violations.flatMap(({ id, help, nodes }) => nodes.map((node) => `${id}: ${help}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ''}`));
}

describe.each(distinctPages())('$name', (built) => {
  const shown = pageForTests(built.address, { reducedMotion: 'reduce', colorScheme: 'light' });

  it('has nothing that axe objects to', async () => {
    expect(await objections(shown(), (axe) => axe.disableRules([COLORS]))).toEqual([]);
  });

  // The parts of a booklet and of a kit in one file are those of the sheets, in the same colors.
  it.skipIf(built.path.includes('/booklet/') || isOneFile(built)).each(['light', 'dark'] as const)('has colors that can be told apart (%s)', async (colorScheme) => {
    await shown().emulateMedia({ colorScheme });
    expect(await objections(shown(), (axe) => axe.withRules([COLORS]))).toEqual([]);
  });

  it.each(WIDTHS)('does not scroll sideways at %i px', async (width) => {
    await shown().setViewportSize({ width, height: 800 });
    const { content, window, wide } = await sideways(shown());
    expect(content, `wider than the window: ${wide.join(', ')}`).toBeLessThanOrEqual(window);
  });

  it('names its language and itself, and its headings go down one level at a time', async () => {
    const page = shown();
    expect(await page.locator('html').getAttribute('lang')).toMatch(/^[a-z]{2}(-[A-Z]{2})?$/);
    expect((await page.title()).trim()).not.toBe('');
    expect(await page.locator('main').count()).toBe(1);
    const levels = await page.locator('h1, h2, h3, h4, h5, h6').evaluateAll((headings) => headings.map((heading) => Number(heading.tagName.slice(1))));
    expect(levels[0]).toBe(1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels.filter((level, at) => level > (levels[at - 1] ?? level) + 1)).toEqual([]);
  });

  it('can be reached by keyboard in full, and shows where the focus is', async () => {
    const { all, reached, hidden } = await walkByKeyboard(shown());
    expect(all.filter((element) => !reached.includes(element))).toEqual([]);
    expect(hidden).toEqual([]);
  });
});

it('gives every page a title of its own', async () => {
  for (const name of ['public', 'teachers']) {
    await open({}, async (page) => {
      const titles: string[] = [];
      for (const built of builtPages().filter(({ served }) => served.name === name)) {
        await page.goto(built.address, { waitUntil: 'commit' });
        titles.push(await page.title());
      }
      expect(titles.filter((title, at) => titles.indexOf(title) !== at)).toEqual([]);
    });
  }
});

const sideways = (page: Page): Promise<{ content: number; window: number; wide: string[] }> =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const wide = [...document.querySelectorAll('body *')].filter((element) => element.getBoundingClientRect().right > clientWidth + 1 && !element.closest('.scroll'));
    return { content: scrollWidth, window: clientWidth, wide: wide.slice(0, 5).map((element) => `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`) };
  });

/** Presses Tab until the focus has gone round. */
async function walkByKeyboard(page: Page): Promise<{ all: string[]; reached: string[]; hidden: string[] }> {
  const all = await page.evaluate(() => {
    const shown = [...document.querySelectorAll('a[href], button, input, select, textarea, summary')].filter((element) => element.checkVisibility({ visibilityProperty: true }) && !element.matches(':disabled'));
    return shown.map((element, at) => {
      const name = `${at} ${element.outerHTML.slice(0, 100)}`;
      element.setAttribute('data-tried', name);
      return name;
    });
  });
  const reached: string[] = [];
  const hidden: string[] = [];
  for (let presses = 0; presses < 3 * all.length + 20; presses++) {
    await page.keyboard.press('Tab');
    const focus = await page.evaluate(() => {
      const element = document.activeElement;
      if (element === null || element === document.body) return undefined;
      const { outlineStyle, boxShadow } = getComputedStyle(element);
      const marked = outlineStyle !== 'none' || boxShadow !== 'none' || element.querySelector(':scope > *') !== null;
      return { id: element.getAttribute('data-tried') ?? '', html: element.outerHTML.slice(0, 100), marked };
    });
    if (focus === undefined) break;
    if (focus.id !== '') reached.push(focus.id);
    if (!focus.marked) hidden.push(focus.html);
  }
  return { all, reached, hidden };
}
