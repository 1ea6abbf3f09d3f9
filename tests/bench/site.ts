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

interface Redraws {
  readonly first: number;
  /** Of what is in sight, in order of length, ms. */
  readonly times: readonly number[];
  readonly whole: readonly number[];
  /** Of the thread beside the page, which the browser does not slow. */
  readonly beside: readonly number[];
}

/** Times of the thread for each question it is asked, kept in it. */
interface Timed {
  onmessage: (event: MessageEvent) => void;
  times: number[];
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
  const times: number[] = [];
  const whole: number[] = [];
  for (let redraw = 0; redraw < REDRAWS; redraw++) {
    await page.evaluate(() => performance.clearMeasures());
    await page.fill('#room-temperature', String(15 + (redraw % 12)));
    await page.waitForFunction(() => performance.getEntriesByName('room-all').length > 0);
    const [room, all] = await page.evaluate(() => ['room', 'room-all'].map((name) => performance.getEntriesByName(name)[0]?.duration ?? 0));
    times.push(room!);
    whole.push(all!);
  }
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const sorted = (list: number[]): number[] => [...list].sort((a, b) => a - b);
  const beside = await thread?.evaluate(() => (globalThis as unknown as Timed).times);
  return { first: times[0]!, times: sorted(times), whole: sorted(whole), beside: sorted(beside ?? []) };
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
      const { first, times, whole, beside } = await redraws(page, await page.context().newCDPSession(page), `${origin}${path}`);
      await page.close();
      rows.push([path.replace(/\/index\.html$/, ''), first.toFixed(1), quantile(times, 0).toFixed(1), quantile(times, 0.5).toFixed(1), quantile(times, 0.9).toFixed(1), quantile(whole, 0.5).toFixed(1), beside.length === 0 ? '' : quantile(beside, 0.5).toFixed(1)]);
    }
    for (const name of ['reader.js', 'reader-room.js', 'reader-more.js', 'will-it-work.js']) {
      const script = readFileSync(join(site, name));
      rows.push([`${name}: bytes as they are, brotli, gzip`, String(script.length), String(brotliCompressSync(script).length), String(gzipSync(script).length), '', '', '']);
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
  title: `The reader’s room: milliseconds until what is in sight is drawn again, processor slowed ${SLOWED} times, ${REDRAWS} rooms. What is out of sight and the simulations follow, without a pause where that is soon done: whole page. A thread of its own runs the simulations meanwhile, which the browser does not slow: last column.`,
  head: ['page', 'first', 'fastest', 'median', 'nine in ten below', 'whole page, median', 'simulations beside, median'],
  measure,
};
