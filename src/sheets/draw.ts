/** A checked lesson to HTML: Markdown by the standard route, components by their own drawing, formulas by KaTeX. */
import type { Element, ElementContent, Root as HastRoot } from 'hast';
import { toHtml } from 'hast-util-to-html';
import type { Heading, Image, Link, Nodes, Root } from 'mdast';
import { defaultHandlers, toHast, type Handler, type Handlers, type State } from 'mdast-util-to-hast';
import { IMAGE_FILE, plainText, type Lesson, type LessonNode } from '../authoring/index.ts';
import { LESSON_TEXTS } from '../texts/index.ts';
import type { Component, Scene } from './component.ts';
import { raw, type Raw } from './html/text.ts';
import { displayFormula, type MathStyles } from './math.ts';

/** How a lesson is drawn: in which scene, with which components. */
export interface Drawing {
  readonly scene: Scene;
  readonly components: ReadonlyMap<string, Component>;
  readonly math: MathStyles;
  /** Headings one or more levels down: a hazard's text inside a sheet. */
  readonly lowerHeadings?: number;
}

/** The text of a lesson as HTML. */
export function drawLesson({ tree }: Lesson, drawing: Drawing): Raw {
  return raw(withoutGaps(serialize(toHast(tree as Root, { handlers: handlersOf(drawing) }) as HastRoot)));
}

/** Citations stand in the margin of a wide page: the space before one would part a word from its full stop. The stylesheet gives it back. */
const withoutGaps = (markup: string): string => markup.replace(/ (<a class="cite")/g, '$1');

const serialize = (root: HastRoot): string => toHtml(root, { allowDangerousHtml: true });

/** The node kinds of lesson text that the standard route does not know. */
interface ComponentNode {
  readonly data?: { readonly component?: string; readonly attributes?: Readonly<Record<string, unknown>> };
  readonly children: readonly Nodes[];
}

/** A picture stands beside the folders of the sheets, and is named as in the content folder. */
const pictureAddress = (name: string): string => `../${name}`;

function handlersOf(drawing: Drawing): Handlers {
  const component = handler<ComponentNode>((state, node) => {
    const name = node.data?.component ?? '';
    const kind = drawing.components.get(name);
    if (kind === undefined) throw new Error(`there is no component ${name}: lessons are checked when content is loaded`);
    const inside = (): Raw => raw(serialize({ type: 'root', children: childrenOf(state, node) }));
    return verbatim(kind.draw(node.data?.attributes ?? {}, inside, drawing.scene).html);
  });
  // The last heading that was drawn, which is none that this reader may not see.
  let above = LESSON_TEXTS[drawing.scene.setting.style.language].table;
  return {
    mdxJsxFlowElement: component,
    mdxJsxTextElement: component,
    inlineMath: handler<{ readonly value: string }>((_, { value }) => verbatim(drawing.math.render(value, false))),
    math: handler<{ readonly value: string }>((_, { value }) => verbatim(displayFormula(drawing.math, value, drawing.scene.setting.style.language).html)),
    link: handler<Link>((state, node) => defaultHandlers.link(state, IMAGE_FILE.test(node.url) ? { ...node, url: pictureAddress(node.url) } : node)),
    image: handler<Image>((state, node) => defaultHandlers.image(state, { ...node, url: pictureAddress(node.url) })),
    heading: handler<Heading>((state, node) => {
      above = plainText(node as LessonNode);
      return element(`h${Math.min(6, node.depth + (drawing.lowerHeadings ?? 0))}`, childrenOf(state, node));
    }),
    table: handler<TableNode>((state, node) => scrolling(tableOf(state, node, above), above)),
  };
}

const handler = <N>(make: (state: State, node: N) => ElementContent): Handler => make as unknown as Handler;
const childrenOf = (state: State, node: unknown): ElementContent[] => state.all(node as never) as ElementContent[];
const verbatim = (value: string): ElementContent => ({ type: 'raw', value }) as unknown as ElementContent;

/** A table that an author wrote is named by the heading that it stands under. It scrolls by itself on a narrow screen. */
const scrolling = (table: Element, name: string): Element => ({
  type: 'element', tagName: 'div', properties: { className: ['scroll'], tabIndex: 0, role: 'group', ariaLabel: name }, children: [table],
});

interface TableNode {
  readonly children: readonly { readonly children: readonly Nodes[] }[];
}

function tableOf(state: State, node: TableNode, name: string): Element {
  const [head, ...body] = node.children.map((row, r) =>
    element('tr', row.children.map((cell) => {
      const children = childrenOf(state, cell);
      // A corner without words is no header of anything.
      const isHeader = r === 0 && children.length > 0;
      const made = element(isHeader ? 'th' : 'td', children);
      return isHeader ? { ...made, properties: { scope: 'col' } } : made;
    })),
  );
  const caption = { ...element('caption', [{ type: 'text', value: name }]), properties: { className: ['unseen'] } };
  return element('table', [caption, element('thead', head === undefined ? [] : [head]), element('tbody', body)]);
}

const element = (tagName: string, children: ElementContent[]): Element => ({ type: 'element', tagName, properties: {}, children });
