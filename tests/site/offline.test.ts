/** Without a network: what was opened is whole, and an update brings a new edition whole and mixes nothing. */
import { readFileSync, writeFileSync } from 'node:fs';
import { cp } from 'node:fs/promises';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { staticServer } from '../../src/commands/static-server.ts';
import { sharedBuild } from '../support/builds.ts';
import { joinBrowser } from '../support/chromium.ts';
import { buildForTests } from '../support/command.ts';
import { filesBelow, newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

/** Deep in a path: the worker may claim no more than its own site. */
const BASE = '/a/b/';
const SHEETS = ['', 'run/', 'student/', 'background/', 'numbers/', 'questions/', 'safety/', 'board/', 'booklet/'];
/** The room of the changed kit before and after, °C, as its pages state it. */
const OLD_ROOM = '20.00 °C';
const NEW_ROOM = '21.0 °C';
/** From the label on the kit's page. */
const STATED_ROOM = /Room temperature<\/dt>.*?([\d.]+ °C)/s;

const place = newFolder();
const content = join(place, 'content');
const site = join(place, 'site');
let server: Server;
let port = 0;
let context: BrowserContext;
let page: Page;
let browser: Browser;

const address = (path: string): string => `http://127.0.0.1:${port}${BASE}${path}`;
const kitFile = (kit: string, file: string): string => join(content, 'kits', kit, file);
const sheetsOf = (kit: string): string[] => SHEETS.map((sheet) => `kits/${kit}/draft/${sheet}index.html`);

async function listen(): Promise<void> {
  server = staticServer(site, { base: BASE }).server;
  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
  port = (server.address() as AddressInfo).port;
}

const statedRoom = (): string | undefined => STATED_ROOM.exec(readFileSync(join(site, 'kits/first-cloud/draft/index.html'), 'utf8'))?.[1];

/** One on which nothing of the site was opened yet. */
async function takeAnotherDevice(): Promise<void> {
  context = await browser.newContext();
  page = await context.newPage();
}

/** No server answers any more, and the browser knows that it has no network. */
async function disconnect(): Promise<void> {
  await context.setOffline(true);
  server.closeAllConnections();
  await new Promise((resolve) => server.close(resolve));
}

async function connect(): Promise<void> {
  await listen();
  await context.setOffline(false);
}

/** Opens a page and waits until its worker says that it is kept. */
async function openAndKeep(path: string): Promise<void> {
  await page.goto(address(path), { waitUntil: 'load' });
  await page.waitForFunction(() => document.documentElement.dataset['offline'] === 'kept', undefined, { timeout: 20_000 });
}

/** The bytes of a page and of every file it loads, as the browser has them, that differ from those of a folder. */
async function strange(path: string): Promise<string[]> {
  await page.goto(address(path), { waitUntil: 'load' });
  const files = await page.evaluate(async () => {
    const linked = [...document.querySelectorAll<HTMLLinkElement>('link[rel=stylesheet], link[rel=icon]')].map(({ href }) => href);
    const scripts = [...document.querySelectorAll<HTMLScriptElement>('script[src]')].map(({ src }) => src);
    const broken = [...document.querySelectorAll<HTMLLinkElement>('link[rel=stylesheet]')].filter(({ sheet, media }) => sheet === null && media !== 'print').map(({ href }) => href);
    return { names: [...linked, ...scripts].map((name) => name.slice(new URL('.', name).origin.length)), broken };
  });
  const names = [path, ...files.names.map((name) => name.slice(BASE.length))];
  const cached = await storedTexts(names);
  const own = names.filter((name) => cached[name] !== readFileSync(join(site, name), 'utf8'));
  return [...own, ...files.broken];
}

/** What is stored for this site, by path: everything, or only some paths. */
const storedTexts = (wanted?: readonly string[]): Promise<Record<string, string>> =>
  page.evaluate(async ([base, paths]) => {
    const texts: Record<string, string> = {};
    const known = new Set<string>();
    for (const name of (await caches.keys()).filter((one) => !one.endsWith('opened'))) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        const path = new URL(request.url).pathname.slice(base.length);
        if (known.has(path)) throw new Error(`${path} is stored twice.`);
        known.add(path);
        if (paths === undefined || paths.includes(path)) texts[path] = await ((await cache.match(request)) as Response).text();
      }
    }
    return texts;
  }, [BASE, wanted] as const);

const editions = (): Promise<string[]> => page.evaluate(async () => (await caches.keys()).filter((name) => !name.endsWith('opened')));

beforeAll(async () => {
  await cp(join(ROOT, 'tests', 'content', 'good', 'valle'), content, { recursive: true });
  const built = await sharedBuild(inject('builds'), 'valle');
  for (const ending of ['', '-teachers']) await cp(`${built}${ending}`, `${site}${ending}`, { recursive: true });
  await listen();
  browser = await joinBrowser(inject('browser'));
  await takeAnotherDevice();
}, 240_000);

afterAll(async () => {
  await browser.close();
  server.closeAllConnections();
  server.close();
  await removeFolder(place);
});

describe('one kit opened', () => {
  it('says on the page when it is kept, in letters that can be read', async () => {
    await openAndKeep('kits/first-cloud/draft/index.html');
    expect(await page.locator('.foot').innerText()).toContain('kept on this device');
    const { violations, passes } = await new AxeBuilder({ page }).setLegacyMode().include('.foot').withRules(['color-contrast']).analyze();
    expect([violations, passes.length]).toEqual([[], 1]);
  });

  it('says plainly of one that was never opened that it is not on the device', async () => {
    await disconnect();
    const answer = await page.goto(address('kits/primera-nube/draft/index.html'), { waitUntil: 'load' });
    expect(answer?.status()).toBe(503);
    expect(await page.locator('h1').innerText()).toBe('No está en este dispositivo');
    await context.close();
    await listen();
    await takeAnotherDevice();
  });
});

describe('two kits opened', () => {
  it('shows every sheet of both without a network, each with its styles and scripts', async () => {
    // The address of a kit is that of what is shown there.
    await openAndKeep('kits/first-cloud/');
    await openAndKeep('kits/primera-nube/draft/run/');
    await disconnect();
    const errors: string[] = [];
    page.on('pageerror', ({ message }) => errors.push(message));
    for (const path of ['kits/first-cloud/index.html', ...['first-cloud', 'primera-nube'].flatMap(sheetsOf)]) {
      expect(await strange(path), path).toEqual([]);
      expect(await page.locator('h1').count(), path).toBe(1);
      expect(await page.evaluate(() => getComputedStyle(document.body).fontFamily), path).toMatch(/Source Serif|IBM Plex/);
    }
    expect(errors).toEqual([]);
  });

  it('finds without a network, and goes by addresses without a file name', async () => {
    await page.goto(address('search/'), { waitUntil: 'load' });
    await page.getByRole('searchbox').fill('nube');
    expect(await page.locator('#find li').count()).toBeGreaterThan(0);
    await page.goto(address('kits/primera-nube/draft'), { waitUntil: 'load' });
    expect(page.url()).toBe(address('kits/primera-nube/draft/'));
    expect(await page.locator('h1').innerText()).toBe('Primera nube');
  });
});

describe('a second build in the same place', () => {
  let before: string[];

  it('replaces one kit', async () => {
    await connect();
    await openAndKeep('kits/first-cloud/draft/index.html');
    before = await editions();
    expect(before).toHaveLength(1);
    expect(statedRoom()).toBe(OLD_ROOM);
    const room = readFileSync(join(content, 'rooms', 'taller.yaml'), 'utf8');
    writeFileSync(join(content, 'rooms', 'warm-room.yaml'), room.replace(/^temperature: .*$/m, 'temperature: 21.0 °C ± 0.5 K'));
    writeFileSync(kitFile('first-cloud', 'kit.yaml'), `${readFileSync(kitFile('first-cloud', 'kit.yaml'), 'utf8')}room: warm-room\n`);
    await buildForTests(content, site);
    expect(statedRoom()).toBe(NEW_ROOM);
  }, 240_000);

  it('is whole on the device after the page was loaded twice, and the old one is gone', async () => {
    await page.reload({ waitUntil: 'load' });
    await expect.poll(editions, { timeout: 30_000 }).not.toContain(before[0]);
    await page.reload({ waitUntil: 'load' });
    await page.waitForFunction(() => document.documentElement.dataset['offline'] === 'kept');
    expect(await editions()).toHaveLength(1);
    await disconnect();
    for (const path of ['first-cloud', 'primera-nube'].flatMap(sheetsOf)) expect(await strange(path), path).toEqual([]);
    await page.goto(address('kits/first-cloud/draft/'), { waitUntil: 'load' });
    const conditions = (await page.locator('.title-block .conditions').allInnerTexts()).join();
    expect(conditions).toContain(NEW_ROOM);
    expect(conditions).not.toContain(OLD_ROOM);
  });

  it('holds no file of the old one', async () => {
    const stored = await storedTexts();
    expect(Object.keys(stored).filter((path) => stored[path] !== readFileSync(join(site, path), 'utf8') && !path.endsWith('.woff2'))).toEqual([]);
    expect(Object.keys(stored).length).toBeGreaterThan(2 * SHEETS.length);
  });
});

describe('an update that cannot be brought whole', () => {
  it('leaves the old edition whole', async () => {
    await connect();
    await openAndKeep('kits/first-cloud/draft/index.html');
    const [before] = await editions();
    const old = await storedTexts();
    // A server between two states: the new worker stands beside a page that is not of its edition.
    const worker = join(site, 'service-worker.js');
    writeFileSync(worker, readFileSync(worker, 'utf8').replace(/"?digest"?:"[0-9a-f]+"/, 'digest:"0123456789"').replace(/("kits\/first-cloud\/draft\/":")[0-9a-f]{4}/, '$10000'));
    const failed = page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update();
      const state = registration.installing;
      if (state === null) return 'none';
      await new Promise<void>((resolve) => state.addEventListener('statechange', () => resolve()));
      return state.state;
    });
    expect(await failed).toBe('redundant');
    await disconnect();
    await page.goto(address('kits/first-cloud/draft/run/index.html'), { waitUntil: 'load' });
    expect(await page.locator('h1').innerText()).toBe('Run sheet');
    const kept = await page.evaluate(async (name) => (await (await caches.open(name)).keys()).length, before ?? '');
    expect(kept).toBe(Object.keys(old).length);
  });
});

it('keeps no print, no zip and no page that holds a kit in one file', () => {
  const lists = filesBelow(site).filter((path) => path.endsWith('/offline.json'));
  expect(lists).toHaveLength(2);
  const listed = lists.flatMap((path) => Object.keys(JSON.parse(readFileSync(join(site, path), 'utf8')) as object));
  expect(listed.filter((path) => /\.(?:zip|pdf)$/.test(path) || /\/([^/]+)\/draft\/\1\.html$/.test(path))).toEqual([]);
});
