/** `notice.yaml` beside a published edition: what is to be known of it since. */
import { z } from 'zod';
import { text } from '../fields.ts';

/** The form of an edition's version: three numbers with points. */
export const VERSION = /^(?:0|[1-9]\d{0,3})\.(?:0|[1-9]\d{0,3})\.(?:0|[1-9]\d{0,3})$/;

const cell = z.union([z.number(), z.boolean(), z.null()]);

const correctionSchema = z
  .strictObject({
    why: text(1000).describe('What was wrong, for a teacher who holds an older print.'),
    numbers: z
      .array(
        z.strictObject({
          key: text(300).describe('The number, by its key in results.json.'),
          old: cell.describe('As published, in SI: from results.json.'),
          new: cell.describe('As it is right, in SI.'),
        }),
      )
      .min(1)
      .describe('Which numbers, old and new.')
      .optional(),
  })
  .describe('Something in the edition is wrong, and what is right.');

const withdrawnSchema = z
  .strictObject({
    why: text(1000).describe('Why the edition must not be used any more.'),
    replacement: z.string().regex(VERSION).meta({ description: 'The version that replaces it.', examples: ['2.0.0'] }).optional(),
  })
  .describe('The edition must not be used any more.');

const date = z.iso.date().meta({ description: 'Year, month and day.', examples: ['2026-09-01'] });

export const noticeSchema = z
  .array(
    z.union([
      z.strictObject({ date, correction: correctionSchema }),
      z.strictObject({ date, withdrawn: withdrawnSchema }),
    ]),
  )
  .min(1)
  .meta({ title: 'notice.yaml', description: 'Notices of a published edition, the oldest first; nothing else is ever added to one.' });

export type Notice = z.infer<typeof noticeSchema>[number];
