/** Versions of editions, in the trade of teaching: how much must a teacher who knows the last one do anew? */

/** `major`: prepare differently; `minor`: something was added; `patch`: wording or a figure was mended. */
const STEPS = ['major', 'minor', 'patch'] as const;
export type Step = (typeof STEPS)[number];

const partsOf = (version: string): number[] => version.split('.').map(Number);

/** Negative where `a` came before `b`; of versions in the form of `VERSION`. */
export function compareVersions(a: string, b: string): number {
  const [left, right] = [partsOf(a), partsOf(b)];
  return STEPS.map((_, at) => left[at]! - right[at]!).find((difference) => difference !== 0) ?? 0;
}

/** How large a step leads from one version to a later one. */
export function stepBetween(from: string, to: string): Step {
  const [left, right] = [partsOf(from), partsOf(to)];
  return STEPS.find((_, at) => left[at] !== right[at]) ?? 'patch';
}

/** The least version that is a step of this size after another. */
export function nextVersion(from: string, step: Step): string {
  const at = STEPS.indexOf(step);
  return partsOf(from).map((part, i) => (i < at ? part : i === at ? part + 1 : 0)).join('.');
}

/** The larger of some steps; undefined where there is none. */
export const largestStep = (steps: readonly Step[]): Step | undefined => STEPS.find((step) => steps.includes(step));

/** Whether a step is as large as another, or larger. */
export const isAsLarge = (step: Step, wanted: Step): boolean => STEPS.indexOf(step) <= STEPS.indexOf(wanted);
