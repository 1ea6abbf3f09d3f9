/** What is wrong in a contributor's file, where, and what to write instead. */
import type { FindingCode } from './catalogue.ts';

/** A place in a text file; both count from 1, the column in UTF-16 units. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** One thing that stops the build. */
export interface Finding extends Place {
  /** stable name, explained in the catalogue */
  readonly code: FindingCode;
  /** path that begins with the name of the content folder, with forward slashes */
  readonly file: string;
  /** what is wrong, without a full stop */
  readonly what: string;
  /** what to write instead, without a full stop */
  readonly instead: string;
}

/** A finding that does not know its file and place yet. */
export type Problem = Pick<Finding, 'code' | 'what' | 'instead'>;

/** The beginning of a file: the place of what concerns the whole of it. */
export const START: Place = { line: 1, column: 1 };

/** Puts a problem in its place. */
export function findingAt(file: string, place: Place, problem: Problem): Finding {
  const { code, what, instead } = problem;
  return { code, file, line: place.line, column: place.column, what, instead };
}

/** One line for people and editors: `file:line:column: what; instead`. */
export function formatFinding(finding: Finding): string {
  return oneLine(`${finding.file}:${finding.line}:${finding.column}: ${finding.what}; ${finding.instead}`);
}

/** Names of files and quoted text may hold signs that a terminal obeys. */
function oneLine(text: string): string {
  return text.replace(/[\u0000-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069]/g, '\ufffd');
}

/** By file, then place, then code; exact repetitions dropped. Order does not depend on the locale. */
export function sortFindings(findings: readonly Finding[]): Finding[] {
  const sorted = [...findings].sort(
    (a, b) =>
      compareText(a.file, b.file) ||
      a.line - b.line ||
      a.column - b.column ||
      compareText(a.code, b.code) ||
      compareText(a.what, b.what),
  );
  return sorted.filter((finding, i) => i === 0 || formatFinding(finding) !== formatFinding(sorted[i - 1] ?? finding));
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
