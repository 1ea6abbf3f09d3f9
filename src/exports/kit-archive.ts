/** A kit as a zip: the page in one file, its numbers, its prints, and the text it was made from. */
import { strToU8, zipSync, type Zippable } from 'fflate';

export interface ArchiveFile {
  readonly path: string;
  readonly data: Uint8Array | string;
}

/** The first day that a zip can state, in whatever time zone: no build leaves its own time in it. */
const NO_TIME = new Date(1980, 0, 1);

/** The bytes of a zip, the same for the same files. */
export function kitArchive(files: readonly ArchiveFile[]): Uint8Array {
  const entries: Zippable = {};
  for (const { path, data } of [...files].sort((a, b) => (a.path < b.path ? -1 : 1))) entries[path] = typeof data === 'string' ? strToU8(data) : data;
  return zipSync(entries, { level: 9, mtime: NO_TIME });
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
