/** Every page may be read by everybody: WCAG 2.2 AA as axe sees it, small and large windows, headings, language, every control by keyboard. */
import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, pageForTests, plainPages } from '../support/browsing.ts';
import { nameControls, walk } from '../support/keyboard.ts';

browserForFile();

/** 320 px is a window of 1,280 px at 400 %: WCAG 2.2, 1.4.10 Reflow. */
const WIDTHS = [320, 360, 1280];

/** One of hundreds that are made alike: the first of each list stand for them. */
const ALIKE = '.check:nth-child(n+5)';
const COLORS = 'color-contrast';

/** What axe objects to, one line each. */
async function objections(page: Page, choose: (axe: AxeBuilder) => AxeBuilder): Promise<string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
  const { violations, passes } = await choose(axe).analyze();
  expect(passes.length).toBeGreaterThan(0);
  return violations.flatMap(({ id, help, nodes }) => nodes.map((node) => `${id}: ${help}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ''}`));
}

/** Looks of texts that axe has seen, in each scheme: the same color on the same ground in the same size says the same everywhere. */
const seen = { light: new Set<string>(), dark: new Set<string>() };

/** Marks one text of each look that is not known yet; returns these looks. */
const markNewLooks = (page: Page, known: readonly string[]): Promise<string[]> =>
  page.evaluate((before) => {
    const looks = new Set(before);
    const grounds = new Map<Element, string>();
    const groundOf = (element: Element): string => {
      const { backgroundColor, backgroundImage, opacity } = getComputedStyle(element);
      const above = element.parentElement === null ? '' : (grounds.get(element.parentElement) ?? groundOf(element.parentElement));
      const ground = backgroundColor === 'rgba(0, 0, 0, 0)' && backgroundImage === 'none' && opacity === '1' ? above : `${above} ${backgroundColor} ${backgroundImage} ${opacity}`;
      grounds.set(element, ground);
      return ground;
    };
    for (const element of document.body.querySelectorAll('*')) {
      element.removeAttribute('data-look');
      const speaks = [...element.childNodes].some(({ nodeType, textContent }) => nodeType === Node.TEXT_NODE && textContent?.trim() !== '');
      if (!speaks || !element.checkVisibility()) continue;
      const { color, fill, fontSize, fontWeight } = getComputedStyle(element);
      const look = `${color} ${fill} ${fontSize} ${fontWeight} on ${groundOf(element)}`;
      if (looks.has(look)) continue;
      looks.add(look);
      element.setAttribute('data-look', '');
    }
    return [...looks].slice(before.length);
  }, known);

describe.each(plainPages())('$name', (built) => {
  const shown = pageForTests(built.address, { reducedMotion: 'reduce', colorScheme: 'light' });

  it('has nothing that axe objects to', async () => {
    expect(await objections(shown(), (axe) => axe.exclude(ALIKE).disableRules([COLORS]))).toEqual([]);
  });

  it.each(['light', 'dark'] as const)('has colors that can be told apart (%s)', async (colorScheme) => {
    await shown().emulateMedia({ colorScheme });
    const looks = await markNewLooks(shown(), [...seen[colorScheme]]);
    looks.forEach((look) => seen[colorScheme].add(look));
    if (looks.length > 0) expect(await objections(shown(), (axe) => axe.include('[data-look]').withRules([COLORS]))).toEqual([]);
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
    await shown().emulateMedia({ colorScheme: 'light' });
    const controls = await nameControls(shown());
    const focused = await walk(shown());
    const reached = new Set(focused.map(({ control }) => control));
    expect(controls.filter((control) => !reached.has(control))).toEqual([]);
    expect(focused.filter(({ marked }) => !marked)).toEqual([]);
  });
});

it('has looked at texts of many looks in both schemes', () => expect([...Object.values(seen)].map(({ size }) => size > 30)).toEqual([true, true]));

it.each(['public', 'teachers'])('gives every page a title of its own (%s)', (name) => {
  const titles = builtPages().filter(({ served }) => served.name === name).map(({ file }) => /<title>(.*?)<\/title>/s.exec(readFileSync(file, 'utf8'))?.[1]);
  expect(titles.filter((title, at) => title === undefined || titles.indexOf(title) !== at)).toEqual([]);
});

const sideways = (page: Page): Promise<{ content: number; window: number; wide: string[] }> =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const wide = [...document.querySelectorAll('body *')].filter((element) => element.getBoundingClientRect().right > clientWidth + 1 && !element.closest('.scroll'));
    return { content: scrollWidth, window: clientWidth, wide: wide.slice(0, 5).map((element) => `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`) };
  });
