/** A second build, where much is different: again the same bytes, and nothing of the site that stood there. */
import { existsSync, readdirSync } from 'node:fs';
import { cp, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { sharedBuild } from '../support/builds.ts';
import { buildContent, type Ended } from '../support/command.ts';
import { contentsOf, newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

const place = newFolder();
const site = join(place, 'deep', 'er', 'site');
let highland: string;
let built: Ended;

beforeAll(async () => {
  const content = join(place, 'a copy', 'lessons');
  await cp(join(ROOT, 'tests', 'content', 'good', 'highland'), content, { recursive: true });
  highland = await sharedBuild(inject('builds'), 'highland');
  for (const ending of ['', '-teachers']) await cp(`${highland}${ending}`, `${site}${ending}`, { recursive: true });
  await writeFile(join(site, 'old-page.html'), 'old\n');
  const env = { TZ: 'Pacific/Chatham', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8', LANGUAGE: 'tr', CHROMIUM_PATH: join(place, 'no-browser') };
  built = await buildContent(content, site, { env, cwd: place }, ['--pdf']);
});
afterAll(() => removeFolder(place));

it('builds the same folders from a copy of the content in another folder, time zone and locale', () => {
  for (const ending of ['', '-teachers']) {
    const first = contentsOf(`${highland}${ending}`);
    const second = contentsOf(`${site}${ending}`);
    expect(Object.keys(second), built.stdout + built.stderr).toEqual(Object.keys(first));
    expect(Object.keys(first).filter((path) => first[path] !== second[path])).toEqual([]);
  }
});

it('takes the place of the first, with nothing left beside it', () => {
  expect(existsSync(join(site, 'old-page.html'))).toBe(false);
  expect(readdirSync(dirname(site)).sort()).toEqual(['site', 'site-teachers']);
});

it('says what to do where it is to print and there is no browser, prints nothing, and ends with 2', () => {
  expect(built.code, built.stdout).toBe(2);
  expect(built.stderr).toContain('no PDF is made');
  expect(built.stderr).toContain('CHROMIUM_PATH');
});
