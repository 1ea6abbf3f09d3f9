/** Where content is read and the site written: the project's own folders, or those that the environment names. */
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

export interface Folders {
  /** Of this project. */
  readonly root: string;
  readonly content: string;
  /** The public site. */
  readonly site: string;
  /** The teachers' folder, beside the site. */
  readonly teachers: string;
}

/** Reads LAPSEBOOK_CONTENT and LAPSEBOOK_OUT; relative paths count from the working folder. */
export function foldersFrom(environment: NodeJS.ProcessEnv): Folders {
  const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[/\\]$/, '');
  const { LAPSEBOOK_CONTENT: content, LAPSEBOOK_OUT: out } = environment;
  const site = out ? resolve(out) : resolve(root, 'dist');
  return { root, content: content ? resolve(content) : resolve(root, 'content'), site, teachers: `${site}-teachers` };
}
