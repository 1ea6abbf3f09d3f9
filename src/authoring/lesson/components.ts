/** One component of a lesson: its name, its attributes, where it stands and what it encloses. */
import { REFERENCES, type ReferenceKind } from '../fields.ts';
import type { Place } from '../findings.ts';
import { proposeName } from '../names.ts';
import { unknownChoice } from '../request.ts';
import { checkData } from '../schema.ts';
import { isUnknownChoice, type ComponentSpec, type RawAttributes, type SheetKind, type Vocabulary } from '../vocabulary.ts';
import { isComponent, type ComponentNode, type LessonNode } from './nodes.ts';
import { placeOf, written, type LessonSource } from './source.ts';
import { typedProblem, typedQuantities } from './typed-quantities.ts';
import { z } from 'zod';

/** A component found right, with the names that it refers to. */
export interface CheckedComponent {
  readonly name: string;
  readonly attributes: Readonly<Record<string, unknown>>;
  readonly references: readonly { readonly to: ReferenceKind; readonly name: string; readonly position: Place }[];
}

/** Checks one component. @returns undefined if its name or its attributes are wrong */
export function checkComponent(
  source: LessonSource,
  node: ComponentNode,
  ancestors: readonly LessonNode[],
  kind: SheetKind,
  vocabulary: Vocabulary,
): CheckedComponent | undefined {
  const place = placeOf(node);
  const spec = node.name === null ? undefined : vocabulary.components.get(node.name);
  if (spec === undefined) {
    source.report(place, unknownName(node.name, vocabulary));
    plainAttributes(source, node);
    return undefined;
  }
  checkPlace(source, node, spec, ancestors, kind);
  checkContents(source, node, spec);
  const raw = plainAttributes(source, node);
  return raw === undefined ? undefined : readAttributes(source, node, spec, raw);
}

function unknownName(name: string | null, vocabulary: Vocabulary) {
  if (name === null) return { code: 'raw-html', what: '`<>` encloses nothing that is known', instead: 'remove it' } as const;
  if (name.toLowerCase() === 'script')
    return { code: 'script', what: 'a script begins here', instead: 'remove it: lessons hold no code' } as const;
  if (/^[a-z][a-z0-9-]*$/.test(name))
    return { code: 'raw-html', what: `\`<${name}>\` is raw HTML`, instead: 'write it in Markdown or with a component' } as const;
  return {
    code: 'unknown-component',
    what: `there is no component \`<${name}>\``,
    instead: proposeName(name, vocabulary.components.keys()),
  } as const;
}

function checkPlace(
  source: LessonSource,
  node: ComponentNode,
  spec: ComponentSpec,
  ancestors: readonly LessonNode[],
  kind: SheetKind,
): void {
  const refuse = (what: string, instead: string): void =>
    source.report(placeOf(node), { code: 'component-placement', what: `\`<${spec.name}>\` ${what}`, instead });
  const parent = ancestors.at(-1);
  const enclosing = ancestors.filter(isComponent).map((one) => one.name ?? '');
  if (!spec.allowedIn.includes(kind))
    refuse(`has no place in ${KIND[kind]}`, `it belongs in ${spec.allowedIn.map((one) => KIND[one]).join(', ')}`);
  if (spec.placement === 'block' && node.type === 'mdxJsxTextElement')
    refuse('stands inside a sentence, heading or table', 'give it lines of its own, with empty lines around it');
  if (enclosing.includes(spec.name)) refuse('stands inside another of its kind', 'close the outer one first');
  if (spec.parents !== undefined && !spec.parents.includes(enclosing.at(-1) ?? '')) {
    refuse(
      enclosing.length === 0 ? 'stands by itself' : `stands in \`<${enclosing.at(-1)}>\``,
      `put it inside ${spec.parents.map((one) => `\`<${one}>\``).join(' or ')}`,
    );
  }
  if (parent?.type === 'link' && spec.children === 'inline') refuse('stands inside a link', 'put it before or after the link');
}

function checkContents(source: LessonSource, node: ComponentNode, spec: ComponentSpec): void {
  const first = node.children[0];
  if (spec.children === 'none' && first !== undefined) {
    source.report(placeOf(first), {
      code: 'component-children',
      what: `\`<${spec.name}>\` encloses something`,
      instead: `close it at once: \`<${spec.name} …/>\``,
    });
  }
  const block = (node.children as readonly LessonNode[]).find((child) => BLOCKS.has(child.type));
  if (spec.children === 'inline' && block !== undefined) {
    source.report(placeOf(block), {
      code: 'component-children',
      what: `\`<${spec.name}>\` encloses more than part of a sentence`,
      instead: 'enclose a few words without empty lines, lists or headings',
    });
  }
  if (spec.children === 'inline' && first === undefined) {
    source.report(placeOf(node), {
      code: 'component-children',
      what: `\`<${spec.name}>\` is empty`,
      instead: 'enclose the words that it is about',
    });
  }
}

/** Attributes as text; undefined if one of them is code, unsafe, or given twice. */
function plainAttributes(source: LessonSource, node: ComponentNode): RawAttributes | undefined {
  const raw = new Map<string, string>();
  let sound = true;
  const refuse = (
    place: Place,
    code: 'expression' | 'unsafe-attribute' | 'duplicate-attribute' | 'entity-markup' | 'raw-html',
    what: string,
    instead: string,
  ): void => {
    source.report(place, { code, what, instead });
    sound = false;
  };
  for (const attribute of node.attributes) {
    const place = attribute.position ? placeOf(attribute) : placeOf(node);
    if (attribute.type === 'mdxJsxExpressionAttribute') {
      refuse(place, 'expression', 'braces stand among the attributes', 'write each attribute as `name="value"`');
      continue;
    }
    const { name, value } = attribute;
    if (value !== null && typeof value === 'object')
      refuse(place, 'expression', `the value of \`${name}\` is in braces`, `write \`${name}="…"\``);
    else if (UNSAFE.test(name)) refuse(place, 'unsafe-attribute', `the attribute \`${name}\` is refused`, 'remove it');
    else if (raw.has(name)) refuse(place, 'duplicate-attribute', `\`${name}\` is given a second time`, 'remove one of the two');
    else if (/&[#a-z]/i.test(written(source, attribute)) && /[<>]/.test(value ?? ''))
      refuse(place, 'entity-markup', `the value of \`${name}\` spells markup with entities`, 'write plain text');
    else if (/<[a-z/!?]/i.test(value ?? '')) refuse(place, 'raw-html', `the value of \`${name}\` spells markup`, 'write plain text');
    else raw.set(name, value ?? '');
  }
  return sound ? Object.fromEntries(raw) : undefined;
}

function readAttributes(
  source: LessonSource,
  node: ComponentNode,
  spec: ComponentSpec,
  raw: RawAttributes,
): CheckedComponent | undefined {
  const placeOfAttribute = (name: unknown): Place => {
    const attribute = node.attributes.find((one) => one.type === 'mdxJsxAttribute' && one.name === name);
    return placeOf(attribute?.position ? attribute : node);
  };
  const schema = typeof spec.attributes === 'function' ? spec.attributes(raw) : spec.attributes;
  if (isUnknownChoice(schema)) {
    source.report(placeOfAttribute(schema.attribute), unknownChoice(schema));
    return undefined;
  }
  const checked = checkData(schema as z.ZodType<Readonly<Record<string, unknown>>>, raw, source.file, (path) =>
    placeOfAttribute(path[0]),
  );
  for (const { line, column, ...problem } of checked.findings) source.report({ line, column }, problem);
  for (const shown of ['title', 'caption']) {
    for (const { text } of typedQuantities(raw[shown] ?? '')) {
      source.report(placeOfAttribute(shown), typedProblem(text, 'move the number into the text, with `<Value>` or `<Given>`'));
    }
  }
  if (checked.data === undefined) return undefined;
  return { name: spec.name, attributes: checked.data, references: referencesOf(schema, checked.data, placeOfAttribute) };
}

function referencesOf(
  schema: z.ZodObject,
  attributes: Readonly<Record<string, unknown>>,
  placeOfAttribute: (name: string) => Place,
): CheckedComponent['references'] {
  const { shape } = schema;
  return Object.entries(attributes).flatMap(([name, value]) => {
    const field = shape[name];
    const inner = field instanceof z.ZodOptional ? field.unwrap() : field;
    const to = REFERENCES.get(inner as z.ZodType)?.to;
    return to !== undefined && typeof value === 'string' ? [{ to, name: value, position: placeOfAttribute(name) }] : [];
  });
}

const UNSAFE =
  /^on|^style$|^class(?:Name)?$|^(?:is|slot|ref|key|srcdoc|href|src|action[A-Z].*|formaction|dangerouslySetInnerHTML|__proto__)$|[:.]/i;
const BLOCKS = new Set([
  'paragraph',
  'heading',
  'list',
  'blockquote',
  'code',
  'math',
  'table',
  'thematicBreak',
  'mdxJsxFlowElement',
]);
const KIND: Readonly<Record<SheetKind, string>> = {
  run: 'a run sheet',
  student: 'a student sheet',
  background: 'a background sheet',
  question: 'a question',
  hazard: 'a hazard sheet',
  misconception: 'a misconception',
};
