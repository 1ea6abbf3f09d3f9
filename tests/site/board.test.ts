/** The board: read from the back of a room, worked by keys, whole without script; nothing on it that tells too early or that is for teachers. */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, ofOneKit } from '../support/browsing.ts';
import { lettersOf, secretsOf } from '../support/lesson-secrets.ts';
import { ROOT } from '../support/root.ts';

const open = browserForFile();
const boards = ofOneKit(builtPages().filter(({ path }) => path.endsWith('/board/index.html')));
const SCREEN = { width: 1280, height: 720 };

/** Body text is to be at least this part of the screen's height. */
const LEAST_TEXT = 1 / 20;

const look = (address: string, at: (page: Page) => Promise<void>, options = {}): Promise<void> =>
  open({ viewport: SCREEN, ...options }, async (page) => {
    await page.goto(address, { waitUntil: 'load' });
    await at(page);
  });

/** The number of the board at the top of the screen. */
const shown = (page: Page): Promise<number> =>
  page.evaluate(() => [...document.querySelectorAll('.board')].findIndex((board) => Math.abs(board.getBoundingClientRect().top) < 3) + 1);

it('finds boards for both editions', () => expect(boards.length).toBeGreaterThanOrEqual(2));

describe.each(boards)('$name', ({ address, path, served }) => {
  it('has a board for each step and each question, each a screen high, and says for which room', () =>
    look(address, async (page) => {
      const count = await page.locator('.board').count();
      const places = (await page.locator('.board-place').allInnerTexts()).join('\n');
      const number = (pattern: RegExp): number => Number(pattern.exec(places)?.[1] ?? 0);
      const steps = number(/Step 1 of (\d+)/);
      expect(steps).toBeGreaterThan(3);
      expect(count).toBe(1 + steps + number(/Question 1 of (\d+)/));
      const heights = await page.locator('.board').evaluateAll((all) => all.map((board) => board.getBoundingClientRect().height));
      expect(Math.min(...heights)).toBeGreaterThanOrEqual(SCREEN.height);
      expect((await page.locator('.board-room').allInnerTexts()).filter((text) => text.length < 15)).toEqual([]);
    }));

  it.each([SCREEN, { width: 1024, height: 768 }, { width: 3840, height: 2160 }])('is set in letters for the back row at $width × $height', (viewport) =>
    look(address, async (page) => {
      await page.setViewportSize(viewport);
      const sizes = await page.locator('.board-matter :is(h1, h2, p, li, summary)').evaluateAll((texts) => texts.map((text) => parseFloat(getComputedStyle(text).fontSize)));
      expect(sizes.length).toBeGreaterThan(20);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(viewport.height * LEAST_TEXT);
      await page.setViewportSize(SCREEN);
    }));

  it('cuts nothing: each board is one screen at 16 : 9 with nothing beyond its edges', () =>
    look(address, async (page) => {
      const beyond = await page.locator('.board').evaluateAll((all) => all.filter((board) => board.scrollWidth > board.clientWidth || board.getBoundingClientRect().height > innerHeight + 3).map((board) => board.id));
      expect(beyond).toEqual([]);
    }));

  it('asks before it shows: the next key uncovers the reading, the one after goes on', () =>
    look(address, async (page) => {
      const at = await page.locator('.board').evaluateAll((all) => all.findIndex((board) => board.querySelector('details.reveal') !== null));
      expect(at).toBeGreaterThan(0);
      for (let presses = 0; presses < at; presses++) await page.keyboard.press('ArrowRight');
      expect(await shown(page)).toBe(at + 1);
      const reading = page.locator('.board').nth(at).locator('.shown');
      expect(await reading.isVisible()).toBe(false);
      await page.keyboard.press(' ');
      expect(await reading.isVisible()).toBe(true);
      expect(await page.locator('[aria-live=polite]').textContent()).toBe(await reading.textContent());
      expect(await shown(page)).toBe(at + 1);
      await page.keyboard.press(' ');
      expect(await shown(page)).toBe(at + 2);
    }));

  it('obeys its other keys, takes the focus along, and keeps what stands after #', () =>
    look(`${address}#room`, async (page) => {
      const count = await page.locator('.board').count();
      await page.keyboard.press('End');
      expect(await shown(page)).toBe(count);
      expect(await page.evaluate(() => document.activeElement?.id)).toBe(`board-${count}`);
      await page.keyboard.press('ArrowLeft');
      expect(await shown(page)).toBe(count - 1);
      await page.locator('.board').nth(count - 2).locator('.to-next').click();
      expect(await shown(page)).toBe(count);
      await page.keyboard.press('Home');
      expect(await shown(page)).toBe(1);
      expect(new URL(page.url()).hash).toBe('#room');
      expect(await page.locator('.board-keys').isVisible()).toBe(true);
      await page.keyboard.press('Escape');
      await page.waitForURL((url) => url.pathname.endsWith(`/${path.replace('board/index.html', 'index.html')}`) && url.hash === '#room');
    }));

  it('leads from board to board without script', () =>
    look(address, async (page) => {
      await page.locator('.board').first().locator('.to-next').click();
      expect(await shown(page)).toBe(2);
      await page.locator('.board').nth(1).locator('.to-previous').click();
      expect(await shown(page)).toBe(1);
      const covered = page.locator('details.reveal').first();
      await covered.locator('summary').click();
      expect(await covered.locator('.shown').isVisible()).toBe(true);
    }, { javaScriptEnabled: false }));

  it('shows no answer and nothing of the teacher’s, in either edition', () =>
    look(address, async (page) => {
      const letters = lettersOf((await page.locator('main').textContent()) ?? '');
      const secrets = secretsOf(join(ROOT, 'content'));
      expect(secrets.length).toBeGreaterThan(10);
      expect(secrets.filter((secret) => letters.includes(secret.letters)), served.name).toEqual([]);
    }));
});
