/** Published editions: freeze, verify, compare, notices. */
export { changesBetween, type Change } from './compare.ts';
export type { Edition, Frozen } from './edition.ts';
export { freeze } from './freeze.ts';
export { withNotice } from './add-notice.ts';
export { NOTICE } from './manifest.ts';
export { checkNumbers, checkReplacements, readNotices, readNoticesIn, uncorrected } from './notices.ts';
export { readEditions, readFrozen, versionsOf } from './read.ts';
export { historiesOf, publishedKits } from './views.ts';
export { compareVersions, isAsLarge, largestStep, nextVersion, stepBetween } from './version.ts';
