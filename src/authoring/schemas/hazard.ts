/** Front matter of `hazards/<hazard>.mdx`. */
import { z } from 'zod';
import { reference, text } from '../fields.ts';
import { HAZARD_TAGS } from './tags.ts';

export const hazardSchema = z
  .strictObject({
    title: text(200).meta({ description: 'The thing that can hurt.', examples: ['Evacuated vessel'] }),
    /** ANSI Z535.6 */
    signal: z
      .enum(['DANGER', 'WARNING', 'CAUTION', 'NOTICE'])
      .describe('Signal word: DANGER will kill or maim, WARNING can, CAUTION can hurt lightly, NOTICE harms things only.'),
    signs: z
      .array(
        z
          .string()
          .regex(/^[EFMPW]\d{3}$/)
          .meta({ description: 'The number of a sign.', examples: ['M004', 'W021'] }),
      )
      .max(6)
      .describe('Registered safety signs of ISO 7010, by their numbers; [] for none.'),
    covers: z
      .array(z.enum(HAZARD_TAGS))
      .min(1)
      .describe('The tags of things, such as apparatus and particles, that this sheet covers.'),
    who: text(500).meta({ description: 'Who can be hurt.', examples: ['Everybody in front of the bench'] }),
    source: z.array(reference('source').describe('A source.')).min(1).describe('Where the advice comes from.').optional(),
  })
  .meta({ title: 'Fields of a hazard sheet', description: 'What can happen, to whom, and what prevents it.' });

export type HazardMeta = z.infer<typeof hazardSchema>;
