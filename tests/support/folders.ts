/** Folders for one test file, and what is in a folder. */
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative, sep } from 'node:path';

/** A new empty folder. */
export const newFolder = (): string => mkdtempSync(join(tmpdir(), 'lapsebook-test-'));

export const removeFolder = (folder: string): Promise<void> => rm(folder, { recursive: true, force: true, maxRetries: 3 });

/** Paths of all files below a folder, with `/`, in order. */
export const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();

/** Every file below a folder with its bytes, in a form that can be compared. */
export const contentsOf = (folder: string): Record<string, string> => Object.fromEntries(filesBelow(folder).map((path) => [path, readFileSync(join(folder, path)).toString('base64')]));
