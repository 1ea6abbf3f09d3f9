/** Sheets: checked content → a book of computed HTML. */
export { changesPath, fullAddress, kitPath, permanentAddress, titlePath } from './addresses.ts';
export type { Book, ChangeView, HazardView, HistoryView, KitView, NoticeView, QuestionView, SourceView, WordsView } from './book.ts';
export { compileBook, type PublishedKit } from './compile.ts';
export { COMPONENTS, stepsOf, VOCABULARY } from './components/index.ts';
export { conditionsOf } from './kit-conditions.ts';
export { rowsAskedBy } from './html/ask.ts';
export { plainText } from './html/plain-text.ts';
export { escapeHtml } from './html/text.ts';
export { isWithdrawn, noticesOf, windowTitle } from './kit-edition.ts';
export { languageOf } from './kit-view.ts';
export { titlesOf } from './titles.ts';
