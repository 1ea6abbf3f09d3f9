/** A paper chosen from the questions of a kit, in a browser: students' and teachers' agree, on paper too. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, fileAddress } from '../support/browsing.ts';

const open = browserForFile();
const [everybody, teachers] = ['public', 'teachers'].map((name) => builtPages().find(({ path, served }) => path.endsWith('/draft/questions/index.html') && served.name === name)!);

/** Stems and lettered options of what is shown. */
const asked = (page: Page): Promise<{ stem: string; options: string[] }[]> =>
  page.locator('.question:visible').evaluateAll((items) =>
    items.map((item) => ({
      stem: item.querySelector('.matter > p')?.textContent ?? '',
      options: [...item.querySelectorAll('.options > li')].map((option) => option.textContent?.trim() ?? ''),
    })));

describe('the questions of a kit', () => {
  it('become a paper as it is chosen, and a list again', () =>
    open({}, async (page) => {
      await page.goto(everybody!.address, { waitUntil: 'load' });
      const all = await asked(page);
      await page.getByRole('radio', { name: 'B' }).check();
      const six = await asked(page);
      expect(six).toHaveLength(6);
      expect(await page.locator('#paper .ordinal').allTextContents()).toEqual(['1', '2', '3', '4', '5', '6']);
      await page.getByRole('combobox', { name: 'Questions' }).selectOption('3');
      await page.getByRole('checkbox', { name: '3' }).uncheck();
      expect(await asked(page)).toHaveLength(3);
      expect(await page.evaluate(() => location.hash)).toBe('#paper-b-3-12');
      expect(await page.getByRole('heading', { name: 'Paper B' }).isVisible()).toBe(true);
      expect((await new AxeBuilder({ page }).setLegacyMode().analyze()).violations.map(({ id }) => id)).toEqual([]);
      await page.getByRole('button', { name: 'List all again' }).click();
      expect(await asked(page)).toEqual(all);
      expect(await page.evaluate(() => location.hash)).toBe('');
    }));

  it('have the same paper behind an address in both folders, for the room that it names, and only the teachers’ tells what is right', () =>
    open({}, async (page) => {
      const anchor = '#paper-c-12-123&elevation=1600m';
      const read = async (address: string) => {
        await page.goto('about:blank');
        await page.goto(`${address}${anchor}`, { waitUntil: 'load' });
        await expect.poll(() => page.locator('.your-room [data-room-title]').innerText()).toBe('your room');
        return asked(page);
      };
      const students = await read(fileAddress(everybody!));
      expect(await page.locator('.answer, .reasons').count()).toBe(0);
      expect(await read(fileAddress(teachers!))).toEqual(students);
      expect(await page.getByRole('heading', { name: 'Key to paper C' }).isVisible()).toBe(true);
      const key = await page.locator('#paper .question-choice').evaluateAll((items) =>
        items.map((item) => [...item.querySelectorAll('.reasons > li')].map((reason) => reason.querySelector('strong')?.textContent)));
      for (const letters of key) expect(letters).toEqual([...'ABCDEFGH'].slice(0, letters.length));
    }));

  it('keep each option with its own reason in every version', () =>
    open({}, async (page) => {
      const pairs = async (version: string) => {
        await page.goto('about:blank');
        await page.goto(`${teachers!.address}#paper-${version}-12-123`, { waitUntil: 'load' });
        const found = await page.locator('#paper .question-choice').evaluateAll((items) =>
          items.flatMap((item) => {
            const reasons = [...item.querySelectorAll('.reasons > li')].map((one) => one.textContent?.slice(1).trim());
            return [...item.querySelectorAll('.options > li')].map((one, i) => `${item.id} ${one.querySelector('.letter + span')?.textContent} ${reasons[i]}`);
          }));
        return found.sort();
      };
      const first = await pairs('a');
      expect(first.length).toBeGreaterThan(8);
      for (const version of 'bcd') expect(await pairs(version), version).toEqual(first);
    }));

  it('print as they are chosen, without what chose them', () =>
    open({}, async (page) => {
      await page.goto(`${everybody!.address}#paper-d-4-12`, { waitUntil: 'load' });
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('form.paper-choice').isVisible()).toBe(false);
      expect(await page.locator('.question:visible').count()).toBe(4);
      expect(await page.locator('#paper .name-line').isVisible()).toBe(true);
    }));
});
