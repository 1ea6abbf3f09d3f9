/** XML read by a reference library (libxml2), as plain data in the names of QTI 3.0 without their prefix, whichever version it was written in. */
import { XmlCData, XmlDocument, XmlElement, XmlText } from 'libxml2-wasm';

export interface Tree {
  /** Of a QTI element the name in 3.0 after `qti-`; of others, `html:p`, `math:mi`. */
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Tree[];
  /** All text in it. */
  readonly text: string;
  /** Whether any text that is not space stands directly in it. */
  readonly isMixed: boolean;
}

const MATHML = 'http://www.w3.org/1998/Math/MathML';
const SCHEMA_INSTANCE = 'http://www.w3.org/2001/XMLSchema-instance';

/** HTML in items: QTI 3.0 and 2.1, Assessment, Section and Item Information Model, as far as our lessons can use it. */
const HTML = new Set([
  'p', 'div', 'h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'ul', 'ol', 'li', 'dl', 'dt', 'dd', 'blockquote', 'pre', 'hr', 'br',
  'table', 'caption', 'thead', 'tbody', 'tr', 'th', 'td', 'em', 'strong', 'code', 'sub', 'sup',
]);

const kebab = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** The root of a well-formed document. Throws where it is not. */
export function treeOf(xml: string): Tree {
  const document = XmlDocument.fromString(xml);
  try {
    return readElement(document.root);
  } finally {
    document.dispose();
  }
}

function readElement(node: XmlElement): Tree {
  const children: Tree[] = [];
  let isMixed = false;
  for (let child = node.firstChild; child !== null; child = child.next) {
    if (child instanceof XmlElement) children.push(readElement(child));
    else if (child instanceof XmlText || child instanceof XmlCData) isMixed ||= child.content.trim() !== '';
  }
  const attributes = Object.fromEntries(node.attrs.map((attribute) => [nameOfAttribute(attribute.prefix, attribute.name, attribute.namespaceUri), attribute.value]));
  return { name: nameOf(node), attributes, children, text: node.content, isMixed };
}

function nameOf({ name, namespaceUri }: XmlElement): string {
  if (namespaceUri === MATHML) return `math:${name}`;
  if (HTML.has(name)) return `html:${name}`;
  return name.startsWith('qti-') ? name.slice('qti-'.length) : kebab(name);
}

const nameOfAttribute = (prefix: string, name: string, namespace: string): string => (namespace === SCHEMA_INSTANCE ? `xsi:${name}` : prefix === '' ? kebab(name) : `${prefix}:${name}`);

/** An element and all below it. */
export const everyElement = (tree: Tree): Tree[] => [tree, ...tree.children.flatMap(everyElement)];

/** The one element of a name. */
export function only(tree: Tree, name: string): Tree {
  const found = everyElement(tree).filter((one) => one.name === name);
  if (found.length !== 1) throw new Error(`${found.length} elements are named ${name}.`);
  return found[0]!;
}
