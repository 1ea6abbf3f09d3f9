/** A kit as a zip: the page in one file, its numbers, its prints, and the text it was made from. */
import { crc32, deflateRawSync } from 'node:zlib';
import { Zip, type ZipInputFile } from 'fflate';

export interface ArchiveFile {
  readonly path: string;
  readonly data: Uint8Array | string;
}

/** The first day that a zip can state, in whatever time zone: no build leaves its own time in it. */
const NO_TIME = new Date(1980, 0, 1);
/** PKWARE APPNOTE.TXT 6.3.10, section 4.4.5. */
const DEFLATE = 8;

/** The bytes of a zip, the same for the same files. Packed by the platform, which is three times as fast. */
export function kitArchive(files: readonly ArchiveFile[]): Uint8Array {
  const parts: Uint8Array[] = [];
  const archive = new Zip((error, part) => {
    if (error) throw error;
    parts.push(part);
  });
  for (const { path, data } of [...files].sort((a, b) => (a.path < b.path ? -1 : 1))) {
    const bytes = Buffer.from(data);
    const file: ZipInputFile = { filename: path, size: bytes.length, crc: crc32(bytes), compression: DEFLATE, mtime: NO_TIME };
    archive.add(file);
    file.ondata?.(null, deflateRawSync(bytes), true);
  }
  archive.end();
  return Buffer.concat(parts);
}

const TEACHERS_PART = /<TeacherOnly>[\s\S]*?<\/TeacherOnly>/g;

/**
 * A lesson's text without what only teachers may read.
 * @returns undefined where that cannot be told for certain; such a file stays out of public hands
 */
export function publicSource(text: string): string | undefined {
  const open = text.replace(TEACHERS_PART, '');
  return /TeacherOnly/i.test(open) ? undefined : open.replace(/\n{3,}/g, '\n\n');
}
