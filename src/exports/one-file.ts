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

/** A piece of a document: text of its own, in bytes or not, or what other documents hold too, the same object each time. */
export type Piece = string | Uint8Array | Shared;

export interface Shared {
  readonly text: string;
}

const encoded = new WeakMap<Shared, Uint8Array>();

/** The bytes of a piece; of a shared one the same each time. */
export function bytesOf(piece: Piece): Uint8Array {
  if (piece instanceof Uint8Array) return piece;
  if (typeof piece === 'string') return Buffer.from(piece);
  const bytes = encoded.get(piece) ?? Buffer.from(piece.text);
  encoded.set(piece, bytes);
  return bytes;
}

/** A script that is fetched, with its end, and every other opening tag, quoted attributes and all. */
const TAG = /<script\b[^>]*\bsrc="[^"]*"[^>]*><\/script>|<[a-zA-Z](?:[^>"']|"[^"]*"|'[^']*')*>/g;
/** Of a tag that stays as it is there is none of these. */
const POINTS = /\b(?:href|src)="/;
const LEFT_OUT = /^<(?:script\b[^]*<\/script>$|link\b[^>]*\brel="(?:stylesheet|alternate|manifest|preload|modulepreload)")/;
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
    .map((address) => scriptOf(fileOf(address, sources)));
  const start = Math.max(0, page.indexOf('</head>'));
  const head = page
    .slice(0, start)
    .replace(POLICY, `<meta http-equiv="Content-Security-Policy" content="${policy(styles, scripts)}">`)
    .replace(/<title>[^<]*<\/title>/, () => `<title>${escapeXml(sources.title)}</title>`)
    .replace(TAG, (tag) => selfContained(tag, sources));
  const rest = page.slice(start).replace(TAG, (tag) => selfContained(tag, sources));
  const end = Math.max(0, rest.indexOf('</body>'));
  return together([head, '<style>', ...styles, '</style>', rest.slice(0, end), ...scripts.flatMap((script) => ['<script>', script, '</script>']), rest.slice(end)]);
}

/** Texts that follow each other in one piece, in bytes: it goes into a file and into an archive. */
function together(pieces: readonly (string | Shared)[]): Piece[] {
  const joined: (string | Shared)[] = [];
  for (const piece of pieces) {
    const last = joined.at(-1);
    if (typeof piece === 'string' && typeof last === 'string') joined[joined.length - 1] = last + piece;
    else joined.push(piece);
  }
  return joined.map((piece) => (typeof piece === 'string' ? bytesOf(piece) : piece));
}

/** The file's name in an address. */
const nameOf = (address: string): string => address.replace(/^.*\//, '');

function policy(styles: readonly Piece[], scripts: readonly Shared[]): string {
  const allowed = scripts.length === 0 ? "'none'" : scripts.map((script) => onceOf(hashes, bytesOf(script), () => hashOf([script])).text).join(' ');
  return `default-src 'none'; img-src data:; font-src data:; style-src ${hashOf(styles)}; script-src ${allowed}; base-uri 'none'; form-action 'none'`;
}

function hashOf(pieces: readonly Piece[]): string {
  const hash = createHash('sha256');
  for (const piece of pieces) hash.update(bytesOf(piece));
  return `'sha256-${hash.digest('base64')}'`;
}

/** A stylesheet with its fonts, for its own medium. */
function styleOf(link: string, sources: OneFileSources): readonly (string | Shared)[] {
  const address = attribute(link, 'href');
  const folder = address.replace(/[^/]*$/, '');
  const css = onceOf(styles, fileOf(address, sources), (bytes) =>
    textOf(bytes).replace(/url\((["']?)(?!data:)([^"')]+)\1\)/g, (_, _quote: string, file: string) => `url(${dataOf(`${folder}${file}`, sources)})`));
  const media = /\bmedia="([^"]*)"/.exec(link)?.[1];
  return media === undefined || media === 'all' ? [css] : [`@media ${media}{`, css, '}'];
}

/** A tag that points at nothing beside the document; none where it brought in what now stands in the document. */
function selfContained(tag: string, sources: OneFileSources): string {
  if (!POINTS.test(tag)) return tag;
  if (LEFT_OUT.test(tag)) return '';
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
const hashes: Made = new WeakMap();

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
  return `data:${type};base64,${onceOf(texts, fileOf(address, sources), (bytes) => Buffer.from(bytes).toString('base64')).text}`;
}

function fileOf(address: string, { read }: OneFileSources): Uint8Array {
  const bytes = read(address);
  if (bytes === undefined) throw new RangeError(`The page names ${address}, and there is no such file.`);
  return bytes;
}
