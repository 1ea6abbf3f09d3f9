/** The browser that the site is tried in. */
import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';
import { inSearchPath, installOnDebian, mayBeRun } from './system-packages.ts';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/opt/google/chrome/chrome',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

/** Nothing that reaches out by itself; no sandbox, since root has none. */
const FLAGS = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];

/**
 * Where Chromium is: CHROMIUM_PATH, the search path, the usual places, the browser cache of
 * playwright-core; as root on Debian it is installed.
 * @throws Error that says what to do
 */
export function findChromium(): string {
  const named = process.env.CHROMIUM_PATH;
  if (named !== undefined && named !== '') {
    if (mayBeRun(named)) return named;
    throw new Error(`CHROMIUM_PATH is ${named}, and there is no program there. Write the path of a Chromium or Chrome.`);
  }
  const found = present() ?? (installOnDebian(['chromium']) ? present() : undefined);
  if (found !== undefined) return found;
  throw new Error('The site is tried in a real browser, and none was found. Install Chromium or Chrome, or write its path in CHROMIUM_PATH.');
}

function present(): string | undefined {
  const cached = chromium.executablePath();
  return inSearchPath(NAMES) ?? USUAL_PLACES.find(mayBeRun) ?? (existsSync(cached) ? cached : undefined);
}

/** A browser with a fresh profile, which goes when it is closed. */
export const openBrowser = (): Promise<Browser> => chromium.launch({ executablePath: findChromium(), args: FLAGS });
