/** The browser that the site is tried in. */
import { once } from 'node:events';
import { createServer, type AddressInfo } from 'node:net';
import { chromium, type Browser } from 'playwright-core';
import { CHROMIUM_ADVICE, chromiumPath, launchChromium } from '../../src/commands/chromium.ts';
import { installOnDebian } from './system-packages.ts';

/**
 * Where Chromium is; as root on Debian it is installed.
 * @throws Error that says what to do
 */
export function findChromium(): string {
  const found = chromiumPath() ?? (installOnDebian(['chromium']) ? chromiumPath() : undefined);
  if (found !== undefined) return found;
  throw new Error(`The site is tried in a real browser, and none was found. ${CHROMIUM_ADVICE}`);
}

/** A browser with a fresh profile, which goes when it is closed. */
export const openBrowser = (): Promise<Browser> => launchChromium(findChromium());

/** A browser that other processes can come to by {@link joinBrowser}, and its address. */
export async function shareBrowser(): Promise<{ readonly browser: Browser; readonly endpoint: string }> {
  const port = await freePort();
  return { browser: await launchChromium(findChromium(), [`--remote-debugging-port=${port}`]), endpoint: `http://127.0.0.1:${port}` };
}

/** A browser of another process: closing it closes what was opened here. Starting one takes as long as looking at ten pages. */
export const joinBrowser = (endpoint: string): Promise<Browser> => chromium.connectOverCDP(endpoint);

/** A port that nobody listens at. */
async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
}
