/** A built page as one document: styles, fonts, drawings and scripts inside it, and a policy that allows exactly these. */
import { createHash } from 'node:crypto';
import { escapeXml } from './xml.ts';

export interface OneFileSources {
  /** A file that the page names, by its address as the page writes it; the same bytes where it is asked for again, so that what is made of them is made once. */
  readonly read: (address: string) => Uint8Array | undefined;
  /** A whole address for a page of the site; undefined where the site has none. */
  readonly absolute: (address: string) => string | undefined;
  readonly title: string;
  /** Scripts that are of use only on a server, by file name. */
  readonly without: readonly string[];
  /** Scripts that a script of the page would fetch when it needs them, by file name: they stand before it. */
  readonly needs: Readonly<Record<string, readonly string[]>>;
}

const TAG = /<[a-zA-Z](?:[^>"']|"[^"]*"|'[^']*')*>/g;
const STYLESHEET = /<link\b[^>]*\brel="stylesheet"[^>]*>/g;
const SCRIPT = /<script\b[^>]*\bsrc="([^"]*)"[^>]*><\/script>/g;
const POLICY = /<meta http-equiv="Content-Security-Policy"[^>]*>/;
const TYPES: Record<string, string> = { woff2: 'font/woff2', svg: 'image/svg+xml', png: 'image/png', jpg: 'image/jpeg', jpeg: 'image/jpeg', webp: 'image/webp' };

/**
 * A page that opens by double click anywhere and asks for nothing.
 * @param page - a finished page of the site
 * @throws RangeError if the page names a file that is not there
 */
export function oneFile(page: string, sources: OneFileSources): string {
  const styles = [...page.matchAll(STYLESHEET)].map(([link]) => styleOf(link, sources)).join('\n');
  const scripts = [...page.matchAll(SCRIPT)]
    .map(([, address = '']) => address)
    .filter((address) => !sources.without.includes(nameOf(address)))
    .flatMap((address) => [...(sources.needs[nameOf(address)] ?? []).map((needed) => address.replace(nameOf(address), needed)), address])
    .map((address) => scriptOf(bytesOf(address, sources)));
  const bare = page
    .replace(STYLESHEET, '')
    .replace(SCRIPT, '')
    .replace(/<link\b[^>]*\brel="(?:alternate|manifest|preload|modulepreload)"[^>]*>/g, '')
    .replace(POLICY, `<meta http-equiv="Content-Security-Policy" content="${policy(styles, scripts)}">`)
    .replace(/<title>[^<]*<\/title>/, () => `<title>${escapeXml(sources.title)}</title>`)
    .replace(TAG, (tag) => selfContained(tag, sources));
  return bare
    .replace('</head>', () => `<style>${styles}</style></head>`)
    .replace('</body>', () => `${scripts.map((script) => `<script>${script}</script>`).join('')}</body>`);
}

/** The file's name in an address. */
const nameOf = (address: string): string => address.replace(/^.*\//, '');

function policy(styles: string, scripts: readonly string[]): string {
  const hash = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
  const allowed = scripts.length === 0 ? "'none'" : scripts.map(hash).join(' ');
  return `default-src 'none'; img-src data:; font-src data:; style-src ${hash(styles)}; script-src ${allowed}; base-uri 'none'; form-action 'none'`;
}

/** A stylesheet with its fonts, for its own medium. */
function styleOf(link: string, sources: OneFileSources): string {
  const address = attribute(link, 'href');
  const folder = address.replace(/[^/]*$/, '');
  const css = onceOf(styles, bytesOf(address, sources), (bytes) =>
    textOf(bytes).replace(/url\((["']?)(?!data:)([^"')]+)\1\)/g, (_, _quote: string, file: string) => `url(${dataOf(`${folder}${file}`, sources)})`));
  const media = /\bmedia="([^"]*)"/.exec(link)?.[1];
  return media === undefined || media === 'all' ? css : `@media ${media}{${css}}`;
}

/** A tag that points at nothing beside the document. */
function selfContained(tag: string, sources: OneFileSources): string {
  if (/^<(?:img|source)\b/.test(tag)) return tag.replace(/\bsrc="([^"]*)"/, (_, address: string) => `src="${dataOf(address, sources)}"`);
  if (/^<link\b[^>]*\brel="icon"/.test(tag)) return tag.replace(/\bhref="([^"]*)"/, (_, address: string) => `href="${dataOf(address, sources)}"`);
  return tag.replace(/ ((?:xlink:)?href)="([^"]*)"/, (whole, name: string, address: string) => {
    if (/^(?:#|[a-z]+:)/.test(address)) return whole;
    const found = sources.absolute(address);
    return found === undefined ? '' : ` ${name}="${found}"`;
  });
}

const attribute = (tag: string, name: string): string => new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1] ?? '';

const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** What was made of a file's bytes before, by those very bytes. */
type Made = WeakMap<Uint8Array, string>;
const styles: Made = new WeakMap();
const scripts: Made = new WeakMap();
const texts: Made = new WeakMap();

function onceOf(made: Made, bytes: Uint8Array, make: (bytes: Uint8Array) => string): string {
  const text = made.get(bytes) ?? make(bytes);
  made.set(bytes, text);
  return text;
}

/** A script that can stand inside a page. */
const scriptOf = (file: Uint8Array): string => onceOf(scripts, file, (bytes) => textOf(bytes).trim().replace(/<(?=\/script|!--)/gi, '\\x3c'));

function dataOf(address: string, sources: OneFileSources): string {
  if (address.startsWith('data:')) return address;
  const type = TYPES[/\.(\w+)$/.exec(address)?.[1] ?? ''];
  if (type === undefined) throw new RangeError(`${address} is no font and no picture that can stand inside a page.`);
  return `data:${type};base64,${onceOf(texts, bytesOf(address, sources), (bytes) => Buffer.from(bytes).toString('base64'))}`;
}

function bytesOf(address: string, { read }: OneFileSources): Uint8Array {
  const bytes = read(address);
  if (bytes === undefined) throw new RangeError(`The page names ${address}, and there is no such file.`);
  return bytes;
}
