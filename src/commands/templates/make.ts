/** Makes one thing of a content folder, and says what was written and how to go on. */
import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { NAME, proposeName, readFolder, RESERVED, writeEditorSchemas, type Folder } from '../../authoring/index.ts';
import { VOCABULARY } from '../../sheets/index.ts';
import { describeFindings } from '../report.ts';
import { UsageError } from '../run-command.ts';
import { writing } from '../writing.ts';
import { fitKit } from './fit-kit.ts';
import { foundationFiles } from './foundation.ts';
import { freeName, type NewFile } from './new-file.ts';
import { questionOf, THINGS } from './things.ts';

const KINDS = ['kit', 'question', ...Object.keys(THINGS)];
/** Letters of the longest name. */
const LONGEST = 64;

/** What came of it; nothing is written where the name is taken or the folder has findings. */
export interface Made {
  readonly isWritten: boolean;
  readonly text: string;
}

/**
 * @param words of the command: kind and name
 * @param content the content folder
 * @throws UsageError if they are not a kind and a name, or if the folder cannot be written
 */
export async function makeNew(words: readonly string[], content: string): Promise<Made> {
  const [kind, written, ...rest] = words;
  if (kind === undefined) throw new UsageError(`Say what to make: ${KINDS.join(', ')}.`);
  if (!KINDS.includes(kind)) throw new UsageError(`\`${kind}\` is nothing that can be made; ${proposeName(kind, KINDS)}.`);
  if (written === undefined)
    throw new UsageError(`Give it a name: npm run new -- ${kind} ${kind === 'question' ? 'KIT/NAME' : 'NAME'}`);
  if (rest.length > 0) throw new UsageError(`A name is one word; write \`${proposedName([written, ...rest].join(' '))}\`.`);
  const folder = await readFolder(content);
  if (kind === 'kit') return makeKit(content, folder, written);
  if (kind === 'question') return makeQuestion(content, folder, written);
  return makeThing(content, folder, kind, written);
}

async function makeKit(content: string, folder: Folder, name: string): Promise<Made> {
  checkName(name);
  const place = (one: string): string => `kits/${one}`;
  const taken = takenBy(content, place, name);
  if (taken !== undefined) return taken;
  const fitted = fitKit(folder, name, new Date().toISOString().slice(0, 10));
  if ('findings' in fitted) {
    return notWritten(
      `A new kit is fitted to the room and the apparatus that are there, and something about them is wrong:\n\n${describeFindings(fitted.findings)}`,
    );
  }
  return write(content, fitted.files, `Open ${place(name)}/kit.yaml and make it your own; its comments say what each line is for.`);
}

async function makeQuestion(content: string, folder: Folder, written: string): Promise<Made> {
  const [kit = '', name, ...more] = written.split('/');
  if (name === undefined || name === '' || more.length > 0)
    throw new UsageError(`Write the kit and the name of the question with a slash between: npm run new -- question KIT/NAME`);
  const kits = folder.files.flatMap((file) => (file.kind === 'kit' ? (file.kit ?? []) : []));
  if (!kits.includes(kit))
    throw new UsageError(`There is no kit \`${kit}\`; ${proposeName(kit, kits, 'make it first: npm run new -- kit NAME')}.`);
  checkName(name);
  const place = (one: string): string => `kits/${kit}/questions/${one}.mdx`;
  const taken = takenBy(content, place, name);
  if (taken !== undefined) return taken;
  const file = questionOf(kit, name, folder);
  if (file === undefined) {
    return notWritten(
      `kits/${kit}/kit.yaml does not say yet what a question needs of it. Run npm run check, mend what it finds, and try again.`,
    );
  }
  return write(content, [file], `Fill it in, then put <Question id="${name}"/> where it belongs in a sheet of the kit.`);
}

async function makeThing(content: string, folder: Folder, kind: string, name: string): Promise<Made> {
  checkName(name);
  const thing = THINGS[kind];
  if (thing === undefined) throw new UsageError(`\`${kind}\` is nothing that can be made`);
  const place = (one: string): string => thing.file(one, folder).path;
  const taken = takenBy(content, place, name);
  if (taken !== undefined) return taken;
  const names = (of: string): string[] => folder.files.flatMap((one) => (one.kind === of ? one.name : []));
  const foundation = foundationFiles({
    hasSite: names('site').length > 0,
    hasSources: names('sources').length > 0,
    rooms: [...names('room'), ...(kind === 'room' ? [name] : [])],
    cites: kind === 'particles',
  });
  return write(content, [...foundation, thing.file(name, folder)], thing.next(name));
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

/** Says that something of this name is there, and which name is free. */
function takenBy(content: string, place: (name: string) => string, name: string): Made | undefined {
  const isThere = (one: string): boolean => existsSync(join(content, place(one)));
  if (!isThere(name)) return undefined;
  return notWritten(
    `${place(name)} is there already, and nothing is overwritten. Choose another name, such as ${freeName(name, isThere)}.`,
  );
}

async function write(content: string, files: readonly NewFile[], next: string): Promise<Made> {
  await writing(async () => {
    for (const { path, text } of files) {
      const place = join(content, path);
      await mkdir(dirname(place), { recursive: true });
      await writeFile(place, text, { flag: 'wx' });
    }
    await writeEditorSchemas(content, VOCABULARY);
  });
  const list = files.map(({ path }) => `  ${path}`).join('\n');
  const commands = '  npm run check   says what is wrong, and where\n  npm start       shows the site, and follows as you write';
  return { isWritten: true, text: `Written into ${content}:\n${list}\n\n${next}\nThen run one of these:\n${commands}` };
}

const notWritten = (text: string): Made => ({ isWritten: false, text });
