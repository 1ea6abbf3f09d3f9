/** Fetches the script of the simulations: only for a reader who has set a room, on a page that needs them. */
import { fetchScript } from './fetch-script.ts';

/** What the stand-ins of the simulations throw while these are not there: no RangeError, so that nothing takes it for an answer of the physics. */
export const NOT_THERE = 'simulations are not loaded';
export const isNotThere = (error: unknown): boolean => error instanceof Error && error.message === NOT_THERE;

let fetched: Promise<boolean> | undefined;

/** Whether they are there, once they are. Asked for once. */
export function simulations(address: string): Promise<boolean> {
  fetched ??= 'lapsebookSimulations' in globalThis ? Promise.resolve(true) : fetchScript(address);
  return fetched;
}
