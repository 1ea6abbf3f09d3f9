/** A lesson's source, for finding the place of what the tree only quotes. */
import { findingAt, START, type Finding, type Place, type Problem } from '../findings.ts';
import { typedProblem } from './typed-quantities.ts';

/** What every check of lesson text needs: where it is, and where to put what it finds. */
export interface LessonSource {
  readonly file: string;
  readonly text: string;
  /** the place of an offset in `text` */
  readonly at: (offset: number) => Place;
  readonly report: (place: Place, problem: Problem) => void;
  /** a quantity that stands in the text with no source and no computation */
  readonly reportTyped: (place: Place, text: string) => void;
  readonly findings: readonly Finding[];
  readonly typed: readonly PlacedTyped[];
}

/** A quantity typed into the text. */
export interface PlacedTyped extends Place {
  readonly text: string;
}

/** Anything with a place in the text. */
export interface Placed {
  readonly position?:
    { readonly start: Place & { readonly offset?: number }; readonly end: Place & { readonly offset?: number } } | undefined;
}

export function lessonSource(file: string, text: string): LessonSource {
  const starts = [0];
  for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) starts.push(i + 1);
  const findings: Finding[] = [];
  const typed: PlacedTyped[] = [];
  return {
    file,
    text,
    at: (offset) => {
      let line = starts.findIndex((start) => start > offset);
      if (line < 0) line = starts.length;
      return { line, column: offset - (starts[line - 1] ?? 0) + 1 };
    },
    report: (place, problem) => findings.push(findingAt(file, place, problem)),
    reportTyped: (place, text) => {
      findings.push(findingAt(file, place, typedProblem(text)));
      typed.push({ ...place, text });
    },
    findings,
    typed,
  };
}

/** Where a node begins. */
export function placeOf(node: Placed): Place {
  const start = node.position?.start;
  return start === undefined ? START : { line: start.line, column: start.column };
}

/** Where `part` of a node's text stands; the node's own place if it is written in another way, with entities or escapes. */
export function placeOfPart(source: LessonSource, node: Placed, part: string, from = 0): Place {
  const start = node.position?.start.offset;
  const end = node.position?.end.offset;
  if (start === undefined || end === undefined) return placeOf(node);
  const offset = source.text.indexOf(part, start + from);
  const found = offset >= 0 && offset < end ? offset : source.text.indexOf(part, start);
  return found >= 0 && found < end ? source.at(found) : placeOf(node);
}

/** A node's text as it is written. */
export function written(source: LessonSource, node: Placed): string {
  return source.text.slice(node.position?.start.offset ?? 0, node.position?.end.offset ?? 0);
}
