/** Characters that nobody sees: they part words from what they look like, or turn their order around. */
import { findingAt, type Finding, type Problem } from './findings.ts';

/**
 * Control characters save tab and line ends, joiners of width zero save those of emoji, marks of direction,
 * separators of lines, tags, and what Unicode reserves for no character.
 * Source: Unicode Technical Standard 55 (2024), source code handling: marks of direction can hide what a text says.
 */
const SET = String.raw`\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\ufffe\uffff\u{e0000}-\u{e0fff}`;
const HIDDEN = new RegExp(`[${SET}]`, 'u');
const ALL_HIDDEN = new RegExp(`[${SET}]`, 'gu');
/** Findings about one file: a file of the wrong kind may be full of them. */
const MOST = 20;

/** Whether any character of a text cannot be seen. */
export function holdsHidden(text: string): boolean {
  return HIDDEN.test(text);
}

/** What is wrong with the hidden characters of a text. */
export function hiddenProblem(text: string): Problem {
  const character = HIDDEN.exec(text)?.[0] ?? '';
  return { code: 'hidden-character', what: `${codePoint(character)} stands here, which nobody can see`, instead: 'remove it' };
}

/** Where hidden characters stand in a file. */
export function hiddenCharacters(file: string, text: string): Finding[] {
  if (!holdsHidden(text)) return [];
  const findings: Finding[] = [];
  for (const [i, line] of text.split('\n').entries()) {
    for (const match of line.matchAll(ALL_HIDDEN)) {
      if (findings.length === MOST) return findings;
      findings.push(findingAt(file, { line: i + 1, column: match.index + 1 }, hiddenProblem(match[0])));
    }
  }
  return findings;
}

function codePoint(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
