/** Sheets: checked content -> a book of computed HTML. */
export type { Book, Condition, HazardView, KitView, MisconceptionView, OptionView, QuestionView, Reading, SheetHtml, SourceView, StepView, TableView } from './book.ts';
export { compileBook, DRAFT } from './compile.ts';
export { COMPONENTS, VOCABULARY } from './components/index.ts';
export { conditionsOf } from './kit-conditions.ts';
