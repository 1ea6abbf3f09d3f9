/** A published edition as read: a content folder of one kit that nothing outside it can change. */
import type { Content, Kit, Notice } from '../authoring/index.ts';
import type { ComputedNumber } from './numbers.ts';
import type { Manifest } from './manifest.ts';
import type { Difference, Results } from './results.ts';

export interface Edition {
  readonly kit: string;
  readonly version: string;
  /** The folder as findings name it: `content/editions/cloud/1.0.0`. */
  readonly root: string;
  readonly content: Content;
  readonly manifest: Manifest;
  /** As published. */
  readonly results: Results;
  /** As computed now. */
  readonly numbers: readonly ComputedNumber[];
  /** In the order of the file. */
  readonly notices: readonly Notice[];
}

/** An edition whose files are untouched, whatever its numbers do. */
export interface Frozen extends Omit<Edition, 'notices'> {
  /** `results.json` as it is. */
  readonly resultsText: string;
  /** Numbers that do not come out. */
  readonly differences: readonly Difference[];
}

/** The kit that an edition is of. */
export function kitOf({ content, kit }: Pick<Edition, 'content' | 'kit'>): Kit {
  const found = content.kits.get(kit);
  if (found === undefined) throw new Error(`there is no kit ${kit} in an edition of it: its files are checked against the manifest`);
  return found;
}

/** Whether it must not be used any more. */
export const isWithdrawn = ({ notices }: Pick<Edition, 'notices'>): boolean => notices.some((notice) => 'withdrawn' in notice);
