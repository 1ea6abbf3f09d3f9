import { defineConfig } from 'vitest/config';

/** Everything that needs neither a build nor a browser. */
const PURE = ['tests/**/*.test.ts'];
const BUILDING = ['tests/build/**/*.test.ts', 'tests/commands/**/*.test.ts'];
const BROWSING = ['tests/site/**/*.test.ts'];

/** Groups run one after another: two cores, and one Astro at a time in this folder. */
const order = (groupOrder: number, maxWorkers: number) => ({ sequence: { groupOrder }, maxWorkers, pool: 'forks' as const });

export default defineConfig({
  test: {
    projects: [
      { test: { name: 'rooms', include: PURE, exclude: [...BUILDING, ...BROWSING], testTimeout: 30_000, ...order(0, 2) } },
      { test: { name: 'build', include: BUILDING, globalSetup: 'tests/support/builds-setup.ts', testTimeout: 120_000, hookTimeout: 240_000, ...order(1, 1) } },
      { test: { name: 'site', include: BROWSING, globalSetup: 'tests/support/site-setup.ts', testTimeout: 60_000, hookTimeout: 60_000, ...order(2, 2) } },
    ],
  },
});
