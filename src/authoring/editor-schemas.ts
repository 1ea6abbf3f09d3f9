/** Schemas of contributors' files for editors, which then explain, complete and check each field as it is typed. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { schemasOf, VALUE_FORM, type KindWithFields } from './schemas/index.ts';
import { isUnknownChoice, type ComponentSpec, type Vocabulary } from './vocabulary.ts';

/** A schema in JSON Schema, draft 7: the one that editors of YAML read best. */
export type EditorSchema = z.core.JSONSchema.JSONSchema;

/** Folder in the content folder; the loader passes over names that begin with a dot. */
export const EDITOR_SCHEMA_FOLDER = '.schemas';

/** Every kind's schema, made from the one that checks the files. */
export function editorSchemas(vocabulary: Vocabulary): Readonly<Record<KindWithFields, EditorSchema>> {
  const entries = Object.entries(schemasOf(vocabulary)).map(([kind, schema]) => [kind, toEditorSchema(schema)] as const);
  const made = Object.fromEntries(entries) as Record<KindWithFields, EditorSchema>;
  return { ...made, question: { ...made.question, definitions: { [VALUE_FORM]: valueForm(vocabulary) } } };
}

/**
 * The comment by which an editor finds the schema of a YAML file.
 * @param kind of the file
 * @param path of the file in the content folder, with `/`
 */
export function schemaLine(kind: KindWithFields, path: string): string {
  const up = '../'.repeat(path.split('/').length - 1);
  return `# yaml-language-server: $schema=${up}${EDITOR_SCHEMA_FOLDER}/${kind}.json`;
}

/**
 * Writes the schemas into a content folder, those that changed only.
 * @param content the content folder
 * @returns the paths of all schemas
 */
export async function writeEditorSchemas(content: string, vocabulary: Vocabulary): Promise<readonly string[]> {
  const folder = join(content, EDITOR_SCHEMA_FOLDER);
  await mkdir(folder, { recursive: true });
  // They are made anew on each machine, so that no version control should keep them.
  await writeIfOther(join(folder, '.gitignore'), '*\n');
  return Promise.all(
    Object.entries(editorSchemas(vocabulary)).map(async ([kind, schema]) => {
      const path = join(folder, `${kind}.json`);
      await writeIfOther(path, `${JSON.stringify(schema, undefined, 1)}\n`);
      return path;
    }),
  );
}

/** Editors read a schema anew whenever its file changes, and a watched folder builds anew. */
async function writeIfOther(path: string, text: string): Promise<void> {
  const there = await readFile(path, 'utf8').catch(() => undefined);
  if (there !== text) await writeFile(path, text);
}

function toEditorSchema(schema: z.ZodType): EditorSchema {
  return z.toJSONSchema(schema, { target: 'draft-7', io: 'input', unrepresentable: 'any', override: addForm }) as EditorSchema;
}

/** After what a field says of itself comes how it is written; examples are as written, so that reading them as quantities takes none away. */
function addForm({ zodSchema, jsonSchema }: { zodSchema: z.core.$ZodType; jsonSchema: z.core.JSONSchema.BaseSchema }): void {
  const { form, description, examples } = z.globalRegistry.get(zodSchema) ?? {};
  if (Array.isArray(examples)) jsonSchema.examples = examples;
  if (typeof form !== 'string') return;
  jsonSchema.description = description === undefined ? form : `${description} ${form}`;
  delete jsonSchema['form'];
}

/** How a computed quantity is asked for: its name chooses which parameters and units there are. */
function valueForm({ components }: Vocabulary): EditorSchema {
  const spec = components.get('Value');
  const forms = spec === undefined ? [] : formsOf(spec.attributes);
  const parameters: Record<string, EditorSchema> = {};
  for (const { properties } of forms) Object.assign(parameters, properties);
  const unit = { type: 'string', description: 'The unit in which it is shown.' } as const;
  return {
    type: 'object',
    description: 'A computed quantity, by its name and parameters.',
    properties: {
      ...Object.fromEntries(
        Object.entries(parameters).map(([key, form]) => [key, { description: `The parameter ${key}.`, ...form }]),
      ),
      ...('unit' in parameters ? { unit } : {}),
      of: { type: 'string', enum: forms.map(({ name }) => name), description: 'The name of the computed quantity.' },
    },
    required: ['of'],
    additionalProperties: false,
    allOf: forms.map(({ name, properties, required }) => ({
      if: { properties: { of: { const: name } }, required: ['of'] },
      then: {
        properties: Object.fromEntries(
          Object.keys(parameters)
            .filter((key) => key === 'unit' || !(key in properties))
            .map((key) => [key, properties[key] ?? false]),
        ),
        required: [...required],
      },
    })),
  };
}

interface ValueFormOf {
  readonly name: string;
  readonly properties: Readonly<Record<string, EditorSchema>>;
  readonly required: readonly string[];
}

/** The attributes of `<Value>` for each name that it takes. */
function formsOf(attributes: ComponentSpec['attributes']): ValueFormOf[] {
  if (typeof attributes !== 'function') return [];
  const none = attributes({});
  const names = isUnknownChoice(none) ? none.choices : [];
  return names.flatMap((name) => {
    const schema = attributes({ of: name });
    if (isUnknownChoice(schema)) return [];
    const { properties = {}, required = [] } = toEditorSchema(schema);
    const { of: _, ...own } = properties;
    return [{ name, properties: own as Record<string, EditorSchema>, required }];
  });
}
