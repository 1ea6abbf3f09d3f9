/** HTML of our own making as plain text: for lists, for search, for references. */
import { decoded, isHidden, TAG, VOID } from './tags.ts';

/** Drawings and formulas say nothing as a row of letters. */
const SILENT = new Set(['svg', 'math', 'style', 'script', 'button']);
const INLINE = new Set(['a', 'abbr', 'b', 'cite', 'code', 'em', 'i', 'q', 'small', 'span', 'strong', 'sub', 'sup', 'time']);

/** The words of well-formed HTML, without formulas, drawings and what is hidden from readers. */
export function plainText(html: string): string {
  let text = '';
  let from = 0;
  /** Open elements inside one that is silent, itself included. */
  let silent = 0;
  for (const tag of html.matchAll(TAG)) {
    const [whole, slash, name = '', attributes = ''] = tag;
    const element = name.toLowerCase();
    if (silent === 0) text += html.slice(from, tag.index);
    from = tag.index + whole.length;
    if (!INLINE.has(element)) text += ' ';
    if (VOID.has(element) || attributes.endsWith('/')) continue;
    if (slash === '/') silent = Math.max(0, silent - 1);
    else if (silent > 0 || SILENT.has(element) || isHidden(attributes)) silent += 1;
  }
  return decoded(text + html.slice(from)).replace(/\s+/g, ' ').replace(/ ([.,;:?!])/g, '$1').trim();
}
