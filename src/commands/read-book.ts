/** Every gate at once: content read and checked, and the book computed where nothing is wrong. */
import { checkGates, loadFolder, readFolder, sortFindings, type Content, type Finding, type Folder, type Loaded } from '../authoring/index.ts';
import { checkQuestions } from '../questions/index.ts';
import { compileBook, conditionsOf, VOCABULARY, type Book } from '../sheets/index.ts';
import { inParts, withCrew, type Crew } from './crew.ts';

export interface CheckedContent {
  /** undefined where it cannot be read */
  readonly content: Content | undefined;
  readonly findings: readonly Finding[];
}

/** Files from which on a crew is done sooner: those of seventy kits. */
const MANY_FILES = 500;

/** All findings about a content folder, in the order of files and places; none if it may be published. */
export async function checkContent(directory: string): Promise<CheckedContent> {
  const folder = await readFolder(directory);
  return withCrew(isLarge(folder), (crew) => checkWith(crew, folder));
}

/**
 * The same of a folder that was read.
 * @param only the kit to pass the gates; all unless given
 */
export const checkFolder = (folder: Folder, only?: string): CheckedContent => checkLoaded(loadFolder(folder, VOCABULARY), only);

/** The book of a content folder, or what stops it. */
export async function readBook(directory: string): Promise<{ book: Book } | { findings: readonly Finding[] }> {
  const folder = await readFolder(directory);
  return withCrew(isLarge(folder), async (crew) => {
    const { content, findings } = await checkWith(crew, folder);
    if (content === undefined || findings.length > 0) return { findings };
    const { locate: _, ...plain } = content;
    const parts = inParts([...content.kits], crew.parts).map((kits) => ({ ...plain, kits: new Map(kits) }));
    return { book: compileBook(content, await crew.work('compile', parts)) };
  });
}

const isLarge = ({ files }: Folder): boolean => files.length >= MANY_FILES;

async function checkWith(crew: Crew, folder: Folder): Promise<CheckedContent> {
  const read = await crew.work('read', inParts(folder.files, crew.parts));
  return checkLoaded(loadFolder(folder, VOCABULARY, read.flat()));
}

function checkLoaded({ content: all, findings }: Loaded, only?: string): CheckedContent {
  if (all === undefined || findings.length > 0) return { content: all, findings };
  const content = only === undefined ? all : { ...all, kits: new Map([...all.kits].filter(([name]) => name === only)) };
  const questions = [...content.kits.values()].flatMap((kit) => checkQuestions(content, kit, conditionsOf(content, kit)));
  return { content, findings: sortFindings([...checkGates(content), ...questions]) };
}
