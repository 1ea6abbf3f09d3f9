/** Writing where it may not be possible: no room, no right, something in the way. */
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
