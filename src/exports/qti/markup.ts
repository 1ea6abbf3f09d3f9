/** XML as a tree, written in the names of either version: `response-declaration` is `qti-response-declaration` in one and `responseDeclaration` in the other. */
import { escapeXml } from '../xml.ts';

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element, or finished markup. */
export type Node = string | Element;

export interface Element {
  readonly name: string;
  readonly attributes: Attributes;
  readonly children: readonly Node[];
}

/** What elements and attributes are called. */
export interface Naming {
  readonly element: (name: string) => string;
  readonly attribute: (name: string) => string;
}

/** Names as they stand. */
export const AS_WRITTEN: Naming = { element: (name) => name, attribute: (name) => name };

export const element = (name: string, attributes: Attributes, ...children: readonly Node[]): Element => ({ name, attributes, children });

/** An element with a text or a number. XML writes numbers with a decimal point, whatever the language of the page. */
export const leaf = (name: string, attributes: Attributes, value: string | number): Element => element(name, attributes, escapeXml(String(value)));

/** A tree as text. */
export function written(node: Node, naming: Naming): string {
  if (typeof node === 'string') return node;
  const { name, attributes, children } = node;
  const tag = naming.element(name);
  const stated = Object.entries(attributes).flatMap(([key, value]) => (value === undefined ? [] : [` ${naming.attribute(key)}="${escapeXml(String(value))}"`]));
  const head = `<${tag}${stated.join('')}`;
  return children.length === 0 ? `${head}/>` : `${head}>${children.map((child) => written(child, naming)).join('')}</${tag}>`;
}
