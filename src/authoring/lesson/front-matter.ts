/** The fields between two lines of `---` at the top of a text. */
import type { Place, Problem } from '../findings.ts';

/** A text parted from its front matter. */
export interface PartedText {
  /** the lines between the two `---`, undefined where there are none */
  readonly frontMatter: string | undefined;
  /** the whole text, of the front matter its line ends alone, so that places stay true */
  readonly body: string;
  readonly problems: readonly { readonly place: Place; readonly problem: Problem }[];
}

/** Parts a text from its front matter, which begins on the first line. */
export function partFrontMatter(text: string): PartedText {
  if (/^\+\+\+[ \t]*\r?\n/.test(text)) {
    return parted(text, {
      code: 'front-matter',
      what: 'the front matter is marked with `+++`',
      instead: 'write it as YAML between lines of `---`',
    });
  }
  const opened = /^---[ \t]*\r?\n/.exec(text);
  if (opened === null) return { frontMatter: undefined, body: text, problems: [] };
  const closed = /^---[ \t]*(?:\r?\n|$)/m.exec(text.slice(opened[0].length));
  if (closed === null) {
    return parted(text, {
      code: 'front-matter',
      what: 'the front matter is opened with `---` and not closed',
      instead: 'add a line `---` below its last field',
    });
  }
  const start = opened[0].length;
  const end = start + closed.index + closed[0].length;
  const blank = text.slice(0, end).replace(/[^\r\n]/g, '');
  return { frontMatter: text.slice(start, start + closed.index), body: blank + text.slice(end), problems: [] };
}

function parted(text: string, problem: Problem): PartedText {
  return { frontMatter: undefined, body: text, problems: [{ place: { line: 1, column: 1 }, problem }] };
}
