/** The project's own book, computed once for the tests of its other forms. */
import { join } from 'node:path';
import { readBook } from '../../src/commands/read-book.ts';
import type { Book } from '../../src/sheets/index.ts';
import { ROOT } from '../support/root.ts';

export async function ownBook(): Promise<Book> {
  const result = await readBook(join(ROOT, 'content'));
  if ('findings' in result) throw new Error('The content has findings.');
  return result.book;
}
