/** Freezes an edition beside its final place, compares it with the last one, and puts it in place if its version says enough. */
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { EDITIONS_FOLDER, proposeName, VERSION } from '../../authoring/index.ts';
import { changesBetween, compareVersions, freeze, isAsLarge, largestStep, nextVersion, readFrozen, stepBetween, type Change, type Edition, type Frozen } from '../../editions/index.ts';
import { VOCABULARY } from '../../sheets/index.ts';
import { checkContent } from '../read-book.ts';
import { counted, describeFindings } from '../report.ts';
import { UsageError } from '../run-command.ts';
import { writing } from '../writing.ts';

/** Which edition of which content folder. */
export interface Wanted {
  readonly content: string;
  readonly kit: string;
  readonly version: string;
  /** Today: year, month and day. */
  readonly date: string;
}

/** What came of it, for people. */
export interface Done {
  readonly isDone: boolean;
  readonly text: string;
}

/** @throws UsageError if there is no such kit, the version has another form, or the folder cannot be written */
export async function publishEdition({ content: source, kit, version, date }: Wanted): Promise<Done> {
  checkVersion(version);
  const { content, files, editions: published, findings } = await checkContent(source);
  if (content === undefined || findings.length > 0) return notDone(describeFindings(findings));
  if (!content.kits.has(kit)) throw new UsageError(`There is no kit \`${kit}\`; ${proposeName(kit, content.kits.keys())}.`);
  const last = published.findLast((edition) => edition.kit === kit);
  const problem = last === undefined ? undefined : notAfter(last, version);
  if (problem !== undefined) return notDone(problem);
  const editions = join(source, EDITIONS_FOLDER);
  const making = join(editions, `.making-${process.pid}`);
  try {
    return await writing(async () => {
      const root = `${basename(source)}/${EDITIONS_FOLDER}/${kit}/${version}`;
      await freeze(source, { content, files }, { kit, version, date }, { directory: making, root }, VOCABULARY);
      const { frozen, findings: inFrozen } = await readFrozen(making, root, VOCABULARY);
      if (frozen === undefined) throw new Error(`an edition as frozen has findings:\n${describeFindings(inFrozen)}`);
      const refusal = last === undefined ? undefined : tooSmall(last, frozen);
      if (refusal !== undefined) return notDone(refusal);
      keepLineEnds(editions);
      mkdirSync(join(editions, kit), { recursive: true });
      renameSync(making, join(editions, kit, version));
      return { isDone: true, text: summary(frozen, last) };
    });
  } finally {
    rmSync(making, { recursive: true, force: true });
  }
}

/** @throws UsageError unless the version is three numbers */
export function checkVersion(version: string): void {
  if (!VERSION.test(version)) throw new UsageError(`\`${version}\` is not the version of an edition; write three numbers with points, such as 1.0.0.`);
}

const notDone = (text: string): Done => ({ isDone: false, text });

function notAfter(last: Edition, version: string): string | undefined {
  const order = compareVersions(version, last.version);
  if (order > 0) return undefined;
  const next = (['patch', 'minor', 'major'] as const).map((step) => nextVersion(last.version, step));
  const why = order === 0 ? `Edition ${version} of ${last.kit} is published, and a published edition never changes.` : `${version} comes before ${last.version}, the newest edition of ${last.kit}.`;
  return `${why} The next one is ${next.slice(0, -1).join(', ')} or ${next.at(-1)}, by how much has changed.`;
}

/** Why a version does not say enough; undefined where it does. */
function tooSmall(last: Edition, next: Frozen): string | undefined {
  const changes = changesBetween(last, next);
  const needed = largestStep(changes.map(({ step }) => step));
  if (needed === undefined) return `Nothing has changed since edition ${last.version}: there is nothing to publish.`;
  if (isAsLarge(stepBetween(last.version, next.version), needed)) return undefined;
  const reasons = changes.filter(({ step }) => step === needed).map(({ what }) => `  ${what}`);
  return [`${next.version} is too small a step from ${last.version}. ${ASKS_FOR[needed]}`, ...reasons, `Publish it as ${nextVersion(last.version, needed)} or later.`].join('\n');
}

const ASKS_FOR: Readonly<Record<Change['step'], string>> = {
  major: 'A teacher must prepare differently, since this changed:',
  minor: 'Something was added or taken away:',
  patch: 'This was mended:',
};

function summary({ kit, version, results, manifest, content }: Frozen, last: Edition | undefined): string {
  const noted = content.kits.get(kit)!.meta.changes.some((change) => change.version === version);
  return [
    `Edition ${version} of ${kit} is published${last === undefined ? '' : `, after ${last.version}`}: ${counted(Object.keys(manifest.files).length, 'file')}, ${counted(Object.keys(results.numbers).length, 'computed number')}.`,
    `It stands in ${EDITIONS_FOLDER}/${kit}/${version}; add the folder to your version control. Nothing in it is ever to be changed.`,
    ...(noted ? [] : [`\`changes\` in kit.yaml says nothing of ${version}: its pages will show what changed, but not why.`]),
  ].join('\n');
}

/** Version control must not turn the ends of lines into those of another system: the digests would no longer agree. */
function keepLineEnds(editions: string): void {
  const file = join(editions, '.gitattributes');
  if (!existsSync(file)) writeFileSync(file, '* -text\n');
}
