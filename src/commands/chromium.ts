/** The machine's own Chromium: for paper, and for trying the site. */
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { createRequire } from 'node:module';
import type { Browser, LaunchOptions } from 'playwright-core';

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

/** Loaded where a browser is asked for: it takes longer than checking a kit. */
export const chromium = (): typeof import('playwright-core').chromium => (createRequire(import.meta.url)('playwright-core') as typeof import('playwright-core')).chromium;

/** Nothing that reaches out by itself; no sandbox, since root has none. */
const FLAGS: string[] = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];

/** What can be done where there is none. */
export const CHROMIUM_ADVICE = 'Install Chromium or Chrome, or write its path in CHROMIUM_PATH.';

/**
 * Where Chromium is: CHROMIUM_PATH, the search path, the usual places, the browser cache of
 * playwright-core; undefined where there is none.
 * @throws Error if CHROMIUM_PATH names no program
 */
export function chromiumPath(): string | undefined {
  const named = process.env.CHROMIUM_PATH;
  if (named !== undefined && named !== '') {
    if (mayBeRun(named)) return named;
    throw new Error(`CHROMIUM_PATH is ${named}, and there is no program there. Write the path of a Chromium or Chrome.`);
  }
  return inSearchPath(NAMES) ?? [...USUAL_PLACES, chromium().executablePath()].find(mayBeRun);
}

/** How a browser at a path is started. */
export const chromiumOptions = (executablePath: string): LaunchOptions => ({ executablePath, args: FLAGS });

/** A browser with a fresh profile, which goes when it is closed. */
export const launchChromium = (executablePath: string): Promise<Browser> => chromium().launch(chromiumOptions(executablePath));

/** The first of some names that stands in the search path and may be run. */
export function inSearchPath(names: readonly string[], searchPath = process.env.PATH ?? ''): string | undefined {
  const ending = process.platform === 'win32' ? '.exe' : '';
  return searchPath
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => names.map((name) => join(folder, `${name}${ending}`)))
    .find(mayBeRun);
}

/** Whether a file is there and may be run. */
export function mayBeRun(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
