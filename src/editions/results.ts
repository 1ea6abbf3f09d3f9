/** `results.json`: each computed number of an edition at full precision, and whether it still comes out. */
import type { Cell } from '../tables/index.ts';
import type { ComputedNumber } from './numbers.ts';

/** The numbers of an edition as published, SI, by key. */
export interface Results {
  readonly kit: string;
  readonly version: string;
  /** Version of the physics library that computed them. */
  readonly engine: string;
  readonly numbers: Readonly<Record<string, Cell>>;
}

/** Largest relative difference at which a number still comes out: rounding of another machine, nothing that is printed. */
const AGREES = 1e-9;

/** Whether two results are the same. */
export function agrees(a: Cell, b: Cell): boolean {
  if (typeof a !== 'number' || typeof b !== 'number') return a === b;
  return Math.abs(a - b) <= AGREES * Math.max(Math.abs(a), Math.abs(b));
}

/** Results as a file; a line a number. */
export const writeResults = (kit: string, version: string, engine: string, numbers: readonly ComputedNumber[]): string =>
  `${JSON.stringify({ kit, version, engine, numbers: Object.fromEntries(numbers.map(({ key, value }) => [key, value])) } satisfies Results, undefined, 1)}\n`;

/** A published number and what is computed in its place; undefined where nothing is. */
export interface Difference {
  readonly key: string;
  readonly old: Cell;
  readonly now: Cell | undefined;
}

/** The published numbers that do not come out. What is computed now and was not then is no difference: columns may be added. */
export function differences({ numbers }: Results, computed: readonly ComputedNumber[]): Difference[] {
  const now = new Map(computed.map(({ key, value }) => [key, value]));
  return Object.entries(numbers).flatMap(([key, old]) => {
    const value = now.get(key);
    return value !== undefined && agrees(old, value) ? [] : [{ key, old, now: value }];
  });
}
