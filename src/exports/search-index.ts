/** The search index as a classic script: a page on a disk can load it, which it could not do with a data file. */
import MiniSearch from 'minisearch';
import { INDEX_NAME, INDEX_OPTIONS, type SearchDocument } from './search-options.ts';

/** Beyond so many documents only titles are indexed: a phone must still load it. */
const MOST_IN_FULL = 2000;

export function searchIndexScript(documents: readonly SearchDocument[]): string {
  const index = new MiniSearch<SearchDocument>(INDEX_OPTIONS);
  index.addAll(documents.length <= MOST_IN_FULL ? documents : documents.map((document) => ({ ...document, text: '' })));
  // Parsing JSON is faster than parsing the same as a program.
  return `window.${INDEX_NAME}=JSON.parse(${JSON.stringify(JSON.stringify(index))});\n`;
}
