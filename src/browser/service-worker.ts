/**
 * Keeps what was opened for use without a network. A new edition is brought whole, each file verified,
 * before it takes over; until then the old one stays whole. A page shown from one edition gets its
 * styles and scripts from that edition alone.
 */
import type { Edition, KeepAnswer, KeepRequest } from '../exports/offline-edition.ts';
import { NOT_HERE_TEXTS, type Language } from '../texts/index.ts';
import { storeOf } from './offline-store.ts';

/** Put in by the build. */
declare const EDITION: Edition;
/** Of the site. */
declare const LANGUAGE: Language;

/** The part of a service worker's surroundings that is used here; the page's own type library does not know it. */
interface Lasting extends Event {
  readonly waitUntil: (work: Promise<unknown>) => void;
}
interface Asked extends Lasting {
  readonly request: Request;
  readonly clientId: string;
  readonly resultingClientId: string;
  readonly respondWith: (answer: Promise<Response>) => void;
}
interface Told extends Lasting {
  readonly data: KeepRequest;
  readonly source: { readonly postMessage: (answer: KeepAnswer) => void } | null;
}
interface Worker {
  readonly registration: { readonly scope: string; readonly update: () => Promise<unknown> };
  readonly clients: { readonly claim: () => Promise<void> };
  readonly skipWaiting: () => Promise<void>;
  readonly addEventListener: ((type: 'install' | 'activate', listener: (event: Lasting) => void) => void) &
    ((type: 'fetch', listener: (event: Asked) => void) => void) & ((type: 'message', listener: (event: Told) => void) => void);
}

const worker = self as unknown as Worker;
const root = worker.registration.scope;
const store = storeOf(EDITION, root);
/** A slow network is given up for a page that is on the device, ms. */
const PATIENCE = 4000;
/** Open pages: whether they show this edition. */
const pages = new Map<string, Promise<boolean>>();

worker.addEventListener('install', (event) => {
  event.waitUntil(bringEdition().then(() => worker.skipWaiting()));
});
worker.addEventListener('activate', (event) => {
  event.waitUntil(store.endOthers().then(() => worker.clients.claim()));
});
worker.addEventListener('message', (event) => {
  event.waitUntil(keepForPage(event));
});
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(root)) return;
  const path = pathOf(request.url);
  if (request.mode === 'navigate') event.respondWith(page(event, path));
  else if (path.startsWith('_astro/')) event.respondWith(store.find(path).then((kept) => kept ?? fetch(request)));
  else if (path in EDITION.shell || kitOf(path) !== undefined) event.respondWith(part(event, path));
});

async function bringEdition(): Promise<void> {
  await store.keepShell();
  for (const folder of await store.opened()) await store.keepKit(folder);
}

async function keepForPage({ data, source }: Told): Promise<void> {
  const folder = kitOf(pathOf(data.keep));
  let kept = true;
  try {
    await store.keepShell();
    if (folder !== undefined) await store.keepKit(folder);
  } catch {
    kept = false;
    // The server has another edition: its own worker will bring it whole. Without a network there is nothing to look for.
    await worker.registration.update().catch(() => undefined);
  }
  source?.postMessage({ page: data.keep, kept });
}

/** A page: from the network, else from the device; never the one with the parts of the other. */
async function page({ request, resultingClientId }: Asked, path: string): Promise<Response> {
  const kept = await store.find(path);
  const answer = await fromNetwork(request, kept === undefined ? undefined : PATIENCE);
  if (answer === undefined || answer.status >= 500 && kept !== undefined) {
    pages.set(resultingClientId, Promise.resolve(true));
    return kept ?? notHere(path);
  }
  pages.set(resultingClientId, kept === undefined ? Promise.resolve(false) : sameBytes(answer.clone(), kept));
  return answer;
}

/** A part of a page, from where the page itself came. */
async function part({ request, clientId }: Asked, path: string): Promise<Response> {
  const ours = await pages.get(clientId);
  if (ours === false) return fetch(request);
  const kept = await store.find(path);
  if (ours === true && kept !== undefined) return kept;
  const answer = await fromNetwork(request, undefined);
  return answer ?? kept ?? Response.error();
}

async function fromNetwork(request: Request, patience: number | undefined): Promise<Response | undefined> {
  const answer = fetch(request).catch(() => undefined);
  if (patience === undefined) return answer;
  return Promise.race([answer, new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), patience))]);
}

async function sameBytes(one: Response, other: Response): Promise<boolean> {
  const [a, b] = await Promise.all([one.text(), other.clone().text()]);
  return a === b;
}

/** From the site's root, with the name of the file. */
function pathOf(address: string): string {
  const path = decodeURIComponent(new URL(address).pathname.slice(new URL(root).pathname.length));
  return path === '' || path.endsWith('/') ? `${path}index.html` : path;
}

/** The folder of the kit that a path belongs to. */
function kitOf(path: string): string | undefined {
  const [folder = '', title = ''] = /^(kits\/[^/]+\/)(?:[^/]+\/)?/.exec(path) ?? [];
  return folder in EDITION.kits ? folder : EDITION.shown[title];
}

function notHere(path: string): Response {
  const folder = `${path}/`;
  if (`${folder}index.html` in EDITION.shell || folder in EDITION.kits) return Response.redirect(new URL(folder, root).href);
  const { title, words, kits } = NOT_HERE_TEXTS[LANGUAGE];
  const text = `<!doctype html><html lang="${LANGUAGE}"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${title}</title><h1>${title}</h1><p>${words} <a href="${root}index.html">${kits}</a></p></html>`;
  return new Response(text, { status: 503, headers: { 'content-type': 'text/html; charset=utf-8' } });
}
