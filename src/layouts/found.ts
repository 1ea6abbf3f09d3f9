/** What can be found in this book, and its index: both editions have the same, and it is made once. */
import { searchDocuments, searchIndexScript } from '../exports/index.ts';
import { book } from './book.ts';
import { kitPath } from './links.ts';

export const documents = searchDocuments(book, kitPath);
export const indexScript = searchIndexScript(documents);
