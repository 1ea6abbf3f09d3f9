/** Links of lesson text as they are built: each address that the check lets pass is a file, and has the place that it names. */
import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { sharedBuild } from '../support/builds.ts';

const PLACE = 'kits/highland-cloud/draft';
const site = await sharedBuild(inject('builds'), 'highland');

/** Relative addresses that a page's lesson text points at, and the words of each link. */
const linksOf = (folder: string, path: string): (readonly [words: string, address: string])[] =>
  [...readFileSync(join(folder, path), 'utf8').matchAll(/<a href="([^":]*)">([^<]*)<\/a>/g)].map(([, address = '', words = '']) => [words, address]);

describe.each([['the public folder', site], ['the teachers’ folder', `${site}-teachers`]])('%s', (_, folder) => {
  it.each([
    [`${PLACE}/background/index.html`, ['its step', 'the table', 'the other one', 'the source', 'the picture', 'all numbers', 'the kit', 'its newest edition', 'its numbers as data', 'your room']],
    [`${PLACE}/booklet/index.html`, ['its step', 'the table', 'the source', 'the picture', 'The run sheet', 'a sheet of its own', 'the other question']],
    [`${PLACE}/student/index.html`, ['The run sheet']],
    [`${PLACE}/questions/index.html`, ['the other question']],
    [`${PLACE}/board/index.html`, ['The run sheet', 'the other question']],
    [`${PLACE}/safety/index.html`, ['a sheet of its own']],
    ['safety/index.html', ['a sheet of its own']],
  ])('%s', (page, named) => {
    const links = linksOf(folder, page);
    for (const name of named) {
      const [path = '', id = ''] = links.find(([words]) => words === name)?.[1].split('#') ?? [];
      const file = join(folder, path === '' ? page : posix.join(posix.dirname(page), path));
      expect(links.map(([words]) => words), page).toContain(name);
      expect(existsSync(file), `${name}: ${path}`).toBe(true);
      if (id !== '') expect(readFileSync(file, 'utf8'), `${name}: ${path}#${id}`).toContain(` id="${id}"`);
    }
  });
});
