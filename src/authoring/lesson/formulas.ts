/** Formulas: whether they can be set, and nothing but formulas in them. */
import katex from 'katex';
import type { InlineMath, Math as DisplayMath } from 'mdast-util-math';
import type { Problem } from '../findings.ts';
import { placeOf, placeOfPart, type LessonSource } from './source.ts';

/** Commands that make links, load files, or put attributes on the page; and those that define others, which could spell them. */
const REFUSED =
  /\\(?:href|url|htmlClass|htmlId|htmlStyle|htmlData|includegraphics|(?:[egx]|long\\?)?def|let|futurelet|global|(?:re)?newcommand|providecommand|operatorname@|csname|char|catcode|htmlmathml)(?![a-zA-Z])/g;
const LONGEST = 2000;
/** Groups in groups: each is an element in an element of the page. */
const DEEPEST = 40;
const tooDeep: Problem = { code: 'math-error', what: 'the formula is nested too deeply', instead: 'simplify it' };

/** Checks one formula. */
export function checkFormula(source: LessonSource, node: InlineMath | DisplayMath): void {
  const place = (part: string, from = 0) => placeOfPart(source, node, part, from);
  let refused = false;
  for (const match of node.value.matchAll(REFUSED)) {
    source.report(place(match[0], match.index), {
      code: 'math-command',
      what: `\`${match[0]}\` is refused in formulas`,
      instead: 'leave it out',
    });
    refused = true;
  }
  if (refused) return;
  if (node.value.length > LONGEST) {
    source.report(placeOf(node), {
      code: 'math-error',
      what: `the formula is longer than ${LONGEST} characters`,
      instead: 'divide it',
    });
    return;
  }
  if (depthOf(node.value) > DEEPEST) {
    source.report(placeOf(node), tooDeep);
    return;
  }
  const problem = settingProblem(node.value, node.type === 'math');
  if (problem === undefined) return;
  const rest = problem.position === undefined ? '' : node.value.slice(problem.position);
  const line = rest.split('\n')[0] ?? '';
  source.report(line === '' ? placeOf(node) : place(line, problem.position), problem.problem);
}

function depthOf(formula: string): number {
  let depth = 0;
  let deepest = 0;
  for (const [sign] of formula.matchAll(/\\.|[{}]/gs)) {
    if (sign === '{') deepest = Math.max(deepest, ++depth);
    else if (sign === '}') depth--;
  }
  return deepest;
}

interface Misset {
  readonly position: number | undefined;
  readonly problem: Problem;
}

/** Setting a formula costs more than all other checks of it, and formulas recur. */
const KNOWN = new Map<string, Misset | undefined>();
const MOST_KNOWN = 5000;

function settingProblem(formula: string, displayMode: boolean): Misset | undefined {
  const key = `${displayMode ? 'd' : 'i'}${formula}`;
  if (KNOWN.has(key)) return KNOWN.get(key);
  if (KNOWN.size >= MOST_KNOWN) KNOWN.clear();
  const problem = trySetting(formula, displayMode);
  KNOWN.set(key, problem);
  return problem;
}

function trySetting(formula: string, displayMode: boolean): Misset | undefined {
  let lineBreak = false;
  try {
    katex.renderToString(formula, {
      displayMode,
      throwOnError: true,
      output: 'mathml',
      maxExpand: 200,
      maxSize: 20,
      // Unsafe commands are refused above by name; this refuses those that a newer version may add.
      trust: ({ command }: { command: string }) => {
        throw new katex.ParseError(`${command} is refused`);
      },
      strict: (code: string) => {
        lineBreak ||= code === 'newLineInDisplayMode';
        return 'error';
      },
    });
  } catch (error) {
    if (error instanceof RangeError)
      return { position: undefined, problem: tooDeep };
    if (!(error instanceof katex.ParseError)) throw error;
    const reason = (error.rawMessage ?? error.message).replace(/^KaTeX parse error: /, '').replace(/\.$/, '');
    return {
      position: error.position,
      problem: {
        code: 'math-error',
        what: `the formula cannot be set (${reason})`,
        instead: 'mend it; units stand in `\\text{…}`, and `\\%` is the percent sign',
      },
    };
  }
  if (!lineBreak) return undefined;
  return {
    position: formula.indexOf('\\\\'),
    problem: {
      code: 'math-error',
      what: '`\\\\` breaks no line here',
      instead: 'put the lines between `\\begin{aligned}` and `\\end{aligned}`',
    },
  };
}
