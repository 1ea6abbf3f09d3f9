/** Markdown with components and formulas to a tree; no code in it is ever read as code. */
import type { Root } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkMath from 'remark-math';
import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { VFileMessage } from 'vfile-message';
import type { Place, Problem } from '../findings.ts';

/**
 * Stands in for the JavaScript parser that the syntax asks for: any code is refused whatever it says,
 * so it is taken as read. Code with errors in it then hides no other finding.
 */
const READS_NO_CODE = {
  parse: (code: string) => ({ type: 'Program', start: 0, end: code.length, body: [], sourceType: 'module' }),
  parseExpressionAt: (code: string) => ({
    type: 'ObjectExpression',
    start: 0,
    end: code.length,
    properties: [
      {
        type: 'SpreadElement',
        start: 0,
        end: code.length,
        argument: { type: 'Identifier', start: 0, end: code.length, name: 'refused' },
      },
    ],
  }),
};

// Building it costs more than parsing a lesson.
const processor = unified()
  .use(remarkParse)
  .use(remarkGfm)
  .use(remarkMath)
  .use(remarkMdx, { acorn: READS_NO_CODE as never })
  .freeze();

/** The tree of the text, or why and where it cannot be read. */
export function parseTree(text: string): { readonly tree: Root } | { readonly place: Place; readonly problem: Problem } {
  try {
    return { tree: processor.parse(text) };
  } catch (error) {
    if (error instanceof RangeError) return { place: { line: 1, column: 1 }, problem: tooDeep() };
    if (!(error instanceof VFileMessage)) throw error;
    return { place: placeOfMessage(error, text), problem: explain(error) };
  }
}

/** Text so nested that reading it would be slow. */
export function tooDeep(): Problem {
  return {
    code: 'too-deep',
    what: 'lists, quotes, brackets or components stand in each other too many times',
    instead: 'flatten it',
  };
}

function placeOfMessage(message: VFileMessage, text: string): Place {
  // Unclosed tags are reported without a place, save in words.
  const inWords = /\((\d+):(\d+)/.exec(message.reason);
  if (message.ruleId === 'end-tag-mismatch' && inWords) return { line: Number(inWords[1]), column: Number(inWords[2]) };
  // An open brace is reported where the text ends.
  const open = /expression/.test(message.reason) ? openBrace(text) : undefined;
  return open ?? { line: message.line ?? 1, column: message.column ?? 1 };
}

/** The first brace that nothing closes. */
function openBrace(text: string): Place | undefined {
  const open: number[] = [];
  for (const { 0: sign, index } of text.matchAll(/\\.|[{}]/gs)) {
    if (sign === '{') open.push(index);
    else if (sign === '}') open.pop();
  }
  const first = open[0];
  if (first === undefined) return undefined;
  const lines = text.slice(0, first).split('\n');
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
}

function explain(message: VFileMessage): Problem {
  const reason = message.reason
    .replace(/ \(note: .*$/, '')
    .replace(/\s*\(\d+:\d+(?:-\d+:\d+)?\)/g, '')
    .replace(/\s+/g, ' ');
  if (/`!` \(U\+0021\) before name/.test(reason))
    return { code: 'html-comment', what: 'an HTML comment or declaration begins here', instead: 'remove it' };
  if (/`\/` \(U\+002F\) before local name|`@`/.test(reason)) {
    return { code: 'lesson-syntax', what: 'an address stands between `<` and `>`', instead: 'write `[text](address)`' };
  }
  if (message.ruleId === 'unexpected-empty-expression')
    return { code: 'expression', what: 'empty braces stand among the attributes', instead: 'remove them' };
  if (message.ruleId === 'end-tag-mismatch')
    return {
      code: 'lesson-syntax',
      what: reason.charAt(0).toLowerCase() + reason.slice(1),
      instead: 'close every component in the order in which they were opened, or with `/>`',
    };
  if (/expression/.test(reason))
    return { code: 'lesson-syntax', what: 'a `{` is not closed', instead: 'write `\\{` for the sign itself' };
  return {
    code: 'lesson-syntax',
    what: `this is not readable as lesson text (${reason})`,
    instead: 'close the tag, quote the attribute, or write `\\<` for the sign itself',
  };
}
