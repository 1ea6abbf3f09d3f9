/** What only the public site has: its pages listed for search engines, its news, and what keeps it on a device. */
import { readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { atomFeed, digestOf, KIT_LIST, sitemapXml, webManifest, type Digests, type Edition } from '../exports/index.ts';
import { changesPath, isWithdrawn, kitPath, permanentAddress, titlePath, titlesOf, type Book } from '../sheets/index.ts';
import { filesBelow } from './files-below.ts';
import { bundleOfflineScripts, bundleServiceWorker, languagesOf } from './scripts.ts';

/** To be called last: every file of the folder is listed. */
export async function writePublicFiles(book: Book, root: string, folder: string): Promise<void> {
  const site = permanentAddress(book, '/');
  if (site !== undefined) {
    const withdrawn = book.kits.filter(isWithdrawn).map((kit) => kitPath(kit).slice(1));
    const pages = (await filesBelow(folder)).filter((path) => path.endsWith('index.html') && !withdrawn.some((place) => path.startsWith(place)));
    await writeFile(join(folder, 'sitemap.xml'), sitemapXml(pages.map((path) => `${site}${path.replace(/index\.html$/, '')}`)));
    await writeFile(join(folder, 'feed.xml'), atomFeed(book, site, (kit) => `${site}${kitPath(kit).slice(1)}`));
  }
  await writeFile(join(folder, 'manifest.webmanifest'), webManifest(book));
  await bundleOfflineScripts(root, folder, languagesOf(book));
  await bundleServiceWorker(root, folder, book.language, await offlineEdition(book, folder));
}

/** Kinds of files that a page shows; what is there to be taken away is not kept on a device. */
const SHOWN = /\.(?:html|css|js|json|svg|png|jpe?g|webp|woff2|webmanifest)$/;
/** What the site's own machinery or its makers need. */
const NOT_KEPT = /^(?:build\.json$|service-worker\.js$|checks\/|contribute\/)/;

const KIT_OF_PATH = /^kits\/([^/]*)/;

/** Every file that a device keeps, by its digest; the lists of the kits are written beside them. */
async function offlineEdition(book: Book, folder: string): Promise<Edition> {
  const paths = (await filesBelow(folder)).filter((path) => SHOWN.test(path) && !NOT_KEPT.test(path));
  const kits: Record<string, string> = {};
  const shown = Object.fromEntries(titlesOf(book.kits).map((title) => [titlePath(title).slice(1), kitPath(title.shown).slice(1)]));
  const byKit = new Map<string | undefined, string[]>();
  for (const path of paths) {
    const kit = KIT_OF_PATH.exec(path)?.[1];
    const own = byKit.get(kit);
    if (own === undefined) byKit.set(kit, [path]);
    else own.push(path);
  }
  for (const kit of book.kits) {
    const place = kitPath(kit).slice(1);
    const about = [changesPath(kit), ...(shown[titlePath(kit).slice(1)] === place ? [titlePath(kit)] : [])].map((page) => `${page.slice(1)}index.html`);
    const own = (byKit.get(kit.id) ?? []).filter((path) => about.includes(path) || path.startsWith(place) && path !== `${place}${kit.id}.html`);
    const list = `${JSON.stringify(await digestsOf(folder, own))}\n`;
    await writeFile(join(folder, place, KIT_LIST), list);
    kits[place] = await digestOf(new TextEncoder().encode(list));
  }
  const shell = await digestsOf(folder, byKit.get(undefined) ?? []);
  return { digest: await digestOf(new TextEncoder().encode(JSON.stringify({ shell, kits }))), shell, kits, shown };
}

async function digestsOf(folder: string, paths: readonly string[]): Promise<Digests> {
  const entries: [string, string][] = [];
  // Thousands of files: waiting for each would take longer than the work.
  for (const path of paths) entries.push([path, await digestOf(readFileSync(join(folder, path)))]);
  return Object.fromEntries(entries);
}
