/** Front matter of `misconceptions/<name>.mdx`: an idea as students say it. */
import { z } from 'zod';
import { reference, text } from '../fields.ts';

export const misconceptionSchema = z
  .strictObject({
    title: text(300).meta({ description: 'The idea as students say it.', examples: ['A cloud is made of vapor.'] }),
    source: z
      .array(reference('source').describe('A source.'))
      .min(1)
      .describe('Where the idea was found among students, or where it is set right.')
      .optional(),
  })
  .meta({ title: 'Fields of a misconception', description: 'An idea as students say it.' });

export type MisconceptionMeta = z.infer<typeof misconceptionSchema>;
