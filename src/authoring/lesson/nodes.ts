/** The nodes of a lesson's tree. */
import type { Nodes, Paragraph, Parents, Root } from 'mdast';
// Brings formulas and components into the types of the tree.
import type {} from 'mdast-util-math';
import type { MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx-jsx';
import type {} from 'mdast-util-mdx-expression';
import type {} from 'mdast-util-mdxjs-esm';

declare module 'unist' {
  interface Data {
    /** name of a checked component */
    component?: string | undefined;
    /** attributes of a checked component, read by its schema */
    attributes?: Readonly<Record<string, unknown>> | undefined;
  }
}

export type LessonNode = Nodes;
export type LessonParent = Parents;
export type ComponentNode = MdxJsxFlowElement | MdxJsxTextElement;
export type { MdxJsxFlowElement, MdxJsxTextElement, Paragraph, Root };

/** What checking leaves at a component's node for the rooms above. */
export interface ComponentData {
  readonly component: string;
  readonly attributes: Readonly<Record<string, unknown>>;
}

export function isComponent(node: LessonNode): node is ComponentNode {
  return node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement';
}

export function isParent(node: LessonNode): node is LessonParent {
  return 'children' in node;
}

/** A component's name and attributes at its node, undefined for other nodes. */
export function componentOf(node: LessonNode): ComponentData | undefined {
  const { component, attributes } = node.data ?? {};
  return isComponent(node) && component !== undefined && attributes !== undefined ? { component, attributes } : undefined;
}

/** The plain text of a node. */
export function plainText(node: LessonNode): string {
  if ('value' in node) return node.value;
  return isParent(node) ? node.children.map((child) => plainText(child)).join('') : '';
}
