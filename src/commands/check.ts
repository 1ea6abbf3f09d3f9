/** `npm run check`: every gate, all findings at once; exit 1 on any. */
import { parseArgs } from 'node:util';
import { foldersFrom } from './folders.ts';
import { checkContent } from './read-book.ts';
import { counted, describeFindings, findingsAsJson } from './report.ts';
import { runCommand } from './run-command.ts';

const HELP = `npm run check [-- --json]

Checks every file of the content folder and prints all findings, one a line:
file:line:column: what is wrong; what to write instead. Published editions are checked too: that
no file of theirs was edited, and that every number still comes out.

  --json   prints an array of findings for editors and CI
  --help   prints this

LAPSEBOOK_CONTENT=DIR checks another content folder.
Exit code: 0 nothing found, 1 findings, 2 the command could not be carried out.`;

await runCommand(HELP, async (args) => {
  const { values } = parseArgs({ args, options: { json: { type: 'boolean' } } });
  const started = performance.now();
  const { content, findings } = await checkContent(foldersFrom(process.env).content);
  if (values.json) console.log(findingsAsJson(findings));
  else if (findings.length > 0) console.log(describeFindings(findings));
  else console.log(`${counted(content?.kits.size ?? 0, 'kit')} checked in ${((performance.now() - started) / 1000).toFixed(2)} s: nothing to mend.`);
  return findings.length > 0 ? 1 : 0;
});
