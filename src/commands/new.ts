/** `npm run new -- KIND NAME`: something small, complete and building to start from. */
import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { writeEditorSchemas } from '../authoring/editor-schemas.ts';
import { NAME, proposeName, readFolder, RESERVED, type Folder } from '../authoring/index.ts';
import { VOCABULARY } from '../sheets/index.ts';
import { foldersFrom } from './folders.ts';
import { describeFindings } from './report.ts';
import { runCommand, UsageError } from './run-command.ts';
import { fitKit, foundationFiles, freeName, questionOf, THINGS, type NewFile } from './templates/index.ts';

const KINDS = ['kit', 'question', ...Object.keys(THINGS)];
/** Letters of the longest name. */
const LONGEST = 64;

const HELP = `npm run new -- KIND NAME

Writes something small and complete to start from, which builds as it is. In a folder that is still
empty it lays down the site's file, the sources and a room as well. Nothing is ever overwritten.

  npm run new -- kit melting-ice
  npm run new -- question melting-ice/how-cold
  npm run new -- hazard hot-plate
  npm run new -- room room-14
  npm run new -- apparatus round-flask
  npm run new -- particles salt-mist
  npm run new -- misconception ice-makes-cold

  NAME     lowercase letters, digits and hyphens
  --help   prints this

LAPSEBOOK_CONTENT=DIR writes into another content folder.
Exit code: 0 written, 1 nothing written (the name is taken, or the folder has findings),
2 the command could not be carried out.`;

await runCommand(HELP, async (args) => {
  const { positionals } = parseArgs({ args, options: {}, allowPositionals: true });
  const [kind, written, ...rest] = positionals;
  if (kind === undefined) throw new UsageError(`Say what to make: ${KINDS.join(', ')}.`);
  if (!KINDS.includes(kind)) throw new UsageError(`\`${kind}\` is nothing that can be made; ${proposeName(kind, KINDS)}.`);
  if (written === undefined)
    throw new UsageError(`Give it a name: npm run new -- ${kind} ${kind === 'question' ? 'KIT/NAME' : 'NAME'}`);
  if (rest.length > 0) throw new UsageError(`A name is one word; write \`${proposedName([written, ...rest].join(' '))}\`.`);
  const { content } = foldersFrom(process.env);
  const folder = await readFolder(content);
  return kind === 'kit'
    ? makeKit(content, folder, written)
    : kind === 'question'
      ? makeQuestion(content, folder, written)
      : makeThing(content, folder, kind, written);
});

async function makeKit(content: string, folder: Folder, name: string): Promise<number> {
  checkName(name);
  const place = (one: string): string => `kits/${one}`;
  if (isTaken(content, place, name)) return 1;
  const fitted = fitKit(folder, name, new Date().toISOString().slice(0, 10));
  if ('findings' in fitted) {
    console.error(
      `A new kit is fitted to the room and the apparatus that are there, and something about them is wrong:\n\n${describeFindings(fitted.findings)}`,
    );
    return 1;
  }
  return write(content, fitted.files, `Open ${place(name)}/kit.yaml and make it your own; its comments say what each line is for.`);
}

async function makeQuestion(content: string, folder: Folder, written: string): Promise<number> {
  const [kit = '', name, ...more] = written.split('/');
  if (name === undefined || name === '' || more.length > 0)
    throw new UsageError(`Write the kit and the name of the question with a slash between: npm run new -- question KIT/NAME`);
  const kits = folder.files.flatMap((file) => (file.kind === 'kit' ? (file.kit ?? []) : []));
  if (!kits.includes(kit))
    throw new UsageError(`There is no kit \`${kit}\`; ${proposeName(kit, kits, 'make it first: npm run new -- kit NAME')}.`);
  checkName(name);
  const place = (one: string): string => `kits/${kit}/questions/${one}.mdx`;
  if (isTaken(content, place, name)) return 1;
  const file = questionOf(kit, name, folder);
  if (file === undefined) {
    console.error(
      `kits/${kit}/kit.yaml does not say yet what a question needs of it. Run npm run check, mend what it finds, and try again.`,
    );
    return 1;
  }
  return write(content, [file], `Fill it in, then put <Question id="${name}"/> where it belongs in a sheet of the kit.`);
}

async function makeThing(content: string, folder: Folder, kind: string, name: string): Promise<number> {
  checkName(name);
  const thing = THINGS[kind];
  if (thing === undefined) throw new UsageError(`\`${kind}\` is nothing that can be made`);
  const file = thing.file(name, folder);
  const place = (one: string): string => file.path.replace(basename(file.path), basename(file.path).replace(name, one));
  if (isTaken(content, place, name)) return 1;
  const names = (of: string): string[] => folder.files.flatMap((one) => (one.kind === of ? one.name : []));
  const foundation = foundationFiles({
    hasSite: names('site').length > 0,
    hasSources: names('sources').length > 0,
    rooms: [...names('room'), ...(kind === 'room' ? [name] : [])],
    cites: kind === 'particles',
  });
  return write(content, [...foundation, file], thing.next(name));
}

/** @throws UsageError that proposes a name */
function checkName(name: string): void {
  if (NAME.test(name) && !RESERVED.test(name) && name.length <= LONGEST) return;
  const proposed = proposedName(name);
  const instead = proposed === '' ? '' : ` Write \`${proposed}\`.`;
  throw new UsageError(
    `\`${name}\` is not of the form of a name: lowercase letters, digits and hyphens, at most ${LONGEST}.${instead}`,
  );
}

function proposedName(written: string): string {
  const letters = written.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const slug = letters
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replace(/^-|-$/g, '');
  return RESERVED.test(slug) ? `the-${slug}` : slug;
}

/** Says so, with a name that is free. */
function isTaken(content: string, place: (name: string) => string, name: string): boolean {
  const isThere = (one: string): boolean => existsSync(join(content, place(one)));
  if (!isThere(name)) return false;
  console.error(
    `${place(name)} is there already, and nothing is overwritten. Choose another name, such as ${freeName(name, isThere)}.`,
  );
  return true;
}

async function write(content: string, files: readonly NewFile[], next: string): Promise<number> {
  try {
    for (const { path, text } of files) {
      const place = join(content, path);
      await mkdir(dirname(place), { recursive: true });
      await writeFile(place, text, { flag: 'wx' });
    }
    await writeEditorSchemas(content, VOCABULARY);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && 'path' in error)) throw error;
    throw new UsageError(`${String(error.path)} cannot be written (${String(error.code)}).`);
  }
  console.log(`Written into ${content}:`);
  for (const { path } of files) console.log(`  ${path}`);
  console.log(
    `\n${next}\nThen run one of these:\n  npm run check   says what is wrong, and where\n  npm start       shows the site, and follows as you write`,
  );
  return 0;
}
