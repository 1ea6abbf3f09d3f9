/** Every page loads whole, by itself, from any place: a server's root, a deep path, a disk; and obeys its own policy. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, distinctPages, fileAddress, isOneFile, ofOneKit, troublesOf } from '../support/browsing.ts';

declare global {
  interface Window {
    violations?: string[];
  }
}

const pages = builtPages();
const open = browserForFile({ isKept: true });
/** Pages in which the listener below has been put. */
const prepared = new WeakSet<Page>();
const NONE = { console: [], requests: [] };

/** Runs before anything of the page does. */
const listenForViolations = (): void => {
  window.violations = [];
  document.addEventListener('securitypolicyviolation', (event) => window.violations?.push(`${event.violatedDirective} ${event.blockedURI}`));
};

it('finds both folders full of pages', () => {
  expect(pages.filter(({ served }) => served.name === 'public').length).toBeGreaterThan(5);
  expect(pages.filter(({ served }) => served.name === 'teachers').length).toBeGreaterThan(5);
});

describe.each(ofOneKit(pages))('$name', (built) => {
  // Deep in a path: what loads there loads at a root as well, where all other tests look.
  it('loads from a server without error, foreign request or violation of its policy', () =>
    open({}, async (page) => {
      const troubles = troublesOf(page, built.served.deepAddress);
      if (!prepared.has(page)) await page.addInitScript(listenForViolations);
      prepared.add(page);
      await page.goto(`${built.served.deepAddress}${built.path}`, { waitUntil: 'load' });
      expect(troubles).toEqual(NONE);
      expect(await page.evaluate(() => window.violations)).toEqual([]);
      // A kit in one file must hold style and script; what its own policy allows is tried in one-file.test.ts.
      if (isOneFile(built)) return;
      const policy = (await page.locator('head meta[http-equiv="Content-Security-Policy"]').getAttribute('content')) ?? '';
      expect(policy).toMatch(/(^|;)\s*default-src 'none'\s*(;|$)/);
      expect(policy).not.toMatch(/unsafe|\*|\bhttps?:|\bdata:|\bblob:/);
      expect(await inlineOf(page)).toEqual([]);
    }));
});

describe.each(ofOneKit(distinctPages()))('$name', (built) => {
  it('loads from a disk, with its styles, and says the same without script', async () => {
    const said: string[] = [];
    await open({}, async (page) => {
      const troubles = troublesOf(page, 'file:');
      await page.goto(fileAddress(built), { waitUntil: 'load' });
      expect(troubles).toEqual(NONE);
      const unstyled = await page.evaluate(() => [...document.querySelectorAll<HTMLLinkElement>('link[rel=stylesheet]')].filter((link) => link.sheet === null).map((link) => link.href));
      expect(unstyled).toEqual([]);
      expect(await page.evaluate(() => getComputedStyle(document.body).fontFamily)).toMatch(/Source Serif|IBM Plex/);
      said.push(await textOf(page));
    });
    await open({ javaScriptEnabled: false }, async (page) => {
      await page.goto(fileAddress(built), { waitUntil: 'load' });
      said.push(await textOf(page));
    });
    expect(said[0]?.length).toBeGreaterThan(100);
    expect(said[1]).toBe(said[0]);
  });
});

/** The words of a page, without controls, which are there only for those whom they can serve, and without what tells of them. */
async function textOf(page: Page): Promise<string> {
  await page.evaluate(() => document.querySelectorAll('[data-needs-script], noscript').forEach((element) => element.remove()));
  return (await page.locator('main').innerText()).replace(/\s+/g, ' ');
}

/** Styles, scripts and event attributes that stand in the page itself. */
const inlineOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => [
    ...[...document.querySelectorAll('[style], style')].map((element) => element.outerHTML.slice(0, 120)),
    ...[...document.querySelectorAll<HTMLScriptElement>('script')].filter((script) => script.src === '' && (script.textContent ?? '').trim() !== '' && script.type !== 'application/ld+json').map((script) => script.outerHTML.slice(0, 120)),
    ...[...document.querySelectorAll('*')].flatMap((element) => element.getAttributeNames().filter((name) => name.startsWith('on')).map((name) => `${element.tagName} ${name}`)),
  ]);
