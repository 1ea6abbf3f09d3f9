/** Every gate at once: content read and checked, and the book computed where nothing is wrong. */
import { checkGates, loadContent, sortFindings, type Content, type Finding } from '../authoring/index.ts';
import { checkQuestions } from '../questions/index.ts';
import { compileBook, conditionsOf, VOCABULARY, type Book } from '../sheets/index.ts';

/** All findings about a content folder, in the order of files and places; none if it may be published. */
export async function checkContent(folder: string): Promise<{ content: Content | undefined; findings: readonly Finding[] }> {
  const { content, findings } = await loadContent(folder, VOCABULARY);
  if (content === undefined || findings.length > 0) return { content, findings };
  const questions = [...content.kits.values()].flatMap((kit) => checkQuestions(content, kit, conditionsOf(content, kit)));
  return { content, findings: sortFindings([...checkGates(content), ...questions]) };
}

/** The book of a content folder, or what stops it. */
export async function readBook(folder: string): Promise<{ book: Book } | { findings: readonly Finding[] }> {
  const { content, findings } = await checkContent(folder);
  if (content === undefined || findings.length > 0) return { findings };
  return { book: compileBook(content) };
}
