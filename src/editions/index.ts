/** Published editions: freeze, verify, compare, notices. */
export { changesBetween, type Change } from './compare.ts';
export { isWithdrawn, kitOf, type Edition, type Frozen } from './edition.ts';
export { freeze, type Freezing, type WorkingCopy } from './freeze.ts';
export { NOTICE, RESULTS } from './manifest.ts';
export type { ComputedNumber } from './numbers.ts';
export { addNotice } from './add-notice.ts';
export { readEditions, readFrozen, type ReadEditions, type ReadFrozen } from './read.ts';
export { historiesOf, publishedKit } from './views.ts';
export { compareVersions, isAsLarge, largestStep, nextVersion, stepBetween, type Step } from './version.ts';
