/** `npm run schemas`: what editors need to explain, complete and check the fields of contributors' files. */
import { relative } from 'node:path';
import { parseArgs } from 'node:util';
import { EDITOR_SCHEMA_FOLDER, writeEditorSchemas } from '../authoring/index.ts';
import { VOCABULARY } from '../sheets/index.ts';
import { foldersFrom } from './folders.ts';
import { runCommand } from './run-command.ts';
import { writing } from './writing.ts';

const HELP = `npm run schemas

Writes a JSON Schema for every kind of file into ${EDITOR_SCHEMA_FOLDER} of the content folder. An editor that
reads YAML with schemas then explains each field, completes names, and marks what is wrong as you
type. The first line of each YAML file tells the editor which schema is its own:

  # yaml-language-server: $schema=../${EDITOR_SCHEMA_FOLDER}/room.json

  --help   prints this

LAPSEBOOK_CONTENT=DIR writes into another content folder.
Exit code: 0 written, 2 the command could not be carried out.`;

await runCommand(HELP, async (args) => {
  parseArgs({ args, options: {} });
  const { content } = foldersFrom(process.env);
  const paths = await writing(() => writeEditorSchemas(content, VOCABULARY));
  for (const path of [...paths].sort()) console.log(relative(process.cwd(), path));
  return 0;
});
