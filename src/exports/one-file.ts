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

/** A piece of a document: text of its own, or what other documents hold too, the same object each time. */
export type Piece = string | Shared;

export interface Shared {
  readonly text: string;
}

/** A document as one text. */
export const wholeText = (pieces: readonly Piece[]): string => pieces.map((piece) => (typeof piece === 'string' ? piece : piece.text)).join('');

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
export function oneFile(page: string, sources: OneFileSources): readonly Piece[] {
  const styles = [...page.matchAll(STYLESHEET)].flatMap(([link], i) => [...(i === 0 ? [] : ['\n']), ...styleOf(link, sources)]);
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
  const head = Math.max(0, bare.indexOf('</head>'));
  const body = Math.max(head, bare.indexOf('</body>'));
  return together([bare.slice(0, head), '<style>', ...styles, '</style>', bare.slice(head, body), ...scripts.flatMap((script) => ['<script>', script, '</script>']), bare.slice(body)]);
}

/** Texts that follow each other in one piece. */
function together(pieces: readonly Piece[]): Piece[] {
  const joined: Piece[] = [];
  for (const piece of pieces) {
    const last = joined.at(-1);
    if (typeof piece === 'string' && typeof last === 'string') joined[joined.length - 1] = last + piece;
    else joined.push(piece);
  }
  return joined;
}

/** The file's name in an address. */
const nameOf = (address: string): string => address.replace(/^.*\//, '');

function policy(styles: readonly Piece[], scripts: readonly Shared[]): string {
  const hash = (pieces: readonly Piece[]): string => `'sha256-${createHash('sha256').update(wholeText(pieces)).digest('base64')}'`;
  const allowed = scripts.length === 0 ? "'none'" : scripts.map((script) => hash([script])).join(' ');
  return `default-src 'none'; img-src data:; font-src data:; style-src ${hash(styles)}; script-src ${allowed}; base-uri 'none'; form-action 'none'`;
}

/** A stylesheet with its fonts, for its own medium. */
function styleOf(link: string, sources: OneFileSources): readonly Piece[] {
  const address = attribute(link, 'href');
  const folder = address.replace(/[^/]*$/, '');
  const css = onceOf(styles, bytesOf(address, sources), (bytes) =>
    textOf(bytes).replace(/url\((["']?)(?!data:)([^"')]+)\1\)/g, (_, _quote: string, file: string) => `url(${dataOf(`${folder}${file}`, sources)})`));
  const media = /\bmedia="([^"]*)"/.exec(link)?.[1];
  return media === undefined || media === 'all' ? [css] : [`@media ${media}{`, css, '}'];
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
type Made = WeakMap<Uint8Array, Shared>;
const styles: Made = new WeakMap();
const scripts: Made = new WeakMap();
const texts: Made = new WeakMap();

function onceOf(made: Made, bytes: Uint8Array, make: (bytes: Uint8Array) => string): Shared {
  const shared = made.get(bytes) ?? { text: make(bytes) };
  made.set(bytes, shared);
  return shared;
}

/** A script that can stand inside a page. */
const scriptOf = (file: Uint8Array): Shared => onceOf(scripts, file, (bytes) => textOf(bytes).trim().replace(/<(?=\/script|!--)/gi, '\\x3c'));

function dataOf(address: string, sources: OneFileSources): string {
  if (address.startsWith('data:')) return address;
  const type = TYPES[/\.(\w+)$/.exec(address)?.[1] ?? ''];
  if (type === undefined) throw new RangeError(`${address} is no font and no picture that can stand inside a page.`);
  return `data:${type};base64,${onceOf(texts, bytesOf(address, sources), (bytes) => Buffer.from(bytes).toString('base64')).text}`;
}

function bytesOf(address: string, { read }: OneFileSources): Uint8Array {
  const bytes = read(address);
  if (bytes === undefined) throw new RangeError(`The page names ${address}, and there is no such file.`);
  return bytes;
}
