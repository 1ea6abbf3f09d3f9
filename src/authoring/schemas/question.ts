/** Front matter of `kits/<kit>/questions/<question>.mdx`. */
import { z } from 'zod';
import { anyQuantity, number, reference, report, text } from '../fields.ts';
import { requestSchema } from '../request.ts';
import type { Vocabulary } from '../vocabulary.ts';

/** Questions ask for values of the vocabulary, so the schema depends on it. */
export function questionSchema(vocabulary: Vocabulary) {
  const value = requestSchema(vocabulary);
  const common = { level: z.union([z.literal(1), z.literal(2), z.literal(3)]), objective: reference('objective').optional() };
  const option = z
    .strictObject({
      text: text(500).optional(),
      value: value.optional(),
      right: z.literal(true).optional(),
      misconception: reference('misconception').optional(),
      /** shown when marked: why this is right or wrong */
      why: text(1000),
    })
    .check((context) => {
      if ((context.value.text === undefined) === (context.value.value === undefined)) {
        report(context, context.value, {
          code: 'contradiction',
          what: 'an option needs either text or value',
          instead: 'write one of the two',
        });
      }
    });
  return z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('numeric'),
      ...common,
      answer: value,
      tolerance: anyQuantity(true).optional(),
      accepts: z.array(text(20)).optional(),
    }),
    z.strictObject({ kind: z.literal('choice'), ...common, options: z.array(option).min(2).max(8) }).check((context) => {
      const right = context.value.options.filter((one) => one.right === true).length;
      if (right !== 1)
        report(
          context,
          context.value,
          { code: 'contradiction', what: `${right} options are marked right`, instead: 'mark exactly one with `right: true`' },
          ['options'],
        );
    }),
    z.strictObject({ kind: z.literal('ordering'), ...common, items: z.array(text(300)).min(3).max(9) }),
    z.strictObject({
      kind: z.literal('text'),
      ...common,
      rubric: z.array(z.strictObject({ points: number(0, 20), text: text(500) })).min(1),
    }),
  ]);
}

export type QuestionMeta = z.infer<ReturnType<typeof questionSchema>>;
