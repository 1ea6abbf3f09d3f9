/** `npm run build`: every gate, then the whole site, put in place only when complete. */
import { parseArgs } from 'node:util';
import type { Book } from '../sheets/index.ts';
import { foldersFrom, type Folders } from './folders.ts';
import { PAPERS, paperNamed, printer, printSheets, type Paper } from './pdf.ts';
import { packKits } from './pack-kits.ts';
import { readBook } from './read-book.ts';
import { counted, describeFindings } from './report.ts';
import { runCommand, UsageError } from './run-command.ts';
import { buildSite } from './site-builder.ts';

const HELP = `npm run build [-- --pdf [--paper letter]]

Checks the content folder, then builds the public site and, beside it, the teachers' folder.
On any finding nothing is published and the last good site stays.

  --pdf          afterwards prints the sheets of every kit, in both folders, to PDF files beside the
                 kit's page; needs Chromium or Chrome on this machine
  --paper PAPER  a4 (as it is without) or letter, for --pdf
  --help         prints this

LAPSEBOOK_CONTENT=DIR builds another content folder; LAPSEBOOK_OUT=DIR writes the site there
and the teachers' folder to DIR-teachers.
CHROMIUM_PATH names the browser for --pdf where it is not found by itself.
Exit code: 0 built, 1 findings, 2 the command could not be carried out.`;

/** Bytes: what some five hundred lesson sheets take. With less a collection costs more than it saves. */
const LARGE_HEAP = 200e6;

await runCommand(HELP, async (args) => {
  const { values } = parseArgs({ args, options: { pdf: { type: 'boolean' }, paper: { type: 'string' } } });
  if (values.paper !== undefined && values.pdf !== true) throw new UsageError('--paper is for --pdf; write both');
  const paper = paperNamed(values.paper ?? 'a4');
  const folders = foldersFrom(process.env);
  const started = performance.now();
  const result = await readBook(folders.content);
  if ('findings' in result) {
    console.error(describeFindings(result.findings));
    return 1;
  }
  console.log(`${kitsAndEditions(result.book)} checked and computed; making pages …`);
  // The lessons as they were read are most of it, and nothing needs them; Astro takes as much again before the collector would look.
  // A plain collection would keep the room itself.
  if (process.memoryUsage().heapUsed > LARGE_HEAP) globalThis.gc?.({ type: 'major', flavor: 'last-resort' });
  const { pages } = await buildSite(result.book, folders);
  console.log(`${counted(pages, 'page')} in ${((performance.now() - started) / 1000).toFixed(1)} s`);
  console.log(`  site               ${folders.site}`);
  console.log(`  for teachers only  ${folders.teachers}`);
  return values.pdf === true ? printBoth(result.book, folders, paper) : 0;
});

/** `2 kits`, `2 kits, 1 edition`. */
function kitsAndEditions({ kits }: Book): string {
  const editions = kits.filter(({ draft }) => !draft).length;
  return [counted(new Set(kits.map(({ id }) => id)).size, 'kit'), ...(editions === 0 ? [] : [counted(editions, 'edition')])].join(', ');
}

async function printBoth(book: Book, { content, site, teachers }: Folders, paper: Paper): Promise<number> {
  const found = printer();
  if ('missing' in found) {
    console.error(`The site is built, but no PDF is made. ${found.missing}`);
    return 2;
  }
  for (const folder of [site, teachers]) {
    console.log(`printing on ${PAPERS[paper]} in ${folder} …`);
    await printSheets(book, folder, { chromium: found.path, paper, onFile: (path) => console.log(`  ${path}`) });
    await packKits(book, { folder, teachers: folder === teachers, content });
  }
  return 0;
}
