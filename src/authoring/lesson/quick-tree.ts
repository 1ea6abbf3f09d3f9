/**
 * Reads lesson text in a fifteenth of the time of the parser that findings quote. It reads only text
 * with nothing unusual in it; the rest, and all in which anything is found wrong, is the other's.
 */
import { mdxToMdast } from 'satteri';
import { isComponent, isParent, type ComponentNode, type LessonNode, type LessonParent, type MdxJsxTextElement, type Root } from './nodes.ts';
import type { LessonSource } from './source.ts';

/** Stand for braces; in no lesson, since they are nobody's letters. */
const OPEN = '\ue000';
const CLOSE = '\ue001';
/** Bare addresses, which this parser takes for words; code, which it would read; tags closed in a list or quote that they do not open in, or with a space, which it lets pass. */
const UNUSUAL = /[\0@\ue000\ue001\p{Surrogate}]|:\/\/|www\.|\b(?:import|export)\b|^[ \t]*(?:[>*+-]|\d+[.)])[ \t>]*<\/|\/\s+>/imu;
/** Tags in one text; parsing time grows with the square of those in each other. */
const MOST_TAGS = 1000;

/** The tree of the text, undefined where it is the other parser's to read. */
export function quickTree(source: LessonSource): Root | undefined {
  const { text } = source;
  if (UNUSUAL.test(text) || occurrences(text, '<') > MOST_TAGS) return undefined;
  // Code in braces goes to a parser that ends the whole program when it is nested deeply: it never sees a brace.
  const hidden = text.replaceAll('{', OPEN).replaceAll('}', CLOSE);
  const tree = read(hidden);
  if (tree === undefined) return undefined;
  const left = { braces: occurrences(hidden, OPEN) + occurrences(hidden, CLOSE) };
  return settle(tree, source, left) && left.braces === 0 ? tree : undefined;
}

function read(text: string): Root | undefined {
  try {
    return mdxToMdast(text, { features: { math: true, frontmatter: false } }) as Root;
  } catch {
    return undefined;
  }
}

/**
 * Puts back the braces of formulas and code, adds the places of attributes, and puts sentences into paragraphs.
 * @param left braces not seen in formulas and code, which are where none belongs
 * @returns whether all of this was possible
 */
function settle(node: LessonNode, source: LessonSource, left: { braces: number }): boolean {
  if (node.type === 'math' || node.type === 'inlineMath' || node.type === 'code' || node.type === 'inlineCode') {
    left.braces -= occurrences(node.value, OPEN) + occurrences(node.value, CLOSE);
    node.value = node.value.replaceAll(OPEN, '{').replaceAll(CLOSE, '}');
  }
  if (isComponent(node) && !placeAttributes(node, source)) return false;
  return !isParent(node) || (joinSentences(node) && node.children.every((child) => settle(child, source, left)));
}

/**
 * This parser takes components out of a paragraph that holds nothing else, and the space between them is gone.
 * @returns whether each stands on lines of its own, so that there was no space
 */
function joinSentences(parent: LessonParent): boolean {
  const children = parent.children as LessonNode[];
  for (const [i, child] of children.entries()) {
    if (child.type !== 'mdxJsxFlowElement') continue;
    if (child.position?.end.line === children[i + 1]?.position?.start.line) return false;
    if (child.children.some((inner) => SENTENCE.has(inner.type)))
      children[i] = { type: 'paragraph', children: [{ ...child, type: 'mdxJsxTextElement' } as MdxJsxTextElement], position: child.position };
  }
  return true;
}

/** What a sentence consists of. */
const SENTENCE = new Set<LessonNode['type']>(['text', 'emphasis', 'strong', 'delete', 'inlineCode', 'inlineMath', 'link', 'image', 'break', 'mdxJsxTextElement']);

const ATTRIBUTE = /\s+([^\s"'<>=/]+)(?:\s*=\s*(?:"[^"]*"|'[^']*'))?/y;

function placeAttributes({ name, attributes, position }: ComponentNode, { text, at }: LessonSource): boolean {
  ATTRIBUTE.lastIndex = (position?.start.offset ?? 0) + '<'.length + (name ?? '').length;
  return attributes.every((attribute) => {
    const [written = '', found] = ATTRIBUTE.exec(text) ?? [];
    // After a backslash in a value this parser counts one column too few.
    if (attribute.type !== 'mdxJsxAttribute' || attribute.name !== found || written.includes('\\')) return false;
    const end = ATTRIBUTE.lastIndex;
    const start = end - written.trimStart().length;
    attribute.position = { start: { ...at(start), offset: start }, end: { ...at(end), offset: end } };
    return true;
  });
}

function occurrences(text: string, sign: string): number {
  let count = 0;
  for (let i = text.indexOf(sign); i >= 0; i = text.indexOf(sign, i + 1)) count++;
  return count;
}
