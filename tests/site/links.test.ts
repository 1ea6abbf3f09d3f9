/** Every link and anchor leads to something, from a server and from a disk. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { browserForFile, builtPages, fileAddress, isOneFile } from '../support/browsing.ts';

interface Linked {
  /** Whole addresses of everything the page points at. */
  readonly addresses: readonly string[];
  readonly ids: readonly string[];
  readonly repeated: readonly string[];
}

const pages = builtPages();
const open = browserForFile();
const byAddress = new Map<string, Linked>();

beforeAll(() =>
  open({}, async (page) => {
    for (const built of pages) byAddress.set(fileAddress(built), await linked(page, readFileSync(built.file, 'utf8'), fileAddress(built)));
  }),
);

describe.each(pages)('$name', (built) => {
  it('points at files and anchors that are there, inside its own folder', () => {
    const wrong = own(fileAddress(built)).addresses.map((address) => problem(address, built.served.folder)).filter((text) => text !== undefined);
    expect(wrong).toEqual([]);
  });

  it('uses each id once', () => {
    expect(own(fileAddress(built)).repeated).toEqual([]);
  });

  it('points elsewhere by https or mail alone', () => {
    // A kit in one file carries its own icon; nothing else may be an address that holds data.
    const carried = isOneFile(built) ? /^data:image\/svg\+xml;base64,/ : /^$/;
    expect(own(fileAddress(built)).addresses.filter((address) => !/^(file|https|mailto):/.test(address) && !carried.test(address))).toEqual([]);
  });
});

it('leads from the first page of each folder to every other page of it', () => {
  for (const name of ['public', 'teachers']) {
    const folder = pages.filter(({ served }) => served.name === name);
    const first = folder.find(({ path }) => path === 'index.html');
    expect(first, name).toBeDefined();
    const seen = new Set<string>();
    const waiting = first === undefined ? [] : [fileAddress(first)];
    for (let address = waiting.pop(); address !== undefined; address = waiting.pop()) {
      if (seen.has(address)) continue;
      seen.add(address);
      waiting.push(...(byAddress.get(address)?.addresses ?? []).map(withoutFragment));
    }
    expect(folder.filter((built) => !seen.has(fileAddress(built))).map(({ path }) => path)).toEqual([]);
  }
});

function own(address: string): Linked {
  const found = byAddress.get(address);
  if (found === undefined) throw new Error(`${address} was not read.`);
  return found;
}

function problem(address: string, folder: string): string | undefined {
  if (!address.startsWith('file:')) return undefined;
  const path = fileURLToPath(withoutFragment(address));
  if (!path.startsWith(folder)) return `${address} leaves the folder`;
  if (!existsSync(path) || !statSync(path).isFile()) return `${address} is no file`;
  const id = decodeURIComponent(new URL(address).hash.slice(1));
  const target = byAddress.get(withoutFragment(address));
  return id === '' || target === undefined || target.ids.includes(id) ? undefined : `${address} has no such anchor`;
}

const withoutFragment = (address: string): string => address.split('#')[0] ?? address;

/** What the browser's parser finds in a page that stands at an address; no page moves its addresses by a base of its own. */
const linked = (page: Page, html: string, at: string): Promise<Linked> =>
  page.evaluate(([text, base]) => {
    const parsed = new DOMParser().parseFromString(text, 'text/html');
    if (parsed.querySelector('base') !== null) throw new Error(`${base} has a base of its own.`);
    const ids = [...parsed.querySelectorAll('[id]')].map((element) => element.id);
    const named = [...parsed.querySelectorAll('[href], [src], [aria-labelledby], [aria-describedby], [for], [headers]')];
    const addresses = named.flatMap((element) => [
      ...['href', 'src'].flatMap((name) => element.getAttribute(name) ?? []),
      ...['aria-labelledby', 'aria-describedby', 'for', 'headers'].flatMap((name) => (element.getAttribute(name) ?? '').split(/\s+/).filter(Boolean).map((id) => `#${encodeURIComponent(id)}`)),
    ]);
    return { addresses: [...new Set(addresses.map((address) => new URL(address, base).href))], ids, repeated: ids.filter((id, place) => ids.indexOf(id) !== place) };
  }, [html, at] as const);
