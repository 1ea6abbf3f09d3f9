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
 * A function that draws HTML of one element in the place of one on the page, again and again: it finds what has to change, and returns what changes it.
 * @param first what stands there when the page is opened
 * @param replace puts one element in the place of another, and returns the one that stands there then
 */
export function redrawing(first: Element, replace: (old: Element, fresh: Element) => Element): (html: string) => () => void {
  let place = first;
  let standing: Standing | undefined;

  function ready(html: string): () => void {
    const against = standing;
    if (html === against?.html) return () => undefined;
    const tokens = html.match(TOKENS) ?? [];
    const changes = against && changesOf(against, tokens);
    const fresh = changes === undefined ? elementOf(html) : undefined;
    return () => {
      // Another has been drawn meanwhile.
      if (standing !== against) ready(html)();
      else if (fresh !== undefined) {
        place = replace(place, fresh);
        standing = { html, tokens, nodes: nodesOf(place, tokens) };
      } else {
        for (const change of changes!) change();
        standing = { html, tokens, nodes: against!.nodes };
      }
    };
  }

  return ready;
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

/** The changes of words and attributes that are enough; undefined where they are not. */
function changesOf({ tokens: before, nodes }: Standing, after: readonly string[]): (() => void)[] | undefined {
  if (before.length !== after.length) return undefined;
  const changes: (() => void)[] = [];
  for (let i = 0; i < after.length; i++) {
    const [old, wanted] = [before[i]!, after[i]!];
    if (old === wanted) continue;
    const node = nodes[i];
    const change = node === undefined ? undefined : old.startsWith('<') ? changeOfTag(node, old, wanted) : changeOfText(node, wanted);
    if (change === undefined) return undefined;
    changes.push(change);
  }
  return changes;
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
