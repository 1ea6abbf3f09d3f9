/** What `npm run new` makes. */
export { fitKit, type Fitted } from './fit-kit.ts';
export { makeNew, type Made } from './make.ts';
export type { NewFile } from './new-file.ts';
