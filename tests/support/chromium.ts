/** The browser that the site is tried in. */
import type { Browser, BrowserServer } from 'playwright-core';
import { chromium, CHROMIUM_ADVICE, chromiumOptions, chromiumPath, launchChromium } from '../../src/commands/chromium.ts';
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

/** A browser that other processes can come to by {@link joinBrowser}. */
export const shareBrowser = (): Promise<BrowserServer> => chromium().launchServer(chromiumOptions(findChromium()));

/**
 * A browser of another process, each with windows of its own: closing it closes what was opened here.
 * Starting one takes as long as looking at ten pages.
 */
export const joinBrowser = (endpoint: string): Promise<Browser> => chromium().connect(endpoint);
