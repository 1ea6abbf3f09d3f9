/** The pages of the guide, in reading order. */
export interface GuidePage {
  /** Folder below contribute/; the first page has none. */
  readonly slug: string;
  readonly name: string;
  readonly title: string;
  readonly description: string;
}

export const GUIDE_PAGES = [
  { slug: '', name: 'First kit', title: 'Write a kit', description: 'A first lesson kit in ten minutes: make it, change it, break it on purpose, mend it.' },
  { slug: 'text', name: 'Text and tables', title: 'Lesson text', description: 'Every component and every kind of table, each as source and as the page shows it.' },
  { slug: 'files', name: 'Files and units', title: 'Files, fields, units, quantities', description: 'What stands in which file, every field, every unit, every quantity that can be computed.' },
  { slug: 'writing', name: 'Writing well', title: 'Writing well', description: 'For students who find reading hard; questions; safety; how a review works.' },
  { slug: 'editions', name: 'Editions', title: 'Publish an edition', description: 'What stays true of a print in a drawer: when to publish, how large a step, what to do when something is wrong.' },
  { slug: 'school', name: 'Your school', title: 'Your school’s own lessons', description: 'Lessons in a repository of your own, checked and built by your own machine.' },
  { slug: 'findings', name: 'Findings', title: 'What the check can find', description: 'Every finding: what it means, what leads to it, what cures it.' },
] as const satisfies readonly GuidePage[];

export type GuideSlug = (typeof GUIDE_PAGES)[number]['slug'];

/** Site path of a page of the guide. */
export const guidePath = (slug: string): string => `/contribute/${slug === '' ? '' : `${slug}/`}`;
