/** `npm run build`: every gate, then the whole site, put in place only when complete. */
import { parseArgs } from 'node:util';
import { foldersFrom } from './folders.ts';
import { readBook } from './read-book.ts';
import { describeFindings } from './report.ts';
import { runCommand } from './run-command.ts';
import { buildSite } from './site-builder.ts';

const HELP = `npm run build

Checks the content folder, then builds the public site and, beside it, the teachers' folder.
On any finding nothing is published and the last good site stays.

  --help   prints this

LAPSEBOOK_CONTENT=DIR builds another content folder; LAPSEBOOK_OUT=DIR writes the site there
and the teachers' folder to DIR-teachers.
Exit code: 0 built, 1 findings, 2 the command could not be carried out.`;

await runCommand(HELP, async (args) => {
  parseArgs({ args, options: {} });
  const folders = foldersFrom(process.env);
  const started = performance.now();
  const result = await readBook(folders.content);
  if ('findings' in result) {
    console.error(describeFindings(result.findings));
    return 1;
  }
  console.log(`${result.book.kits.length} kits checked and computed; making pages …`);
  const { pages } = await buildSite(result.book, folders);
  console.log(`${pages} pages in ${((performance.now() - started) / 1000).toFixed(1)} s`);
  console.log(`  site               ${folders.site}`);
  console.log(`  for teachers only  ${folders.teachers}`);
  return 0;
});
