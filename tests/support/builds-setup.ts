/** Builds two contents once for all tests that read a finished build: the project's own and that of a school at 1,600 m. */
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { buildForTests } from './command.ts';
import { newFolder, removeFolder } from './folders.ts';
import { ROOT } from './root.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Folders of one finished build of the project's content and of the highland content; the teachers' stand beside with `-teachers`. */
    builds: { readonly own: string; readonly highland: string };
  }
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const place = newFolder();
  const builds = { own: join(place, 'own'), highland: join(place, 'highland') };
  await buildForTests(join(ROOT, 'content'), builds.own);
  await buildForTests(join(ROOT, 'tests', 'content', 'good', 'highland'), builds.highland);
  project.provide('builds', builds);
  return () => removeFolder(place);
}
