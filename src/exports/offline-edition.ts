/** What a build tells the service worker: every file of the site by its digest, so that no edition is ever stored in part or mixed with another. */

/** Paths from the site's root with the digests of what stands there. */
export type Digests = Readonly<Record<string, string>>;

export interface Edition {
  /** Of everything below. */
  readonly digest: string;
  /** Files that every reader keeps. */
  readonly shell: Digests;
  /** Kits by their folder, "kits/cloud/draft/": the digest of the list of their files. */
  readonly kits: Digests;
  /** By the folder of a kit's title, "kits/cloud/": that of the edition that is shown there. */
  readonly shown: Readonly<Record<string, string>>;
}

/** The list of a kit's files, in its folder. */
export const KIT_LIST = 'offline.json';

/** Hexadecimal digits kept of a SHA-256: 80 bits tell files apart, and a list stays short. */
const DIGITS = 20;

/** The digest of a file's bytes. */
export async function digestOf(bytes: BufferSource): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('').slice(0, DIGITS);
}

/** What a page asks its worker, and what it hears. */
export interface KeepRequest {
  readonly keep: string;
}

export interface KeepAnswer {
  /** The page that asked. */
  readonly page: string;
  readonly kept: boolean;
}
