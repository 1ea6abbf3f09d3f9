/** `standards/<framework>.yaml`: curriculum statements that a kit may point at. */
import { z } from 'zod';
import { text } from '../fields.ts';

const link = z.url({ protocol: /^https$/ });

export const standardsSchema = z.strictObject({
  title: text(300),
  link,
  statements: z
    .array(
      z.strictObject({
        /** as the framework writes it */
        code: text(60),
        /** in our words */
        paraphrase: text(),
        level: text(100),
        link,
        objectives: z.array(
          z.strictObject({
            objective: text(500),
            relation: z.enum(['teaches', 'assesses', 'requires']),
            /** what the statement asks that the lesson does not reach, or the lesson adds */
            beyond: text(500).optional(),
          }),
        ),
      }),
    )
    .min(1),
});

export type Standards = z.infer<typeof standardsSchema>;
export type Statement = Standards['statements'][number];
