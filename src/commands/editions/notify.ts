/** Adds a notice to a published edition. */
import { writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { EDITIONS_FOLDER, NAME, type Notice } from '../../authoring/index.ts';
import { checkNumbers, checkReplacements, NOTICE, readFrozen, readNotices, readNoticesIn, uncorrected, versionsOf, withNotice, type Frozen } from '../../editions/index.ts';
import { VOCABULARY } from '../../sheets/index.ts';
import { counted, describeFindings } from '../report.ts';
import { UsageError } from '../run-command.ts';
import { writing } from '../writing.ts';
import { checkVersion, type Done, type Wanted } from './publish.ts';

export type { Done } from './publish.ts';

/** Says what is wrong in an edition, and lists every number that comes out differently now and is not corrected yet. */
export const correct = (wanted: Wanted, why: string): Promise<Done> =>
  notify(wanted, ({ differences }, notices) => {
    const numbers = uncorrected(differences, notices).flatMap(({ key, old, now }) => (now === undefined ? [] : [{ key, old, new: now }]));
    return { date: wanted.date, correction: numbers.length === 0 ? { why } : { why, numbers } };
  });

/** Says that an edition must not be used any more. */
export const withdraw = (wanted: Wanted, why: string, replacement: string | undefined): Promise<Done> => {
  if (replacement !== undefined) checkVersion(replacement);
  return notify(wanted, () => ({ date: wanted.date, withdrawn: replacement === undefined ? { why } : { why, replacement } }));
};

async function notify({ content, kit, version }: Wanted, noticeFor: (edition: Frozen, notices: readonly Notice[]) => Notice): Promise<Done> {
  checkVersion(version);
  const versions = NAME.test(kit) ? versionsOf(content, kit) : [];
  if (!versions.includes(version)) throw new UsageError(`There is no edition ${version} of \`${kit}\`; ${versions.length === 0 ? 'none of it is published' : `those published are ${versions.join(', ')}`}.`);
  const path = `${EDITIONS_FOLDER}/${kit}/${version}`;
  const [directory, root] = [join(content, path), `${basename(content)}/${path}`];
  const { frozen, findings: inFiles } = await readFrozen(directory, root, VOCABULARY);
  const there = readNoticesIn(directory, root);
  const before = [...inFiles, ...there.findings];
  if (frozen === undefined || before.length > 0) return { isDone: false, text: `The notice is not written. Mend first:\n\n${describeFindings(before)}` };
  const notice = noticeFor(frozen, there.notices);
  const text = withNotice(directory, `${path}/${NOTICE}`, notice);
  const next = readNotices(text, `${root}/${NOTICE}`);
  const wrong = [...next.findings, ...checkReplacements(`${root}/${NOTICE}`, version, versions, next)];
  if (wrong.length > 0) return { isDone: false, text: `The notice is not written. It would be wrong:\n\n${describeFindings(wrong)}` };
  await writing(async () => writeFileSync(join(directory, NOTICE), text));
  const left = checkNumbers(frozen, next);
  if (left.length > 0) return { isDone: false, text: `The notice is written, and something is left to mend:\n\n${describeFindings(left)}` };
  const numbers = 'correction' in notice ? (notice.correction.numbers?.length ?? 0) : 0;
  return { isDone: true, text: `${path}/${NOTICE} says so from now on${numbers === 0 ? '' : `, with ${counted(numbers, 'number')}`}. The next build shows it on every page of the edition.` };
}
