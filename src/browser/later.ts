/** Fetches the script of the simulations: only for a reader who has set a room, on a page that needs them. */
import { fetchScript } from './fetch-script.ts';

/** Thrown in place of an answer while the simulations are not there; not a RangeError, so that nothing takes it for one. */
export const isNotThere = (error: unknown): boolean => error instanceof Error && error.message === NOT_THERE;
/** What the stand-ins of the simulations say. */
export const NOT_THERE = 'simulations are not loaded';

let fetched: Promise<boolean> | undefined;

/** Whether they are there, once they are. Asked for once. */
export function simulations(address: string): Promise<boolean> {
  fetched ??= 'lapsebookSimulations' in globalThis ? Promise.resolve(true) : fetchScript(address);
  return fetched;
}
