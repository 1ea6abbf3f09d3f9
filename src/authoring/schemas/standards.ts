/** `standards/<framework>.yaml`: curriculum statements that a kit may point at. */
import { z } from 'zod';
import { text } from '../fields.ts';

const link = z.url({ protocol: /^https$/ }).meta({ examples: ['https://school.example/curriculum'] });

export const standardsSchema = z
  .strictObject({
    title: text(300).meta({ description: 'The name of the framework.', examples: ['Valley curriculum'] }),
    link: link.describe('Where the framework is published.'),
    statements: z
      .array(
        z.strictObject({
          code: text(60).meta({ description: 'The code, as the framework writes it.', examples: ['MS-ESS2-5'] }),
          paraphrase: text().describe('What the statement asks, in your own words.'),
          level: text(100).meta({ description: 'For which years it is.', examples: ['Years 7 and 8'] }),
          link: link.describe('Where the statement can be read.'),
          objectives: z
            .array(
              z.strictObject({
                objective: text(500).describe('The id of an objective of the kits, or its text.'),
                relation: z.enum(['teaches', 'assesses', 'requires']).describe('What the objective has to do with the statement.'),
                beyond: text(500)
                  .describe('What the statement asks that the lesson does not reach, or what the lesson adds.')
                  .optional(),
              }),
            )
            .describe('The objectives that belong to the statement.'),
        }),
      )
      .min(1)
      .describe('The statements that kits may point at.'),
  })
  .meta({ title: 'A framework of standards', description: 'Curriculum statements that a kit may point at.' });

export type Standards = z.infer<typeof standardsSchema>;
export type Statement = Standards['statements'][number];
