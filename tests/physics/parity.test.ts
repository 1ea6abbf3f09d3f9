/** The library gives the same numbers in Node and in Chromium: every public function, 10⁻¹² relative at most apart. */
import { join } from 'node:path';
import { build } from 'esbuild';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as physics from '../../src/physics/index.ts';
import { openBrowser } from '../support/chromium.ts';
import { physicsCases } from '../support/physics-cases.ts';
import { ROOT } from '../support/root.ts';

const names = Object.keys(physicsCases);
let browser: Browser | undefined;
let inChromium: Readonly<Record<string, readonly number[]>> = {};

/** The cases and the library with them, as one script that a blank page can run. */
async function scriptOfCases(): Promise<string> {
  const { outputFiles } = await build({
    stdin: {
      contents: `import { physicsCases } from './tests/support/physics-cases.ts';
        globalThis.evaluatePhysics = () => Object.fromEntries(Object.entries(physicsCases).map(([name, compute]) => [name, compute()]));`,
      resolveDir: join(ROOT),
    },
    bundle: true, format: 'iife', write: false,
  });
  return outputFiles[0]!.text;
}

beforeAll(async () => {
  browser = await openBrowser();
  const page = await browser.newPage();
  await page.addScriptTag({ content: await scriptOfCases() });
  inChromium = await page.evaluate(() => (globalThis as unknown as { evaluatePhysics: () => Record<string, number[]> }).evaluatePhysics());
}, 120_000);
afterAll(() => browser?.close());

/** Largest difference of two lists of numbers, as a share of the larger of the two; Infinity where one is not a number. */
function apart(a: readonly number[], b: readonly number[]): number {
  if (a.length !== b.length) return Infinity;
  return a.reduce((worst, x, i) => {
    const y = b[i]!;
    if (Object.is(x, y) || x === y) return worst;
    const share = Math.abs(x - y) / Math.max(Math.abs(x), Math.abs(y));
    return Math.max(worst, Number.isNaN(share) ? Infinity : share);
  }, 0);
}

describe('Node and Chromium agree within 10⁻¹² on', () => {
  it.each(names)('%s', (name) => {
    const here = physicsCases[name]!();
    expect(here.length).toBeGreaterThan(0);
    expect(here.some(Number.isNaN)).toBe(false);
    expect(apart(here, inChromium[name] ?? [])).toBeLessThanOrEqual(1e-12);
  });
});

describe('the comparison', () => {
  it('covers every public function', () => {
    const covered = new Set(names.map((name) => name.split(' ')[0]));
    const functions = Object.entries(physics).filter(([, value]) => typeof value === 'function').map(([name]) => name);
    expect(functions.filter((name) => !covered.has(name))).toEqual([]);
  });

  it.each([
    [[1, 2], [1, 2], 0],
    [[1], [1 + 1e-11], 1e-11],
    [[1, 2], [1], Infinity],
    [[1], [NaN], Infinity],
  ])('tells %o from %o', (a, b, expected) => expect(apart(a, b)).toBeCloseTo(expected, 16));
});
