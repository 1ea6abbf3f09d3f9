/** How words are found: the same where the index is made and where it is asked. Free of anything that only one of the two has. */
import type { Options, SearchOptions } from 'minisearch';

/** One thing to be found. */
export interface SearchDocument {
  readonly id: number;
  readonly kind: 'kit' | 'table' | 'question' | 'hazard' | 'source';
  readonly title: string;
  /** What else it says; only indexed, never shown. */
  readonly text: string;
  /** Of its title and its place, where it is another than the site's. */
  readonly lang?: string;
  /** Where it belongs: the kit's title. */
  readonly place: string;
  /** From the site's root: "kits/cloud/draft/questions/index.html#question-q1". */
  readonly path: string;
}

/** The name under which the index script leaves its index. */
export const INDEX_NAME = 'lapsebookSearchIndex';

const ACCENTS = /[\u0300-\u036f]/g;

export const INDEX_OPTIONS: Options<SearchDocument> = {
  fields: ['title', 'text', 'place'],
  storeFields: ['kind', 'title', 'lang', 'place', 'path'],
  processTerm: (term) => term.normalize('NFD').replace(ACCENTS, '').toLowerCase() || null,
};

/** Letters from which on a word may be misspelled. */
const LONG_WORD = 5;

export const SEARCH_OPTIONS: SearchOptions = {
  boost: { title: 3, place: 0.5 },
  prefix: true,
  fuzzy: (term) => (term.length >= LONG_WORD ? 0.2 : false),
  combineWith: 'AND',
};
