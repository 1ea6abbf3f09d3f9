/** `npm run publish-edition`: what it does, what it refuses, and that a refusal leaves everything as it was. */
import { cp, mkdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { formatFinding } from '../../src/authoring/index.ts';
import { correct, withdraw, type Done } from '../../src/commands/editions/notify.ts';
import { publishEdition } from '../../src/commands/editions/publish.ts';
import { checkContent } from '../../src/commands/read-book.ts';
import { UsageError } from '../../src/commands/run-command.ts';
import { MINIMAL, PUBLISHED } from '../authoring/folders.ts';
import { KIT, publishedAs, withWorkingCopy } from '../editions/published.ts';
import { runCommand, type Ended } from '../support/command.ts';
import { contentsOf, newFolder, removeFolder } from '../support/folders.ts';

const STACK = /^\s+at .+:\d+:\d+/m;
const DATE = '2026-11-30';
const NEWEST = `editions/${KIT}/1.0.1`;

describe('as a teacher runs it', () => {
  let place: string;
  let content: string;
  beforeAll(async () => {
    place = newFolder();
    content = join(place, 'content');
    await cp(MINIMAL, content, { recursive: true });
  });
  afterAll(() => removeFolder(place));

  const run = (...args: string[]): Promise<Ended> => runCommand('publish-edition', args, { env: { LAPSEBOOK_CONTENT: content } });
  const noticeOf = (version: string): Promise<string> => readFile(join(content, 'editions', KIT, version, 'notice.yaml'), 'utf8');
  const today = (): string => new Date().toISOString().slice(0, 10);
  const change = async (path: string, from: string, to: string): Promise<void> => {
    const text = await readFile(join(content, path), 'utf8');
    expect(text).toContain(from);
    await writeFile(join(content, path), text.replace(from, to));
  };

  /** Runs it, and expects that nothing in the folder has changed. */
  async function refused(code: number, ...args: string[]): Promise<string> {
    const before = contentsOf(content);
    const ended = await run(...args);
    expect(ended.stderr).not.toMatch(STACK);
    expect(ended).toMatchObject({ code, stdout: '' });
    expect(contentsOf(content)).toEqual(before);
    return ended.stderr;
  }

  it('explains itself', async () => {
    const { code, stdout, stderr } = await run('--help');
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    for (const part of ['npm run publish-edition -- KIT VERSION', '--correction', '--withdraw', '--replacement', 'LAPSEBOOK_CONTENT', 'Exit code']) expect(stdout).toContain(part);
  });

  it('refuses in words what it cannot carry out', async () => {
    const cases: readonly (readonly [told: string, ...args: string[]])[] = [
      ['There is no kit `first-clod`; write `first-cloud`', 'first-clod', '1.0.0'],
      ['one notice at a time', KIT, '1.0.0', '--correction', 'a', '--withdraw', 'b'],
      ['--replacement is for --withdraw', KIT, '1.0.0', '--replacement', '1.0.1'],
    ];
    for (const [told, ...args] of cases) expect(await refused(2, ...args)).toContain(told);
  });

  it('publishes, asks for a step as large as the change, and adds notices', async () => {
    const first = await run(KIT, '1.0.0');
    expect(first).toMatchObject({ code: 0, stderr: '' });
    expect(first.stdout).toContain(`It stands in editions/${KIT}/1.0.0`);
    expect(await refused(1, KIT, '1.0.0')).toContain('a published edition never changes. The next one is 1.0.1, 1.1.0 or 2.0.0');
    await change('apparatus/jar.yaml', 'volume: 4 L', 'volume: 3 L');
    expect(await refused(1, KIT, '1.1.0')).toMatch(/1\.1\.0 is too small a step from 1\.0\.0[^]*\n {2}the apparatus\n[^]*Publish it as 2\.0\.0 or later/);
    expect(await run(KIT, '2.0.0')).toMatchObject({ code: 0, stderr: '' });
    expect(await run(KIT, '1.0.0', '--withdraw', 'The jar is no longer sold: "4 L" #1.', '--replacement', '2.0.0')).toMatchObject({ code: 0, stderr: '' });
    expect(await noticeOf('1.0.0')).toContain(`- date: ${today()}\n  withdrawn:\n    why: 'The jar is no longer sold: "4 L" #1.'\n    replacement: 2.0.0\n`);
    expect(await run(KIT, '2.0.0', '--correction', 'The lamp stands on the left.')).toMatchObject({ code: 0, stderr: '' });
    expect(await noticeOf('2.0.0')).toContain(`- date: ${today()}\n  correction:\n    why: The lamp stands on the left.\n`);
    expect((await checkContent(content)).findings).toEqual([]);
  });
});

it('publishes nothing of a folder in which anything is found', () =>
  withWorkingCopy(PUBLISHED, async ({ content, edit, publish }) => {
    await edit(`kits/${KIT}/student.mdx`, 'What will you see?', 'It was 21 °C.');
    const before = contentsOf(content);
    const { isDone, text } = await publish('2.0.0');
    expect(isDone).toBe(false);
    expect(text).toMatch(/student\.mdx:3:8: /);
    expect(contentsOf(content)).toEqual(before);
  }));

describe('names that lead elsewhere', () => {
  const WRONG: readonly (readonly [kit: string, version: string])[] = [
    ...['', '1.0', '01.0.0', 'v1.0.0', '1.0.0-rc1', '1.0.0.0', ' 1.0.0', '../x', '1.0.0/../../x', '10000.0.0'].map((version) => [KIT, version] as const),
    ...['', '.', '..', '../kits/first-cloud', 'a\\b', 'constructor', '__proto__'].map((kit) => [kit, '1.0.0'] as const),
  ];

  it('are neither published nor noticed of', () =>
    withWorkingCopy(PUBLISHED, async ({ content }) => {
      const before = contentsOf(join(content, '..'));
      for (const [kit, version] of WRONG) {
        const wanted = { content, kit, version, date: DATE };
        await expect(correct(wanted, 'why'), `${kit} ${version}`).rejects.toBeInstanceOf(UsageError);
        if (kit === KIT || kit.includes('/')) await expect(publishEdition(wanted), `${kit} ${version}`).rejects.toBeInstanceOf(UsageError);
      }
      expect(contentsOf(join(content, '..'))).toEqual(before);
    }));
});

describe('a notice', () => {
  const wanted = (content: string, version = '1.0.1') => ({ content, kit: KIT, version, date: DATE });

  it.each<[name: string, told: RegExp, notice: (content: string) => Promise<Done>]>([
    ['without a reason', /`why` is empty/, (content) => withdraw(wanted(content), ' ', undefined)],
    ['longer than a page', /`why` is longer than/, (content) => correct(wanted(content), 'long '.repeat(400))],
    ['that names itself as replacement', /`1\.0\.1` is no other edition of this kit; name one of 1\.0\.0/, (content) => withdraw(wanted(content), 'why', '1.0.1')],
    ['that names what is not published', /`3\.0\.0` is no other edition/, (content) => withdraw(wanted(content), 'why', '3.0.0')],
  ])('%s is not written', (_, told, notice) =>
    withWorkingCopy(PUBLISHED, async ({ content }) => {
      const before = contentsOf(content);
      const { isDone, text } = await notice(content);
      expect(isDone).toBe(false);
      expect(text).toMatch(told);
      expect(contentsOf(content)).toEqual(before);
    }));

  it.each([
    ['a notice file that is no YAML', 'notice.yaml', '- date: [', /notice\.yaml:\d+:\d+: this is not readable as YAML/],
    ['a notice file that is no list', 'notice.yaml', 'date: 2026-01-01\n', /notice\.yaml:1:1: /],
    ['an empty notice file', 'notice.yaml', '', /notice\.yaml:1:1: /],
    ['a manifest that is no JSON', 'manifest.json', '{', /the manifest of edition 1\.0\.1 of first-cloud cannot be read/],
    ['results that are no JSON', 'results.json', '{', /results\.json:1:1: this file of edition 1\.0\.1 of first-cloud was edited/],
    ['no manifest', 'manifest.json', undefined, /edition 1\.0\.1 of first-cloud has no manifest/],
    ['a sheet that was edited', `kits/${KIT}/student.mdx`, 'Look.\n', /student\.mdx:1:1: this file of edition 1\.0\.1 of first-cloud was edited/],
  ])('is not added to an edition with %s, and the check says the same', (_, path, text, told) =>
    withWorkingCopy(PUBLISHED, async ({ content, write, remove }) => {
      await (text === undefined ? remove(`${NEWEST}/${path}`) : write(`${NEWEST}/${path}`, text));
      const before = contentsOf(content);
      const done = await withdraw(wanted(content), 'why', undefined);
      expect(done.isDone).toBe(false);
      expect(done.text).toMatch(told);
      expect((await checkContent(content)).findings.map(formatFinding).join('\n')).toMatch(told);
      expect(contentsOf(content)).toEqual(before);
    }));

  it('stands after those that are there', () =>
    withWorkingCopy(PUBLISHED, async ({ content, read }) => {
      const before = await read(`${NEWEST}/notice.yaml`);
      expect(await withdraw(wanted(content), 'Not used any more.', undefined)).toMatchObject({ isDone: true });
      expect(await read(`${NEWEST}/notice.yaml`)).toBe(`${before}- date: ${DATE}\n  withdrawn:\n    why: Not used any more.\n`);
    }));

  it('of correction lists what is not corrected yet', () =>
    withWorkingCopy(PUBLISHED, async (working) => {
      const { content, read } = working;
      const [first, second] = ['run/step-1/thermometer', 'run/step-2/thermometer'];
      await publishedAs(working, first, (value) => value + 0.1);
      expect(await correct(wanted(content), 'First.')).toMatchObject({ isDone: true });
      const { old, now } = await publishedAs(working, second, (value) => value - 0.1);
      expect((await correct(wanted(content), 'Second.')).text).toContain('with 1 number.');
      expect(await read(`${NEWEST}/notice.yaml`)).toMatch(new RegExp(`why: Second\\.\n    numbers:\n      - key: ${second}\n        old: ${old}\n        new: ${now}\n$`));
      expect((await checkContent(content)).findings).toEqual([]);
    }));

  it('of withdrawal is enough where a number does not come out, or is not computed any more', () =>
    withWorkingCopy(PUBLISHED, async (working) => {
      const { content } = working;
      await publishedAs(working, 'run/step-1/thermometer', (value) => value + 0.1);
      await publishedAs(working, 'run/step-9/thermometer', () => 293);
      const left = await correct(wanted(content), 'One of them.');
      expect(left.isDone).toBe(false);
      expect(left.text).toMatch(/`run\/step-9\/thermometer` was published as 293 and is no longer computed; publish a new edition and withdraw this one/);
      expect(await withdraw(wanted(content), 'The steps are others.', '1.0.0')).toMatchObject({ isDone: true });
      expect((await checkContent(content)).findings).toEqual([]);
    }));
});

describe('folders of editions', () => {
  it.each([`editions/${KIT}/1.0.2`, 'editions/other-cloud/1.0.1'])('are not copied by hand: %s', (copy) =>
    withWorkingCopy(PUBLISHED, async ({ content }) => {
      await cp(join(content, NEWEST), join(content, copy), { recursive: true });
      const found = (await checkContent(content)).findings.map(({ code, file, what }) => `${code} ${file}: ${what}`);
      const [, kit, version] = copy.split('/');
      expect(found[0]).toBe(`edition-file-edited content/${copy}/manifest.json: this is not the manifest of edition ${version} of ${kit}`);
    }));

  it.each(['notice.yaml', 'manifest.json', 'results.json', 'rooms/attic.yaml'])('lead nowhere else: %s as a link', (path) =>
    withWorkingCopy(PUBLISHED, async ({ content, read, write, remove }) => {
      const file = `${NEWEST}/${path}`;
      const text = path.startsWith('rooms/') ? undefined : await read(file);
      await write('../outside', text ?? '');
      if (text !== undefined) await remove(file);
      await symlink(join(content, '../outside'), join(content, file));
      expect((await checkContent(content)).findings.map(({ file: found }) => found)).toContain(`content/${file}`);
    }));

  it('are told of where a file stands in their place', () =>
    withWorkingCopy(MINIMAL, async ({ content, write, publish }) => {
      await write('editions', '');
      await expect(publish('1.0.0')).rejects.toThrow(/editions.* cannot be written/);
      expect(contentsOf(content)['editions']).toBe('');
    }));

  it('may hold what a system keeps there for itself', () =>
    withWorkingCopy(PUBLISHED, async ({ content, write }) => {
      await write(`${NEWEST}/.DS_Store`, 'icons');
      await write('editions/.DS_Store', 'icons');
      await mkdir(join(content, 'editions/.making-1'));
      expect((await checkContent(content)).findings).toEqual([]);
    }));
});
