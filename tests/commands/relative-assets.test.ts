import { describe, expect, test } from 'vitest';
import { relativeAssets } from '../../src/commands/relative-assets.ts';

describe('assets', () => {
  test.each([
    ['<link href="/_astro/a.css">', 0, '<link href="./_astro/a.css">'],
    ['<link href="/_astro/a.css">', 3, '<link href="../../../_astro/a.css">'],
    ['@font-face{src:url(/_astro/a.woff2)}', 1, '@font-face{src:url(../_astro/a.woff2)}'],
    [`src:url("/_astro/a.woff2"),url('/_astro/b.woff2')`, 1, `src:url("../_astro/a.woff2"),url('../_astro/b.woff2')`],
    ['<a href="https://example.org/_astro/x">', 2, '<a href="https://example.org/_astro/x">'],
  ])('%s at depth %i', (text, depth, expected) => {
    expect(relativeAssets(text, depth)).toBe(expected);
  });
});
