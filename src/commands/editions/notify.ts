/** Adds a notice to a published edition. */
import { existsSync } from 'node:fs';
import { basename, join } from 'node:path';
import { EDITIONS_FOLDER, NAME, type Notice } from '../../authoring/index.ts';
import { addNotice, NOTICE, readEditions, readFrozen, type Frozen } from '../../editions/index.ts';
import { VOCABULARY } from '../../sheets/index.ts';
import { counted, describeFindings } from '../report.ts';
import { UsageError } from '../run-command.ts';
import { writing } from '../writing.ts';
import { checkVersion, type Done, type Wanted } from './publish.ts';

export type { Done } from './publish.ts';

/** Says what is wrong in an edition, and lists every number that comes out differently now. */
export const correct = (wanted: Wanted, why: string): Promise<Done> =>
  notify(wanted, ({ differences }) => {
    const numbers = differences.flatMap(({ key, old, now }) => (now === undefined ? [] : [{ key, old, new: now }]));
    return { date: wanted.date, correction: numbers.length === 0 ? { why } : { why, numbers } };
  });

/** Says that an edition must not be used any more. */
export const withdraw = (wanted: Wanted, why: string, replacement: string | undefined): Promise<Done> => {
  if (replacement !== undefined) checkVersion(replacement);
  return notify(wanted, () => ({ date: wanted.date, withdrawn: replacement === undefined ? { why } : { why, replacement } }));
};

async function notify({ content, kit, version }: Wanted, noticeFor: (edition: Frozen) => Notice): Promise<Done> {
  checkVersion(version);
  if (!NAME.test(kit) || !existsSync(join(content, EDITIONS_FOLDER, kit, version))) throw new UsageError(`There is no edition ${version} of \`${kit}\`; the editions stand in ${EDITIONS_FOLDER}/.`);
  const path = `${EDITIONS_FOLDER}/${kit}/${version}`;
  const directory = join(content, EDITIONS_FOLDER, kit, version);
  const { frozen, findings: inFiles } = await readFrozen(directory, `${basename(content)}/${path}`, VOCABULARY);
  if (frozen === undefined || inFiles.length > 0) return { isDone: false, text: describeFindings(inFiles) };
  const notice = noticeFor(frozen);
  await writing(async () => addNotice(directory, `${path}/${NOTICE}`, notice));
  const { findings } = await readEditions(content, VOCABULARY);
  const own = findings.filter(({ file }) => file.startsWith(`${basename(content)}/${path}/`));
  if (own.length > 0) return { isDone: false, text: `The notice is written, and something is left to mend:\n\n${describeFindings(own)}` };
  const numbers = 'correction' in notice ? (notice.correction.numbers?.length ?? 0) : 0;
  return { isDone: true, text: `${path}/${NOTICE} says so from now on${numbers === 0 ? '' : `, with ${counted(numbers, 'number')}`}. The next build shows it on every page of the edition.` };
}
