/** A paper chosen from the questions of a kit: which, how many, in whose version. Pure. */
import { shuffled } from '../questions/shuffle.ts';

/** Neighbors in a classroom get different ones: the same questions, in another order, with the options in another order. */
export const VERSIONS = ['A', 'B', 'C', 'D'] as const;
export type Version = (typeof VERSIONS)[number];

export interface Paper {
  readonly version: Version;
  readonly count: number;
  readonly levels: readonly number[];
}

/** A question as far as a paper must know it. */
export interface Choosable {
  readonly id: string;
  readonly level: number;
}

const ANCHOR = /^paper-([a-d])-([1-9]\d{0,2})-([1-9]+)$/;

/** The paper that an anchor names: `paper-b-6-12` is version B, six questions, of levels 1 and 2. */
export function readPaper(anchor: string): Paper | undefined {
  const [, version, count, levels] = ANCHOR.exec(anchor) ?? [];
  if (version === undefined) return undefined;
  return { version: version.toUpperCase() as Version, count: Number(count), levels: [...new Set([...levels!].map(Number))].sort() };
}

/** The anchor that names a paper. */
export const writePaper = ({ version, count, levels }: Paper): string => `paper-${version.toLowerCase()}-${count}-${levels.join('')}`;

/**
 * The questions of a paper in its order: as many of each level as can be, easier ones first. Every version has
 * the same ones; the first has them in the order of the kit.
 */
export function questionsOf<Q extends Choosable>(all: readonly Q[], { version, count, levels }: Paper): readonly Q[] {
  const byLevel = levels.map((level) => all.filter((question) => question.level === level));
  const rounds = Math.max(0, ...byLevel.map((questions) => questions.length));
  const inTurn = Array.from({ length: rounds }, (_, round) => byLevel.flatMap((questions) => questions[round] ?? [])).flat();
  const chosen = new Set(inTurn.slice(0, count));
  return byLevel.flatMap((questions, i) => {
    const own = questions.filter((question) => chosen.has(question));
    return version === VERSIONS[0] ? own : shuffled(own, `${version} level ${levels[i]}`);
  });
}

/** The options of a question in a version's order. */
export const optionsOf = <O>(options: readonly O[], question: string, version: Version): readonly O[] =>
  version === VERSIONS[0] ? options : shuffled(options, `${question} ${version}`);
