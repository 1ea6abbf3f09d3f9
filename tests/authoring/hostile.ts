/** One content folder that holds every hostile file, each where a stranger would put it. */
import { cp, mkdir, mkdtemp, readdir, readFile, realpath, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { MINIMAL } from './folders.ts';

const HOSTILE = fileURLToPath(new URL('../content/bad/hostile/', import.meta.url));

export interface HostileFolder {
  /** what only this test uses: the content folder, and whatever a test puts beside it */
  readonly place: string;
  readonly content: string;
  /** files of tests/content/bad/hostile by their place in the content folder */
  readonly places: ReadonlyMap<string, string>;
}

/** Names of the hostile files, in their order. */
export async function hostileFiles(): Promise<readonly string[]> {
  return (await readdir(HOSTILE)).sort();
}

/** Where a hostile file stands: sheets and readings each in a kit of their own that is otherwise good. */
export function placeOfHostile(file: string): string {
  const name = file.slice(0, -extname(file).length);
  if (file.startsWith('idea-')) return `misconceptions/${file}`;
  if (file.endsWith('.yaml')) return `rooms/${file}`;
  return file.endsWith('.csv') ? `kits/csv-${name}/readings/7b.csv` : `kits/${name}/background.mdx`;
}

/** Runs `use` on a folder with all hostile files, and some whose very names are hostile. */
export async function withHostileFolder<T>(names: readonly string[], use: (folder: HostileFolder) => Promise<T>): Promise<T> {
  const place = await realpath(await mkdtemp(join(tmpdir(), 'hostile-')));
  const content = join(place, 'content');
  const places = new Map<string, string>();
  try {
    await cp(MINIMAL, content, { recursive: true });
    for (const file of await hostileFiles()) {
      const target = placeOfHostile(file);
      places.set(target, file);
      const kit = /^kits\/[^/]+/.exec(target)?.[0];
      if (kit !== undefined) await cp(join(MINIMAL, 'kits/first-cloud'), join(content, kit), { recursive: true });
      await writeFile(join(content, target), await readFile(join(HOSTILE, file)));
    }
    for (const name of names) {
      await mkdir(dirname(join(content, name)), { recursive: true });
      await writeFile(join(content, name), await readFile(join(MINIMAL, 'rooms/workshop.yaml')));
    }
    return await use({ place, content, places });
  } finally {
    await rm(place, { recursive: true });
  }
}
