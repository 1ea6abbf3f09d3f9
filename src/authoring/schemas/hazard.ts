/** Front matter of `hazards/<hazard>.mdx`. */
import { z } from 'zod';
import { reference, text } from '../fields.ts';
import { HAZARD_TAGS } from './tags.ts';

export const hazardSchema = z.strictObject({
  title: text(200),
  /** signal word of ANSI Z535.6 */
  signal: z.enum(['DANGER', 'WARNING', 'CAUTION', 'NOTICE']),
  /** registered safety signs of ISO 7010, such as W021 */
  signs: z.array(z.string().regex(/^[EFMPW]\d{3}$/)).max(6),
  covers: z.array(z.enum(HAZARD_TAGS)).min(1),
  who: text(500),
  source: z.array(reference('source')).min(1).optional(),
});

export type HazardMeta = z.infer<typeof hazardSchema>;
