/** The readings page: whole without script; with it a class's own table is fitted on the device, and nothing leaves it. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { text as textOf } from 'node:stream/consumers';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Live } from '../../src/sheets/html/live.ts';
import { browserForFile, oneSheet, troublesOf } from '../support/browsing.ts';
import { classRun, TRUTH } from '../support/class-run.ts';

const open = browserForFile();
const pages = oneSheet('readings');

it('stands in every kit', () => expect(pages.length).toBeGreaterThan(0));

describe.each(pages)('$name', ({ address, served }) => {
  const look = (at: (page: Page) => Promise<void>, options = {}): Promise<void> =>
    open({ acceptDownloads: true, ...options }, async (page) => {
      await page.goto(address, { waitUntil: 'load' });
      if (!('javaScriptEnabled' in options)) {
        await page.evaluate(() => localStorage.clear());
        await page.reload({ waitUntil: 'load' });
      }
      await at(page);
    });
  const enter = (page: Page, text: string): Promise<void> => page.getByLabel('Your readings').fill(text);
  const compare = (page: Page): Promise<void> => page.getByRole('button', { name: 'Compare with the model' }).click();
  const said = (page: Page, words: string): Promise<void> => page.getByRole('status').and(page.locator('[data-part=status]')).filter({ hasText: words }).waitFor();
  const simulated = async (page: Page, seed: number): Promise<string> =>
    classRun((JSON.parse((await page.locator('#own-readings').getAttribute('data-live')) ?? '') as Live).conditions, seed);

  it('says without script how to record and what to expect, and shows recorded classes with their constants', () =>
    look(async (page) => {
      expect(await page.locator('#own-readings').isVisible()).toBe(false);
      expect(await page.locator('#how-to-record li').count()).toBeGreaterThan(3);
      expect(await page.locator('#what-to-expect svg').isVisible()).toBe(true);
      const recorded = page.locator('section[id^=readings-]');
      expect(await recorded.count()).toBeGreaterThan(0);
      expect(await recorded.first().locator('.constants tbody tr').count()).toBe(4);
      expect(await recorded.first().innerText()).toMatch(/Explained\.[^]*Not explained\./);
      await recorded.first().locator('summary').click();
      expect(await recorded.first().locator('.readings-table tbody tr').count()).toBeGreaterThan(20);
    }, { javaScriptEnabled: false }));

  it('finds the constants of a pasted run within three standard errors, and asks nothing of any network', () =>
    look(async (page) => {
      const troubles = troublesOf(page, served.address);
      // A browser may fetch the page's own icon after it has loaded; nothing else, and nothing with words of the reader in it.
      const own = await page.locator('link[href], script[src]').evaluateAll((all) => all.map((one) => (one as HTMLLinkElement).href || (one as HTMLScriptElement).src));
      const asked: string[] = [];
      page.on('request', (request) => {
        if (request.method() !== 'GET' || !own.includes(request.url())) asked.push(`${request.method()} ${request.url()}`);
      });
      await enter(page, await simulated(page, 11));
      await page.context().setOffline(true);
      await compare(page);
      await said(page, 'readings compared').finally(() => page.context().setOffline(false));
      const rows = await page.locator('#own-readings .constants tbody tr').allInnerTexts();
      const truths = [TRUTH.walls, TRUTH.thermometer, TRUTH.leak * 6000, TRUTH.offset];
      const off = rows.map((row, i) => {
        const [, value = '', error = ''] = row.split('\t');
        return Math.abs(parseFloat(value.replace('−', '-')) - truths[i]!) / parseFloat(error);
      });
      expect(off).toHaveLength(4);
      expect(Math.max(...off)).toBeLessThan(3);
      expect(await page.locator('#own-readings .readings-table tbody tr').count()).toBe(31);
      expect(asked).toEqual([]);
      expect(troubles).toEqual({ console: [], requests: [] });
      const { violations } = await new AxeBuilder({ page }).setLegacyMode().analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    }));

  it('prints the part for own readings only when there is something in it', () =>
    look(async (page) => {
      const own = page.locator('#own-readings');
      await page.emulateMedia({ media: 'print' });
      expect(await own.isVisible()).toBe(false);
      await page.emulateMedia({ media: null });
      await enter(page, await simulated(page, 11));
      await compare(page);
      await said(page, 'readings compared');
      await page.emulateMedia({ media: 'print' });
      expect(await own.locator('.constants').isVisible()).toBe(true);
      expect(await own.locator('textarea, form, fieldset, button').evaluateAll((all) => all.filter((one) => one.checkVisibility()).length)).toBe(0);
      await page.emulateMedia({ media: null });
    }));

  it('says line and reason of what is wrong', () =>
    look(async (page) => {
      await enter(page, 'time (s),gauge (kPa),thermometer (°C)\n0,0,21\n5,=A1,21\n4,-5\n10,x,21');
      await compare(page);
      await said(page, 'wrong');
      const problems = await page.locator('[data-part=problems] li').allInnerTexts();
      expect(problems.map((text) => /^Line (\d+, column \d+)/.exec(text)?.[1]).sort()).toEqual(['3, column 2', '4, column 3', '5, column 2']);
      expect(problems.join(' ')).toMatch(/formula[^]*2 cells[^]*not a plain number/);
      expect(await page.locator('#own-readings svg').count()).toBe(0);
    }));

  it('takes rows by keyboard, refuses a wrong one, keeps them on the device and clears them', () =>
    look(async (page) => {
      for (const cells of [['0', '0', '21.0'], ['5', '-4', '20.5']]) {
        await page.getByLabel('time (s)').focus();
        for (const [i, cell] of cells.entries()) {
          await page.keyboard.type(cell);
          await page.keyboard.press(i < cells.length - 1 ? 'Tab' : 'Enter');
        }
      }
      const text = 'time (s),gauge (kPa),thermometer (°C)\n0,0,21.0\n5,-4,20.5\n';
      expect(await page.getByLabel('Your readings').inputValue()).toBe(text);
      await page.keyboard.type('3');
      await page.keyboard.press('Tab');
      await page.keyboard.type('-5');
      await page.keyboard.press('Tab');
      await page.keyboard.type('20');
      await page.keyboard.press('Enter');
      await said(page, 'not added');
      expect(await page.locator('[data-part=problems] li').innerText()).toContain('does not come after');
      await page.reload({ waitUntil: 'load' });
      expect(await page.getByLabel('Your readings').inputValue()).toBe(text);
      await page.getByRole('button', { name: 'Clear' }).click();
      await page.reload({ waitUntil: 'load' });
      expect(await page.getByLabel('Your readings').inputValue()).toBe('');
    }));

  it('loads a file, and saves what was entered', () =>
    look(async (page) => {
      const text = await simulated(page, 12);
      await page.getByLabel('Or load a CSV file').setInputFiles({ name: 'class.csv', mimeType: 'text/csv', buffer: Buffer.from(`\ufeff${text}`) });
      await said(page, 'readings compared');
      const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save as CSV' }).click()]);
      expect(await textOf(await download.createReadStream())).toBe(`${text.replaceAll('\n', '\r\n')}\r\n`);
      expect(download.suggestedFilename()).toMatch(/-readings\.csv$/);
    }));

  const offsetOf = async (page: Page): Promise<number> => {
    const [, value = ''] = (await page.locator('#own-readings .constants tbody tr').last().innerText()).split('\t');
    return parseFloat(value.replace('−', '-'));
  };

  it('fits for the room that the address names, or the device keeps, and says which', () =>
    look(async (page) => {
      await enter(page, await simulated(page, 13));
      await compare(page);
      await said(page, 'readings compared');
      const outcome = page.locator('[data-part=outcome]');
      const own = await outcome.locator('[data-computed-for]').innerText();
      const inKitsRoom = await offsetOf(page);
      await page.goto(`${address}#elevation=1600m&temperature=18C`);
      await page.reload({ waitUntil: 'load' });
      await compare(page);
      await said(page, 'compared for your room');
      expect(await outcome.locator('[data-computed-for]').innerText()).toMatch(/^Computed for your room: 18\.0 °C, 83\.\d kPa/);
      // The same readings in a room that is colder: the thermometer is the more off.
      const colder = JSON.parse((await page.locator('#own-readings').getAttribute('data-live'))!) as Live;
      expect((await offsetOf(page)) - inKitsRoom).toBeCloseTo(colder.conditions.inputs.roomTemperature.value - 291.15, 0);
      // As another page of the site leaves it on the device: nothing in the address.
      await page.evaluate(() => localStorage.setItem('lapsebook.room', 'temperature=18C'));
      await page.goto('about:blank');
      await page.goto(address, { waitUntil: 'load' });
      await compare(page);
      await said(page, 'compared for your room');
      expect(await outcome.locator('[data-computed-for]').innerText()).not.toBe(own);
      expect((await offsetOf(page)) - inKitsRoom).toBeCloseTo(colder.conditions.inputs.roomTemperature.value - 291.15, 0);
    }));

  it('follows the reader’s units everywhere: a new table, what is expected, recorded classes, the fit', () =>
    look(async (page) => {
      const text = await simulated(page, 14);
      await page.goto('about:blank');
      await page.goto(`${address}#units=customary`, { waitUntil: 'load' });
      await page.getByLabel('gauge (inHg)').waitFor();
      expect(await page.locator('#readings-text').getAttribute('placeholder')).toBe('time (s),gauge (inHg),thermometer (°F)');
      await enter(page, text);
      await compare(page);
      await said(page, 'readings compared');
      for (const place of ['#what-to-expect', 'section[id^=readings-]', '[data-part=outcome]']) {
        expect(await page.locator(`${place} svg`).first().textContent()).toMatch(/inHg against the room[^]*Thermometer, °F/);
        expect(await page.locator(`${place} .readings-table thead`).first().textContent()).toMatch(/inHgkPa|inHg kPa/);
      }
      expect(await page.locator('[data-part=outcome] .constants').innerText()).toContain('°F');
      expect(await page.locator('[data-part=outcome] .found').innerText()).not.toMatch(/\d K\b/);
      const { violations } = await new AxeBuilder({ page }).setLegacyMode().analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    }));

  it('understands a file in the letters of an older spreadsheet, with other units', () =>
    look(async (page) => {
      const [, ...rows] = (await simulated(page, 15)).split('\n');
      const table = ['time (min:s);gauge (hPa);thermometer (°F)', ...rows.map((row) => {
        const [time = 0, gauge = 0, thermometer = 0] = row.split(',').map(Number);
        return [`${Math.floor(time / 60)}:${String(time % 60).padStart(2, '0')}`, (gauge * 10).toFixed(1), (thermometer * 1.8 + 32).toFixed(2)].join(';').replaceAll('.', ',');
      })].join('\r\n');
      await page.getByLabel('Or load a CSV file').setInputFiles({ name: 'class.csv', mimeType: 'text/csv', buffer: Buffer.from(table, 'latin1') });
      await said(page, 'readings compared');
      const rowsShown = await page.locator('#own-readings .constants tbody tr').allInnerTexts();
      const [walls, error] = rowsShown[0]!.split('\t').slice(1).map(parseFloat) as [number, number];
      expect(Math.abs(walls - TRUTH.walls) / error).toBeLessThan(4);
    }));

  it('carries a script of its own below 30,000 bytes compressed', async () => {
    const code = await readFile(join(served.folder, 'readings.js'));
    const sizes = { brotli: brotliCompressSync(code).length, gzip: gzipSync(code, { level: 9 }).length };
    console.log(`readings.js: ${code.length} bytes, brotli ${sizes.brotli}, gzip ${sizes.gzip}`);
    expect(sizes.brotli).toBeLessThan(30_000);
  });
});
