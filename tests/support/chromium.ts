/** The browser that the site is tried in. */
import type { Browser } from 'playwright-core';
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
