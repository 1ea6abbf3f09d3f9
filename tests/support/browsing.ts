/** Every page of the two built folders, and windows to look at them. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, inject } from 'vitest';
import { sharedBuild } from './builds.ts';
import { joinBrowser } from './chromium.ts';
import { filesBelow } from './folders.ts';
import type { ServedFolder } from './site-setup.ts';

/** One built page. */
export interface BuiltPage {
  /** For the name of a test: "teachers kits/cloud/index.html". */
  readonly name: string;
  readonly served: ServedFolder;
  /** Inside its folder: "kits/cloud/index.html". */
  readonly path: string;
  readonly file: string;
  readonly address: string;
}

// Whoever looks at pages lists them first.
await sharedBuild(inject('builds'), 'own');

/** The public site and the teachers' folder of the project's own content, served. */
export const servedFolders = (): readonly ServedFolder[] => inject('served');

/** All pages of both, found by walking the folders. */
export const builtPages = (): BuiltPage[] =>
  servedFolders().flatMap((served) =>
    filesBelow(served.folder)
      .filter((path) => path.endsWith('.html'))
      .map((path) => ({ name: `${served.name} ${path}`, served, path, file: join(served.folder, path), address: `${served.address}${path}` })),
  );

/** What stands between `<main>` and `</main>` in the file of a page, but for the address that only its prints show. */
const matterOf = (file: string): string => (/<main[^]*<\/main>/.exec(readFileSync(file, 'utf8'))?.[0] ?? '').replace(/ data-address="[^"]*"/, '');

/** The public pages, and those of the teachers that hold something else: what is asked of the frame alone needs no second look. */
export function distinctPages(): BuiltPage[] {
  const pages = builtPages();
  const open = new Map(pages.filter(({ served }) => served.name === 'public').map(({ path, file }) => [path, matterOf(file)]));
  return pages.filter(({ served, path, file }) => served.name === 'public' || open.get(path) !== matterOf(file));
}

const KIT_OF_PATH = /^kits\/([^/]+)/;

/** Of the pages of kits those of one kit, for what is the same in all of them. */
export function ofOneKit(pages: readonly BuiltPage[]): BuiltPage[] {
  const kits = pages.map(({ path }) => KIT_OF_PATH.exec(path)?.[1]);
  const last = kits.flatMap((kit) => kit ?? []).sort().at(-1);
  return pages.filter((_, at) => kits[at] === undefined || kits[at] === last);
}

/** Sheets that are as their authors wrote them. */
const WRITTEN = /\/(?:run|student|background)\/index\.html$/;

/** The same without the teachers' booklets and kits in one file, whose parts are those of their sheets; of all kits but one only the public sheets that their authors wrote. */
export function plainPages(): BuiltPage[] {
  const pages = distinctPages().filter((built) => built.served.name === 'public' || !(built.path.endsWith('/booklet/index.html') || isOneFile(built)));
  const ofOne = new Set(ofOneKit(pages));
  return pages.filter((built) => ofOne.has(built) || (built.served.name === 'public' && WRITTEN.test(built.path)));
}

/** Pages of the public site only, of those sheets. */
export const publicSheets = (sheet: string): BuiltPage[] => builtPages().filter(({ served, path }) => served.name === 'public' && path.endsWith(`/${sheet}/index.html`));

/** One of them, for what is the same on every kit's. */
export const oneSheet = (sheet: string): BuiltPage[] => ofOneKit(publicSheets(sheet));

/** Whether a page is a kit in one file: named like the folder of its kit. */
export const isOneFile = ({ path }: BuiltPage): boolean => /(?:^|\/)kits\/([^/]+)\/[^/]+\/\1\.html$/.test(path);

/** The address of a page on the disk. */
export const fileAddress = (page: BuiltPage): string => pathToFileURL(page.file).href;

let browser: Promise<Browser> | undefined;
const opened = new Map<string, Promise<Page>>();

/** How pages are looked at beside what a browser can be set to. */
export interface Looking {
  /** Whether the service worker may bring the whole kit to the device with each page, which takes a third of the time that a page takes to load. */
  readonly isKept?: boolean;
}

/** One window for each kind of visitor, since opening one takes longer than loading a page. */
function windowFor(options: BrowserContextOptions, { isKept = false }: Looking = {}): Promise<Page> {
  const kind = JSON.stringify([options, isKept]);
  const page = opened.get(kind) ?? openWindow(options, isKept);
  opened.set(kind, page);
  return page;
}

async function openWindow(options: BrowserContextOptions, isKept: boolean): Promise<Page> {
  const page = await (await (browser ??= joinBrowser(inject('browser')))).newPage(options);
  // As in a private window, where there is no worker; that of the page itself says so in the console.
  if (!isKept) await page.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
  return page;
}

async function closeAll(): Promise<void> {
  opened.clear();
  await (await browser)?.close();
  browser = undefined;
}

/** Looks at pages in windows that stay open for all tests of a file. */
export function browserForFile(looking: Looking = {}): (options: BrowserContextOptions, look: (page: Page) => Promise<void>) => Promise<void> {
  afterAll(closeAll);
  return async (options, look) => {
    const page = await windowFor(options, looking);
    try {
      await look(page);
    } finally {
      for (const event of ['console', 'pageerror', 'request', 'requestfailed', 'response'] as const) page.removeAllListeners(event);
      await page.goto('about:blank');
    }
  };
}

/** One page that stays open for all tests of a `describe`; to be called inside it, in a file that calls `browserForFile`. */
export function pageForTests(address: string, options: BrowserContextOptions = {}): () => Page {
  let page: Page | undefined;
  beforeAll(async () => {
    page = await windowFor(options);
    await page.goto(address, { waitUntil: 'load' });
  });
  return () => {
    if (page === undefined) throw new Error(`${address} has not been opened.`);
    return page;
  };
}

/** What goes wrong while a page loads. */
export interface Troubles {
  readonly console: string[];
  readonly requests: string[];
}

/** Listens to a page before it is opened: errors in the console, requests that fail, are answered other than 200, or leave `origin`. */
export function troublesOf(page: Page, origin: string): Troubles {
  const troubles: Troubles = { console: [], requests: [] };
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') troubles.console.push(message.text());
  });
  page.on('pageerror', (error) => troubles.console.push(error.message));
  page.on('request', (request) => {
    if (!request.url().startsWith(origin)) troubles.requests.push(`asked elsewhere: ${request.url()}`);
  });
  page.on('requestfailed', (request) => troubles.requests.push(`failed: ${request.url()} ${request.failure()?.errorText ?? ''}`));
  page.on('response', (response) => {
    if (origin.startsWith('http') && response.status() !== 200) troubles.requests.push(`${response.status()}: ${response.url()}`);
  });
  return troubles;
}
