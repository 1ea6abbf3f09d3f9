/** All published editions of a content folder: untouched, readable, their numbers computed anew. */
import { lstatSync, readdirSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { EDITIONS_FOLDER, findingAt, loadFolder, NAME, readEditionFolder, sortFindings, START, VERSION, type Finding, type Vocabulary } from '../authoring/index.ts';
import { kitOf, type Edition, type Frozen } from './edition.ts';
import { MANIFEST, NOTICE, readIfThere, readManifest, RESULTS } from './manifest.ts';
import { checkNumbers, checkReplacements, readNoticesIn, type ReadNotices } from './notices.ts';
import { numbersOf } from './numbers.ts';
import { differences, resultsFrom } from './results.ts';
import { compareVersions } from './version.ts';

export interface ReadEditions {
  /** By kit, then from the oldest version to the newest; those with findings left out. */
  readonly editions: readonly Edition[];
  readonly findings: readonly Finding[];
}

/**
 * Reads and verifies every edition.
 * @param content the content folder; without `editions/` there is none
 */
export async function readEditions(content: string, vocabulary: Vocabulary): Promise<ReadEditions> {
  const folder = join(content, EDITIONS_FOLDER);
  const root = `${basename(resolve(content))}/${EDITIONS_FOLDER}`;
  const findings: Finding[] = [];
  const foldersIn = (path: readonly string[], form: RegExp, example: string): string[] =>
    entriesOf(join(folder, ...path)).flatMap(({ name, isFolder }) => {
      if (isFolder && form.test(name)) return [name];
      const what = isFolder ? `\`${name}\` is not of the form of a ${example}` : 'nothing reads a file here';
      findings.push(findingAt([root, ...path, name].join('/'), START, { code: isFolder ? 'bad-name' : 'unknown-file', what, instead: 'remove it: editions are made by npm run publish-edition' }));
      return [];
    });
  const editions: Edition[] = [];
  for (const kit of foldersIn([], NAME, 'kit’s name')) {
    const versions = foldersIn([kit], VERSION, 'version').sort(compareVersions);
    for (const version of versions) {
      const read = await readEdition(join(folder, kit, version), `${root}/${kit}/${version}`, vocabulary);
      const replacements = checkReplacements(`${root}/${kit}/${version}/${NOTICE}`, version, versions, read.notices);
      findings.push(...read.findings, ...replacements);
      if (read.edition !== undefined) editions.push(read.edition);
    }
  }
  return { editions, findings: sortFindings(findings) };
}

/** The files of an edition, read. */
export interface ReadFrozen {
  /** undefined where its content or its results cannot be read as they were published */
  readonly frozen: Frozen | undefined;
  /** What is wrong with its files. */
  readonly findings: readonly Finding[];
}

/**
 * Reads the files of one edition and computes its numbers. Where a file is not as it was published, that is all that is told: what follows from an edit is not what was published.
 * @param root the folder as findings name it, which ends in kit and version
 */
export async function readFrozen(directory: string, root: string, vocabulary: Vocabulary): Promise<ReadFrozen> {
  const [version = '', kit = ''] = root.split('/').reverse();
  const { manifest, findings } = readManifest(directory, root);
  if (manifest === undefined || findings.length > 0) return { frozen: undefined, findings };
  const { content, findings: inContent } = loadFolder(await readEditionFolder(directory, root, [MANIFEST, RESULTS, NOTICE]), vocabulary);
  const resultsText = readIfThere(join(directory, RESULTS)) ?? '';
  const results = resultsFrom(resultsText);
  if (content === undefined || results === undefined) return { frozen: undefined, findings: inContent };
  const numbers = numbersOf(content, kitOf({ content, kit }));
  return { frozen: { kit, version, root, content, manifest, results, resultsText, numbers, differences: differences(results, numbers) }, findings: [] };
}

interface ReadEdition {
  /** undefined where there is any finding */
  readonly edition: Edition | undefined;
  readonly findings: readonly Finding[];
  readonly notices: ReadNotices;
}

/** Reads and verifies one edition: see {@link readFrozen}. */
async function readEdition(directory: string, root: string, vocabulary: Vocabulary): Promise<ReadEdition> {
  const notices = readNoticesIn(directory, root);
  const { frozen, findings: inFiles } = await readFrozen(directory, root, vocabulary);
  const inNumbers = frozen === undefined || notices.findings.length > 0 ? [] : checkNumbers(frozen, notices);
  const findings = [...notices.findings, ...inFiles, ...inNumbers];
  const edition = frozen !== undefined && findings.length === 0 ? { ...frozen, notices: notices.notices } : undefined;
  return { edition, findings, notices };
}

/** The versions of a kit that have a folder, the oldest first. */
export const versionsOf = (content: string, kit: string): string[] =>
  entriesOf(join(content, EDITIONS_FOLDER, kit)).flatMap(({ name, isFolder }) => (isFolder && VERSION.test(name) ? [name] : [])).sort(compareVersions);

/** What stands in a folder, in order; nothing where there is none, or something else. */
function entriesOf(folder: string): { readonly name: string; readonly isFolder: boolean }[] {
  if (lstatSync(folder, { throwIfNoEntry: false })?.isDirectory() !== true) return [];
  return readdirSync(folder, { withFileTypes: true })
    .filter(({ name }) => !name.startsWith('.'))
    .map((entry) => ({ name: entry.name, isFolder: entry.isDirectory() }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}
