/** Every gate at once: content read and checked, and the book computed where nothing is wrong. */
import { checkGates, loadFolder, readFolder, sortFindings, type Content, type Finding, type Folder, type LoadedFile } from '../authoring/index.ts';
import { historiesOf, publishedKits, readEditions, type Edition } from '../editions/index.ts';
import { checkQuestions } from '../questions/index.ts';
import { compileBook, conditionsOf, VOCABULARY, type Book } from '../sheets/index.ts';

/** All findings about a content folder and its published editions, in the order of files and places; none if it may be published. */
export async function checkContent(folder: string): Promise<CheckedContent & { readonly editions: readonly Edition[] }> {
  const working = checkFolder(await readFolder(folder));
  const { editions, findings } = await readEditions(folder, VOCABULARY);
  return { ...working, editions, findings: sortFindings([...working.findings, ...findings]) };
}

export interface CheckedContent {
  /** undefined where it cannot be read */
  readonly content: Content | undefined;
  readonly files: readonly LoadedFile[];
  readonly findings: readonly Finding[];
}

/**
 * The same of a folder that was read, without its editions.
 * @param only the kit to pass the gates; all unless given
 */
export function checkFolder(folder: Folder, only?: string): CheckedContent {
  const { content: all, findings, files } = loadFolder(folder, VOCABULARY);
  if (all === undefined || findings.length > 0) return { content: all, findings, files };
  const content = only === undefined ? all : { ...all, kits: new Map([...all.kits].filter(([name]) => name === only)) };
  const questions = [...content.kits.values()].flatMap((kit) => checkQuestions(content, kit, conditionsOf(content, kit)));
  return { content, findings: sortFindings([...checkGates(content), ...questions]), files };
}

/** The book of a content folder, or what stops it. */
export async function readBook(folder: string): Promise<{ book: Book } | { findings: readonly Finding[] }> {
  const { content, editions, findings } = await checkContent(folder);
  if (content === undefined || findings.length > 0) return { findings };
  const book = compileBook(content, publishedKits(editions));
  return { book: { ...book, histories: historiesOf(book, content, editions) } };
}
