/** Makes the site installable and keeps what is opened, where the browser can. From a disk it does nothing: there all files are at hand already. */
import { languageOfPage } from './page-language.ts';
import { OFFLINE_TEXTS } from '../texts/index.ts';
import type { KeepAnswer, KeepRequest } from '../exports/offline-edition.ts';

const script = document.currentScript;

if (script instanceof HTMLScriptElement && 'serviceWorker' in navigator && location.protocol.startsWith('http')) {
  // Linked here and not in the page: a browser that reads a page from a disk may not load it, and would say so.
  const manifest = document.createElement('link');
  manifest.rel = 'manifest';
  manifest.href = new URL('manifest.webmanifest', script.src).href;
  document.head.append(manifest);
  const worker = new URL('service-worker.js', script.src);
  // After the page itself, which must not wait for it.
  addEventListener('load', () => void keepThisPage(worker).catch(() => undefined));
}

/** A private window or a policy of the device may forbid it; the site is then as it is without. */
async function keepThisPage(worker: URL): Promise<void> {
  const { serviceWorker } = navigator;
  const page = location.href.replace(/#.*$/, '');
  const ask = (): void => serviceWorker.controller?.postMessage({ keep: page } satisfies KeepRequest);
  serviceWorker.addEventListener('message', ({ data }: MessageEvent<KeepAnswer>) => {
    if (data.page === page && data.kept) sayKept();
  });
  // A new edition has taken over: it keeps this page as well.
  serviceWorker.addEventListener('controllerchange', ask);
  await serviceWorker.register(worker, { updateViaCache: 'none' });
  ask();
}

function sayKept(): void {
  const root = document.documentElement;
  if (root.dataset.offline === 'kept') return;
  root.dataset.offline = 'kept';
  document.querySelector('.foot p')?.append(` ${OFFLINE_TEXTS[languageOfPage()].kept}`);
}
