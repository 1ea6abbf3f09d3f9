/** `site.yaml`: the school and its site. */
import { z } from 'zod';
import { LANGUAGES } from '../../texts/index.ts';
import { reference, text } from '../fields.ts';

export const siteSchema = z
  .strictObject({
    school: text(200).meta({ description: 'The name of the school, as the site shows it.', examples: ['Marrow Bay School'] }),
    address: z
      .url({ protocol: /^https$/ })
      .meta({ description: 'Where the site will stand, with its sub-path.', examples: ['https://school.example/lessons/'] }),
    language: z.enum(LANGUAGES).describe('The language of the site: en for English, es for Spanish.'),
    room: reference('room').describe('The room of every kit that names none.'),
    license: text(200).meta({ description: 'The license under which the lessons may be used.', examples: ['CC-BY-4.0'] }),
    answers: z
      .enum(['teacher-pack', 'public'])
      .default('teacher-pack')
      .describe('Where answers go: into a pack of their own for teachers, or onto the public site.'),
    drafts: z.boolean().default(true).describe('Whether kits not yet published are shown, marked as drafts.'),
    contact: text(200)
      .meta({ description: 'How readers reach the school.', examples: ['mailto:science@school.example'] })
      .optional(),
  })
  .meta({ title: 'site.yaml', description: 'The school and its site.' });

export type Site = z.infer<typeof siteSchema>;
