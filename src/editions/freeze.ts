/** The working copy of a kit, with every shared file that it uses, as the files of an edition. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { isMap, isSeq, parseDocument } from 'yaml';
import { filesUsedBy, formatFinding, loadFolder, readEditionFolder, type Content, type LoadedFile, type Vocabulary } from '../authoring/index.ts';
import { ENGINE_VERSION } from '../physics/index.ts';
import { kitOf } from './edition.ts';
import { digestsIn, MANIFEST, RESULTS, type Manifest } from './manifest.ts';
import { numbersOf } from './numbers.ts';
import { writeResults } from './results.ts';

/** A content folder as loaded, without findings. */
export interface WorkingCopy {
  readonly content: Content;
  readonly files: readonly LoadedFile[];
}

/** What is frozen, under which version, on which day. */
export interface Freezing {
  readonly kit: string;
  readonly version: string;
  /** Year, month and day. */
  readonly date: string;
}

/**
 * Writes an edition into a new folder, its manifest last.
 * @param source the content folder
 * @param working the same as loaded, without findings
 * @param target the new folder, as findings name it in `root`
 */
export async function freeze(source: string, working: WorkingCopy, { kit, version, date }: Freezing, target: { readonly directory: string; readonly root: string }, vocabulary: Vocabulary): Promise<void> {
  const write = (path: string, data: string | Uint8Array): void => {
    mkdirSync(dirname(join(target.directory, path)), { recursive: true });
    writeFileSync(join(target.directory, path), data);
  };
  for (const { path, data } of contentOf(source, working, kit)) write(path, data);
  // The numbers are those of the frozen files: only these are there when they are computed again.
  const { content, findings } = loadFolder(await readEditionFolder(target.directory, target.root, []), vocabulary);
  if (content === undefined) throw new Error(`the working copy of ${kit} is without findings and its edition is not: ${findings.map(formatFinding).join('\n')}`);
  write(RESULTS, writeResults(kit, version, ENGINE_VERSION, numbersOf(content, kitOf({ content, kit }))));
  const manifest: Manifest = { kit, version, published: date, engine: ENGINE_VERSION, files: digestsIn(target.directory) };
  write(MANIFEST, `${JSON.stringify(manifest, undefined, 1)}\n`);
}

interface NewFile {
  readonly path: string;
  readonly data: string | Uint8Array;
}

/** The files of an edition but those that are made of them. */
function contentOf(source: string, { content, files }: WorkingCopy, kit: string): NewFile[] {
  const used = filesUsedBy(kit, files);
  const room = kitOf({ content, kit }).meta.room ?? content.site.room;
  return files.flatMap((file): NewFile[] => {
    const path = file.file.slice(content.root.length + 1);
    const { kind, name, text = '' } = file;
    if (kind === 'site') return [{ path, data: withRoom(text, room) }];
    if (kind === 'sources') return [{ path, data: onlySources(text, used.sources) }];
    const isUsed = used.files.includes(file) || (kind === 'room' && name === room);
    return isUsed ? [{ path, data: readFileSync(join(source, path)) }] : [];
  });
}

/** `sources.yaml` with what the kit cites alone: a source that nothing cites is a finding. */
function onlySources(text: string, ids: ReadonlySet<string>): string {
  const document = parseDocument(text);
  const { contents } = document;
  if (isSeq(contents)) contents.items = contents.items.filter((item) => isMap(item) && ids.has(String(item.get('id'))));
  return document.toString(AS_WRITTEN);
}

/** `site.yaml` with the kit's room as that of every kit: the site's own may be another, and is not kept. */
function withRoom(text: string, room: string): string {
  const document = parseDocument(text);
  document.set('room', room);
  return document.toString(AS_WRITTEN);
}

const AS_WRITTEN = { lineWidth: 0 };
