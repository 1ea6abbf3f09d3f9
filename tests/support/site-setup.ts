/** For all tests of finished builds: builds two contents once, the project's own and that of a school at 1,600 m, serves the first, and starts a browser. */
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { staticServer } from '../../src/commands/static-server.ts';
import { shareBrowser } from './chromium.ts';
import { buildForTests } from './command.ts';
import { newFolder, removeFolder } from './folders.ts';
import { ROOT } from './root.ts';

/** One of the two folders that a build makes. */
export interface ServedFolder {
  readonly name: 'public' | 'teachers';
  readonly folder: string;
  /** Served at the root of an origin, ends in `/`. */
  readonly address: string;
  /** Served deep in a path of another origin, ends in `/`. */
  readonly deepAddress: string;
}

declare module 'vitest' {
  export interface ProvidedContext {
    /** Folders of one finished build of the project's content and of the highland content; the teachers' stand beside with `-teachers`. */
    builds: { readonly own: string; readonly highland: string };
    /** The first of them, public and for teachers. */
    served: readonly ServedFolder[];
    /** Address of a browser that all of them look at pages in. */
    browser: string;
  }
}

const DEEP = '/a/b/';

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const place = newFolder();
  const builds = { own: join(place, 'own'), highland: join(place, 'highland') };
  await buildForTests(join(ROOT, 'content'), builds.own);
  await buildForTests(join(ROOT, 'tests', 'content', 'good', 'highland'), builds.highland);
  const closing: (() => void)[] = [];
  const serve = async (folder: string, base: string): Promise<string> => {
    const { server } = staticServer(folder, { base });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    closing.push(() => server.close().closeAllConnections());
    return `http://127.0.0.1:${(server.address() as AddressInfo).port}${base}`;
  };
  const served: ServedFolder[] = [];
  for (const [name, folder] of [['public', builds.own], ['teachers', `${builds.own}-teachers`]] as const) {
    served.push({ name, folder, address: await serve(folder, '/'), deepAddress: await serve(folder, DEEP) });
  }
  const { browser, endpoint } = await shareBrowser();
  project.provide('browser', endpoint);
  project.provide('builds', builds);
  project.provide('served', served);
  return async () => {
    await browser.close();
    closing.forEach((close) => close());
    await removeFolder(place);
  };
}
