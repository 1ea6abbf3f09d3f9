/** What a schema takes, field by field, asked of the schema itself: nothing here repeats a unit, a range or a choice. */
import type { z } from 'zod';
import { REFERENCES, type Problem } from '../../authoring/index.ts';

/** One field as the guide shows it. */
export interface Field {
  /** From the top of the file, with dots: `vessel.volume`; `[]` after what is a list. */
  readonly path: string;
  /** Where one field chooses the others: the choice that this one belongs to. */
  readonly only?: string;
  readonly needed: boolean;
  /** What to write, with code in backquotes. */
  readonly write: string;
  /** The schema's own. */
  readonly description: string;
}

/** The parts of a schema's definition that matter here. */
interface Definition {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.ZodType>>;
  readonly element?: z.ZodType;
  readonly innerType?: z.ZodType;
  readonly defaultValue?: unknown;
  readonly options?: readonly z.ZodType[];
  readonly discriminator?: string;
  readonly entries?: Readonly<Record<string, string>>;
  readonly values?: readonly unknown[];
  readonly in?: z.ZodType;
}

const definitionOf = (schema: z.ZodType): Definition => schema._zod.def as unknown as Definition;

/** All fields of an object's schema, in their order, nested ones after the field that holds them. */
export function fieldsOf(schema: z.ZodType, above = ''): Field[] {
  const definition = definitionOf(schema);
  if (definition.type === 'union' && definition.discriminator !== undefined) return fieldsOfChoices(definition, above);
  return Object.entries(definition.shape ?? {}).flatMap(([key, field]) => fieldAt(above === '' ? key : `${above}.${key}`, field));
}

/** What is said of a field that chooses and says nothing of itself. */
const CHOOSES = 'Which of these it is: the other fields depend on it.';

/** The field that chooses, those common to all choices, then those of each. */
function fieldsOfChoices({ options = [], discriminator = '' }: Definition, above: string): Field[] {
  const prefix = above === '' ? '' : `${above}.`;
  const names = options.map((option) => String(definitionOf(shapeOf(option)[discriminator]!).values?.[0]));
  const everywhere = Object.keys(shapeOf(options[0]!)).filter((key) => key !== discriminator && options.every((option) => key in shapeOf(option)));
  const own = options.flatMap((option, i) =>
    Object.entries(shapeOf(option))
      .filter(([key]) => key !== discriminator && !everywhere.includes(key))
      .flatMap(([key, field]) => fieldAt(prefix + key, field).map((one) => ({ ...one, only: names[i] }))));
  return [
    { path: prefix + discriminator, needed: true, write: oneOf(names), description: shapeOf(options[0]!)[discriminator]!.description ?? CHOOSES },
    ...everywhere.flatMap((key) => fieldAt(prefix + key, shapeOf(options[0]!)[key]!)),
    ...own,
  ];
}

const shapeOf = (schema: z.ZodType): Readonly<Record<string, z.ZodType>> => definitionOf(schema).shape ?? {};

function fieldAt(path: string, schema: z.ZodType): Field[] {
  const { inner, needed, initial } = unwrapped(schema);
  const definition = definitionOf(inner);
  const field: Field = { path, needed, write: `${writeFor(inner)}${initial === undefined ? '' : `; \`${String(initial)}\` where it is left out`}`, description: schema.description ?? inner.description ?? '' };
  if (definition.type === 'array') {
    const item = definitionOf(definition.element!);
    return holdsFields(item) ? [field, ...fieldsOf(definition.element!, `${path}[]`)] : [field];
  }
  return holdsFields(definition) ? [field, ...fieldsOf(inner, path)] : [field];
}

const holdsFields = ({ type, discriminator }: Definition): boolean => type === 'object' || discriminator !== undefined;

function unwrapped(schema: z.ZodType): { readonly inner: z.ZodType; readonly needed: boolean; readonly initial?: unknown } {
  const { type, innerType, defaultValue } = definitionOf(schema);
  if (type === 'optional') return { inner: innerType!, needed: false };
  if (type === 'default') return { inner: innerType!, needed: false, initial: defaultValue };
  return { inner: schema, needed: true };
}

const oneOf = (choices: readonly string[]): string => choices.map((choice) => `\`${choice}\``).join(', ');

/** What to write in a field of this schema. */
function writeFor(schema: z.ZodType): string {
  const to = REFERENCES.get(schema as z.ZodString)?.to;
  if (to !== undefined) return to === 'objective' ? 'the id of an objective' : `the name of ${article(to)}`;
  const definition = definitionOf(schema);
  switch (definition.type) {
    case 'array': return listOf(definition.element!);
    case 'object': return 'fields, indented below it';
    case 'enum': return `one of ${oneOf(Object.values(definition.entries ?? {}))}`;
    case 'literal': return oneOf((definition.values ?? []).map(String));
    case 'boolean': return '`true` or `false`';
    case 'union': return definition.discriminator === undefined ? writeForAny(definition.options ?? []) : 'fields, indented below it';
    case 'number': return 'a number';
    case 'string': return textFor(schema);
    default: return definition.in !== undefined && definitionOf(definition.in).type !== 'unknown' ? writeFor(definition.in) : asked(schema);
  }
}

function listOf(item: z.ZodType): string {
  const { type } = definitionOf(item);
  if (type === 'object') return 'a list; each item has the fields below';
  return type === 'array' ? 'a list of lists' : `a list of: ${writeFor(item)}`;
}

const writeForAny = (options: readonly z.ZodType[]): string =>
  [...new Set(options.map((option) => (definitionOf(option).type === 'object' ? `fields ${oneOf(Object.keys(shapeOf(option)))}` : writeFor(option))))].join(' or ');

const article = (noun: string): string => (noun === 'particles' ? noun : /^[aeiou]/.test(noun) ? `an ${noun}` : `a ${noun}`);

function textFor(schema: z.ZodType): string {
  const refused = schema.safeParse('\u0001')?.error?.issues.find((issue) => issue.code === 'invalid_format');
  if (refused === undefined) return 'text';
  const { format, pattern = '' } = refused as { format: string; pattern?: string };
  if (format === 'url') return 'an address that begins with `https://`';
  if (format === 'date') return 'a date: `2026-09-01`';
  const form = FORMS.find(([part]) => pattern.includes(part))?.[1];
  return form ?? 'text';
}

/** What the patterns of schemas mean, by a part that only one of them has. */
const FORMS: readonly (readonly [part: string, meaning: string])[] = [
  ['[a-z0-9]+(?:-', 'a name: lowercase letters, digits, hyphens'],
  ['[EFMPW]', 'number of an ISO 7010 sign: `W021`'],
  ['[-–]', 'two ages: `11-14`'],
  ['10\\.', 'a DOI: `10.1000/182`'],
  ['\\d+\\.\\d+', 'a version in quotes: `"1.0"`'],
];

/** What a schema that reads text itself says it wants, and within which limits. */
function asked(schema: z.ZodType): string {
  const wanted = problemOf(schema, undefined)?.instead.replace(/^add it: /, '') ?? 'text';
  const example = /`([^`]+)`/.exec(wanted)?.[1];
  if (wanted === 'a list') {
    const inside = /such as (`[^`]+`)/.exec(problemOf(schema, 'x')?.instead ?? '')?.[1];
    return `several with commas between${inside === undefined ? '' : `: ${inside}`}`;
  }
  const tooMuch = example === undefined ? 'x' : example.replace(/^[-\d.]+/, '9e99');
  const limits = /(?:range of|number from) (.+ to .+)$/.exec(problemOf(schema, tooMuch)?.what ?? '')?.[1];
  return `${wanted.replace(', such as', ':')}${limits === undefined ? '' : `, ${limits}`}`;
}

function problemOf(schema: z.ZodType, input: unknown): Problem | undefined {
  const issue = schema.safeParse(input).error?.issues[0];
  return issue?.code === 'custom' ? (issue.params?.['problem'] as Problem | undefined) : undefined;
}
