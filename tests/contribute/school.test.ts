/** The script that a school's machine runs, run: with this project in place of a clone and its own packages in place of a download. */
import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cp } from 'node:fs/promises';
import { delimiter, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BUILD_SCRIPT } from '../../src/components/contribute/school.ts';
import { exclusively } from '../support/exclusive.ts';
import { newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

let school: string;
let tools: string;

beforeAll(async () => {
  const place = newFolder();
  [school, tools] = [join(place, 'our lessons'), join(place, 'tools')];
  await cp(join(ROOT, 'tests', 'content', 'good', 'minimal'), join(school, 'content'), { recursive: true });
  mkdirSync(tools);
  writeFileSync(join(school, 'build.sh'), BUILD_SCRIPT);
  tool('git', 'case "$1" in clone) ln -s "$2" "$3";; -C) test "$3" = checkout;; *) exit 9;; esac');
  // npm --prefix FOLDER ci | npm --prefix FOLDER run NAME, in that folder.
  tool('npm', `test "$1" = --prefix && cd "$2" && case "$3" in ci) test -f package-lock.json;; run) exec "${process.execPath}" src/commands/launch.mjs "$4";; *) exit 9;; esac`);
});
afterAll(() => removeFolder(join(school, '..')));

function tool(name: string, does: string): void {
  const file = join(tools, name);
  writeFileSync(file, `#!/bin/sh\n${does}\n`);
  chmodSync(file, 0o755);
}

function run(env: Record<string, string> = { LAPSEBOOK_REPOSITORY: ROOT, LAPSEBOOK_STATE: 'v1' }): { status: number | null; said: string } {
  const { PATH = '', HOME = '' } = process.env;
  rmSync(join(school, '.lapsebook'), { force: true });
  const { status, stdout, stderr } = spawnSync('sh', ['build.sh'], { cwd: school, env: { PATH: `${tools}${delimiter}${PATH}`, HOME, ...env }, encoding: 'utf8' });
  return { status, said: stdout + stderr };
}

describe.skipIf(process.platform === 'win32')('the script', () => {
  it('asks for what it is not told', () => {
    const { status, said } = run({});
    expect(status).not.toBe(0);
    expect(said).toContain('LAPSEBOOK_REPOSITORY');
  });

  it('builds the site and the teachers’ folder beside the lessons', { timeout: 180_000 }, async () => {
    const { status, said } = await exclusively(async () => run());
    expect(status, said).toBe(0);
    expect(readFileSync(join(school, 'site', 'index.html'), 'utf8')).toContain('Valley School');
    expect(existsSync(join(school, 'site-teachers', 'index.html'))).toBe(true);
  });

  it('stops at a finding, and leaves the last good site', { timeout: 60_000 }, () => {
    const file = join(school, 'content', 'kits', 'first-cloud', 'student.mdx');
    const before = readFileSync(join(school, 'site', 'index.html'), 'utf8');
    writeFileSync(file, `${readFileSync(file, 'utf8')}\nIt was 21 °C.\n`);
    const { status, said } = run();
    expect(status).not.toBe(0);
    expect(said).toContain('student.mdx');
    expect(said).not.toContain('making pages');
    expect(readFileSync(join(school, 'site', 'index.html'), 'utf8')).toBe(before);
  });
});

it('is told in the guide, which warns of the teachers’ folder', () => {
  const page = readFileSync(join(ROOT, 'src', 'components', 'contribute', 'school.mdx'), 'utf8');
  expect(page).toContain('<Script />');
  expect(page).toContain('**Never publish `site-teachers`**');
});
