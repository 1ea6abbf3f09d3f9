/** What can be found in this book, and its index: both editions have the same, and it is made once. */
import { searchDocuments, searchIndexScript } from '../exports/index.ts';
import { book } from './book.ts';

export const documents = searchDocuments(book);
export const indexScript = searchIndexScript(documents);
