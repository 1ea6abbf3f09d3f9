import { describe, expect, test } from 'vitest';
import { chartSeenFrom, href } from '../../src/layouts/links.ts';

describe('addresses', () => {
  test.each([
    ['/', '/', 'index.html'],
    ['/', '/kits/cloud/draft/', 'kits/cloud/draft/index.html'],
    ['/kits/cloud/draft/', '/', '../../../index.html'],
    ['/kits/cloud/draft/', '/kits/cloud/draft/', 'index.html'],
    ['/kits/cloud/draft/run/', '/kits/cloud/draft/student/', '../student/index.html'],
    ['/kits/cloud/draft/run/', '/kits/cloud/draft/student/#predict', '../student/index.html#predict'],
    ['/kits/cloud/draft/', '/kits/cloud/draft/run/', 'run/index.html'],
    ['/kits/cloud/draft/run/', '/kits/cloud/draft/print.css', '../print.css'],
    ['/safety/', '/mark.svg', '../mark.svg'],
    ['/kits/cloud/draft/', '/kits/bottle/1.2.0/', '../../bottle/1.2.0/index.html'],
  ])('from %s to %s: %s', (from, to, expected) => {
    expect(href(from, to)).toBe(expected);
    const resolved = new URL(href(from, to), `https://example.org/sub${from}index.html`);
    const wanted = new URL(to.replace(/\/(#|$)/, '/index.html$1').slice(1), 'https://example.org/sub/');
    expect(resolved.href).toBe(wanted.href);
  });
});

test('the steps of a chart lead to the run sheet from another page', () => {
  expect(chartSeenFrom('<a href="#step-1">', 'run/index.html')).toBe('<a href="run/index.html#step-1">');
});
