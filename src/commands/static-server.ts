/** A plain static server for looking at a built site, which tells open pages when it changes. */
import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { createServer, type Server, type ServerResponse } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { Readable } from 'node:stream';
import { createGzip } from 'node:zlib';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8', '.css': 'text/css; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json', '.svg': 'image/svg+xml', '.png': 'image/png', '.woff2': 'font/woff2', '.pdf': 'application/pdf', '.txt': 'text/plain; charset=utf-8', '.xml': 'application/xml',
};
/** What static hosts send compressed. */
const COMPRESSIBLE = /^text\/|json|xml/;

const NEWS = '/.news';
const NEWS_SCRIPT = '/.news.js';
/** Shows findings over the page, and loads the page again after a good build. Only while serving; never in the site itself. */
const NEWS_SCRIPT_TEXT = `new EventSource('${NEWS}').onmessage = ({ data }) => {
  const { findings } = JSON.parse(data);
  document.getElementById('news')?.remove();
  if (findings === undefined) { location.reload(); return; }
  const note = document.createElement('pre');
  note.id = 'news';
  note.setAttribute('role', 'status');
  note.textContent = findings;
  document.body.prepend(note);
};
`;

export interface StaticServer {
  readonly server: Server;
  /** Open pages load again, or show the findings that stopped the build. */
  readonly announce: (news: { readonly findings?: string }) => void;
}

/** Serves a folder below `base`, with the script that listens for news where `live`. */
export function staticServer(folder: string, { live = false, base = '/' } = {}): StaticServer {
  const listeners = new Set<ServerResponse>();
  const server = createServer(async (request, response) => {
    const path = pathOf(request.url);
    if (live && path === NEWS) {
      response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
      response.write('retry: 500\n\n');
      listeners.add(response);
      request.on('close', () => listeners.delete(response));
      return;
    }
    if (live && path === NEWS_SCRIPT) {
      response.writeHead(200, { 'content-type': TYPES['.js'] }).end(NEWS_SCRIPT_TEXT);
      return;
    }
    const file = path.startsWith(base) ? await fileAt(folder, path.slice(base.length)) : undefined;
    if (file === undefined) {
      response.writeHead(404, { 'content-type': TYPES['.txt'] }).end(`There is no ${path} here.\n`);
    } else if (file.redirect) {
      response.writeHead(301, { location: `${path}/` }).end();
    } else {
      const type = TYPES[extname(file.path)] ?? 'application/octet-stream';
      const isPacked = COMPRESSIBLE.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
      const body = live && file.path.endsWith('.html') ? Readable.from([listening(await readFile(file.path, 'utf8'))]) : createReadStream(file.path);
      response.writeHead(200, { 'content-type': type, 'cache-control': 'no-cache', vary: 'accept-encoding', ...(isPacked ? { 'content-encoding': 'gzip' } : {}) });
      if (isPacked) body.pipe(createGzip()).pipe(response);
      else body.pipe(response);
    }
  });
  return { server, announce: (news) => listeners.forEach((listener) => listener.write(`data: ${JSON.stringify(news)}\n\n`)) };
}

/** The page with the script that listens for news, which its policy must allow. */
const listening = (page: string): string =>
  page
    .replace(/(http-equiv="Content-Security-Policy" content=")([^"]*)"/i, (_, before: string, policy: string) => `${before}${allowing(policy)}"`)
    .replace('</head>', `<script src="${NEWS_SCRIPT}" defer></script></head>`);

function allowing(policy: string): string {
  const others = policy.split(';').map((rule) => rule.trim()).filter((rule) => rule !== '' && !/^(script|connect)-src/.test(rule));
  return [...others, "script-src 'self'", "connect-src 'self'"].join('; ');
}

/** The path that was asked for; as it stands where its escapes are broken, which finds nothing. */
function pathOf(url = '/'): string {
  const { pathname } = new URL(`http://localhost${url}`);
  try {
    return decodeURIComponent(pathname);
  } catch {
    return pathname;
  }
}

async function fileAt(folder: string, path: string): Promise<{ path: string; redirect: boolean } | undefined> {
  const inside = normalize(join('/', path));
  const found = await stat(join(folder, inside)).catch(() => undefined);
  if (found?.isDirectory() !== true) return found && { path: join(folder, inside), redirect: false };
  if (!inside.endsWith('/')) return { path: join(folder, inside), redirect: true };
  const index = join(folder, inside, 'index.html');
  return (await stat(index).catch(() => undefined)) && { path: index, redirect: false };
}
