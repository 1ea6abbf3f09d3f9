/** Where content is read and the site written: the project's own folders, or those that the environment names. */
import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { UsageError } from './run-command.ts';

export interface Folders {
  /** Of this project. */
  readonly root: string;
  readonly content: string;
  /** The public site. */
  readonly site: string;
  /** The teachers' folder, beside the site. */
  readonly teachers: string;
}

/**
 * Reads LAPSEBOOK_CONTENT and LAPSEBOOK_OUT; relative paths count from the working folder.
 * @throws UsageError if there is no content folder
 */
export function foldersFrom(environment: NodeJS.ProcessEnv): Folders {
  const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[/\\]$/, '');
  const { LAPSEBOOK_CONTENT: named, LAPSEBOOK_OUT: out } = environment;
  const content = named ? resolve(named) : resolve(root, 'content');
  if (statSync(content, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new UsageError(`There is no content folder ${content}. Name one that holds site.yaml in LAPSEBOOK_CONTENT.`);
  }
  const site = out ? resolve(out) : resolve(root, 'dist');
  return { root, content, site, teachers: `${site}-teachers` };
}
