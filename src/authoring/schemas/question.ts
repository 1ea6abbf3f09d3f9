/** Front matter of `kits/<kit>/questions/<question>.mdx`. */
import { z } from 'zod';
import { anyQuantity, number, reference, report, text } from '../fields.ts';
import { requestSchema } from '../request.ts';
import type { Vocabulary } from '../vocabulary.ts';

/** Name of the form of a computed quantity among the definitions of the editors' schema. */
export const VALUE_FORM = 'computed-value';

/** Questions ask for values of the vocabulary, so the schema depends on it. */
export function questionSchema(vocabulary: Vocabulary) {
  const value = requestSchema(vocabulary).meta({ id: VALUE_FORM, description: 'A computed quantity, by its name and parameters.' });
  const common = {
    level: z
      .union([z.literal(1), z.literal(2), z.literal(3)])
      .describe('How hard it is: 1 for all, 2 for most, 3 for the quickest.'),
    objective: reference('objective').describe('The objective that it tests.').optional(),
  };
  const option = z
    .strictObject({
      text: text(500).describe('The option in words. Give this or value, not both.').optional(),
      value: value.optional(),
      right: z.literal(true).describe('Marks the right one; leave it out of the others.').optional(),
      misconception: reference('misconception').describe('The idea that leads to this option.').optional(),
      why: text(1000).describe('Shown when marked: why this is right or wrong.'),
    })
    .check((context) => {
      if ((context.value.text === undefined) === (context.value.value === undefined)) {
        report(context, context.value, {
          code: 'contradiction',
          what: 'an option needs either text or value',
          instead: 'write one of the two',
        });
      }
    })
    .meta({ oneOf: [{ required: ['text'] }, { required: ['value'] }] });
  return z
    .discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('numeric').describe('The answer is a number with its unit.'),
        ...common,
        answer: value,
        tolerance: anyQuantity(true)
          .meta({ description: 'How far an answer may be off.', examples: ['0.5 kPa', '5 %'] })
          .optional(),
        accepts: z.array(text(20)).describe('Other ways to write the answer that count as right.').optional(),
      }),
      z
        .strictObject({
          kind: z.literal('choice').describe('One of several options is right.'),
          ...common,
          options: z.array(option).min(2).max(8).describe('The options, one of them with right: true.'),
        })
        .check((context) => {
          const right = context.value.options.filter((one) => one.right === true).length;
          if (right !== 1)
            report(
              context,
              context.value,
              { code: 'contradiction', what: `${right} options are marked right`, instead: 'mark exactly one with `right: true`' },
              ['options'],
            );
        }),
      z.strictObject({
        kind: z.literal('ordering').describe('Things are put in order.'),
        ...common,
        items: z.array(text(300)).min(3).max(9).describe('The things, in the right order; they are shown in another.'),
      }),
      z.strictObject({
        kind: z.literal('text').describe('The answer is written in words and marked by the teacher.'),
        ...common,
        rubric: z
          .array(
            z.strictObject({
              points: number(0, 20).meta({ description: 'Points for it.', examples: [1] }),
              text: text(500).describe('What earns them.'),
            }),
          )
          .min(1)
          .describe('How it is marked.'),
      }),
    ])
    .meta({ title: 'Fields of a question', description: 'What a question asks, and its computed answer.' });
}

export type QuestionMeta = z.infer<ReturnType<typeof questionSchema>>;
