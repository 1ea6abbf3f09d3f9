/** Which tag or brace makes a text unreadable. */
import type { VFileMessage } from 'vfile-message';
import type { Place } from '../findings.ts';

/** A part of the text, from offset to offset. */
export interface Culprit {
  readonly start: number;
  readonly end: number;
  /** of a tag that opens a component: its name */
  readonly opens: string | undefined;
  /** of a tag that closes one: its name */
  readonly closes: string | undefined;
}

/** The part of `text` that a message of the parser is about. */
export function culpritOf(message: VFileMessage, text: string): Culprit | undefined {
  const inWords = /\((\d+):(\d+)/.exec(message.reason);
  if (message.ruleId === 'end-tag-mismatch' && inWords) return tagAt(text, offsetOf(text, Number(inWords[1]), Number(inWords[2])));
  if (/expression/.test(message.reason)) {
    const brace = openBrace(text);
    return brace === undefined ? undefined : { start: brace, end: brace + 1, opens: undefined, closes: undefined };
  }
  const at = offsetOf(text, message.line ?? 1, message.column ?? 1);
  const start = text.lastIndexOf('<', Math.min(at, text.length - 1));
  return start < 0 ? undefined : tagAt(text, start);
}

/** The place of an offset. */
export function placeAt(text: string, offset: number): Place {
  const lines = text.slice(0, offset).split('\n');
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
}

/** A tag from its `<` to its `>`, to the end of the line where it has none. */
function tagAt(text: string, start: number): Culprit {
  const closed = /^[^\n]*?>/.exec(text.slice(start))?.[0];
  const written = closed ?? /^[^\r\n]*/.exec(text.slice(start))?.[0] ?? '';
  const name = /^<(\/?)\s*([\w.:-]*)/.exec(written);
  const slash = name?.[1] === '/';
  return {
    start,
    end: start + written.length,
    opens: slash || written.endsWith('/>') ? undefined : (name?.[2] ?? ''),
    closes: slash ? (name?.[2] ?? '') : undefined,
  };
}

/** The first brace that nothing closes. */
function openBrace(text: string): number | undefined {
  const open: number[] = [];
  for (const { 0: sign, index } of text.matchAll(/\\.|[{}]/gs)) {
    if (sign === '{') open.push(index);
    else if (sign === '}') open.pop();
  }
  return open[0];
}

function offsetOf(text: string, line: number, column: number): number {
  let start = 0;
  for (let i = 1; i < line; i++) {
    const next = text.indexOf('\n', start);
    if (next < 0) break;
    start = next + 1;
  }
  return start + column - 1;
}
