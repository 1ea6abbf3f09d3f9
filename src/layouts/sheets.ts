/** The sheets of a kit in the order of its title block. */

import { SHEET_TEXTS, type Language } from '../texts/index.ts';

/** Folders of the sheets; the kit's own page has none. */
export const SHEETS = ['', 'run', 'student', 'background', 'numbers', 'questions', 'safety', 'board', 'readings', 'booklet'] as const;

export type SheetSlug = (typeof SHEETS)[number];

const isSheet = (slug: string): slug is SheetSlug => (SHEETS as readonly string[]).includes(slug);

/** Name of a sheet, and one line about it. Throws RangeError for one that no kit has. */
export const sheetTexts = (slug: string, language: Language): { readonly name: string; readonly about: string } => {
  if (!isSheet(slug)) throw new RangeError(`No sheet "${slug}"; there are ${SHEETS.map((known) => known || '(the kit)').join(', ')}.`);
  return SHEET_TEXTS[language][slug === '' ? 'kit' : slug];
};

/** The name of a sheet. */
export const sheetName = (slug: string, language: Language): string => sheetTexts(slug, language).name;
