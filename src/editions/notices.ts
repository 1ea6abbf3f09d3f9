/** Notices of an edition: read, and checked against what was published and what is computed. */
import { join } from 'node:path';
import { checkData, findingAt, noticeSchema, readYaml, START, type Finding, type LocateField, type Notice } from '../authoring/index.ts';
import type { Cell } from '../tables/index.ts';
import { isWithdrawn, type Frozen } from './edition.ts';
import { nameOf, NOTICE, readIfThere, RESULTS } from './manifest.ts';
import { agrees, type Difference } from './results.ts';

/** What a notice file says. */
export interface ReadNotices {
  readonly notices: readonly Notice[];
  readonly findings: readonly Finding[];
  readonly locate: LocateField;
}

/** The notices of an edition; none where there is no such file. */
export function readNoticesIn(directory: string, root: string): ReadNotices {
  const text = readIfThere(join(directory, NOTICE));
  return text === undefined ? { notices: [], findings: [], locate: () => START } : readNotices(text, `${root}/${NOTICE}`);
}

/** @param file as findings name it */
export function readNotices(text: string, file: string): ReadNotices {
  const yaml = readYaml(text, file);
  const { data, findings } = yaml.data === undefined ? { data: undefined, findings: [] } : checkData(noticeSchema, yaml.data, file, yaml.locate);
  return { notices: data ?? [], findings: [...yaml.findings, ...findings], locate: yaml.locate };
}

/** One corrected number, and where the notice names it. */
interface Correction {
  readonly key: string;
  readonly old: Cell;
  readonly now: Cell;
  readonly path: readonly PropertyKey[];
}

const correctionsIn = (notices: readonly Notice[]): Correction[] =>
  notices.flatMap((notice, n) => ('correction' in notice ? (notice.correction.numbers ?? []).map(({ key, old, new: now }, i) => ({ key, old, now, path: [n, 'correction', 'numbers', i] })) : []));

/** Numbers that come out differently now, and of which the notices do not say so yet. */
export function uncorrected(differences: readonly Difference[], notices: readonly Notice[]): Difference[] {
  const said = new Map(correctionsIn(notices).map(({ key, now }) => [key, now]));
  return differences.filter(({ key, now }) => now === undefined || !said.has(key) || !agrees(said.get(key)!, now));
}

/** Numbers that do not come out and that no notice corrects, and corrections that do not. Of an edition that must not be used, no number needs to. */
export function checkNumbers({ root, results, resultsText, differences: found }: Frozen, { notices, locate }: ReadNotices): Finding[] {
  const corrections = new Map(correctionsIn(notices).map((correction) => [correction.key, correction]));
  const differing = new Map(found.map((difference) => [difference.key, difference]));
  const lines = resultsText.split('\n');
  const placeOf = (key: string) => ({ line: lines.findIndex((line) => line.startsWith(`  ${JSON.stringify(key)}:`)) + 1, column: 3 });
  const notSaid = isWithdrawn({ notices }) ? [] : found.filter(({ key }) => !corrections.has(key));
  const unsaid = notSaid.map(({ key, old, now }) =>
    findingAt(`${root}/${RESULTS}`, placeOf(key), {
      code: 'edition-number',
      what: `in ${nameOf(root)} \`${key}\` was published as ${String(old)} and ${now === undefined ? 'is no longer computed' : `is now ${String(now)}`}`,
      instead: now === undefined ? 'publish a new edition and withdraw this one' : `if the new one is right, correct it in notice.yaml: \`{ key: "${key}", old: ${String(old)}, new: ${String(now)} }\``,
    }),
  );
  const wrong = [...corrections.values()].flatMap(({ key, old, now, path }) => {
    const published = Object.hasOwn(results.numbers, key) ? results.numbers[key] : undefined;
    const wrongly = (part: string, what: string, instead: string): Finding[] => [findingAt(`${root}/${NOTICE}`, locate([...path, part]), { code: 'notice-number', what, instead })];
    if (published === undefined) return wrongly('key', `${nameOf(root)} has no number \`${key}\``, 'copy the key from results.json');
    if (!agrees(old, published)) return wrongly('old', `\`${key}\` was published as ${String(published)}, not as ${String(old)}`, `write ${String(published)}`);
    const computed = differing.get(key)?.now ?? published;
    return agrees(now, computed) ? [] : wrongly('new', `\`${key}\` is now ${String(computed)}, not ${String(now)}`, `write ${String(computed)}, or take it out`);
  });
  return [...unsaid, ...wrong];
}

/** Replacements that are no other edition of the kit. */
export function checkReplacements(file: string, version: string, versions: readonly string[], { notices, locate }: ReadNotices): Finding[] {
  const others = versions.filter((other) => other !== version);
  return notices.flatMap((notice, n) => {
    const replacement = 'withdrawn' in notice ? notice.withdrawn.replacement : undefined;
    if (replacement === undefined || others.includes(replacement)) return [];
    const instead = others.length === 0 ? 'leave it out until there is another edition' : `name one of ${others.join(', ')}, or leave it out`;
    return [findingAt(file, locate([n, 'withdrawn', 'replacement']), { code: 'notice-replacement', what: `\`${replacement}\` is no other edition of this kit`, instead })];
  });
}
