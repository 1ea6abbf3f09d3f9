/** A content folder to publish from, in a place of its own. */
import { createHash } from 'node:crypto';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { publishEdition } from '../../src/commands/editions/publish.ts';

export interface Working {
  /** The content folder. */
  readonly content: string;
  /** Replaces what a file says; fails where it does not say so. */
  readonly edit: (path: string, from: string, to: string) => Promise<void>;
  readonly write: (path: string, text: string) => Promise<void>;
  readonly read: (path: string) => Promise<string>;
  readonly remove: (path: string) => Promise<void>;
  /** Publishes, and says what came of it. */
  readonly publish: (version: string) => ReturnType<typeof publishEdition>;
}

/** The kit that is published. */
export const KIT = 'first-cloud';

/** Runs `use` on a copy of a good folder, named `content`. */
export async function withWorkingCopy<T>(good: string, use: (working: Working) => Promise<T>): Promise<T> {
  const place = await mkdtemp(join(tmpdir(), 'editions-'));
  const content = join(place, 'content');
  const read = (path: string): Promise<string> => readFile(join(content, path), 'utf8');
  const write = (path: string, text: string): Promise<void> => writeFile(join(content, path), text);
  try {
    await cp(good, content, { recursive: true });
    return await use({
      content, read, write,
      edit: async (path, from, to) => {
        const text = await read(path);
        if (!text.includes(from)) throw new Error(`${path} does not say ${JSON.stringify(from)}`);
        await write(path, text.replace(from, to));
      },
      remove: (path) => rm(join(content, path), { recursive: true }),
      publish: (version) => publishEdition({ content, kit: KIT, version, date: '2026-11-28' }),
    });
  } finally {
    await rm(place, { recursive: true });
  }
}

const NEWEST = `editions/${KIT}/1.0.1`;

export const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');

/** Gives a number of the newest edition's results another value, or adds it, as if the library had computed it then. */
export async function publishedAs({ read, write }: Working, key: string, value: (published: number) => number): Promise<{ old: number; now: number }> {
  const results = JSON.parse(await read(`${NEWEST}/results.json`)) as { numbers: Record<string, number> };
  const now = results.numbers[key]!;
  const old = value(now);
  results.numbers[key] = old;
  const text = `${JSON.stringify(results, undefined, 1)}\n`;
  await write(`${NEWEST}/results.json`, text);
  const manifest = JSON.parse(await read(`${NEWEST}/manifest.json`)) as { files: Record<string, string> };
  manifest.files['results.json'] = sha256(text);
  await write(`${NEWEST}/manifest.json`, `${JSON.stringify(manifest, undefined, 1)}\n`);
  return { old, now };
}
