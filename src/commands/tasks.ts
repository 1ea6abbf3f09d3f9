/** Work on many things of one kind that can be done for some of them at a time, in any thread: plain data in, plain data out. */
import { readFiles, START, type Content, type ContentFile, type ReadFile } from '../authoring/index.ts';
import { compileKits, VOCABULARY, type CompiledKits } from '../sheets/index.ts';

export const TASKS = {
  /** Reads and checks files, each by itself. */
  read: (files: readonly ContentFile[]): readonly ReadFile[] => readFiles(files, VOCABULARY),
  /** Computes and draws the kits of a content; places in files, which are for findings, do not come along. */
  compile: (content: Omit<Content, 'locate'>): CompiledKits => compileKits({ ...content, locate: () => START }),
};

export type Tasks = typeof TASKS;
export type TaskName = keyof Tasks;
