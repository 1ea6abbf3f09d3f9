/** From a book to two finished folders: the public site and the teachers'. Put in place only when complete. */
import { existsSync } from 'node:fs';
import { cp, mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { build } from 'astro';
import { relativeAssets } from './relative-assets.ts';
import { ENGINE_VERSION } from '../physics/index.ts';
import type { Book } from '../sheets/index.ts';
import type { Folders } from './folders.ts';
import { leanFonts } from './lean-fonts.ts';
import { leanMath } from './lean-math.ts';
import { packKits } from './pack-kits.ts';
import { noPages, pageWriter, type WrittenPages } from './page-writer.ts';
import { writePublicFiles } from './public-files.ts';
import { UsageError } from './run-command.ts';
import { bundleScripts, bundleTeachersScripts, languagesOf } from './scripts.ts';

/** Says that a folder was made here and may be replaced. */
const MARK = 'build.json';
const ASSETS = '_astro';
/** Where Astro is told that the teachers' pages stand. */
const TEACHERS = '/teachers/';

export interface BuiltSite {
  readonly pages: number;
}

/**
 * Builds both folders beside their final places and then swaps them in, so that a failed build
 * leaves the last good site standing.
 * @throws UsageError if a folder in the way was not made here
 */
export async function buildSite(book: Book, { root, content, site, teachers }: Folders): Promise<BuiltSite> {
  for (const folder of [site, teachers]) await refuseForeign(folder);
  const workshop = `${site}.building-${process.pid}`;
  await rm(workshop, { recursive: true, force: true });
  await mkdir(workshop, { recursive: true });
  try {
    const made = join(workshop, 'site');
    const pack = join(workshop, 'teachers');
    const [everybody, forTeachers] = [noPages(made), noPages(pack)];
    const writer = pageWriter((path) => (path.startsWith(TEACHERS) ? { pages: forTeachers, path: path.slice(TEACHERS.length - 1) } : { pages: everybody, path }));
    // Astro runs its page program below the working folder, where it finds its packages; one whose name begins like that of the site's would be taken for the site's.
    process.chdir(join(root, 'node_modules'));
    (globalThis as { lapsebook?: Book }).lapsebook = book;
    await build({ root, outDir: made, cacheDir: join(workshop, 'cache'), logLevel: 'error', site: book.address, integrations: [writer] });
    await bundleScripts(root, made, languagesOf(book));
    await share(made, pack);
    await bundleTeachersScripts(root, pack, languagesOf(book));
    for (const pages of [everybody, forTeachers]) await finish(pages);
    for (const folder of [made, pack]) await packKits(book, { folder, teachers: folder === pack, content });
    await writePublicFiles(book, root, made);
    await replace(site, made, workshop);
    await replace(teachers, pack, workshop);
    return { pages: everybody.pages + forTeachers.pages };
  } finally {
    await rm(workshop, { recursive: true, force: true });
  }
}

/** Gives the teachers' folder the files beside the public pages that both have in common, so that it is complete by itself. */
async function share(made: string, pack: string): Promise<void> {
  for (const entry of await readdir(made, { withFileTypes: true })) {
    const own = join(pack, entry.name);
    if (entry.name === ASSETS || entry.isFile() && !existsSync(own)) await cp(join(made, entry.name), own, { recursive: true });
  }
}

/** Relative addresses in the stylesheets, formulas' styles and fonts cut down to what the pages show, and the mark. */
async function finish({ folder, classes, shown }: WrittenPages): Promise<void> {
  for (const name of (await readdir(join(folder, ASSETS))).filter((file) => file.endsWith('.css'))) {
    const file = join(folder, ASSETS, name);
    await writeFile(file, relativeAssets(await readFile(file, 'utf8'), 1));
  }
  await leanMath(folder, ASSETS, classes);
  await leanFonts(folder, ASSETS, shown);
  await writeFile(join(folder, MARK), `${JSON.stringify({ madeBy: 'Lapsebook', engine: ENGINE_VERSION })}\n`);
}

async function replace(place: string, made: string, workshop: string): Promise<void> {
  await mkdir(dirname(place), { recursive: true });
  const old = join(workshop, `old-${relative(dirname(place), place)}`);
  await rename(place, old).catch(ignoreMissing);
  await rename(made, place);
}

/** A folder of something else is never replaced. */
async function refuseForeign(folder: string): Promise<void> {
  const entries = await readdir(folder).catch(ignoreMissing);
  if (entries === undefined || entries.length === 0 || entries.includes(MARK)) return;
  throw new UsageError(`${folder} holds files that no build put there. Name an empty or new folder in LAPSEBOOK_OUT, or move them away.`);
}

function ignoreMissing(error: unknown): undefined {
  if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
  throw error;
}
