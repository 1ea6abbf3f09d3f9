/** What the built folders say to machines. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { browserForFile, builtPages, servedFolders } from '../support/browsing.ts';

const open = browserForFile({ isKept: true });
const [forAll, forTeachers] = ['public', 'teachers'].map((name) => servedFolders().find((served) => served.name === name)!) as [ReturnType<typeof servedFolders>[number], ReturnType<typeof servedFolders>[number]];
const read = (path: string): string => readFileSync(join(forAll.folder, path), 'utf8');

/** Parsed by the browser's own XML parser: whether it is well-formed, and texts of the elements of a name. */
async function parsed(xml: string, name: string): Promise<{ root: string; texts: string[] }> {
  let result = { root: '', texts: [] as string[] };
  await open({}, async (page) => {
    result = await page.evaluate(
      ([text, wanted]) => {
        const tree = new DOMParser().parseFromString(text, 'application/xml');
        return { root: tree.documentElement.nodeName, texts: [...tree.getElementsByTagName(wanted)].map((found) => found.textContent ?? '') };
      },
      [xml, name] as const,
    );
  });
  return result;
}

describe('the sitemap', () => {
  it('lists every page of the public site, by the address of the site', async () => {
    const { root, texts } = await parsed(read('sitemap.xml'), 'loc');
    expect(root).toBe('urlset');
    const pages = builtPages().filter(({ served, path }) => served.name === 'public' && path.endsWith('index.html')).map(({ path }) => path.replace(/index\.html$/, ''));
    const base = texts[0] === undefined ? '' : new URL('/', texts[0]).href;
    expect(texts.map((address) => address.slice(base.length)).sort()).toEqual(pages.sort());
  });
});

describe('the feed', () => {
  it('is well-formed and leads to pages that are there', async () => {
    const { root, texts } = await parsed(read('feed.xml'), 'id');
    expect(root).toBe('feed');
    expect(texts.length).toBeGreaterThan(1);
    for (const id of texts.slice(1)) expect(existsSync(join(forAll.folder, new URL(id).pathname, 'index.html')), id).toBe(true);
  });
});

describe('the data of kits', () => {
  const kits = builtPages().filter(({ served, path }) => served.name === 'public' && /^kits\/[^/]+\/(?!changes\/)[^/]+\/index\.html$/.test(path));

  it.each(kits)('$path describes itself, and what it names is there', ({ path, address }) =>
    open({}, async (page) => {
      await page.goto(address, { waitUntil: 'load' });
      const blocks = await page.locator('script[type="application/ld+json"]').allTextContents();
      expect(blocks).toHaveLength(1);
      const data = JSON.parse(blocks[0] ?? '') as { '@id': string; name: string; hasPart: { url: string; hasPart?: { url: string }[] }[]; encoding: { contentUrl: string }[] };
      expect(data.name).toBe(await page.locator('h1').innerText());
      const base = data['@id'].slice(0, data['@id'].length - path.replace(/index\.html$/, '').length);
      for (const { url } of data.hasPart) expect(existsSync(join(forAll.folder, url.slice(base.length), 'index.html')), url).toBe(true);
      const questions = data.hasPart.flatMap(({ hasPart = [] }) => hasPart.map(({ url }) => url.slice(base.length).split('#')));
      expect(questions.length).toBeGreaterThan(0);
      for (const [place = '', anchor] of questions) expect(readFileSync(join(forAll.folder, place, 'index.html'), 'utf8'), anchor).toContain(` id="${anchor}"`);
      for (const { contentUrl } of data.encoding) expect(existsSync(join(forAll.folder, contentUrl.slice(base.length))), contentUrl).toBe(true);
    }));
});

it('tells nobody of the teachers’ folder, and keeps it on no device', () => {
  for (const file of ['sitemap.xml', 'feed.xml', 'service-worker.js', 'manifest.webmanifest', 'offline.js']) {
    expect(existsSync(join(forAll.folder, file)), file).toBe(true);
    expect(existsSync(join(forTeachers.folder, file)), file).toBe(false);
  }
  const pages = builtPages().filter(({ served }) => served.name === 'teachers').map(({ file }) => readFileSync(file, 'utf8'));
  expect(pages.filter((page) => /ld\+json|offline\.js|feed\.xml/.test(page))).toEqual([]);
});

it('has a manifest that a browser can use', () =>
  open({}, async (page) => {
    await page.goto(forAll.deepAddress, { waitUntil: 'load' });
    const session = await page.context().newCDPSession(page);
    const { url, errors, data } = await session.send('Page.getAppManifest');
    expect(url).toBe(`${forAll.deepAddress}manifest.webmanifest`);
    expect(errors).toEqual([]);
    expect(JSON.parse(data ?? '{}')).toMatchObject({ start_url: 'index.html' });
    const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
    expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([]);
    await session.detach();
  }));
