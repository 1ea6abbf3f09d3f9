/** The files of a content folder, read as text; nothing outside it is followed or read. */
import { readFileSync, statSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { findingAt, START, type Finding, type Problem } from './findings.ts';
import { NAME, RESERVED } from './names.ts';
import { kindOfFile, propose, type FileKind } from './plan.ts';

/** One file of a content folder. */
export interface ContentFile {
  /** path as findings name it */
  readonly file: string;
  readonly kind: FileKind;
  /** name of the thing in it, from the file's name */
  readonly name: string;
  /** the kit that it belongs to */
  readonly kit: string | undefined;
  /** undefined for pictures and for files that cannot be read as text */
  readonly text: string | undefined;
}

/** Files of a folder, and what is wrong with them already. */
export interface Folder {
  /** with which the file names of findings begin */
  readonly root: string;
  /** One kit with all that it uses, and by itself: another kit that it names stands elsewhere. */
  readonly isEdition?: boolean;
  readonly files: readonly ContentFile[];
  readonly findings: readonly Finding[];
}

/** Longest file, bytes. */
const LONGEST = 256 * 1024;
const LONGEST_PICTURE = 2 * 1024 * 1024;
/** Folders within folders. */
const DEEPEST = 6;

/** Where published editions stand in a content folder. */
export const EDITIONS_FOLDER = 'editions';

/** Reads all files of the folder, in the order of their paths; `editions/` and names that begin with a dot are passed over. */
export const readFolder = (directory: string): Promise<Folder> => readFiles(directory, basename(resolve(directory)), [EDITIONS_FOLDER]);

/**
 * Reads the folder of a published edition.
 * @param root the folder as findings name it
 * @param besides files that the edition has beside its content
 */
export const readEditionFolder = async (directory: string, root: string, besides: readonly string[]): Promise<Folder> => ({
  ...(await readFiles(directory, root, besides)),
  isEdition: true,
});

async function readFiles(directory: string, root: string, besides: readonly string[]): Promise<Folder> {
  const findings: Finding[] = [];
  const refuse = (path: readonly string[], problem: Problem): void => {
    findings.push(findingAt([root, ...path].join('/'), START, problem));
  };
  const paths = await listFiles(directory, [], besides, refuse);
  const files = paths.map((path) => readOne(directory, root, path, refuse));
  return { root, files: files.filter((file) => file !== undefined), findings };
}

type Refuse = (path: readonly string[], problem: Problem) => void;

async function listFiles(directory: string, path: readonly string[], besides: readonly string[], refuse: Refuse): Promise<(readonly string[])[]> {
  const entries = await readdir(join(directory, ...path), { withFileTypes: true }).catch((error: NodeJS.ErrnoException) => {
    const problem =
      error.code === 'ENOENT' ? 'there is no such folder' : `the folder cannot be read (${error.code ?? error.message})`;
    refuse(path, { code: 'missing-file', what: problem, instead: 'name a folder that holds site.yaml' });
    return [];
  });
  entries.sort((a, b) => (a.name < b.name ? -1 : 1));
  const files: (readonly string[])[] = [];
  for (const entry of entries) {
    const own = [...path, entry.name];
    if (entry.name.startsWith('.')) continue;
    if (entry.isSymbolicLink())
      refuse(own, { code: 'symbolic-link', what: 'this is a symbolic link', instead: 'copy the file itself here' });
    else if (path.length === 0 && besides.includes(entry.name)) continue;
    else if (entry.isFile()) files.push(own);
    else if (entry.isDirectory() && own.length <= DEEPEST) files.push(...(await listFiles(directory, own, besides, refuse)));
    else refuse(own, { code: 'unknown-file', what: 'this is neither a file nor a folder of the plan', instead: 'remove it' });
  }
  return files;
}

/** Waits for the disk: with thousands of small files, asking for each in the background takes several times as long. */
function readOne(directory: string, root: string, path: readonly string[], refuse: Refuse): ContentFile | undefined {
  const found = kindOfFile(path);
  if (found === undefined) {
    refuse(path, { code: 'unknown-file', what: 'nothing reads a file of this name here', instead: propose(path) });
    return undefined;
  }
  const { kind, name, kit } = found;
  for (const part of [name, kit]) {
    if (part === undefined || (NAME.test(part) && !RESERVED.test(part))) continue;
    const slug = part
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '');
    const free = RESERVED.test(slug) ? `the-${slug}` : slug;
    refuse(path, {
      code: 'bad-name',
      what: RESERVED.test(part) ? `\`${part}\` is the name of a device to Windows` : `\`${part}\` is not of the form of a name`,
      instead: `rename it${free === '' ? '' : ` to \`${free}\``}: lowercase letters, digits and hyphens`,
    });
    return undefined;
  }
  const file = [root, ...path].join('/');
  const limit = kind === 'picture' ? LONGEST_PICTURE : LONGEST;
  const { size } = statSync(join(directory, ...path));
  if (size > limit) {
    refuse(path, {
      code: 'file-too-large',
      what: `the file has ${Math.ceil(size / 1024)} kB, and ${limit / 1024} kB is the most`,
      instead: 'divide it or shorten it',
    });
    return { file, kind, name, kit, text: undefined };
  }
  const text =
    kind === 'picture' ? undefined : decode(readFileSync(join(directory, ...path)), (problem) => refuse(path, problem));
  return { file, kind, name, kit, text };
}

const UTF_8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

function decode(bytes: Uint8Array, refuse: (problem: Problem) => void): string | undefined {
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) {
    refuse({ code: 'byte-order-mark', what: 'the file begins with a byte order mark', instead: 'save it as UTF-8 without one' });
    return undefined;
  }
  try {
    const text = UTF_8.decode(bytes);
    if (!text.includes('\0')) return text;
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
  }
  refuse({ code: 'not-utf-8', what: 'the file is not text in UTF-8', instead: 'save it as UTF-8' });
  return undefined;
}
