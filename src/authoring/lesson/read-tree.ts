/** Reads as much of a text as can be read: what is wrong in one place hides nothing in another. */
import type { Place, Problem } from '../findings.ts';
import type { Root } from './nodes.ts';
import { parseTree, type Unreadable } from './processor.ts';

/** A text as far as it was readable. */
export interface ReadTree {
  /** undefined where reading was given up */
  readonly tree: Root | undefined;
  readonly problems: readonly { readonly place: Place; readonly problem: Problem }[];
}

/** Readings of one text, each without one more part that cannot be read. */
const MOST_READINGS = 10;
/** Text read in all, in UTF-16 units: long texts are the slow ones, and they are read once or twice. */
const MOST_READ = 80 * 1024;

/** Reads `text`; a tag or brace that makes it unreadable is reported, blanked out, and the rest read again. */
export function readTree(text: string): ReadTree {
  const problems: { place: Place; problem: Problem }[] = [];
  const blankedOpen: string[] = [];
  const readings = Math.max(1, Math.min(MOST_READINGS, Math.floor(MOST_READ / Math.max(1, text.length))));
  let left = text;
  for (let i = 0; i < readings; i++) {
    const read = parseTree(left);
    if ('tree' in read) return { tree: read.tree, problems };
    if (!isEcho(read, blankedOpen)) problems.push({ place: read.place, problem: read.problem });
    const blanked = blank(left, read);
    if (blanked === left) break;
    if (read.culprit?.opens !== undefined) blankedOpen.push(read.culprit.opens);
    left = blanked;
  }
  return { tree: undefined, problems };
}

/** Whether a closing tag has nothing to close only because its opening tag was blanked out. */
function isEcho({ culprit }: Unreadable, blankedOpen: string[]): boolean {
  const i = culprit?.closes === undefined ? -1 : blankedOpen.indexOf(culprit.closes);
  if (i >= 0) blankedOpen.splice(i, 1);
  return i >= 0;
}

function blank(text: string, { culprit }: Unreadable): string {
  if (culprit === undefined) return text;
  const { start, end } = culprit;
  return text.slice(0, start) + text.slice(start, end).replace(/[^\r\n]/g, ' ') + text.slice(end);
}
