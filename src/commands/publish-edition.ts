/** `npm run publish-edition -- KIT VERSION`: freezes an edition, or adds a notice to one. */
import { parseArgs } from 'node:util';
import { foldersFrom } from './folders.ts';
import { runCommand, UsageError } from './run-command.ts';
import { correct, withdraw, type Done } from './editions/notify.ts';
import { publishEdition } from './editions/publish.ts';

const HELP = `npm run publish-edition -- KIT VERSION

Freezes the working copy of a kit, with everything that it uses, as an edition that nothing changes
any more: content/editions/KIT/VERSION. Its pages keep their address, and every build computes its
numbers again and stops if one does not come out.

VERSION is three numbers. After an earlier edition it must rise by as much as the change asks for:
  first   a teacher must prepare differently: apparatus, hazards, sequence
  second  something was added: a question, a table, a section
  third   wording or a figure was mended

To tell the holders of older prints what is wrong with a published edition, shown first on each of
its pages and prints:
  npm run publish-edition -- KIT VERSION --correction "WHY"
                   lists every number of the edition that comes out differently now, old and new
  npm run publish-edition -- KIT VERSION --withdraw "WHY" [--replacement VERSION]
                   says that it must not be used any more, and what replaces it

  --help   prints this

LAPSEBOOK_CONTENT=DIR publishes in another content folder.
Exit code: 0 done, 1 not done, since the kit or the edition does not allow it, 2 the command could
not be carried out.`;

await runCommand(HELP, async (args) => {
  const { values, positionals } = parseArgs({
    args,
    options: { correction: { type: 'string' }, withdraw: { type: 'string' }, replacement: { type: 'string' } },
    allowPositionals: true,
  });
  const [kit, version, ...rest] = positionals;
  if (kit === undefined || version === undefined || rest.length > 0) throw new UsageError('Write the kit and the version, and nothing else.');
  if (values.correction !== undefined && values.withdraw !== undefined) throw new UsageError('Give one notice at a time: --correction or --withdraw.');
  if (values.replacement !== undefined && values.withdraw === undefined) throw new UsageError('--replacement is for --withdraw; write both.');
  const { content } = foldersFrom(process.env);
  const wanted = { content, kit, version, date: new Date().toISOString().slice(0, 10) };
  const { isDone, text } = await carryOut(wanted, values);
  (isDone ? console.log : console.error)(text);
  return isDone ? 0 : 1;
});

interface Options {
  readonly correction?: string | undefined;
  readonly withdraw?: string | undefined;
  readonly replacement?: string | undefined;
}

function carryOut(wanted: Parameters<typeof publishEdition>[0], { correction, withdraw: why, replacement }: Options): Promise<Done> {
  if (correction !== undefined) return correct(wanted, correction);
  return why === undefined ? publishEdition(wanted) : withdraw(wanted, why, replacement);
}
