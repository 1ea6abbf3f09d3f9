/** Published editions: freeze, verify, compare, notices. */
export { changesBetween, type Change } from './compare.ts';
export { isWithdrawn, kitOf, type Edition, type Frozen } from './edition.ts';
export { freeze, type Freezing, type WorkingCopy } from './freeze.ts';
export { withNotice } from './add-notice.ts';
export { NOTICE, RESULTS } from './manifest.ts';
export type { ComputedNumber } from './numbers.ts';
export { checkNumbers, checkReplacements, readNotices, readNoticesIn, uncorrected } from './notices.ts';
export { readEditions, readFrozen, versionsOf, type ReadEditions, type ReadFrozen } from './read.ts';
export { historiesOf, publishedKit } from './views.ts';
export { compareVersions, isAsLarge, largestStep, nextVersion, stepBetween, type Step } from './version.ts';
