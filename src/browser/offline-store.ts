/** The files of one edition on the device: each verified by its digest before it is kept. */
import { digestOf, KIT_LIST, type Digests, type Edition } from '../exports/offline-edition.ts';

/** Files fetched at a time. */
const AT_ONCE = 6;

export interface Store {
  /** Brings every file that all readers keep. Rejects if one is not of this edition. */
  readonly keepShell: () => Promise<void>;
  /** Brings every file of a kit and remembers that it was opened. Rejects if one is not of this edition. */
  readonly keepKit: (folder: string) => Promise<void>;
  /** Kits that were opened on this device and that this edition has. */
  readonly opened: () => Promise<string[]>;
  readonly find: (path: string) => Promise<Response | undefined>;
  /** Ends all other editions. */
  readonly endOthers: () => Promise<void>;
}

/**
 * @param edition - what the build made
 * @param root - address of the site's root, ends in `/`
 */
export function storeOf(edition: Edition, root: string): Store {
  const family = `lapsebook ${new URL(root).pathname} `;
  const name = `${family}${edition.digest}`;
  const memory = `${family}opened`;
  const addressOf = (path: string): string => new URL(path, root).href;

  const keep = async (path: string, digest: string): Promise<Response> => {
    const cache = await caches.open(name);
    const kept = await cache.match(addressOf(path));
    if (kept !== undefined) return kept;
    const found = (await fromOlderEdition(path, digest)) ?? (await fromNetwork(path, digest));
    await cache.put(addressOf(path), found.clone());
    return found;
  };

  const fromOlderEdition = async (path: string, digest: string): Promise<Response | undefined> => {
    for (const other of await caches.keys()) {
      if (!other.startsWith(family) || other === name) continue;
      const old = await (await caches.open(other)).match(addressOf(path));
      if (old !== undefined && (await digestOf(await old.clone().arrayBuffer())) === digest) return old;
    }
    return undefined;
  };

  const fromNetwork = async (path: string, digest: string): Promise<Response> => {
    const answer = await fetch(addressOf(path), { cache: 'no-cache' });
    const bytes = await answer.arrayBuffer();
    if (!answer.ok || (await digestOf(bytes)) !== digest) throw new Error(`${path} on the server is not of this edition`);
    // A new answer: one that was redirected may not be shown as a page.
    return new Response(bytes, { headers: { 'content-type': answer.headers.get('content-type') ?? 'application/octet-stream' } });
  };

  const keepAll = async (files: Digests): Promise<void> => {
    const waiting = Object.entries(files);
    const work = async (): Promise<void> => {
      for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) await keep(...next);
    };
    await Promise.all(Array.from({ length: AT_ONCE }, work));
  };

  return {
    keepShell: () => keepAll(edition.shell),
    keepKit: async (folder) => {
      const digest = edition.kits[folder];
      if (digest === undefined) throw new Error(`${folder} is no kit of this edition`);
      await (await caches.open(memory)).put(addressOf(folder), new Response(''));
      const list = await keep(`${folder}${KIT_LIST}`, digest);
      await keepAll((await list.json()) as Digests);
    },
    opened: async () => {
      const addresses = await (await caches.open(memory)).keys();
      return addresses.map(({ url }) => url.slice(root.length)).filter((folder) => folder in edition.kits);
    },
    find: async (path) => (await caches.open(name)).match(addressOf(path)),
    endOthers: async () => {
      const others = (await caches.keys()).filter((other) => other.startsWith(family) && other !== name && other !== memory);
      await Promise.all(others.map((other) => caches.delete(other)));
    },
  };
}
