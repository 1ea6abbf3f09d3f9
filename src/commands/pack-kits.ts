/** What a built folder gets beside the pages of each kit: its pictures, the kit in one file, as a zip, and its questions for learning platforms. */
import { copyFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join, posix } from 'node:path';
import { parse } from 'yaml';
import { EDITIONS_FOLDER } from '../authoring/index.ts';
import { NOTICE } from '../editions/index.ts';
import { bytesOf, csv, kitArchive, licenseAddress, noticeText, oneFile, publicNotices, publicSource, QTI_DIALECTS, qtiFile, qtiPackage, type ArchiveFile, type Piece } from '../exports/index.ts';
import { changesPath, fullAddress, kitPath, noticesOf, permanentAddress, windowTitle, type Book, type KitView } from '../sheets/index.ts';
import { FILE_TEXTS, FRAME_TEXTS, NOTICE_TEXTS, SAFETY_TEXTS, scriptName } from '../texts/index.ts';
import { filesBelow } from './files-below.ts';

/** A finished folder: addresses relative, fonts as they stay. */
export interface PackedFolder {
  readonly folder: string;
  readonly teachers: boolean;
  /** The content folder that it was made from. */
  readonly content: string;
}

/** The pictures of each kit, the kit in one file and as a zip, and its questions for learning platforms where answers may stand. After a print they are packed again, with it. */
export async function packKits(book: Book, packed: PackedFolder): Promise<void> {
  const read = reader(packed.folder);
  for (const kit of book.kits) {
    const place = join(packed.folder, kitPath(kit));
    for (const picture of picturesShown(kit, packed)) copyFileSync(join(sourceFolder(kit, packed), 'kits', kit.id, picture), join(place, picture));
    const page = kitInOneFile(book, kit, packed, read);
    writeFileSync(join(place, `${kit.id}.html`), Buffer.concat(page.map(bytesOf)));
    writeFileSync(join(place, `${kit.id}.zip`), kitArchive(await filesOfKit(book, kit, packed, page)));
    if (kit.questions.length > 0 && showsAnswers(book, packed)) for (const dialect of QTI_DIALECTS) writeFileSync(join(place, qtiFile(kit, dialect)), qtiPackage(kit, dialect));
  }
}

type Reader = (path: string) => Uint8Array | undefined;

/** Reads files of a folder; those that stand outside the kits, and that all of them name, once. */
function reader(folder: string): Reader {
  const shared = new Map<string, Uint8Array>();
  return (path) => {
    const file = join(folder, path);
    const found = shared.get(path) ?? (existsSync(file) ? readFileSync(file) : undefined);
    if (found !== undefined && !path.startsWith('/kits/')) shared.set(path, found);
    return found;
  };
}

function kitInOneFile(book: Book, kit: KitView, { folder, teachers }: PackedFolder, read: Reader): readonly Piece[] {
  const here = kitPath(kit, 'booklet');
  const { language } = kit;
  const frame = FRAME_TEXTS[language];
  const title = FILE_TEXTS[language].inOneFile(kit.title);
  return oneFile(readFileSync(join(folder, here, 'index.html'), 'utf8'), {
    read: (address) => read(posix.join(here, address)),
    absolute: (address) => {
      const page = teachers ? undefined : permanentAddress(book, here);
      return page === undefined ? undefined : new URL(address, page).href;
    },
    title: `${windowTitle(kit, title)} · ${book.school}${teachers ? ` · ${frame.teachersEdition}` : ''}`,
    without: [scriptName('offline', language)],
    needs: { [scriptName('reader', language)]: [scriptName('reader-more', language), scriptName('reader-room', language)] },
  });
}

async function filesOfKit(book: Book, kit: KitView, packed: PackedFolder, page: readonly Piece[]): Promise<ArchiveFile[]> {
  const place = join(packed.folder, kitPath(kit));
  const prints = (await readdir(place)).filter((name) => name.endsWith('.pdf'));
  const text = await sourcesOfKit(kit, packed, showsAnswers(book, packed));
  return [
    { path: `${kit.id}.html`, data: page },
    { path: 'tables.json', data: kit.tablesJson },
    ...kit.records.map((records) => ({ path: `tables/${records.id}.csv`, data: csv(records) })),
    { path: 'LICENSE.txt', data: licenseText(book, kit) },
    ...(await Promise.all(prints.map(async (name) => ({ path: name, data: await readFile(join(place, name)) })))),
    ...text,
  ];
}

const showsAnswers = ({ answers }: Book, { teachers }: PackedFolder): boolean => teachers || answers === 'public';

function licenseText(book: Book, kit: KitView): string {
  const address = permanentAddress(book, kitPath(kit));
  const safety = SAFETY_TEXTS[kit.language];
  return [...noticeLines(book, kit), `${kit.title}, ${kit.draft ? safety.draft : safety.edition(kit.version)}`, book.school, address, '', FILE_TEXTS[kit.language].license(kit.license), licenseAddress(kit.license)]
    .filter((line) => line !== undefined)
    .join('\n')
    .concat('\n');
}

/** What is to be known of an edition, before anything else that is said of it. */
function noticeLines(book: Book, kit: KitView): string[] {
  const said = NOTICE_TEXTS[kit.language];
  const lines = noticesOf(kit).flatMap((notice) => [`${said.kinds[notice.kind]} ${notice.date}`, noticeText(notice, kit.language), '']);
  return lines.length === 0 ? [] : [...lines, said.foundAt(fullAddress(book, changesPath(kit))), ''];
}

/** The folder that holds the kit's files: the content folder, or that of its edition. */
const sourceFolder = (kit: KitView, { content }: PackedFolder): string => (kit.draft ? content : join(content, EDITIONS_FOLDER, kit.id, kit.version));

/** The pictures that the sheets of a folder show: one that stands in what only teachers see is not for the public. */
function picturesShown(kit: KitView, { folder }: PackedFolder): readonly string[] {
  if (kit.pictures.length === 0) return [];
  const sheets = readFileSync(join(folder, kitPath(kit, 'booklet'), 'index.html'), 'utf8');
  return kit.pictures.filter((name) => sheets.includes(`"../${name}"`));
}

/** Fields of kit.yaml that name files beside the kits. */
interface Named {
  readonly room?: string;
  readonly apparatus: string;
  readonly particles: readonly string[];
  readonly hazards: readonly string[];
}

/** The kit's own files and the shared ones that it names, under `content/`; of an edition those in its own folder, and beside them its notices. For the public without answers. */
async function sourcesOfKit(kit: KitView, packed: PackedFolder, answers: boolean): Promise<ArchiveFile[]> {
  const source = sourceFolder(kit, packed);
  const own = join('kits', kit.id);
  const notices = join(source, NOTICE);
  const named = parse(await readFile(join(source, own, 'kit.yaml'), 'utf8')) as Named;
  // An edition holds the room that it was computed for and no other, also where that was the site's.
  const rooms = kit.draft ? [named.room].flatMap((room) => (room === undefined ? [] : [`${room}.yaml`])) : await filesBelow(join(source, 'rooms'));
  const shared = [
    'sources.yaml',
    `apparatus/${named.apparatus}.yaml`,
    ...rooms.map((name) => `rooms/${name}`),
    ...named.particles.map((name) => `particles/${name}.yaml`),
    ...named.hazards.map((name) => `hazards/${name}.mdx`),
  ];
  const kept = answers ? kit.pictures : picturesShown(kit, packed);
  const files = (await filesBelow(join(source, own))).filter((path) => kept.includes(path) || !kit.pictures.includes(path));
  const paths = [...shared, ...files.map((path) => `kits/${kit.id}/${path}`)].filter((path) => existsSync(join(source, path)));
  const texts = await Promise.all(paths.map(async (path) => ({ path: `content/${path}`, data: await sourceFile(join(source, path), path, answers) })));
  const noticed = !kit.draft && existsSync(notices) ? [{ path: NOTICE, data: answers ? await readFile(notices) : publicNotices(await readFile(notices, 'utf8')) }] : [];
  return [...noticed, ...texts.flatMap(({ path, data }) => (data === undefined ? [] : [{ path, data }]))];
}

/** Undefined where the public may not have it. */
async function sourceFile(file: string, path: string, answers: boolean): Promise<Uint8Array | string | undefined> {
  if (answers) return readFile(file);
  if (path.includes('/questions/')) return undefined;
  return path.endsWith('.mdx') ? publicSource(await readFile(file, 'utf8')) : readFile(file);
}
