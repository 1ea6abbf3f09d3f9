/** Front matter of `misconceptions/<name>.mdx`: an idea as students say it. */
import { z } from 'zod';
import { reference, text } from '../fields.ts';

export const misconceptionSchema = z.strictObject({
  title: text(300),
  source: z.array(reference('source')).min(1).optional(),
});

export type MisconceptionMeta = z.infer<typeof misconceptionSchema>;
