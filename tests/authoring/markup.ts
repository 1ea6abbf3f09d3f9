/** Markup that a strict policy lets pass: no code, no styles, no address elsewhere. */
import type { Book } from '../../src/sheets/index.ts';

/** Fields of a book that hold HTML. */
const HTML_FIELDS = new Set(['everybody', 'teachers', 'html', 'svg', 'stem', 'answer', 'solution', 'method', 'runChart', 'runChartForTeachers', 'setup']);
const REFUSED_ELEMENTS = new Set(['script', 'style', 'iframe', 'frame', 'object', 'embed', 'base', 'meta', 'link', 'form', 'foreignobject', 'template', 'noscript']);
const TAG = /<(?<closing>\/?)(?<name>[a-zA-Z][\w-]*)(?<attributes>(?:\s+[^\s=<>"'/]+(?:="[^"]*")?)*)\s*\/?>/g;
const ATTRIBUTE = /(?<name>[^\s=<>"'/]+)(?:="(?<value>[^"]*)")?/g;
/** Names of vocabularies, which nothing loads. Source: W3C, SVG 2 and MathML 3. */
const NAMESPACES = ['http://www.w3.org/2000/svg', 'http://www.w3.org/1998/Math/MathML'];

/** Every piece of HTML in a book. */
export function htmlOf(book: Book): readonly string[] {
  const found: string[] = [];
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    for (const [key, inner] of Object.entries(value)) {
      if (typeof inner === 'string') {
        if (HTML_FIELDS.has(key)) found.push(inner);
      } else walk(inner);
    }
  };
  walk(book);
  return found;
}

/** What the policy would block in a piece of HTML, or what is no well-formed markup at all. */
export function blockedIn(html: string): readonly string[] {
  const blocked: string[] = [];
  const rest = html.replace(TAG, (tag, ...groups) => {
    const { name, attributes } = groups.at(-1) as { name: string; attributes: string };
    if (REFUSED_ELEMENTS.has(name.toLowerCase())) blocked.push(tag);
    for (const { groups: attribute } of attributes.matchAll(ATTRIBUTE)) {
      if (!isHarmless((attribute?.['name'] ?? '').toLowerCase(), attribute?.['value'] ?? '')) blocked.push(tag);
    }
    return '';
  });
  // Whatever is not a tag is text, in which every sign of markup is an entity.
  const stray = /.{0,30}<.{0,30}/s.exec(rest)?.[0];
  return stray === undefined ? blocked : [...blocked, stray];
}

function isHarmless(name: string, value: string): boolean {
  if (/^on|^style$|^srcdoc$|^formaction$|^srcset$/.test(name)) return false;
  if (name.startsWith('xmlns')) return NAMESPACES.includes(value);
  if (!/^(?:xlink:)?href$|^src$|^action$|^data$|^poster$|^cite$/.test(name)) return true;
  const address = decoded(value);
  return !/^\/\//.test(address) && (!/^[a-z][a-z0-9+.-]*:/i.test(address) || /^(?:https:\/\/|mailto:)/.test(address));
}

/** As a browser reads an address: entities resolved, control characters dropped. */
function decoded(value: string): string {
  return value
    .replace(/&#x([0-9a-f]+);?/gi, (_, hex: string) => String.fromCodePoint(parseInt(hex, 16)))
    .replace(/&#(\d+);?/g, (_, digits: string) => String.fromCodePoint(Number(digits)))
    .replaceAll('&colon;', ':')
    .replaceAll('&amp;', '&')
    .replace(/[\u0000-\u0020\u007f]/g, '')
    .replaceAll('\\', '/');
}
