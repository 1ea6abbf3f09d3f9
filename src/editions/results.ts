/** `results.json`: each computed number of an edition at full precision, and whether it still comes out. */
import { z } from 'zod';
import type { Cell } from '../tables/index.ts';
import { parsedJson } from './manifest.ts';
import type { ComputedNumber } from './numbers.ts';

const resultsSchema = z.strictObject({
  kit: z.string(),
  version: z.string(),
  /** Version of the physics library that computed them. */
  engine: z.string(),
  /** SI, by key. */
  numbers: z.record(z.string(), z.union([z.number(), z.boolean(), z.null()])),
});

/** The numbers of an edition as published. */
export type Results = Readonly<z.infer<typeof resultsSchema>>;

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

/** The results that a file holds; undefined where it holds none. */
export function resultsFrom(text: string): Results | undefined {
  const read = resultsSchema.safeParse(parsedJson(text));
  return read.success ? read.data : undefined;
}

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
