/** Finished builds that several test files look at, each made once. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { buildForTests } from './command.ts';
import { ROOT } from './root.ts';

const GOOD = join(ROOT, 'tests', 'content', 'good');

/** The project's own content, with its sheets as PDF; a school at 1,600 m; one that writes in Spanish. */
const BUILDS = {
  own: { content: join(ROOT, 'content'), args: ['--pdf'] },
  highland: { content: join(GOOD, 'highland'), args: [] },
  valle: { content: join(GOOD, 'valle'), args: [] },
} as const;
export type BuildName = keyof typeof BUILDS;

/**
 * The folder of a finished build; the teachers' stands beside it with `-teachers`. The first who asks builds, the others wait.
 * @param place - the folder of all of them, as provided to tests by the name `builds`
 */
export async function sharedBuild(place: string, name: BuildName): Promise<string> {
  const site = join(place, name);
  const { content, args } = BUILDS[name];
  await buildForTests(content, site, { isThere: () => existsSync(site), args });
  return site;
}
