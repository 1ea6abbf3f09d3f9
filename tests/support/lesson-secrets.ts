/** Reads, from a content folder alone, what only teachers may see. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { filesBelow } from './folders.ts';

export interface Secret {
  /** File of the content folder and what it is. */
  readonly where: string;
  /** Letters and digits of the text alone, so that markup between words does not hide it. */
  readonly letters: string;
}

interface QuestionFields {
  readonly kind: string;
  readonly options?: readonly { readonly text?: string; readonly right?: boolean; readonly why?: string }[];
  readonly items?: readonly string[];
  readonly rubric?: readonly { readonly text: string }[];
  readonly accepts?: readonly string[];
}

export interface QuestionFile extends QuestionFields {
  readonly id: string;
}

/** Shorter pieces could stand anywhere by chance. */
const LEAST_LETTERS = 16;

/** Letters and digits of a text, lower case. */
export const lettersOf = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');

/** All questions of a content folder. */
export const questionsOf = (content: string): QuestionFile[] =>
  filesBelow(content)
    .filter((path) => /^kits\/[^/]+\/questions\/[^/]+\.mdx$/.test(path))
    .map((path) => ({ id: path.replace(/^.*\/|\.mdx$/g, ''), ...frontMatter(readFileSync(join(content, path), 'utf8')) }));

/** Every text that no public file may hold: inside `<TeacherOnly>`, reasons, rubrics. */
export function secretsOf(content: string): Secret[] {
  const lessons = filesBelow(content).filter((path) => path.endsWith('.mdx'));
  // A phrase that the lessons also say to everybody is no secret.
  const open = lettersOf(lessons.map((path) => publicPart(readFileSync(join(content, path), 'utf8'))).join('\n'));
  return lessons.flatMap((path) => {
    const source = readFileSync(join(content, path), 'utf8');
    const { options = [], rubric = [] } = path.includes('/questions/') ? frontMatter(source) : ({} as Partial<QuestionFields>);
    return [
      ...teacherBlocks(source).flatMap(pieces).map((letters) => ({ where: `${path}: TeacherOnly`, letters })),
      ...[...options.flatMap(({ why }) => why ?? []), ...rubric.map(({ text }) => text)].map(lettersOf).map((letters) => ({ where: `${path}: reason`, letters })),
    ].filter(({ letters }) => letters.length >= LEAST_LETTERS && !open.includes(letters));
  });
}

const frontMatter = (source: string): QuestionFields => parse(/^---\n([\s\S]*?)\n---/.exec(source)?.[1] ?? '{}') as QuestionFields;

/** A lesson without front matter and without what is for teachers. */
const publicPart = (source: string): string => source.replace(/^---\n[\s\S]*?\n---/, '').replace(/<TeacherOnly>[\s\S]*?<\/TeacherOnly>/g, '');

const teacherBlocks = (source: string): string[] => [...source.matchAll(/<TeacherOnly>([\s\S]*?)<\/TeacherOnly>/g)].map((match) => match[1] ?? '');

/** The words between components, formulas, links and table cells. */
const pieces = (block: string): string[] => block.split(/<[^>]*>|\$[^$]*\$|\]\([^)]*\)|[|\n]/).map(lettersOf);
