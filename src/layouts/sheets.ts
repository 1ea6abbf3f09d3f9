/** The sheets of a kit in the order of its title block. */

export interface SheetName {
  /** Folder of the sheet; the kit's own page has none. */
  readonly slug: string;
  readonly name: string;
  /** One line for the kit's page. */
  readonly about: string;
}

export const SHEETS = [
  { slug: '', name: 'Kit', about: 'What it shows, what it needs.' },
  { slug: 'run', name: 'Run sheet', about: 'Preparation, then every step at its minute, beside gauge, thermometer and what to look for.' },
  { slug: 'student', name: 'Student sheet', about: 'Predict, observe, explain. Two printed pages.' },
  { slug: 'background', name: 'Background', about: 'The science, with its formulas and figures.' },
  { slug: 'numbers', name: 'Numbers', about: 'Every table and figure, with its conditions, its formula and its sources.' },
  { slug: 'questions', name: 'Questions', about: 'By level, for the class or for a paper.' },
  { slug: 'safety', name: 'Safety', about: 'Hazards, controls, what to do if; a form to sign.' },
  { slug: 'board', name: 'Board', about: 'For the projector: one step or question at a time, the prediction before the number.' },
  { slug: 'readings', name: 'Readings', about: 'The class’s own readings against the model: enter, paste or load them.' },
  { slug: 'booklet', name: 'Booklet', about: 'The whole kit in one document, to print.' },
] as const satisfies readonly SheetName[];

export type SheetSlug = (typeof SHEETS)[number]['slug'];

/** The name of a sheet. Throws RangeError for one that no kit has. */
export const sheetName = (slug: string): string => {
  const sheet = SHEETS.find((candidate) => candidate.slug === slug);
  if (!sheet) throw new RangeError(`No sheet "${slug}"; there are ${SHEETS.map((known) => known.slug || '(the kit)').join(', ')}.`);
  return sheet.name;
};
