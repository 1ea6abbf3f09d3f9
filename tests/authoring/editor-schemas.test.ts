/** Schemas for editors: each file of the good folders fits its own, mistakes do not, and every field explains itself. */
import { cp, readFile, stat } from 'node:fs/promises';
import { readFileSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { Ajv, type ValidateFunction } from 'ajv';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { z } from 'zod';
import * as authoring from '../../src/authoring/index.ts';
import { editorSchemas, schemaLine, writeEditorSchemas, type KindWithFields } from '../../src/authoring/index.ts';
import { kindOfFile } from '../../src/authoring/plan.ts';
import { VOCABULARY } from '../../src/sheets/index.ts';
import { runCommand } from '../support/command.ts';
import { filesBelow, newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

type Json = Readonly<Record<string, unknown>>;

const GOOD = ['content', 'tests/content/good/minimal', 'tests/content/good/highland', 'tests/content/good/published'].map((path) => join(ROOT, path));
const SCHEMAS = editorSchemas(VOCABULARY) as Readonly<Record<KindWithFields, Json>>;
/** Written out here, so that no kind is left out of the list under test. */
const CHECKERS: Readonly<Record<KindWithFields, z.ZodType>> = {
  site: authoring.siteSchema,
  sources: authoring.sourcesSchema,
  room: authoring.roomSchema,
  apparatus: authoring.apparatusSchema,
  particles: authoring.particlesSchema,
  standards: authoring.standardsSchema,
  kit: authoring.kitSchema,
  hazard: authoring.hazardSchema,
  misconception: authoring.misconceptionSchema,
  notice: authoring.noticeSchema,
  question: authoring.questionSchema(VOCABULARY),
};
const KINDS = Object.keys(CHECKERS) as readonly KindWithFields[];

/** Ajv is an implementation of JSON Schema of its own; forms of dates and addresses are left to the project's check. */
const ajv = new Ajv({ strict: true, strictTypes: false, strictRequired: false, validateFormats: false, allErrors: true });
const validators = Object.fromEntries(
  KINDS.map((kind) => [kind, ajv.compile(SCHEMAS[kind])]),
) as Readonly<Record<KindWithFields, ValidateFunction>>;

interface Sample {
  readonly label: string;
  readonly folder: string;
  readonly path: string;
  readonly kind: KindWithFields;
  readonly text: string;
  readonly data: unknown;
}

const isKind = (kind: string | undefined): kind is KindWithFields => (KINDS as readonly (string | undefined)[]).includes(kind);

/** Every file with fields in the good folders. */
const SAMPLES: readonly Sample[] = GOOD.flatMap((folder) =>
  filesBelow(folder).flatMap((path): Sample[] => {
    // Of editions, which are copies, only what is written for them.
    const kind = /^editions\/.*\/notice\.yaml$/.test(path) ? 'notice' : kindOfFile(path.split('/'))?.kind;
    if (!isKind(kind) || path.startsWith('.')) return [];
    const text = readFileSync(join(folder, path), 'utf8');
    const fields = path.endsWith('.yaml') ? text : (text.split(/^---$/m)[1] ?? '');
    return [{ label: `${basename(folder)}/${path}`, folder, path, kind, text, data: parse(fields) as unknown }];
  }),
);
const YAML = SAMPLES.filter(({ path }) => path.endsWith('.yaml'));

const errorsOf = (kind: KindWithFields, data: unknown): string[] => {
  const validate = validators[kind];
  validate(data);
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message ?? ''}`);
};

describe('files of the good folders', () => {
  it('are of every kind', () => {
    expect(new Set(SAMPLES.map(({ kind }) => kind))).toEqual(new Set(KINDS));
  });

  it.each(SAMPLES)('$label fits its schema', ({ kind, data }) => {
    expect(errorsOf(kind, data)).toEqual([]);
  });

  it.each(YAML)('$label names its schema in the first line', ({ folder, path, kind, text }) => {
    const [first = ''] = text.split('\n', 1);
    const named = /^# yaml-language-server: \$schema=(\S+)$/.exec(first)?.[1] ?? '';
    expect(relative(folder, resolve(folder, dirname(path), named))).toBe(join('.schemas', `${kind}.json`));
    expect(first).toBe(schemaLine(kind, path));
  });
});

const dataOf = (kind: KindWithFields, which = ''): Json =>
  SAMPLES.find((sample) => sample.kind === kind && sample.label.includes(which))?.data as Json;
const without = (data: Json, key: string): Json => Object.fromEntries(Object.entries(data).filter(([name]) => name !== key));
const answer = (fields: Json): Json => ({ kind: 'numeric', level: 1, answer: fields });
const option = (fields: Json): Json => ({ kind: 'choice', level: 1, options: [fields, { text: 'No', why: 'It is not.' }] });

/** Each is a finding of the project's check as well. */
const MISTAKES: readonly (readonly [what: string, kind: KindWithFields, data: unknown])[] = [
  ['an unknown field', 'room', { ...dataOf('room', 'minimal'), colour: 'green' }],
  ['an unknown field further in', 'kit', { ...dataOf('kit', 'minimal'), start: { humidity: '97 %', pressure: '990 hPa' } }],
  ['a missing field', 'apparatus', without(dataOf('apparatus', 'minimal'), 'gauge')],
  ['a word that is none of the choices', 'hazard', { ...dataOf('hazard'), signal: 'BEWARE' }],
  ['a bare number where a quantity belongs', 'room', { ...dataOf('room', 'minimal'), temperature: 21 }],
  ['both of two fields of which one belongs', 'room', { ...dataOf('room', 'minimal'), elevation: '100 m' }],
  ['neither of them', 'room', without(dataOf('room', 'minimal'), 'stationPressure')],
  ['a number outside its range', 'particles', { ...dataOf('particles'), kappa: 2 }],
  ['a pump with the fields of another', 'apparatus', { ...dataOf('apparatus', 'minimal'), source: { kind: 'squeeze', speed: '6 L/min' } }],
  ['a source without a title', 'sources', [{ id: 'somebody-2001', type: 'book' }]],
  ['a statement without a code', 'standards', { ...dataOf('standards'), statements: [{ paraphrase: 'Air cools.' }] }],
  ['an empty list of what is covered', 'hazard', { ...dataOf('hazard'), covers: [] }],
  ['an answer whose name nothing computes', 'question', answer({ of: 'roomPresure' })],
  ['an answer with a parameter that is not its own', 'question', answer({ of: 'roomPressure', drop: '20 kPa' })],
  ['an answer in a unit of another dimension', 'question', answer({ of: 'roomPressure', unit: '°C' })],
  ['an option with words and a value', 'question', option({ text: 'Yes', value: { of: 'roomPressure' }, right: true, why: 'It is.' })],
  ['an option without either', 'question', option({ right: true, why: 'It is.' })],
  ['a title that is a list', 'misconception', { title: ['A cloud is made of vapor.'] }],
  ['a language that no site has', 'site', { ...dataOf('site'), language: 'fr' }],
];

describe('mistakes', () => {
  it.each(MISTAKES)('%s does not fit', (_, kind, data) => {
    expect(errorsOf(kind, data)).not.toEqual([]);
    expect(CHECKERS[kind].safeParse(data).success).toBe(false);
  });

  it('a computed answer with its own parameters fits', () => {
    expect(errorsOf('question', answer({ of: 'absolutePressure', drop: '20 kPa', elevation: '1600 m', unit: 'kPa' }))).toEqual([]);
  });

  it('fields that have a default may be left out', () => {
    expect(errorsOf('site', without(without(dataOf('site'), 'answers'), 'drafts'))).toEqual([]);
  });
});

interface Field {
  readonly at: string;
  readonly schema: Json;
}

/** Every part of a schema that is a schema itself, those of conditions left out. */
function partsOf(schema: Json, root: Json, at: string): Field[] {
  const list = (key: string): Field[] => ((schema[key] ?? []) as Json[]).flatMap((one, i) => partsOf(one, root, `${at}<${i}>`));
  const inProperties = Object.entries((schema['properties'] ?? {}) as Readonly<Record<string, Json>>).flatMap(([key, one]) =>
    partsOf(one, root, `${at}.${key}`),
  );
  const items = schema['items'] === undefined ? [] : partsOf(schema['items'] as Json, root, `${at}[]`);
  const definitions = Object.entries((schema['definitions'] ?? {}) as Readonly<Record<string, Json>>).flatMap(([key, one]) => partsOf(one, root, key));
  return [{ at, schema }, ...inProperties, ...items, ...list('oneOf'), ...list('anyOf'), ...definitions];
}

/** The description of a field, or that of the definition that it stands for. */
function describedBy(schema: Json, root: Json): unknown {
  const named = (schema['$ref'] ?? (schema['allOf'] as Json[] | undefined)?.[0]?.['$ref']) as string | undefined;
  const definition = named === undefined ? undefined : (root['definitions'] as Readonly<Record<string, Json>>)[named.replace('#/definitions/', '')];
  return schema['description'] ?? definition?.['description'];
}

describe.each(KINDS)('the schema of %s', (kind) => {
  const root = SCHEMAS[kind];
  const parts = partsOf(root, root, kind);
  const fields = parts.flatMap(({ at, schema }) =>
    Object.entries((schema['properties'] ?? {}) as Readonly<Record<string, Json>>).map(([key, one]): Field => ({ at: `${at}.${key}`, schema: one })),
  );

  it('is of the draft that editors read, with a title', () => {
    expect(root['$schema']).toBe('http://json-schema.org/draft-07/schema#');
    expect(root['title']).toMatch(/\S/);
  });

  it('describes every field in sentences', () => {
    expect(fields.filter(({ schema }) => !/^\S.*[.…]$/.test(String(describedBy(schema, root) ?? ''))).map(({ at }) => at)).toEqual([]);
  });

  it('lets no unknown field in', () => {
    const open = parts.filter(({ schema }) => 'properties' in schema && schema['additionalProperties'] !== false);
    expect(open.map(({ at }) => at)).toEqual([]);
  });

  it('gives an example of every quantity, within its range', () => {
    const quantities = parts.filter(({ schema }) => !('const' in schema) && /with its unit/.test(String(schema['description'])));
    const wrong = quantities.filter(({ schema }) => {
      const examples = (schema['examples'] ?? []) as string[];
      const [, low, high] = /from (\S+ \S+) to (\S+ [^\s.]+)\.$/.exec(String(schema['description'])) ?? [];
      return schema['type'] !== 'string' || 'pattern' in schema || examples.length === 0 || !examples.every((one) => isWithin(one, low, high));
    });
    expect(wrong.map(({ at }) => at)).toEqual([]);
  });
});

/** Whether a text is a quantity, and lies between two others of its dimension. */
function isWithin(text: string, low: string | undefined, high: string | undefined): boolean {
  const read = authoring.parseQuantity(text);
  if ('problem' in read) return false;
  const limit = (bound: string | undefined, otherwise: number): number => {
    const reading = bound === undefined ? undefined : authoring.parseQuantity(bound, read.quantity.dimension);
    return reading === undefined ? otherwise : 'quantity' in reading ? reading.quantity.value : NaN;
  };
  return read.quantity.value >= limit(low, -Infinity) && read.quantity.value <= limit(high, Infinity);
}

describe('examples', () => {
  /** Each example put in the place of what a good file says there: file, path, example, the file with it. */
  const tries = SAMPLES.flatMap((sample) => substituted(sample.data, SCHEMAS[sample.kind], []).map((one) => ({ ...one, sample })));

  it('are many', () => {
    expect(tries.length).toBeGreaterThan(300);
  });

  it('are accepted by the check of the files', () => {
    const refused = tries.filter(({ sample, path, data }) =>
      (CHECKERS[sample.kind].safeParse(data).error?.issues ?? []).some((issue) => issue.path.join('.') === path.join('.') && !isTogether(issue)),
    );
    expect(refused.map(({ sample, path, example }) => `${sample.label} ${path.join('.')}: ${String(example)}`)).toEqual([]);
  });
});

/** A contradiction with another field of the same file says nothing against an example by itself. */
const isTogether = (issue: z.core.$ZodIssue): boolean =>
  issue.code === 'custom' && (issue.params?.['problem'] as { code?: string } | undefined)?.code === 'contradiction' && /lowest is|sphere|both given/.test(issue.message);

interface Try {
  readonly path: readonly PropertyKey[];
  readonly example: unknown;
  readonly data: unknown;
}

function substituted(data: unknown, schema: Json, path: readonly PropertyKey[]): Try[] {
  const own = ((schema['examples'] ?? []) as unknown[]).map((example): Try => ({ path, example, data: example }));
  const put = (key: PropertyKey, inside: Try[]): Try[] =>
    inside.map((one) => ({
      ...one,
      data: Array.isArray(data) ? data.map((item: unknown, i) => (i === key ? one.data : item)) : { ...(data as object), [key]: one.data },
    }));
  if (Array.isArray(data)) return [...own, ...data.flatMap((item: unknown, i) => put(i, substituted(item, (schema['items'] ?? {}) as Json, [...path, i])))];
  if (data === null || typeof data !== 'object') return own;
  const kind = (data as Json)['kind'];
  const forms = [schema, ...((schema['oneOf'] ?? schema['anyOf'] ?? []) as Json[])];
  const properties = forms.map((form) => (form['properties'] ?? {}) as Readonly<Record<string, Json>>);
  const chosen = properties.filter((one) => one['kind']?.['const'] === undefined || one['kind']['const'] === kind);
  return Object.entries(data).flatMap(([key, value]) => {
    const field = chosen.find((one) => key in one)?.[key];
    return field === undefined ? [] : put(key, substituted(value, field, [...path, key]));
  });
}

describe('npm run schemas', () => {
  let place: string;
  let folder: string;
  beforeAll(async () => {
    place = newFolder();
    folder = join(place, 'content');
    await cp(join(ROOT, 'tests/content/good/minimal'), folder, { recursive: true });
  });
  afterAll(() => removeFolder(place));

  it('writes every kind where the first lines point, and nothing else', async () => {
    const before = filesBelow(folder).filter((path) => !path.startsWith('.schemas/'));
    const { code, stdout, stderr } = await runCommand('schemas', [], { env: { LAPSEBOOK_CONTENT: folder } });
    expect(stderr).toBe('');
    expect(code).toBe(0);
    for (const kind of KINDS) {
      expect(JSON.parse(await readFile(join(folder, '.schemas', `${kind}.json`), 'utf8'))).toEqual(JSON.parse(JSON.stringify(SCHEMAS[kind])));
      expect(stdout).toContain(`${kind}.json`);
    }
    expect(filesBelow(folder).filter((path) => !path.startsWith('.schemas/'))).toEqual(before);
  });

  it('hides them from the loader and from version control', async () => {
    expect(await readFile(join(folder, '.schemas', '.gitignore'), 'utf8')).toBe('*\n');
    const { files, findings } = await authoring.readFolder(folder);
    expect(findings).toEqual([]);
    expect(files.filter(({ file }) => file.includes('.schemas'))).toEqual([]);
  });

  it('leaves a schema alone that has not changed', async () => {
    const path = join(folder, '.schemas', 'room.json');
    await writeEditorSchemas(folder, VOCABULARY);
    const { mtimeMs } = await stat(path);
    await writeEditorSchemas(folder, VOCABULARY);
    expect((await stat(path)).mtimeMs).toBe(mtimeMs);
  });

  it.each(['--help', '-h'])('explains itself with %s', async (help) => {
    const { code, stdout } = await runCommand('schemas', [help]);
    expect(code).toBe(0);
    expect(stdout).toContain('npm run schemas');
    expect(stdout).toContain('LAPSEBOOK_CONTENT');
  });

  it('names a content folder that is not there, without a stack trace', async () => {
    const missing = join(place, 'nowhere');
    const { code, stderr } = await runCommand('schemas', [], { env: { LAPSEBOOK_CONTENT: missing } });
    expect(code).toBe(2);
    expect(stderr).toContain(missing);
    expect(stderr).not.toMatch(/^\s+at .+:\d+:\d+/m);
  });
});
