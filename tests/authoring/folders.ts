/** Content folders for tests: the smallest good one, and copies of it with other files laid over. */
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const CONTENT = fileURLToPath(new URL('../content/', import.meta.url));

/** The smallest content folder without a finding. */
export const MINIMAL = join(CONTENT, 'good/minimal');

/** The same with two published editions, the first of them withdrawn. */
export const PUBLISHED = join(CONTENT, 'good/published');

/**
 * Runs `use` on a copy of a good folder with `bad/<name>` laid over it and `without` removed.
 * The copy is named `content`.
 * @param good the smallest, unless given
 */
export async function withOverlay<T>(name: string, without: string | undefined, use: (folder: string) => Promise<T>, good = MINIMAL): Promise<T> {
  const place = await mkdtemp(join(tmpdir(), 'content-'));
  const folder = join(place, 'content');
  try {
    await cp(good, folder, { recursive: true });
    const overlay = join(CONTENT, 'bad', name);
    if (existsSync(overlay)) await cp(overlay, folder, { recursive: true });
    if (without !== undefined) await rm(join(folder, without));
    return await use(folder);
  } finally {
    await rm(place, { recursive: true });
  }
}
