/** A kit as a zip: the page in one file, its numbers, its prints, and the text it was made from. */
import { constants, crc32, deflateRawSync } from 'node:zlib';
import { Zip, type ZipInputFile } from 'fflate';
import { isScalar, parseDocument, visit } from 'yaml';
import { bytesOf, type Piece, type Shared } from './one-file.ts';

export interface ArchiveFile {
  readonly path: string;
  /** Bytes, or a text in one piece or more. */
  readonly data: Uint8Array | string | readonly Piece[];
}

/** The first day that a zip can state, in whatever time zone: no build leaves its own time in it. */
const NO_TIME = new Date(1980, 0, 1);
/** PKWARE APPNOTE.TXT 6.3.10, section 4.4.5. */
const DEFLATE = 8;
/** The last block of a deflated file, without any bytes in it: RFC 1951, section 3.2.6. */
const END = Uint8Array.of(3, 0);

/** The bytes of a zip, the same for the same files. Packed by the platform, which is three times as fast. */
export function kitArchive(files: readonly ArchiveFile[]): Uint8Array {
  const parts: Uint8Array[] = [];
  const archive = new Zip((error, part) => {
    if (error) throw error;
    parts.push(part);
  });
  for (const { path, data } of [...files].sort((a, b) => (a.path < b.path ? -1 : 1))) {
    const pieces = (typeof data === 'string' || data instanceof Uint8Array ? [data] : data).map(packed);
    const size = pieces.reduce((sum, { bytes }) => sum + bytes.length, 0);
    const file: ZipInputFile = { filename: path, size, crc: pieces.reduce((sum, { bytes }) => crc32(bytes, sum), 0), compression: DEFLATE, mtime: NO_TIME };
    archive.add(file);
    file.ondata?.(null, Buffer.concat([...pieces.map(({ deflated }) => deflated), END]), true);
  }
  archive.end();
  return Buffer.concat(parts);
}

interface Packed {
  readonly bytes: Uint8Array;
  /** Blocks that end on a whole byte, so that others can follow: RFC 1951, section 3.2.3. */
  readonly deflated: Uint8Array;
}

/** What every kit's page holds, styles, fonts and scripts, is more than half of it. */
const known = new WeakMap<Shared, Packed>();

function packed(piece: Piece): Packed {
  if (piece instanceof Uint8Array || typeof piece === 'string') return pack(bytesOf(piece));
  const found = known.get(piece) ?? pack(bytesOf(piece));
  known.set(piece, found);
  return found;
}

const pack = (bytes: Uint8Array): Packed => ({ bytes, deflated: deflateRawSync(bytes, { finishFlush: constants.Z_SYNC_FLUSH }) });

const TEACHERS_PART = /<TeacherOnly>[\s\S]*?<\/TeacherOnly>/g;

/**
 * A lesson's text without what only teachers may read.
 * @returns undefined where that cannot be told for certain; such a file stays out of public hands
 */
export function publicSource(text: string): string | undefined {
  const open = text.replace(TEACHERS_PART, '');
  return /TeacherOnly/i.test(open) ? undefined : open.replace(/\n{3,}/g, '\n\n');
}

/** Notices without their numbers, of which some are answers; the pages say which are not. */
export function publicNotices(text: string): string {
  const document = parseDocument(text);
  visit(document, { Pair: (_, { key }) => (isScalar(key) && key.value === 'numbers' ? visit.REMOVE : undefined) });
  return document.toString({ lineWidth: 0 });
}
