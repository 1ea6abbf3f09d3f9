/** For all tests of finished builds: begins with the first builds while other tests run, serves that of the project's own content, and starts a browser. */
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { staticServer } from '../../src/commands/static-server.ts';
import { sharedBuild } from './builds.ts';
import { shareBrowser } from './chromium.ts';
import { newFolder, removeFolder } from './folders.ts';

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
    /** Folder of the builds that are shared; see `sharedBuild`. */
    builds: string;
    /** The project's own content, public and for teachers; complete as soon as its build is. */
    served: readonly ServedFolder[];
    /** Address of a browser that all of them look at pages in. */
    browser: string;
  }
}

const DEEP = '/a/b/';

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const builds = newFolder();
  // Who needs one that failed here builds it again and tells why.
  const building = sharedBuild(builds, 'own').then(() => sharedBuild(builds, 'highland')).catch(() => undefined);
  const closing: (() => void)[] = [];
  const serve = async (folder: string, base: string): Promise<string> => {
    const { server } = staticServer(folder, { base });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    closing.push(() => server.close().closeAllConnections());
    return `http://127.0.0.1:${(server.address() as AddressInfo).port}${base}`;
  };
  const served: ServedFolder[] = [];
  for (const [name, folder] of [['public', join(builds, 'own')], ['teachers', join(builds, 'own-teachers')]] as const) {
    served.push({ name, folder, address: await serve(folder, '/'), deepAddress: await serve(folder, DEEP) });
  }
  const browser = await shareBrowser();
  project.provide('browser', browser.wsEndpoint());
  project.provide('builds', builds);
  project.provide('served', served);
  return async () => {
    await browser.close();
    closing.forEach((close) => close());
    await building;
    await removeFolder(builds);
  };
}
