/** From a book to two finished folders: the public site and the teachers'. Put in place only when complete. */
import { readFileSync, writeFileSync } from 'node:fs';
import { cp, mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';
import { build } from 'astro';
import { relativeAssets } from '../layouts/links.ts';
import { ENGINE_VERSION } from '../physics/index.ts';
import type { Book } from '../sheets/index.ts';
import type { Folders } from './folders.ts';
import { addPage, leanFonts, type Shown } from './lean-fonts.ts';
import { addClasses, leanMath, withFormulaStyles } from './lean-math.ts';
import { packKits, publish } from './offline-pack.ts';
import { UsageError } from './run-command.ts';
import { bundleScripts, bundleTeachersScripts, languagesOf } from './scripts.ts';

/** Says that a folder was made here and may be replaced. */
const MARK = 'build.json';
const ASSETS = '_astro';
const TEACHERS = 'teachers';

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
    // Astro runs its page program below the working folder, and it finds its packages only inside the project.
    process.chdir(root);
    (globalThis as { lapsebook?: Book }).lapsebook = book;
    await build({ root, outDir: made, cacheDir: join(workshop, 'cache'), logLevel: 'error', site: book.address });
    await bundleScripts(root, made, languagesOf(book));
    const pack = join(workshop, TEACHERS);
    await divide(made, pack);
    await bundleTeachersScripts(root, pack, languagesOf(book));
    let pages = 0;
    for (const folder of [made, pack]) pages += await finish(folder);
    for (const folder of [made, pack]) await packKits(book, { folder, teachers: folder === pack, content });
    await publish(book, root, made);
    await replace(site, made, workshop);
    await replace(teachers, pack, workshop);
    return { pages };
  } finally {
    await rm(workshop, { recursive: true, force: true });
  }
}

/** Takes the teachers' pages out of the public site into a folder that is complete by itself. */
async function divide(made: string, pack: string): Promise<void> {
  await rename(join(made, TEACHERS), pack);
  for (const entry of await readdir(made, { withFileTypes: true })) {
    if (entry.name === ASSETS || entry.isFile() && !entry.name.endsWith('.html')) {
      await cp(join(made, entry.name), join(pack, entry.name), { recursive: true });
    }
  }
}

/** Relative addresses in every page and stylesheet, styles of formulas where there are some, fonts of what the pages show, and the mark. Returns the number of pages. */
async function finish(folder: string): Promise<number> {
  let pages = 0;
  const classes = new Set<string>();
  const shown: Shown = { characters: new Set(), formulas: new Set() };
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile() || !/\.(html|css)$/.test(entry.name)) continue;
    const file = join(entry.parentPath, entry.name);
    const depth = relative(folder, entry.parentPath).split(sep).filter(Boolean).length;
    // Thousands of files one after another: waiting for each would take longer than the work.
    const text = readFileSync(file, 'utf8');
    const isPage = entry.name.endsWith('.html');
    writeFileSync(file, relativeAssets(isPage ? withFormulaStyles(text) : text, depth));
    if (!isPage) continue;
    pages += 1;
    addPage(shown, text);
    addClasses(classes, text);
  }
  await leanMath(folder, ASSETS, classes);
  await leanFonts(folder, ASSETS, shown);
  await writeFile(join(folder, MARK), `${JSON.stringify({ madeBy: 'Lapsebook', engine: ENGINE_VERSION })}\n`);
  return pages;
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
