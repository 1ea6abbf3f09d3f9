/** A lesson's text, parsed and checked: what the rooms above turn into pages. */
import type { FindingCode } from './catalogue.ts';
import type { ReferenceKind } from './fields.ts';
import { sortFindings, START, type Finding, type Place, type Problem } from './findings.ts';
import { arrange } from './lesson/arrange.ts';
import { checkComponent } from './lesson/components.ts';
import { partFrontMatter, type PartedText } from './lesson/front-matter.ts';
import { IMAGE_FILE, isRelative } from './lesson/links.ts';
import { checkMarkdown, HAS_PICTURES } from './lesson/markdown.ts';
import { isComponent, isParent, plainText, type ComponentNode, type LessonNode, type Root } from './lesson/nodes.ts';
import { tooDeep } from './lesson/processor.ts';
import { quickTree } from './lesson/quick-tree.ts';
import { readTree } from './lesson/read-tree.ts';
import { slowPart } from './lesson/slow.ts';
import { lessonSource, placeOf, type LessonSource, type PlacedTyped } from './lesson/source.ts';
import type { SheetKind, Vocabulary } from './vocabulary.ts';
import { readYaml, type YamlSource } from './yaml.ts';

/** A component in lesson text, its attributes read by its schema. */
export interface PlacedComponent {
  readonly name: string;
  readonly attributes: Readonly<Record<string, unknown>>;
  readonly position: Place;
}

/** A heading of the text. */
export interface PlacedHeading {
  readonly depth: number;
  readonly text: string;
  readonly position: Place;
}

/** The name of something outside the text. */
export interface PlacedReference {
  readonly to: ReferenceKind;
  readonly name: string;
  readonly position: Place;
}

/** A relative link, which has yet to lead to something. */
export interface PlacedLink {
  readonly address: string;
  /** names of the components that enclose it, the outermost first */
  readonly inside: readonly string[];
  readonly position: Place;
}

/**
 * A checked lesson. In `tree`, every component node carries `data.component` (its name) and
 * `data.attributes` (its attributes, read); flow nodes stand for block components, text nodes for inline ones.
 */
export interface Lesson {
  readonly file: string;
  readonly kind: SheetKind;
  readonly tree: Root;
  /** in the order of the text, nested ones after those that enclose them */
  readonly components: readonly PlacedComponent[];
  readonly headings: readonly PlacedHeading[];
  readonly references: readonly PlacedReference[];
}

/** What became of a lesson's text. */
export interface LessonResult {
  /** undefined if anything is wrong with the text */
  readonly lesson: Lesson | undefined;
  /** names that the text refers to, also where the rest of it is wrong */
  readonly references: readonly PlacedReference[];
  /** relative links of the text, also where the rest of it is wrong */
  readonly links: readonly PlacedLink[];
  /** quantities typed into the text, each of which is also a finding */
  readonly typed: readonly PlacedTyped[];
  /** undefined where there is none */
  readonly frontMatter: YamlSource | undefined;
  readonly findings: readonly Finding[];
}

/** Longest text of a lesson, in UTF-16 units. */
const LONGEST_LESSON = 64 * 1024;
/** Lists, quotes and components in each other, the paragraph included. */
const DEEPEST = 16;
/** Findings about where a thing stands in others. */
const ABOUT_PLACE: readonly FindingCode[] = ['component-placement', 'component-children', 'heading-level'];
/** Kinds whose fields stand above their text. */
const WITH_FRONT_MATTER: readonly SheetKind[] = ['question', 'hazard', 'misconception'];

/**
 * Parses and checks one lesson: all findings at once, in their order.
 * @param text of the file
 * @param file as findings name it
 * @param kind of text, which decides whether there is front matter and which components may stand in it
 */
export function parseLesson(text: string, file: string, kind: SheetKind, vocabulary: Vocabulary): LessonResult {
  const given: Given = { text, file, kind, vocabulary, parted: partFrontMatter(text), frontMatter: readFrontMatter(text, file) };
  const quick = checkRead(given, quickly);
  return quick.lesson === undefined ? checkRead(given, thoroughly) : quick;
}

interface Given {
  readonly text: string;
  readonly file: string;
  readonly kind: SheetKind;
  readonly vocabulary: Vocabulary;
  readonly parted: PartedText;
  readonly frontMatter: YamlSource | undefined;
}

/** Reads the text in one of the two ways, and checks what was read. */
function checkRead({ text, file, kind, vocabulary, parted, frontMatter }: Given, read: Reading): LessonResult {
  const source = lessonSource(file, parted.body);
  for (const { place, problem } of parted.problems) source.report(place, problem);
  if (parted.problems.length === 0) checkFrontMatter(source, kind, frontMatter);

  const parts: Parts = { components: [], headings: [], references: [] };
  const links: PlacedLink[] = [];
  const { tree, whole } = read(source, text.length);
  if (tree !== undefined) {
    arrange(tree, vocabulary);
    walk(tree, [], (node, ancestors) => {
      if (ancestors.length === DEEPEST) source.report(placeOf(node), tooDeep());
      if (isComponent(node)) collectComponent(source, node, ancestors, kind, vocabulary, parts);
      else checkMarkdown(source, node, ancestors, kind);
      if ((node.type === 'image' || (node.type === 'link' && HAS_PICTURES.includes(kind))) && IMAGE_FILE.test(node.url))
        parts.references.push({ to: 'picture', name: node.url, position: placeOf(node) });
      else if (node.type === 'link' && isRelative(node.url))
        links.push({ address: node.url, inside: ancestors.filter(isComponent).map(({ name }) => name ?? ''), position: placeOf(node) });
      if (node.type === 'heading') collectHeading(source, node, parts.headings);
    });
    checkOwnNames(source, parts.components, vocabulary);
  }
  // Where a tag was unreadable, what it would have enclosed or stood in is not known.
  const certain = source.findings.filter(({ code }) => whole || !ABOUT_PLACE.includes(code));
  const findings = sortFindings([...certain, ...(frontMatter?.findings ?? [])]);
  const lesson = tree === undefined || source.findings.length > 0 ? undefined : { file, kind, tree: withoutPlaces(tree), ...parts };
  return { lesson, references: parts.references, links, typed: source.typed, frontMatter, findings };
}

/** The fields above a lesson's text, undefined where there are none. */
export function readFrontMatter(text: string, file: string): YamlSource | undefined {
  const { frontMatter } = partFrontMatter(text);
  return frontMatter === undefined ? undefined : readYaml(frontMatter, file, 2);
}

function checkFrontMatter(source: LessonSource, kind: SheetKind, frontMatter: YamlSource | undefined): void {
  const wanted = WITH_FRONT_MATTER.includes(kind);
  if (wanted && frontMatter === undefined)
    source.report(START, {
      code: 'front-matter',
      what: 'there is no front matter',
      instead: 'begin the file with the fields of its kind between lines of `---`',
    });
  if (!wanted && frontMatter !== undefined)
    source.report(START, {
      code: 'front-matter',
      what: 'a sheet of a kit has no front matter',
      instead: 'move its fields to kit.yaml',
    });
}

/** The tree as far as there is one, and whether all of the text is in it; `length` is that of the text with its front matter. */
type Reading = (source: LessonSource, length: number) => { readonly tree: Root | undefined; readonly whole: boolean };

const quickly: Reading = (source, length) => ({ tree: tooMuch(source, length) === undefined ? quickTree(source) : undefined, whole: true });

const thoroughly: Reading = (source, length) => {
  const much = tooMuch(source, length);
  const { tree, problems } = much === undefined ? readTree(source.text) : { tree: undefined, problems: [much] };
  for (const { place, problem } of problems) source.report(place, problem);
  return { tree, whole: problems.length === 0 };
};

/** Why a text is not read at all, undefined where it is. */
function tooMuch({ text, at }: LessonSource, length: number): { readonly place: Place; readonly problem: Problem } | undefined {
  if (length > LONGEST_LESSON)
    return { place: START, problem: { code: 'file-too-large', what: `the text is longer than ${LONGEST_LESSON / 1024} kB`, instead: 'divide it' } };
  const slow = slowPart(text);
  return slow === undefined ? undefined : { place: at(slow), problem: tooDeep() };
}

function walk(
  node: LessonNode,
  ancestors: readonly LessonNode[],
  visit: (node: LessonNode, ancestors: readonly LessonNode[]) => void,
): void {
  visit(node, ancestors);
  if (!isParent(node) || ancestors.length >= DEEPEST) return;
  const inside = [...ancestors, node];
  for (const child of node.children) walk(child, inside, visit);
}

/** Places are for findings, and there are none; they would be most of a tree. */
function withoutPlaces<N extends LessonNode>(node: N): N {
  node.position = undefined;
  if (isParent(node)) for (const child of node.children) withoutPlaces(child);
  return node;
}

interface Parts {
  readonly components: PlacedComponent[];
  readonly headings: PlacedHeading[];
  readonly references: PlacedReference[];
}

function collectComponent(
  source: LessonSource,
  node: ComponentNode,
  ancestors: readonly LessonNode[],
  kind: SheetKind,
  vocabulary: Vocabulary,
  parts: Parts,
): void {
  const checked = checkComponent(source, node, ancestors, kind, vocabulary);
  if (checked === undefined) return;
  const { name, attributes, references } = checked;
  node.data = { ...node.data, component: name, attributes };
  parts.components.push({ name, attributes, position: placeOf(node) });
  parts.references.push(...references);
}

/** A name leads to one place: no other has it, be it given or counted. */
function checkOwnNames(source: LessonSource, components: readonly PlacedComponent[], vocabulary: Vocabulary): void {
  const placed = components.flatMap(({ name, attributes, position }) => {
    const anchor = vocabulary.components.get(name)?.anchor?.(attributes);
    return anchor === undefined ? [] : [{ ...anchor, position }];
  });
  const counts = new Map<string, number>();
  const taken = new Set<string>();
  for (const { own, series } of placed) {
    if (own !== undefined) continue;
    const count = (counts.get(series) ?? 0) + 1;
    counts.set(series, count);
    taken.add(`${series}-${count}`);
  }
  for (const { own, position } of placed) {
    if (own === undefined) continue;
    if (taken.has(own)) source.report(position, { code: 'duplicate-name', what: `another place of this sheet has the id \`${own}\``, instead: 'give one of them another id' });
    taken.add(own);
  }
}

function collectHeading(source: LessonSource, node: Extract<LessonNode, { type: 'heading' }>, headings: PlacedHeading[]): void {
  const above = headings.at(-1)?.depth ?? 1;
  if (node.depth > above + 1)
    source.report(placeOf(node), {
      code: 'heading-level',
      what: `a heading of level ${node.depth} follows one of level ${above}`,
      instead: `begin it with \`${'#'.repeat(above + 1)}\``,
    });
  headings.push({ depth: node.depth, text: plainText(node), position: placeOf(node) });
}
