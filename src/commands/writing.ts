/** Writing where it may not be possible: no room, no right, something in the way; and what is kept of pages that were written. */
import { UsageError } from './run-command.ts';

/**
 * Does what writes files.
 * @throws UsageError that names the file, in place of the system's error
 */
export async function writing<T>(write: () => Promise<T>): Promise<T> {
  try {
    return await write();
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && 'path' in error)) throw error;
    throw new UsageError(`${String(error.path)} cannot be written (${String(error.code)}).`);
  }
}

/** Adds a part of a page to those known; a part as it was cut out would keep the whole page in memory. */
export function addCopy(known: Set<string>, part: string): void {
  if (!known.has(part)) known.add(Buffer.from(part).toString());
}
