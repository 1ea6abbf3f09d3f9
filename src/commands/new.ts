/** `npm run new -- KIND NAME`: something small, complete and building to start from. */
import { parseArgs } from 'node:util';
import { foldersFrom } from './folders.ts';
import { runCommand } from './run-command.ts';
import { makeNew } from './templates/index.ts';

const HELP = `npm run new -- KIND NAME

Writes something small and complete to start from, which builds as it is. In a folder that is still
empty it lays down the site's file, the sources and a room as well. Nothing is ever overwritten.

  npm run new -- kit melting-ice
  npm run new -- question melting-ice/how-cold
  npm run new -- hazard hot-plate
  npm run new -- room room-14
  npm run new -- apparatus round-flask
  npm run new -- particles salt-mist
  npm run new -- misconception ice-makes-cold

  NAME     lowercase letters, digits and hyphens
  --help   prints this

LAPSEBOOK_CONTENT=DIR writes into another content folder.
Exit code: 0 written, 1 nothing written (the name is taken, or the folder has findings),
2 the command could not be carried out.`;

await runCommand(HELP, async (args) => {
  const { positionals } = parseArgs({ args, options: {}, allowPositionals: true });
  const { isWritten, text } = await makeNew(positionals, foldersFrom(process.env).content);
  (isWritten ? console.log : console.error)(text);
  return isWritten ? 0 : 1;
});
