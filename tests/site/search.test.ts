/** Search in the page: as you type, by keyboard alone, from a disk, and whole without script. */
import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, fileAddress, troublesOf } from '../support/browsing.ts';

const open = browserForFile();
const pages = builtPages().filter(({ path }) => path === 'search/index.html');

/** The longest that an answer to a key may take in the page, ms. */
const INSTANT = 30;

it('is in both folders', () => expect(pages.map(({ served }) => served.name)).toEqual(['public', 'teachers']));

describe.each(pages)('$name', (built) => {
  it('finds as you type, says how many, and leads to the place', () =>
    open({}, async (page) => {
      await page.goto(built.address, { waitUntil: 'load' });
      const field = page.getByRole('searchbox', { name: 'Search' });
      await field.fill('evacuated vess');
      await expect.poll(() => page.getByRole('status').innerText()).toMatch(/^\d+ found/);
      expect(await page.locator('#everything').isVisible()).toBe(false);
      expect((await new AxeBuilder({ page }).setLegacyMode().analyze()).violations.map(({ id }) => id)).toEqual([]);
      await field.press('ArrowDown');
      const first = page.locator('#find li a').first();
      expect(await first.evaluate((link) => link === document.activeElement)).toBe(true);
      await page.keyboard.press('ArrowUp');
      expect(await field.evaluate((input) => input === document.activeElement)).toBe(true);
      const target = new URL((await first.getAttribute('href')) ?? '', built.address).href;
      await Promise.all([page.waitForURL(target), page.keyboard.press('Enter')]);
      expect(await page.evaluate(() => document.getElementById(decodeURIComponent(location.hash.slice(1)))?.checkVisibility())).toBe(true);
    }));

  it('is emptied by Escape, and then lists everything again', () =>
    open({}, async (page) => {
      await page.goto(built.address, { waitUntil: 'load' });
      const field = page.getByRole('searchbox');
      await field.fill('zzzzqqqq');
      expect(await page.getByRole('status').innerText()).toBe('Nothing found');
      await field.press('Escape');
      expect(await field.inputValue()).toBe('');
      expect(await page.locator('#everything').isVisible()).toBe(true);
      expect(await page.locator('#find li').count()).toBe(0);
    }));

  it(`answers each key within ${INSTANT} ms`, () =>
    open({}, async (page) => {
      await page.goto(built.address, { waitUntil: 'load' });
      const times = await page.evaluate(() => {
        const field = document.querySelector<HTMLInputElement>('#find input');
        if (field === null) throw new Error('There is no field.');
        const words = 'cloud in a vessel';
        return [...words].map((_, at) => {
          field.value = words.slice(0, at + 1);
          const from = performance.now();
          field.dispatchEvent(new Event('input'));
          return performance.now() - from;
        });
      });
      expect(times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)]).toBeLessThan(INSTANT);
    }));

  it('works from a disk', () =>
    open({}, async (page) => {
      const troubles = troublesOf(page, 'file:');
      await page.goto(fileAddress(built), { waitUntil: 'load' });
      await page.getByRole('searchbox').fill('vessel');
      expect(await page.locator('#find li').count()).toBeGreaterThan(0);
      expect(troubles).toEqual({ console: [], requests: [] });
    }));

  it('lists everything without script', () =>
    open({ javaScriptEnabled: false }, async (page) => {
      await page.goto(built.address, { waitUntil: 'load' });
      const parts = await page.locator('#everything h2').allInnerTexts();
      expect(parts).toEqual(['Kits', 'Questions', 'Numbers', 'Hazards', 'Sources']);
      expect(await page.locator('#everything li a').count()).toBeGreaterThan(20);
      expect(await page.getByRole('searchbox').count()).toBe(0);
    }));
});
