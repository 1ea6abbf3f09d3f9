/** Hostile files: each refused at the right place, nothing of them run, nothing outside read or written, the last good site left alone. */
import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, it } from 'vitest';
import { FINDINGS, formatFinding, type Finding } from '../../src/authoring/index.ts';
import { HOSTILE_FINDINGS } from './hostile-findings.ts';
import { hostileFiles, placeOfHostile, withHostileFolder, type HostileFolder } from './hostile.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
/** The file that the code in hostile files would write if it ran. */
const TRACE = 'was-here';

/** Names that would lead elsewhere, or be taken for something else. */
const NAMES: readonly (readonly [file: string, code: string])[] = [
  ['rooms/x..%2f..%2fetc.yaml', 'bad-name'],
  ['rooms/a%2e.yaml', 'bad-name'],
  ['rooms/con.yaml', 'bad-name'],
  ['rooms/-rf.yaml', 'bad-name'],
  ['rooms/a b.yaml', 'bad-name'],
  ['rooms/$(id).yaml', 'bad-name'],
  ['rooms/a;id.yaml', 'bad-name'],
  ['rooms/<b>.yaml', 'bad-name'],
  ['rooms/\u0430ttic.yaml', 'bad-name'],
  ['rooms/a\u202elmay.yaml', 'bad-name'],
  ['rooms/a\u001b[2Jb.yaml', 'bad-name'],
  ['rooms/a\nb.yaml', 'bad-name'],
  ['rooms/__proto__.yaml', 'bad-name'],
  ['rooms/a.yaml.exe', 'unknown-file'],
  ['rooms/deep/er/room.yaml', 'unknown-file'],
  ['kits/__proto__/kit.yaml', 'bad-name'],
  ['kits/first-cloud/index.html', 'unknown-file'],
  ['kits/first-cloud/air.svg', 'unknown-file'],
  ['node_modules/astro/index.js', 'unknown-file'],
  ['astro.config.mjs', 'unknown-file'],
];

interface Run {
  readonly stdout: string;
  readonly stderr: string;
  readonly code: number;
}

/** Runs a command that may read the project and the folder, and may write and start nothing at all; the quick parser of lessons is an addon, and no script of theirs could load another. */
async function runConfined(command: string, { place, content }: HostileFolder): Promise<Run> {
  const confined = ['--permission', '--allow-addons', '--disable-warning=PERM0001', `--allow-fs-read=${ROOT}`, `--allow-fs-read=${place}`];
  const env = { PATH: process.env['PATH'], LAPSEBOOK_CONTENT: content, LAPSEBOOK_OUT: join(place, 'site') };
  return promisify(execFile)(process.execPath, [...confined, join(ROOT, 'src/commands/check.ts'), command], { cwd: place, env, maxBuffer: 1e8 })
    .then(({ stdout, stderr }) => ({ stdout, stderr, code: 0 }))
    .catch((error: Run) => error);
}

/** Every file below a folder with its contents. */
async function contentsOf(folder: string): Promise<ReadonlyMap<string, string>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  return new Map(await Promise.all(files.sort().map(async (file) => [file, await readFile(file, 'latin1')] as const)));
}

describe('hostile files', () => {
  let run: Run;
  let findings: readonly Finding[] = [];
  let before: ReadonlyMap<string, string>;
  let after: ReadonlyMap<string, string>;
  let files: readonly string[];

  beforeAll(async () => {
    files = await hostileFiles();
    await withHostileFolder(NAMES.map(([name]) => name), async (folder) => {
      await mkdir(join(folder.place, 'site'));
      await writeFile(join(folder.place, 'site/index.html'), 'the last good site');
      before = await contentsOf(folder.place);
      run = await runConfined('--json', folder);
      after = await contentsOf(folder.place);
    });
    findings = JSON.parse(run.stdout) as readonly Finding[];
  }, 60_000);

  it('are at least eighty, and every one has its finding', () => {
    expect(files.length).toBeGreaterThanOrEqual(80);
    expect(Object.keys(HOSTILE_FINDINGS).sort()).toEqual(files);
    for (const places of Object.values(HOSTILE_FINDINGS)) expect(places).not.toBe('');
  });

  it('are refused, each at its place', () => {
    const found = (file: string): string =>
      findings.filter((one) => one.file === `content/${placeOfHostile(file)}`).map(({ code, line, column }) => `${code} ${line}:${column}`).join(', ');
    expect(Object.fromEntries(files.map((file) => [file, found(file)]))).toEqual(HOSTILE_FINDINGS);
  });

  it('are refused for their names too, in one line each', () => {
    const found = NAMES.map(([file]) => [file, findings.find((one) => one.file === `content/${file}`)?.code]);
    expect(found).toEqual(NAMES.map(([file, code]) => [file, code]));
    for (const finding of findings) expect(formatFinding(finding)).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e]/);
  });

  it('bring nothing to light beside what they are refused for', () => {
    const named = new Set([...files.map((file) => `content/${placeOfHostile(file)}`), ...NAMES.map(([file]) => `content/${file}`)]);
    expect(findings.filter(({ file }) => !named.has(file)).map(formatFinding)).toEqual([]);
    for (const { code } of findings) expect(Object.keys(FINDINGS)).toContain(code);
  });

  it('run no code, and leave every file as it was', () => {
    expect(run.code).toBe(1);
    expect(run.stderr).toBe('');
    expect(after).toEqual(before);
    for (const folder of [ROOT, tmpdir(), process.cwd()]) expect(existsSync(join(folder, TRACE))).toBe(false);
  });
});

describe('a build of hostile files', () => {
  it('stops before the last good site is touched', async () => {
    await withHostileFolder([], async ({ place, content }) => {
      const site = join(place, 'site');
      await mkdir(site);
      await writeFile(join(site, 'index.html'), 'the last good site');
      await writeFile(join(site, 'build.json'), '{}');
      const before = await contentsOf(place);
      const env = { PATH: process.env['PATH'], LAPSEBOOK_CONTENT: content, LAPSEBOOK_OUT: site, ASTRO_TELEMETRY_DISABLED: '1' };
      const run = await promisify(execFile)(process.execPath, [join(ROOT, 'src/commands/build.ts')], { cwd: place, env, maxBuffer: 1e8 }).catch((error: Run) => error);
      expect('code' in run ? run.code : 0).toBe(1);
      expect(await contentsOf(place)).toEqual(before);
    });
  }, 60_000);
});
