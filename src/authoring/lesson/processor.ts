/** Markdown with components and formulas to a tree; no code in it is ever read as code. */
import type { Root } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkMath from 'remark-math';
import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { VFileMessage } from 'vfile-message';
import { START, type Place, type Problem } from '../findings.ts';
import { culpritOf, placeAt, type Culprit } from './culprit.ts';

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

// Building these costs more than parsing a lesson.
const plain = unified().use(remarkParse).use(remarkMath).use(remarkMdx, { acorn: READS_NO_CODE as never }).freeze();
const withGfm = unified().use(remarkParse).use(remarkGfm).use(remarkMath).use(remarkMdx, { acorn: READS_NO_CODE as never }).freeze();

/** Signs without which a text holds no table, deletion, footnote, task and bare address: nothing of GFM, whose search for them costs more than all else. */
const SIGNS_OF_GFM = /[|~@]|\[[\^\sx]|:\/\/|www\./i;

const processorFor = (text: string): typeof plain => (SIGNS_OF_GFM.test(text) ? withGfm : plain);

/** Why a text cannot be read, and the tag or brace that is to blame. */
export interface Unreadable {
  readonly place: Place;
  readonly problem: Problem;
  /** undefined where no part of the text is to blame */
  readonly culprit: Culprit | undefined;
}

/** The tree of the text, or why and where it cannot be read. */
export function parseTree(text: string): { readonly tree: Root } | Unreadable {
  try {
    return { tree: processorFor(text).parse(text) };
  } catch (error) {
    if (error instanceof RangeError) return { place: START, problem: tooDeep(), culprit: undefined };
    // A tag that is not closed in an underlined heading fails an assertion of the parser instead of its own check.
    if (!(error instanceof VFileMessage)) return { place: START, problem: unreadable(error), culprit: undefined };
    const culprit = culpritOf(error, text);
    return { place: placeOfMessage(error, text, culprit), problem: explain(error), culprit };
  }
}

/** What the parser itself cannot cope with. */
function unreadable(error: unknown): Problem {
  return {
    code: 'lesson-syntax',
    what: `this is not readable as lesson text (${error instanceof Error ? error.message : 'for no reason given'})`,
    instead: 'close every component, and begin headings with `##`',
  };
}

/** Text so nested that reading it would be slow. */
export function tooDeep(): Problem {
  return {
    code: 'too-deep',
    what: 'lists, quotes, brackets or components stand in each other too many times',
    instead: 'flatten it',
  };
}

function placeOfMessage(message: VFileMessage, text: string, culprit: Culprit | undefined): Place {
  const { line = 1, column = 1 } = message;
  // Unclosed tags are reported without a place, and open braces, tags and quotes where the text ends.
  const elsewhere = message.ruleId === 'end-tag-mismatch' || /expression|end of file/.test(message.reason);
  return elsewhere && culprit !== undefined ? placeAt(text, culprit.start) : { line, column };
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
  const html = /closing tag for `<(?<name>[a-z][\w-]*)/.exec(reason)?.groups?.['name'];
  if (message.ruleId === 'end-tag-mismatch' && html !== undefined)
    return html.toLowerCase() === 'script'
      ? { code: 'script', what: 'a script begins here', instead: 'remove it: lessons hold no code' }
      : { code: 'raw-html', what: `\`<${html}>\` is raw HTML`, instead: 'write it in Markdown or with a component' };
  if (message.ruleId === 'end-tag-mismatch')
    return {
      code: 'lesson-syntax',
      what: reason.charAt(0).toLowerCase() + reason.slice(1),
      instead: 'close every component in the order in which they were opened, or with `/>`',
    };
  if (/expression/.test(reason))
    return { code: 'lesson-syntax', what: 'a `{` is not closed', instead: 'write `\\{` for the sign itself' };
  if (message.ruleId === 'unexpected-closing-slash')
    return { code: 'lesson-syntax', what: 'this closes a component that is not open here', instead: 'remove it, or open the component before it' };
  return {
    code: 'lesson-syntax',
    what: `this is not readable as lesson text (${reason})`,
    instead: 'close the tag, quote the attribute, or write `\\<` for the sign itself',
  };
}
