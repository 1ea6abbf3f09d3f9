/** A question at given conditions: options in printed order, the right answer, its tolerance, how to mark it. */
import type { QuestionMeta } from '../authoring/index.ts';
import { valueQuestionOf, type Conditions, type Style, type PrintedValue } from '../tables/index.ts';
import { answerTo, type Answer } from './answer.ts';
import { shuffled } from './shuffle.ts';

export interface Option {
  /** Text as written, or a computed value. */
  readonly text: string | PrintedValue;
  readonly answer?: Answer;
  readonly right: boolean;
  readonly why: string;
  readonly misconception?: string;
}

export type Item =
  /** `isComputed`: the tolerance follows from the room, not from the author. */
  | { readonly kind: 'numeric'; readonly answer: Answer; readonly isComputed: boolean; readonly accepts: readonly string[] }
  | { readonly kind: 'choice'; readonly options: readonly Option[] }
  | { readonly kind: 'ordering'; readonly items: readonly string[]; readonly rightOrder: readonly string[] }
  | { readonly kind: 'text'; readonly rubric: readonly { readonly points: number; readonly text: string }[] };

/** A question as asked in a room. The order of options depends on the question's name alone. */
export function itemOf(id: string, meta: QuestionMeta, conditions: Conditions, style: Style): Item {
  switch (meta.kind) {
    case 'numeric': {
      const answer = answerTo(valueQuestionOf(meta.answer), conditions, style);
      const isComputed = meta.tolerance === undefined;
      return { kind: 'numeric', answer: isComputed ? answer : { ...answer, tolerance: meta.tolerance!.value }, isComputed, accepts: meta.accepts ?? [] };
    }
    case 'choice': {
      const options = meta.options.map(({ text, value, right = false, why, misconception }): Option => {
        const answer = value === undefined ? undefined : answerTo(valueQuestionOf(value), conditions, style);
        return { text: text ?? answer!.printed, answer, right, why, misconception };
      });
      return { kind: 'choice', options: shuffled(options, id) };
    }
    case 'ordering':
      return { kind: 'ordering', items: shuffledApart(meta.items, id), rightOrder: meta.items };
    case 'text':
      return { kind: 'text', rubric: meta.rubric };
  }
}

/** Another order than the right one: it must not give the answer away. */
function shuffledApart(items: readonly string[], seed: string): readonly string[] {
  const order = shuffled(items, seed);
  return order.every((item, i) => item === items[i]) ? [...order.slice(1), order[0]!] : order;
}
