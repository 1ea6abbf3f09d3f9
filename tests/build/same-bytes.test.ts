/** The same content gives the same bytes: again, elsewhere, in another time zone and another language. */
import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { buildContent } from '../support/command.ts';
import { contentsOf, newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

let place: string;
beforeAll(() => {
  place = newFolder();
});
afterAll(() => removeFolder(place));

it('builds the same folders from a copy of the content in another folder, time zone and locale', async () => {
  const content = join(place, 'a copy', 'lessons');
  await cp(join(ROOT, 'tests', 'content', 'good', 'highland'), content, { recursive: true });
  const out = join(place, 'deep', 'er', 'site');
  const env = { TZ: 'Pacific/Chatham', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8', LANGUAGE: 'tr' };
  const { code, stdout, stderr } = await buildContent(content, out, { env, cwd: place });
  expect(code, stdout + stderr).toBe(0);
  const { highland } = inject('builds');
  for (const ending of ['', '-teachers']) {
    const first = contentsOf(`${highland}${ending}`);
    const second = contentsOf(`${out}${ending}`);
    expect(Object.keys(second)).toEqual(Object.keys(first));
    expect(Object.keys(first).filter((path) => first[path] !== second[path])).toEqual([]);
  }
});
