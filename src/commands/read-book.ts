/** Every gate at once: content read and checked, and the book computed where nothing is wrong. */
import { checkGates, loadFolder, readFolder, sortFindings, type Content, type Finding, type Folder } from '../authoring/index.ts';
import { checkQuestions } from '../questions/index.ts';
import { compileBook, conditionsOf, VOCABULARY, type Book } from '../sheets/index.ts';

/** All findings about a content folder, in the order of files and places; none if it may be published. */
export const checkContent = async (folder: string): Promise<CheckedContent> => checkFolder(await readFolder(folder));

export interface CheckedContent {
  /** undefined where it cannot be read */
  readonly content: Content | undefined;
  readonly findings: readonly Finding[];
}

/**
 * The same of a folder that was read.
 * @param only the kit to pass the gates; all unless given
 */
export function checkFolder(folder: Folder, only?: string): CheckedContent {
  const { content: all, findings } = loadFolder(folder, VOCABULARY);
  if (all === undefined || findings.length > 0) return { content: all, findings };
  const content = only === undefined ? all : { ...all, kits: new Map([...all.kits].filter(([name]) => name === only)) };
  const questions = [...content.kits.values()].flatMap((kit) => checkQuestions(content, kit, conditionsOf(content, kit)));
  return { content, findings: sortFindings([...checkGates(content), ...questions]) };
}

/** The book of a content folder, or what stops it. */
export async function readBook(folder: string): Promise<{ book: Book } | { findings: readonly Finding[] }> {
  const { content, findings } = await checkContent(folder);
  if (content === undefined || findings.length > 0) return { findings };
  return { book: compileBook(content) };
}
