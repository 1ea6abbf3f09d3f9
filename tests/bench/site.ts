/**
 * How long a page takes to be drawn again for the reader's room, in a real browser whose processor is slowed four times,
 * and how large its script is. On a machine that does something else besides, the times are those of both.
 */
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import type { CDPSession, Page } from 'playwright-core';
import { staticServer } from '../../src/commands/static-server.ts';
import { openBrowser } from '../support/chromium.ts';
import { buildForTests } from '../support/command.ts';
import { filesBelow, newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';
import { quantile, type BenchRow, type BenchSection } from './section.ts';

const SLOWED = 4;
const REDRAWS = 25;
const SHEETS = ['numbers', 'background', 'run', 'questions', 'booklet'];
/** The browser compiles what runs often; a reader has looked at the control for as long, ms. */
const OPEN_FOR = 5000;
/** A reader looks at what came before stepping on, ms. */
const BETWEEN = 250;

/** Milliseconds, in order of length. */
interface Redraws {
  /** What is in sight, for a temperature typed. */
  readonly seen: readonly number[];
  /** The whole page. */
  readonly typed: readonly number[];
  readonly stepped: readonly number[];
  /** By an address, which nobody could foresee. */
  readonly addressed: readonly number[];
  /** Of the thread beside the page for each question, which the browser does not slow. */
  readonly beside: readonly number[];
}

/** Times of the thread for each question it is asked, kept in it. */
interface Timed {
  onmessage: (event: MessageEvent) => void;
  times: number[];
}

/** Does something to a page again and again, and says how long what is in sight and all of it took to be drawn. */
async function drawnAgain(page: Page, act: (redraw: number) => Promise<unknown>): Promise<{ readonly seen: number[]; readonly whole: number[] }> {
  const seen: number[] = [];
  const whole: number[] = [];
  for (let redraw = 0; redraw < REDRAWS; redraw++) {
    await page.evaluate(() => performance.clearMeasures());
    await act(redraw);
    await page.waitForFunction(() => performance.getEntriesByName('room-all').length > 0);
    const [room, all] = await page.evaluate(() => ['room', 'room-all'].map((name) => performance.getEntriesByName(name)[0]?.duration ?? 0));
    seen.push(room!);
    whole.push(all!);
    await page.waitForTimeout(BETWEEN);
  }
  return { seen, whole };
}

async function redraws(page: Page, session: CDPSession, address: string): Promise<Redraws> {
  await page.goto(address, { waitUntil: 'load' });
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await page.locator('.your-room > summary').click();
  await page.waitForTimeout(OPEN_FOR);
  const [thread] = page.workers();
  await thread?.evaluate(() => {
    const timed = globalThis as unknown as Timed;
    const answer = timed.onmessage;
    timed.times = [];
    timed.onmessage = (event) => {
      const started = performance.now();
      answer(event);
      timed.times.push(performance.now() - started);
    };
  });
  const temperature = (redraw: number): number => 15 + (redraw % 12);
  const typed = await drawnAgain(page, (redraw) => page.fill('#room-temperature', String(temperature(redraw))));
  const stepped = await drawnAgain(page, (redraw) => page.keyboard.press(redraw % 12 < 6 ? 'ArrowUp' : 'ArrowDown'));
  const addressed = await drawnAgain(page, (redraw) => page.evaluate((celsius) => (location.hash = `#temperature=${celsius}C`), temperature(redraw) + 0.2));
  const beside = await thread?.evaluate(() => (globalThis as unknown as Timed).times);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const sorted = (list: number[] = []): number[] => list.sort((a, b) => a - b);
  return { seen: sorted(typed.seen), typed: sorted(typed.whole), stepped: sorted(stepped.whole), addressed: sorted(addressed.whole), beside: sorted(beside) };
}

async function measure(progress: (what: string) => void): Promise<BenchRow[]> {
  const folder = newFolder();
  const site = join(folder, 'site');
  progress('building');
  await buildForTests(join(ROOT, 'content'), site);
  const browser = await openBrowser();
  // From a disk a page has no thread beside it.
  const { server } = staticServer(site);
  await once(server.listen(0, 'localhost'), 'listening');
  const origin = `http://localhost:${(server.address() as AddressInfo).port}/`;
  try {
    const rows: BenchRow[] = [];
    for (const path of filesBelow(site).filter((file) => SHEETS.some((sheet) => file.endsWith(`/${sheet}/index.html`)))) {
      progress(path);
      const page = await browser.newPage();
      const { seen, typed, stepped, addressed, beside } = await redraws(page, await page.context().newCDPSession(page), `${origin}${path}`);
      await page.close();
      const cells = [[seen, 0.5], [typed, 0.5], [typed, 0.9], [stepped, 0.5], [stepped, 0.9], [addressed, 0.5], [beside, 0.5]] as const;
      rows.push([path.replace(/\/index\.html$/, ''), ...cells.map(([times, part]) => (times.length === 0 ? '' : quantile(times, part).toFixed(1)))]);
    }
    for (const name of ['reader.js', 'reader-room.js', 'reader-more.js', 'will-it-work.js']) {
      const script = readFileSync(join(site, name));
      rows.push([`${name}: bytes as they are, brotli, gzip`, String(script.length), String(brotliCompressSync(script).length), String(gzipSync(script).length), '', '', '', '']);
    }
    return rows;
  } finally {
    await browser.close();
    server.close();
    await removeFolder(folder);
  }
}

export const site: BenchSection = {
  name: 'site',
  title: `The reader’s room: milliseconds until a page is drawn again, processor slowed ${SLOWED} times, ${REDRAWS} rooms. What is typed counts from the end of the pause in which it is waited for; the thread beside the page, which the browser does not slow, has computed it by then, as it has the next step. An address cannot be foreseen, and what the browser does to follow it counts along.`,
  head: ['page', 'typed: in sight', 'whole page', 'nine in ten below', 'stepped: whole page', 'nine in ten below', 'from an address: whole page', 'a question to the thread'],
  measure,
};
