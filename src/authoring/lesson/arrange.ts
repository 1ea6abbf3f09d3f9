/**
 * Puts components where they belong whatever the line breaks: a block component written on one line
 * parses as part of a paragraph, an inline one alone on a line as a block, splitting its sentence.
 */
import type { Vocabulary } from '../vocabulary.ts';
import {
  isComponent,
  isParent,
  type ComponentNode,
  type LessonNode,
  type LessonParent,
  type MdxJsxTextElement,
  type Paragraph,
} from './nodes.ts';

/** Arranges all of a tree, in place. */
export function arrange(parent: LessonParent, vocabulary: Vocabulary): void {
  const placement = (node: LessonNode): 'block' | 'inline' | undefined =>
    isComponent(node) ? vocabulary.components.get(node.name ?? '')?.placement : undefined;
  const arranged: LessonNode[] = [];
  for (const child of parent.children) {
    if (child.type === 'paragraph' && holdsOnlyBlocks(child, placement)) {
      arranged.push(...child.children.flatMap((node: LessonNode) => (isComponent(node) ? [asBlock(node)] : [])));
    } else if (child.type === 'mdxJsxFlowElement' && placement(child) === 'inline') {
      joinSentence(arranged, paragraphOf(asInline(child)));
    } else if (child.type === 'paragraph') {
      joinSentence(arranged, child);
    } else {
      arranged.push(child);
    }
  }
  parent.children = arranged as typeof parent.children;
  for (const child of arranged) {
    if (isComponent(child) && vocabulary.components.get(child.name ?? '')?.children === 'inline') unwrap(child);
    if (isParent(child)) arrange(child, vocabulary);
  }
}

function holdsOnlyBlocks(paragraph: Paragraph, placement: (node: LessonNode) => string | undefined): boolean {
  return (
    paragraph.children.every((child) => placement(child) === 'block' || (child.type === 'text' && child.value.trim() === '')) &&
    paragraph.children.some((child) => placement(child) === 'block')
  );
}

function asBlock(node: ComponentNode): LessonNode {
  const block = { ...node, type: 'mdxJsxFlowElement' } as Extract<LessonNode, { type: 'mdxJsxFlowElement' }>;
  const phrasing = node.type === 'mdxJsxTextElement' ? node.children : [];
  if (phrasing.length > 0) block.children = [{ type: 'paragraph', children: phrasing, position: node.position }];
  return block;
}

function asInline(node: ComponentNode): MdxJsxTextElement {
  return { ...node, type: 'mdxJsxTextElement' } as MdxJsxTextElement;
}

function paragraphOf(node: MdxJsxTextElement): Paragraph {
  return { type: 'paragraph', children: [node], position: node.position };
}

/** Continues the paragraph above if it ends on the line before: then an inline component split them. */
function joinSentence(arranged: LessonNode[], next: Paragraph): void {
  const last = arranged.at(-1);
  const lines = (next.position?.start.line ?? 0) - (last?.position?.end.line ?? 0);
  if (last?.type !== 'paragraph' || lines !== 1 || last.position === undefined || next.position === undefined) {
    arranged.push(next);
    return;
  }
  arranged[arranged.length - 1] = {
    ...last,
    children: [...last.children, { type: 'text', value: '\n' }, ...next.children],
    position: { start: last.position.start, end: next.position.end },
  };
}

/** Takes the text out of the single paragraph that line breaks around it have made. */
function unwrap(node: ComponentNode): void {
  const [only, second] = node.children as LessonNode[];
  if (only?.type === 'paragraph' && second === undefined) node.children = only.children;
}
