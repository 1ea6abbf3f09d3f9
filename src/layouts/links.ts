/** Addresses inside the site: always relative, always with the file's name, so that the site works in any folder and from a disk. */
import type { KitView } from '../sheets/book.ts';

/** The folders of a site path: "/kits/a/run/" is kits, a, run. */
const folders = (path: string): string[] => path.split('/').filter(Boolean);

/**
 * The relative address of one page seen from another.
 * @param from - site path of the page that holds the link, ending in `/`: "/kits/cloud/draft/run/"
 * @param to - site path of a page, ending in `/`, or of a file; may carry a `#fragment`
 * @returns for example "../student/index.html#predict"
 */
export const href = (from: string, to: string): string => {
  const [path = '', fragment] = to.split('#');
  const file = path.endsWith('/') ? `${path}index.html` : path;
  const source = folders(from);
  const target = folders(file);
  let shared = 0;
  while (shared < source.length && shared < target.length - 1 && source[shared] === target[shared]) shared += 1;
  const up = '../'.repeat(source.length - shared);
  return `${up}${target.slice(shared).join('/')}${fragment === undefined ? '' : `#${fragment}`}`;
};

/** Addresses of built files that start at the site's root, in attributes and in `url()`. */
const ASSET = /(["'(=]|url\()\/_astro\//g;

/**
 * The text of a built page or stylesheet with its assets addressed relatively.
 * @param text - HTML or CSS
 * @param depth - folders between the file and the site's root: 0 for "index.html", 3 for "kits/cloud/draft/index.html", 1 for "_astro/sheet.css"
 */
export const relativeAssets = (text: string, depth: number): string => text.replace(ASSET, (_, before: string) => `${before}${'../'.repeat(depth) || './'}_astro/`);

/** What a kit's edition is called in addresses. */
export const versionFolder = (kit: KitView): string => (kit.draft ? 'draft' : kit.version);

/** Site path of a kit's page or of one of its sheets. */
export const kitPath = (kit: KitView, sheet = ''): string => `/kits/${kit.id}/${versionFolder(kit)}/${sheet === '' ? '' : `${sheet}/`}`;

/** Site path of the page that shows the newest edition of a kit. */
export const titlePath = ({ id }: Pick<KitView, 'id'>): string => `/kits/${id}/`;

/** Site path of the page of a kit's editions, their notices and what changed. */
export const changesPath = ({ id }: Pick<KitView, 'id'>): string => `/kits/${id}/changes/`;

/** A drawing whose links point at the steps of the run sheet, seen from another page. */
export const chartSeenFrom = (chart: string, address: string): string => chart.replaceAll('href="#', `href="${address}#`);
