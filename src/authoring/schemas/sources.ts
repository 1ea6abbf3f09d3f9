/** `sources.yaml`: references, in the fields of CSL-JSON 1.0 that a reference list needs. */
import { z } from 'zod';
import { name, text } from '../fields.ts';

const person = z.union([
  z.strictObject({
    family: text(100).meta({ description: 'Family name.', examples: ['Petters'] }),
    given: text(100)
      .meta({ description: 'Given names or initials.', examples: ['M. D.'] })
      .optional(),
    suffix: text(20)
      .meta({ description: 'What follows the name.', examples: ['Jr.'] })
      .optional(),
  }),
  z.strictObject({ literal: text(200).describe('The name of an organization, as it writes itself.') }),
]);
const date = z.strictObject({
  'date-parts': z
    .array(z.array(z.number().int().min(1).max(9999)).min(1).max(3))
    .length(1)
    .meta({
      description: 'Year, month and day in two pairs of brackets; month and day may be left out.',
      examples: [[[2007]], [[2007, 4, 20]]],
    }),
});
/** Volumes and pages are text, but YAML reads `24` as a number. */
const label = z.union([text(60), z.number()]).transform(String);

export const sourceSchema = z.strictObject({
  id: name().meta({ description: 'The name by which texts cite it.', examples: ['petters-kreidenweis-2007'] }),
  type: z
    .enum([
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
    ])
    .describe('What kind of work it is.'),
  title: text(500).describe('The title of the work, or of the article.'),
  author: z.array(person).min(1).describe('Who wrote it.').optional(),
  editor: z.array(person).min(1).describe('Who edited it.').optional(),
  issued: date.describe('When it was published.').optional(),
  accessed: date.describe('When a page was read.').optional(),
  'container-title': text(300).describe('The journal, book or site that it is part of.').optional(),
  'collection-title': text(300).describe('The series.').optional(),
  volume: label.meta({ description: 'The volume.', examples: ['7'] }).optional(),
  issue: label.meta({ description: 'The issue.', examples: ['4'] }).optional(),
  page: label.meta({ description: 'The pages.', examples: ['1961-1971'] }).optional(),
  number: label.meta({ description: 'The number of a report or standard.', examples: ['ISO 7010'] }).optional(),
  edition: label.meta({ description: 'The edition.', examples: ['2'] }).optional(),
  publisher: text(200).describe('Who published it.').optional(),
  'publisher-place': text(200).describe('Where it was published.').optional(),
  version: label.describe('The version.').optional(),
  language: text(20)
    .meta({ description: 'The language, as a code.', examples: ['en'] })
    .optional(),
  DOI: z
    .string()
    .regex(/^10\.\d{4,9}\/\S+$/)
    .meta({
      description: 'The digital object identifier alone, without an address before it.',
      examples: ['10.5194/acp-7-1961-2007'],
    })
    .optional(),
  ISBN: text(40).describe('The number of a book.').optional(),
  ISSN: text(20).describe('The number of a journal.').optional(),
  URL: z
    .url({ protocol: /^https$/ })
    .describe('Where it can be read.')
    .optional(),
  note: text().describe('What else a reader should know.').optional(),
});
export const sourcesSchema = z
  .array(sourceSchema)
  .meta({ title: 'sources.yaml', description: 'References, in the fields of CSL-JSON; each must be cited somewhere.' });

export type Source = z.infer<typeof sourceSchema>;
