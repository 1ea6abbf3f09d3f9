/** `site.yaml`: the school and its site. */
import { z } from 'zod';
import { reference, text } from '../fields.ts';

export const siteSchema = z.strictObject({
  school: text(200),
  /** where the site will stand, with its sub-path */
  address: z.url({ protocol: /^https$/ }),
  language: z.enum(['en', 'es']),
  room: reference('room'),
  license: text(200),
  /** answers in a pack of their own for teachers, or on the public site */
  answers: z.enum(['teacher-pack', 'public']).default('teacher-pack'),
  /** whether kits not yet published are shown, marked as drafts */
  drafts: z.boolean().default(true),
  contact: text(200).optional(),
});

export type Site = z.infer<typeof siteSchema>;
