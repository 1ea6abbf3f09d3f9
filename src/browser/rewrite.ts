/** A piece of a page drawn again: where words and attributes alone have changed, they are put in, which is several times as fast as parsing and laying out another piece. */
import { elementOf, KEPT } from './morph.ts';

/** A tag, or the text between two. What stands in quotes or between tags has its angle brackets escaped. */
const TOKENS = /<[^>]*>|[^<]+/g;
const ATTRIBUTES = / ([^\s=]+)="([^"]*)"/g;
const ESCAPED = '&';

/** What stands on the page: its tokens, and the node that each begins; none for an end. */
interface Standing {
  readonly html: string;
  readonly tokens: readonly string[];
  readonly nodes: readonly (Node | undefined)[];
}

/**
 * A function that draws HTML of one element in the place of one on the page, again and again.
 * @param first what stands there when the page is opened
 * @param replace puts one element in the place of another, and returns the one that stands there then
 */
export function redrawing(first: Element, replace: (old: Element, fresh: Element) => Element): (html: string) => void {
  let place = first;
  let standing: Standing | undefined;
  return (html) => {
    if (html === standing?.html) return;
    const tokens = html.match(TOKENS) ?? [];
    if (standing !== undefined && rewrite(standing, tokens)) {
      standing = { ...standing, html, tokens };
      return;
    }
    place = replace(place, elementOf(html));
    standing = { html, tokens, nodes: nodesOf(place, tokens) };
  };
}

/** The nodes below and with `place`, in the order of the tokens that begin them. */
function nodesOf(place: Element, tokens: readonly string[]): (Node | undefined)[] {
  const walker = document.createTreeWalker(place, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
  let node: Node | null = place;
  return tokens.map((token) => {
    if (token.startsWith('</') || node === null) return undefined;
    const begun = node;
    node = walker.nextNode();
    return begun;
  });
}

/** Whether changing words and attributes was enough; nothing is changed where it is not. */
function rewrite({ tokens: before, nodes }: Standing, after: readonly string[]): boolean {
  if (before.length !== after.length) return false;
  const changes: (() => void)[] = [];
  for (let i = 0; i < after.length; i++) {
    const [old, wanted] = [before[i]!, after[i]!];
    if (old === wanted) continue;
    const node = nodes[i];
    const change = node === undefined ? undefined : old.startsWith('<') ? changeOfTag(node, old, wanted) : changeOfText(node, wanted);
    if (change === undefined) return false;
    changes.push(change);
  }
  for (const change of changes) change();
  return true;
}

function changeOfText(node: Node, wanted: string): (() => void) | undefined {
  if (!(node instanceof Text) || wanted.startsWith('<') || wanted.includes(ESCAPED)) return undefined;
  return () => (node.nodeValue = wanted);
}

/** Only values may differ: the same names in the same order. */
function changeOfTag(node: Node, old: string, wanted: string): (() => void) | undefined {
  if (!(node instanceof Element) || wanted.includes(ESCAPED) || old.replace(ATTRIBUTES, ' $1') !== wanted.replace(ATTRIBUTES, ' $1')) return undefined;
  return () => {
    for (const [, name, value] of wanted.matchAll(ATTRIBUTES)) if (!KEPT.has(name!) && node.getAttribute(name!) !== value) node.setAttribute(name!, value!);
  };
}
