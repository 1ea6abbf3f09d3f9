/** What an edition consists of: the SHA-256 of every file, by which an edited, missing or added one is found. */
import { createHash } from 'node:crypto';
import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { z } from 'zod';
import { findingAt, START, VERSION, type Finding, type Problem } from '../authoring/index.ts';

/** Files of an edition that are no content. Nothing but notices is ever added, so that the manifest lists all but itself and them. */
export const MANIFEST = 'manifest.json';
export const RESULTS = 'results.json';
export const NOTICE = 'notice.yaml';

const manifestSchema = z.strictObject({
  kit: z.string(),
  version: z.string().regex(VERSION),
  /** Year, month and day on which it was frozen. */
  published: z.iso.date(),
  /** Version of the physics library that computed `results.json`. */
  engine: z.string(),
  /** SHA-256 in hexadecimal digits by path, with `/`. */
  files: z.record(z.string(), z.string()),
});

export type Manifest = z.infer<typeof manifestSchema>;

/** Paths of an edition's files with their digests, in order; like everywhere in the content, names that begin with a dot are passed over and links are not followed. */
export function digestsIn(directory: string): Record<string, string> {
  const paths = readdirSync(directory, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(directory, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((path) => path !== MANIFEST && path !== NOTICE && !/(?:^|\/)\./.test(path))
    .sort();
  return Object.fromEntries(paths.map((path) => [path, digestOf(readFileSync(join(directory, path)))]));
}

/** A manifest, and the files that are not as it says. */
export interface ReadManifest {
  /** undefined where it is missing or cannot be read */
  readonly manifest: Manifest | undefined;
  readonly findings: readonly Finding[];
}

/** Reads the manifest of an edition and compares every file with it. */
export function readManifest(directory: string, root: string): ReadManifest {
  const finding = (file: string, problem: Problem): Finding => findingAt(`${root}/${file}`, START, problem);
  const text = readIfThere(join(directory, MANIFEST));
  if (text === undefined) {
    return { manifest: undefined, findings: [finding(MANIFEST, { code: 'edition-file-missing', what: `${nameOf(root)} has no manifest`, instead: RESTORE })] };
  }
  const checked = manifestSchema.safeParse(parsedJson(text));
  if (!checked.success) {
    return { manifest: undefined, findings: [finding(MANIFEST, { code: 'edition-file-edited', what: `the manifest of ${nameOf(root)} cannot be read`, instead: RESTORE })] };
  }
  const manifest = checked.data;
  if (!isOf(manifest, root)) {
    return { manifest: undefined, findings: [finding(MANIFEST, { code: 'edition-file-edited', what: `this is not the manifest of ${nameOf(root)}`, instead: 'leave the folders of editions where they are; npm run publish-edition makes new ones' })] };
  }
  const found = digestsIn(directory);
  const missing = Object.keys(manifest.files).filter((path) => !Object.hasOwn(found, path));
  const added = Object.keys(found).filter((path) => !Object.hasOwn(manifest.files, path));
  const edited = Object.entries(manifest.files).filter(([path, digest]) => Object.hasOwn(found, path) && found[path] !== digest);
  const findings = [
    ...missing.map((path) => finding(path, { code: 'edition-file-missing', what: `this file of ${nameOf(root)} is missing`, instead: RESTORE })),
    ...added.map((path) => finding(path, { code: 'edition-file-added', what: `this file is not part of ${nameOf(root)}`, instead: `remove it; all that may be added is ${NOTICE}` })),
    ...edited.map(([path, digest]) => finding(path, editedProblem(join(directory, path), digest, found[path]!, root))),
  ];
  return { manifest, findings };
}

const RESTORE = 'restore it from your version control, and publish a new edition for what is to change';

/** Version control may turn the ends of lines into those of another system. */
function editedProblem(file: string, digest: string, found: string, root: string): Problem {
  const what = `this file of ${nameOf(root)} was edited: its SHA-256 was ${shortened(digest)} and is ${shortened(found)}`;
  const withLineFeeds = readFileSync(file, 'latin1').replace(/\r\n/g, '\n');
  const isLineEnds = digestOf(Buffer.from(withLineFeeds, 'latin1')) === digest;
  return { code: 'edition-file-edited', what, instead: isLineEnds ? 'only the ends of its lines changed: write `* -text` into editions/.gitattributes and check it out again' : RESTORE };
}

/** Whether a manifest lists an edition that belongs into this folder. */
function isOf({ kit, version, files }: Manifest, root: string): boolean {
  return root.endsWith(`/${kit}/${version}`) && Object.hasOwn(files, `kits/${kit}/kit.yaml`);
}

/** `edition 1.0.0 of cloud`, from `content/editions/cloud/1.0.0`. */
export function nameOf(root: string): string {
  const [version, kit] = root.split('/').reverse();
  return `edition ${version} of ${kit}`;
}

const DIGITS_SHOWN = 12;
const shortened = (digest: string): string => `${digest.slice(0, DIGITS_SHOWN)}…`;
const digestOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** What a text says; undefined where it is no JSON. */
export function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

/** The text of a file; undefined where there is none, or something else than a file. */
export function readIfThere(file: string): string | undefined {
  return lstatSync(file, { throwIfNoEntry: false })?.isFile() === true ? readFileSync(file, 'utf8') : undefined;
}
