/** What `npm run new` makes. */
export { fitKit } from './fit-kit.ts';
export { makeNew } from './make.ts';
