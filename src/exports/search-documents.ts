/** What can be found in a book: kits, tables, questions without their answers, hazards, sources. */
import { kitPath, plainText, titlesOf, type Book, type KitView } from '../sheets/index.ts';
import { SEARCH_TEXTS, type Language } from '../texts/index.ts';
import type { SearchDocument } from './search-options.ts';

/** Longest title that a list shows, in letters. */
const TITLE_LENGTH = 110;

/** Everything that can be found, in the order of the book; of each kit in the edition that is shown, so that nothing is found twice. */
export function searchDocuments(book: Book): SearchDocument[] {
  const found: Omit<SearchDocument, 'id'>[] = [...titlesOf(book.kits).flatMap(({ shown }) => ofKit(shown, book.language)), ...ofBook(book)];
  return found.map((document, id) => ({ id, ...document }));
}

function ofKit(kit: KitView, language: Language): Omit<SearchDocument, 'id'>[] {
  const said = SEARCH_TEXTS[kit.language];
  const page = (sheet: string, anchor = ''): string => `${kitPath(kit, sheet).slice(1)}index.html${anchor}`;
  const place = kit.draft ? said.draftOf(kit.title) : `${kit.title} ${kit.version}`;
  const found: Omit<SearchDocument, 'id'>[] = [
    { kind: 'kit', title: kit.title, text: [kit.summary, ...kit.objectives.map(({ text }) => text), ...kit.standards.map(({ code }) => code)].join(' '), place: kit.draft ? said.draft : kit.version, path: page('') },
    ...kit.tables.map(({ id, sheet, title }): Omit<SearchDocument, 'id'> => ({ kind: 'table', title, text: '', place, path: page('numbers', `#table-${sheet}-${id}`) })),
    ...kit.questions.map(({ id, stem }): Omit<SearchDocument, 'id'> => ({ kind: 'question', title: shortened(plainText(stem)), text: plainText(stem), place, path: page('questions', `#question-${id}`) })),
  ];
  return kit.language === language ? found : found.map((one) => ({ ...one, lang: kit.language }));
}

function ofBook({ hazards, sources }: Book): Omit<SearchDocument, 'id'>[] {
  return [
    ...hazards.map(({ id, title, signalWord, html }): Omit<SearchDocument, 'id'> => ({ kind: 'hazard', title, text: plainText(html), place: signalWord, path: `safety/index.html#hazard-${id}` })),
    ...sources.map(({ id, html }): Omit<SearchDocument, 'id'> => ({ kind: 'source', title: plainText(html), text: '', place: '', path: `sources/index.html#source-${id}` })),
  ];
}

/** Ends at a word. */
function shortened(text: string): string {
  return text.length <= TITLE_LENGTH ? text : `${text.slice(0, TITLE_LENGTH).replace(/\s\S*$/, '')} …`;
}
