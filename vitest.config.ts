import { defineConfig } from 'vitest/config';
import { LongestFirst } from './tests/support/longest-first.ts';

/** Those that build, and those that look at what was built, mostly in a browser. */
const BUILT = ['tests/build/**/*.test.ts', 'tests/commands/**/*.test.ts', 'tests/site/**/*.test.ts'];
/** Everything else. */
const PURE = ['tests/**/*.test.ts'];

/** The groups run one after the other, each on two cores. Files share what they import: none changes it, and loading it for each would take a third of the time. */
const order = (groupOrder: number) => ({ sequence: { groupOrder }, maxWorkers: 2, pool: 'forks' as const, isolate: false });

export default defineConfig({
  test: {
    sequence: { sequencer: LongestFirst },
    projects: [
      { test: { name: 'rooms', include: PURE, exclude: BUILT, testTimeout: 30_000, hookTimeout: 30_000, ...order(0) } },
      // One build at a time: the others wait for it, and their time runs.
      { test: { name: 'site', include: BUILT, globalSetup: 'tests/support/site-setup.ts', testTimeout: 180_000, hookTimeout: 300_000, expect: { poll: { timeout: 30_000 } }, ...order(1) } },
    ],
  },
});
