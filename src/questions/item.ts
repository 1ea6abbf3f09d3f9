/** A question at given conditions: options in printed order, the right answer, its tolerance, how to mark it. */
import type { QuestionMeta } from '../authoring/index.ts';
import {
  computeValue, DISPLAY_UNITS, printValue, QUANTITIES, UNITS_OF, valueQuestionOf, type Conditions, type DimensionName, type NumberStyle,
  type PrintedValue, type UnitName, type ValueQuestion,
} from '../tables/index.ts';
import { shuffled } from './shuffle.ts';

/** A number to be found, or one to be chosen from. */
export interface Answer {
  readonly question: ValueQuestion;
  /** SI; null where physics has no answer for the room. */
  readonly value: number | null;
  /** Half-width of what counts as right, SI. */
  readonly tolerance: number;
  readonly printed: PrintedValue;
  readonly unit: UnitName;
}

export interface Option {
  /** Text as written, or a computed value. */
  readonly text: string | PrintedValue;
  readonly answer?: Answer;
  readonly right: boolean;
  readonly why: string;
  readonly misconception?: string;
}

export type Item =
  | { readonly kind: 'numeric'; readonly answer: Answer; readonly accepts: readonly string[] }
  | { readonly kind: 'choice'; readonly options: readonly Option[] }
  | { readonly kind: 'ordering'; readonly items: readonly string[]; readonly rightOrder: readonly string[] }
  | { readonly kind: 'text'; readonly rubric: readonly { readonly points: number; readonly text: string }[] };

/**
 * What a student's own constants may move an answer by, standard uncertainty: c_p, R and the saturation
 * formulas of school books differ by about half a percent, which is 0.2 K in a temperature here.
 */
const STUDENT_CONSTANTS = { share: 0.005, temperature: 0.2 } as const;
const COVERAGE = 2;

/** The rule by which tolerances are found, as the answer key prints it. */
export const TOLERANCE_RULE =
  'Right within twice the standard uncertainty: what room, gauge and rounding leave open, and half a percent (of a temperature, 0.2 K) for the constants a student may use.';

/** A question as asked in a room. The order of options depends on the question's name alone. */
export function itemOf(id: string, meta: QuestionMeta, conditions: Conditions, style?: NumberStyle): Item {
  switch (meta.kind) {
    case 'numeric': {
      const answer = answerOf(valueQuestionOf(meta.answer), conditions, style);
      return { kind: 'numeric', answer: meta.tolerance === undefined ? answer : { ...answer, tolerance: meta.tolerance.value }, accepts: meta.accepts ?? [] };
    }
    case 'choice': {
      const options = meta.options.map(({ text, value, right = false, why, misconception }): Option => {
        const answer = value === undefined ? undefined : answerOf(valueQuestionOf(value), conditions, style);
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

function answerOf(question: ValueQuestion, conditions: Conditions, style?: NumberStyle): Answer {
  const { of, at, unit } = question;
  const computed = computeValue(conditions, of, at);
  const { dimension } = QUANTITIES[of];
  return {
    question,
    value: computed.value,
    tolerance: computed.value === null ? 0 : toleranceOf(computed.value, computed.uncertainty, dimension),
    printed: printValue(of, computed, unit, style),
    unit: unit ?? UNITS_OF[dimension][0],
  };
}

function toleranceOf(value: number, uncertainty: number, dimension: DimensionName): number {
  const constants = dimension === 'temperature' ? STUDENT_CONSTANTS.temperature : STUDENT_CONSTANTS.share * Math.abs(value);
  return COVERAGE * Math.hypot(uncertainty, constants);
}

/** Half-width of what counts as right, in the unit of the answer. */
export function toleranceIn({ tolerance, unit }: Answer): number {
  const { fromSi } = DISPLAY_UNITS[unit];
  return Math.abs(fromSi(tolerance) - fromSi(0));
}

/** Another order than the right one: it must not give the answer away. */
function shuffledApart(items: readonly string[], seed: string): readonly string[] {
  const order = shuffled(items, seed);
  return order.every((item, i) => item === items[i]) ? [...order.slice(1), order[0]!] : order;
}
