/** A build comes whole or not at all, and takes nobody's place. */
import { appendFile, cp, mkdir, readFile, writeFile } from 'node:fs/promises';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { sharedBuild } from '../support/builds.ts';
import { buildContent } from '../support/command.ts';
import { contentsOf, newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

const GOOD = join(ROOT, 'tests', 'content', 'good', 'highland');
const FINDING = /^(.+\.(?:mdx|yaml)):(\d+):(\d+): [^;]+; .+$/m;

let place: string;
beforeAll(() => {
  place = newFolder();
});
afterAll(() => removeFolder(place));

describe('a build with findings', () => {
  it('prints each with its place, exits 1, and leaves the last good site as it was', async () => {
    const content = join(place, 'content');
    const site = join(place, 'site');
    await cp(GOOD, content, { recursive: true });
    const highland = await sharedBuild(inject('builds'), 'highland');
    for (const ending of ['', '-teachers']) await cp(`${highland}${ending}`, `${site}${ending}`, { recursive: true });
    const lesson = join(content, 'kits', 'highland-cloud', 'student.mdx');
    const lines = (await readFile(lesson, 'utf8')).split('\n').length;
    await appendFile(lesson, '\nThe air is at 12 °C then.\n');
    await appendFile(join(content, 'rooms', 'saddle-room.yaml'), 'colour: green\n');
    const before = [contentsOf(site), contentsOf(`${site}-teachers`)];

    const { code, stdout, stderr } = await buildContent(content, site);

    expect(code, stdout + stderr).toBe(1);
    const found = stderr.split('\n').filter((line) => FINDING.test(line));
    expect(found).toHaveLength(2);
    expect(found.some((line) => line.includes(`student.mdx:${lines + 1}:`)), stderr).toBe(true);
    expect(found.some((line) => /saddle-room\.yaml:6:1:/.test(line)), stderr).toBe(true);
    expect([contentsOf(site), contentsOf(`${site}-teachers`)]).toEqual(before);
    expect(readdirSync(place).sort()).toEqual(['content', 'site', 'site-teachers']);
  });

  it('writes nothing where there was no site before', async () => {
    const content = join(place, 'content');
    const { code } = await buildContent(content, join(place, 'first'));
    expect(code).toBe(1);
    expect(readdirSync(place).filter((name) => name.startsWith('first'))).toEqual([]);
  });
});

describe('a folder of something else', () => {
  it.each([['as the site', 'foreign', 'foreign'], ['as the teachers’ folder', 'mine', 'mine-teachers']])('is refused %s, and nothing in it is touched', async (_, out, foreign) => {
    const folder = join(place, foreign);
    await mkdir(join(folder, 'sub'), { recursive: true });
    await writeFile(join(folder, 'letter.txt'), 'Dear Sir\n');
    await writeFile(join(folder, 'sub', 'index.html'), '<p>mine</p>\n');
    const before = contentsOf(folder);
    const others = readdirSync(place).sort();

    const { code, stderr } = await buildContent(GOOD, join(place, out));

    expect(code).toBe(2);
    expect(stderr).toContain(folder);
    expect(stderr).toContain('LAPSEBOOK_OUT');
    expect(stderr).not.toMatch(/^\s+at /m);
    expect(contentsOf(folder)).toEqual(before);
    expect(readdirSync(place).sort()).toEqual(others);
  });
});
