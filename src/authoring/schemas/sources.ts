/** `sources.yaml`: references, in the fields of CSL-JSON 1.0 that a reference list needs. */
import { z } from 'zod';
import { name, text } from '../fields.ts';

const person = z.union([
  z.strictObject({ family: text(100), given: text(100).optional(), suffix: text(20).optional() }),
  z.strictObject({ literal: text(200) }),
]);
const date = z.strictObject({ 'date-parts': z.array(z.array(z.number().int().min(1).max(9999)).min(1).max(3)).length(1) });
/** Volumes and pages are text, but YAML reads `24` as a number. */
const label = z.union([text(60), z.number()]).transform(String);

export const sourceSchema = z.strictObject({
  id: name(),
  type: z.enum([
    'article-journal',
    'book',
    'chapter',
    'report',
    'standard',
    'thesis',
    'webpage',
    'dataset',
    'legislation',
    'paper-conference',
    'document',
  ]),
  title: text(500),
  author: z.array(person).min(1).optional(),
  editor: z.array(person).min(1).optional(),
  issued: date.optional(),
  accessed: date.optional(),
  'container-title': text(300).optional(),
  'collection-title': text(300).optional(),
  volume: label.optional(),
  issue: label.optional(),
  page: label.optional(),
  number: label.optional(),
  edition: label.optional(),
  publisher: text(200).optional(),
  'publisher-place': text(200).optional(),
  version: label.optional(),
  language: text(20).optional(),
  DOI: z
    .string()
    .regex(/^10\.\d{4,9}\/\S+$/)
    .optional(),
  ISBN: text(40).optional(),
  ISSN: text(20).optional(),
  URL: z.url({ protocol: /^https$/ }).optional(),
  note: text().optional(),
});
export const sourcesSchema = z.array(sourceSchema);

export type Source = z.infer<typeof sourceSchema>;
