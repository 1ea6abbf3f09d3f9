/** HTML of our own making as the body of an item: words, lists, tables and MathML; no script, drawing or style is known there. */
import { decoded, isHidden, TAG, VOID } from '../../sheets/html/tags.ts';
import { escapeXml } from '../xml.ts';

const KEPT = new Set([
  'p', 'div', 'h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'ul', 'ol', 'li', 'dl', 'dt', 'dd', 'blockquote', 'pre', 'hr', 'br',
  'table', 'caption', 'thead', 'tbody', 'tr', 'th', 'td', 'em', 'strong', 'code', 'sub', 'sup',
]);
/** Blocks that are none there. */
const DIVISIONS = new Set(['section', 'figure', 'figcaption', 'aside']);
const LEFT_OUT = new Set(['svg', 'button', 'style', 'script', 'annotation']);

/** Tags that stand in the body for those of an element; undefined where all that is in it is left out. */
interface Tags {
  readonly start: string;
  readonly end: string;
}

const BARE: Tags = { start: '', end: '' };

/** The words of well-formed HTML with their structure, links and citations as plain words. */
export function bodyMarkup(html: string): string {
  let body = '';
  let from = 0;
  /** From the outermost open element on. */
  const open: { readonly name: string; readonly end: string | undefined }[] = [];
  const isSilent = (): boolean => open.some(({ end }) => end === undefined);
  for (const tag of html.matchAll(TAG)) {
    const [whole, slash, name = '', attributes = ''] = tag;
    if (!isSilent()) body += escapeXml(decoded(html.slice(from, tag.index)));
    from = tag.index + whole.length;
    if (slash === '/') {
      const closed = open.pop();
      if (!isSilent()) body += closed?.end ?? '';
      continue;
    }
    const tags = tagsFor(name, attributes, open.some((outer) => outer.name === 'math'));
    const isEmpty = VOID.has(name) || attributes.endsWith('/');
    if (!isSilent() && tags !== undefined) body += isEmpty ? tags.start.replace(/>$/, '/>') : tags.start;
    if (!isEmpty) open.push({ name, end: tags?.end });
  }
  return body + escapeXml(decoded(html.slice(from)));
}

function tagsFor(name: string, attributes: string, inMath: boolean): Tags | undefined {
  if (LEFT_OUT.has(name) || isHidden(attributes)) return undefined;
  if (name === 'semantics') return BARE;
  if (name === 'math' || inMath) return tagsOf(name, kept(attributes, (attribute) => attribute !== 'class' && attribute !== 'style'));
  if (name === 'a' && /\bclass="cite"/.test(attributes)) return { start: ' (', end: ')' };
  if (KEPT.has(name)) return tagsOf(name, kept(attributes, (attribute) => attribute === 'scope'));
  return DIVISIONS.has(name) ? tagsOf('div', '') : BARE;
}

const tagsOf = (name: string, attributes: string): Tags => ({ start: `<${name}${attributes}>`, end: `</${name}>` });

const kept = (attributes: string, isKept: (name: string) => boolean): string =>
  [...attributes.matchAll(/\s([\w:-]+)="([^"]*)"/g)].flatMap(([, name = '', value = '']) => (isKept(name) ? [` ${name}="${escapeXml(decoded(value))}"`] : [])).join('');
