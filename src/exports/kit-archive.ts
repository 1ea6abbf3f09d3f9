/** A kit as a zip: the page in one file, its numbers, its prints, and the text it was made from. */
import { zip } from './zip.ts';

export interface ArchiveFile {
  readonly path: string;
  readonly data: Uint8Array | string;
}

/** The bytes of a zip, the same for the same files. */
export const kitArchive = (files: readonly ArchiveFile[]): Uint8Array =>
  zip([...files].sort((a, b) => (a.path < b.path ? -1 : 1)).map(({ path, data }) => ({ path, data: typeof data === 'string' ? new TextEncoder().encode(data) : data })));

const TEACHERS_PART = /<TeacherOnly>[\s\S]*?<\/TeacherOnly>/g;

/**
 * A lesson's text without what only teachers may read.
 * @returns undefined where that cannot be told for certain; such a file stays out of public hands
 */
export function publicSource(text: string): string | undefined {
  const open = text.replace(TEACHERS_PART, '');
  return /TeacherOnly/i.test(open) ? undefined : open.replace(/\n{3,}/g, '\n\n');
}
