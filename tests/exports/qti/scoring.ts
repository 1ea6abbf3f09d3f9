/** What a platform would give for a response, by the item's own rules: as much of response processing as our items use (QTI 3.0, 2.1, Information Model, Response Processing). */
import { everyElement, only, type Tree } from './tree.ts';

/** Identifiers in order, a number, or nothing. */
export type Response = readonly string[] | number | null;

/** The outcome SCORE; undefined where only a person can give it. */
export function scoreOf(item: Tree, response: Response): number | undefined {
  const processing = item.children.find(({ name }) => name === 'response-processing');
  if (processing === undefined) return undefined;
  const right = everyElement(only(item, 'correct-response')).filter(({ name }) => name === 'value').map(({ text }) => text);
  const { template } = processing.attributes;
  if (template !== undefined) {
    if (!/\/rptemplates\/match_correct(?:\.xml)?$/.test(template)) throw new Error(`${template} is not known.`);
    return JSON.stringify(response) === JSON.stringify(right) ? 1 : 0;
  }
  let score: number | undefined;
  for (const { children } of processing.children) {
    const taken = children.find((branch) => branch.name === 'response-else' || holds(branch.children[0]!, Number(right[0]), response));
    if (taken !== undefined) score = Number(taken.children.at(-1)!.text);
  }
  return score;
}

function holds(expression: Tree, right: number, response: Response): boolean {
  if (expression.name === 'is-null') return response === null;
  if (expression.name !== 'equal') throw new Error(`${expression.name} is not known.`);
  // The first expression is the reference: the second must lie from it less the first tolerance to it plus the second.
  const [below = 0, above = below] = expression.attributes['tolerance']!.split(' ').map(Number);
  return typeof response === 'number' && response >= right - below && response <= right + above;
}
