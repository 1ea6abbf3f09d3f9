/** `npm run new`: what it writes builds at once, explains itself, and takes nothing away. */
import { existsSync } from 'node:fs';
import { cp, mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { formatFinding, kitSchema, loadFolder, readFolder, readYaml } from '../../src/authoring/index.ts';
import { checkContent } from '../../src/commands/read-book.ts';
import { UsageError } from '../../src/commands/run-command.ts';
import { fitKit, makeNew } from '../../src/commands/templates/index.ts';
import { VOCABULARY } from '../../src/sheets/index.ts';
import { runCommand, type Ended } from '../support/command.ts';
import { contentsOf, filesBelow, newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

const GOOD = join(ROOT, 'tests', 'content', 'good');
const STACK = /^\s+at .+:\d+:\d+/m;

let place: string;
beforeAll(() => {
  place = newFolder();
});
afterAll(() => removeFolder(place));

/** The command as a user runs it. */
const run = (content: string, ...args: string[]): Promise<Ended> => runCommand('new', args, { env: { LAPSEBOOK_CONTENT: content } });

async function copyOf(good: string, name: string): Promise<string> {
  const folder = join(place, name);
  await cp(join(GOOD, good), folder, { recursive: true });
  return folder;
}

async function emptyFolder(name: string): Promise<string> {
  const folder = join(place, name);
  await mkdir(folder);
  return folder;
}

const lessonFiles = (folder: string): string[] => filesBelow(folder).filter((path) => !path.startsWith('.schemas/'));
const listed = (stdout: string): string[] => [...stdout.matchAll(/^ {2}(\S+\.(?:yaml|mdx))$/gm)].map(([, path]) => path ?? '');
const kitFiles = (kit: string): string[] =>
  ['background.mdx', 'kit.yaml', 'questions/pressure-left.mdx', 'questions/what-is-white.mdx', 'run.mdx', 'student.mdx'].map((path) => `kits/${kit}/${path}`);
const FOUNDATION = ['site.yaml', 'sources.yaml'];

async function expectNothingFound(folder: string): Promise<void> {
  const { content, findings } = await checkContent(folder);
  expect(findings.map(formatFinding)).toEqual([]);
  expect(content).toBeDefined();
}

/** Every file helps its author on: YAML names its schema and explains its fields, a text says how to go on. */
async function expectHelp(folder: string, paths: readonly string[]): Promise<void> {
  for (const path of paths) {
    const text = await readFile(join(folder, path), 'utf8');
    const lines = text.split('\n');
    if (path.endsWith('.yaml')) expect(lines[0], path).toMatch(/^# yaml-language-server: \$schema=(\.\.\/)*\.schemas\/[a-z]+\.json$/);
    if (path.endsWith('.yaml')) expect(lines.slice(1).filter((line) => /^\s*# \S/.test(line)).length, path).toBeGreaterThan(1);
    else if (text.startsWith('---\n')) expect(text.split(/^---$/m)[1], path).toMatch(/^# \S/m);
    else expect(text, path).toContain('Where to go on.');
    expect(text, path).toMatch(/[^\n]\n$/);
    expect(lines.filter((line) => /\s$/.test(line)), path).toEqual([]);
  }
}

/** Kind and name, and the files that it writes into the smallest good folder. */
const KINDS: readonly (readonly [kind: string, name: string, files: readonly string[]])[] = [
  ['kit', 'melting-ice', kitFiles('melting-ice')],
  ['question', 'first-cloud/how-cold', ['kits/first-cloud/questions/how-cold.mdx']],
  ['hazard', 'hot-plate', ['hazards/hot-plate.mdx']],
  ['room', 'room-14', ['rooms/room-14.yaml']],
  ['apparatus', 'round-flask', ['apparatus/round-flask.yaml']],
  ['particles', 'salt-mist', ['particles/salt-mist.yaml']],
  ['misconception', 'ice-makes-cold', ['misconceptions/ice-makes-cold.mdx']],
];

describe.each(KINDS)('new %s', (kind, name, files) => {
  it('writes into a folder with lessons, changes nothing there, and all of it builds', async () => {
    const folder = await copyOf('minimal', `${kind}-beside`);
    const before = contentsOf(folder);
    const { isWritten, text } = await makeNew([kind, name], folder);
    expect(isWritten).toBe(true);
    expect(lessonFiles(folder)).toEqual([...Object.keys(before), ...files].sort());
    expect(listed(text).sort()).toEqual(files);
    expect(text).toContain('npm run check');
    expect(contentsOf(folder)).toMatchObject(before);
    await expectNothingFound(folder);
    await expectHelp(folder, files);
  });
});

/** What lies in a folder that was empty. */
const FIRST: readonly (readonly [kind: string, name: string, files: readonly string[]])[] = [
  [
    'kit',
    'melting-ice',
    [
      ...FOUNDATION,
      'rooms/our-room.yaml',
      'apparatus/clear-vessel.yaml',
      'particles/salt-mist.yaml',
      'hazards/vessel-under-vacuum.mdx',
      'hazards/lamp-beside-the-vessel.mdx',
      ...kitFiles('melting-ice'),
    ],
  ],
  ['room', 'room-14', [...FOUNDATION, 'rooms/room-14.yaml']],
  ['particles', 'salt-mist', [...FOUNDATION, 'rooms/our-room.yaml', 'particles/salt-mist.yaml']],
  ['hazard', 'hot-plate', [...FOUNDATION, 'rooms/our-room.yaml', 'hazards/hot-plate.mdx']],
];

describe.each(FIRST)('new %s in an empty folder', (kind, name, files) => {
  it('lays down what it stands on, and all of it builds', async () => {
    const folder = await emptyFolder(`${kind}-first`);
    const { isWritten, text } = await makeNew([kind, name], folder);
    expect(isWritten).toBe(true);
    expect(lessonFiles(folder)).toEqual([...files].sort());
    expect(listed(text).sort()).toEqual([...files].sort());
    await expectNothingFound(folder);
    await expectHelp(folder, files);
    expect(existsSync(join(folder, '.schemas', `${kind}.json`))).toBe(true);
  });
});

describe('one after another', () => {
  it('builds with everything in one folder, each thing made once', async () => {
    const folder = await emptyFolder('all');
    for (const [kind, name] of [['room', 'room-14'], ['kit', 'melting-ice'], ['kit', 'rising-air'], ['question', 'rising-air/how-cold'], ['misconception', 'true']] as const) {
      expect((await makeNew([kind, name], folder)).isWritten, `${kind} ${name}`).toBe(true);
    }
    await expectNothingFound(folder);
    expect(lessonFiles(folder).filter((path) => /^(rooms|apparatus|particles)\//.test(path))).toEqual([
      'apparatus/clear-vessel.yaml',
      'particles/salt-mist.yaml',
      'rooms/room-14.yaml',
    ]);
  });
});

describe('a kit', () => {
  it.each([
    ['melting-ice', 'Melting ice'],
    ['cloud', 'Cloud'],
    ['true', 'True'],
    ['2027', '2027'],
    ['run-2-on-a-cold-day', 'Run 2 on a cold day'],
  ])('named %s is titled %s', async (name, title) => {
    expect(readKit((await fitted(join(GOOD, 'minimal'), name))(`kits/${name}/kit.yaml`)).title).toBe(title);
  });

  it('holds no number of a quantity in its texts', async () => {
    const text = await fitted(join(GOOD, 'minimal'), 'melting-ice');
    for (const path of kitFiles('melting-ice').filter((one) => one.endsWith('.mdx'))) {
      const prose = text(path).replace(/^---$.*?^---$/ms, '').replace(/<[^>]*>/g, '');
      expect(prose, path).not.toMatch(/\d/);
    }
  });

  it('uses room, apparatus, particles and hazards that are there', async () => {
    const text = await fitted(join(GOOD, 'highland'), 'melting-ice');
    expect(readKit(text('kits/melting-ice/kit.yaml'))).toMatchObject({ apparatus: 'round-flask', particles: ['salt-haze'], hazards: ['vacuum', 'side-lamp'] });
    expect(() => text('apparatus/clear-vessel.yaml')).toThrow();
  });

  it('plans a smaller fall where vessel or pump allow no more', async () => {
    const folder = await copyOf('minimal', 'weak');
    await edit(join(folder, 'kits/first-cloud/kit.yaml'), 'drop: 15 kPa', 'drop: 8 kPa');
    await edit(join(folder, 'kits/first-cloud/run.mdx'), /drop="15 kPa"/g, 'drop="8 kPa"');
    await edit(join(folder, 'apparatus/jar.yaml'), 'lowest: -60 kPa gauge', 'lowest: -18 kPa gauge');
    const kit = readKit((await fitted(folder, 'melting-ice'))('kits/melting-ice/kit.yaml'));
    expect(kit.apparatus).toBe('jar');
    expect(kit.drop.value).toBeLessThan(18_000);
  });

  it('brings an apparatus of its own where none can be pumped down, under a name that is free', async () => {
    const folder = await copyOf('minimal', 'squeezed');
    const jar = join(folder, 'apparatus/jar.yaml');
    const text = await readFile(jar, 'utf8');
    await writeFile(jar, text.replace(/kind: stroke-pump[\s\S]*?(?=gauge:)/, 'kind: squeeze\n  volumeChange: 900 mL\n').replace(/lowest: -100 kPa gauge\n {2}highest: 0 kPa gauge/, 'lowest: -50 kPa gauge\n  highest: 50 kPa gauge'));
    await cp(jar, join(folder, 'apparatus/clear-vessel.yaml'));
    const made = await fitted(folder, 'melting-ice');
    expect(readKit(made('kits/melting-ice/kit.yaml')).apparatus).toBe('clear-vessel-2');
    expect(made('apparatus/clear-vessel-2.yaml')).toContain('stroke-pump');
  });

  it('says that it is in English where the site is not', async () => {
    const folder = await copyOf('minimal', 'spanish');
    await edit(join(folder, 'site.yaml'), 'language: en', 'language: es');
    expect(readKit((await fitted(folder, 'melting-ice'))('kits/melting-ice/kit.yaml')).language).toBe('en');
    expect(readKit((await fitted(join(GOOD, 'minimal'), 'melting-ice'))('kits/melting-ice/kit.yaml')).language).toBeUndefined();
  });

  it('is not made where the folder has findings, which are shown', async () => {
    const folder = await copyOf('minimal', 'broken');
    await edit(join(folder, 'rooms/workshop.yaml'), '20.0 °C', '20.0');
    const before = contentsOf(folder);
    const { isWritten, text } = await makeNew(['kit', 'melting-ice'], folder);
    expect(isWritten).toBe(false);
    expect(text).toMatch(/rooms\/workshop\.yaml:\d+:\d+: /);
    expect(contentsOf(folder)).toEqual(before);
  });
});

/** The files of a new kit in this folder; each call gives one of them, and throws if there is none. */
async function fitted(folder: string, name: string): Promise<(path: string) => string> {
  const read = await readFolder(folder);
  expect(loadFolder(read, VOCABULARY).findings.map(formatFinding)).toEqual([]);
  const made = fitKit(read, name, '2026-09-01');
  if ('findings' in made) throw new Error(made.findings.map(formatFinding).join('\n'));
  return (path) => {
    const file = made.files.find((one) => one.path === path);
    if (file === undefined) throw new Error(`${path} is not among ${made.files.map((one) => one.path).join(', ')}`);
    return file.text;
  };
}

const readKit = (text: string) => kitSchema.parse(readYaml(text, 'kit.yaml').data);

async function edit(path: string, what: string | RegExp, by: string): Promise<void> {
  const text = await readFile(path, 'utf8');
  const edited = text.replace(what, by);
  expect(edited).not.toBe(text);
  await writeFile(path, edited);
}

describe('a name that is taken', () => {
  it.each([
    ['kit', 'first-cloud', 'first-cloud-2'],
    ['question', 'first-cloud/why', 'why-2'],
    ['hazard', 'vacuum', 'vacuum-2'],
    ['room', 'workshop', 'workshop-2'],
    ['apparatus', 'jar', 'jar-3'],
    ['particles', 'salt-haze', 'salt-haze-2'],
    ['misconception', 'cloud-is-vapor', 'cloud-is-vapor-2'],
  ])('of %s %s is left alone, and %s proposed', async (kind, name, proposed) => {
    const folder = await copyOf('minimal', `taken-${kind}`);
    await cp(join(folder, 'apparatus', 'jar.yaml'), join(folder, 'apparatus', 'jar-2.yaml'));
    const before = contentsOf(folder);
    const { isWritten, text } = await makeNew([kind, name], folder);
    expect(isWritten).toBe(false);
    expect(text).toMatch(new RegExp(` ${proposed}\\.$`));
    expect(text).toContain('is there already');
    expect(contentsOf(folder)).toEqual(before);
  });
});

describe('a mistake in the call', () => {
  it.each([
    [[], 'kit, question, hazard, room, apparatus, particles, misconception'],
    [['kitt', 'x'], '`kit`'],
    [['kit'], 'npm run new -- kit NAME'],
    [['question', 'why'], 'KIT/NAME'],
    [['question', 'first-clod/why'], '`first-cloud`'],
    [['question', 'first-cloud/why/not'], 'KIT/NAME'],
    [['kit', 'Melting Ice'], '`melting-ice`'],
    [['kit', 'melting', 'ice'], '`melting-ice`'],
    [['room', 'Größe_14'], '`gro-e-14`'],
    [['room', '../outside'], '`outside`'],
    [['room', 'con'], '`the-con`'],
    [['room', 'x'.repeat(65)], `\`${'x'.repeat(64)}\``],
  ] as const)('%j is answered with %s', async (args, answer) => {
    const folder = join(place, 'called');
    if (!existsSync(folder)) await copyOf('minimal', 'called');
    const before = contentsOf(folder);
    const error: unknown = await makeNew(args, folder).catch((reason: unknown) => reason);
    expect(error).toBeInstanceOf(UsageError);
    expect((error as UsageError).message).toContain(answer);
    expect(contentsOf(folder)).toEqual(before);
  });

  it('or a file where a folder belongs is answered with its place', async () => {
    const folder = await copyOf('minimal', 'in-the-way');
    await writeFile(join(folder, '.schemas'), 'a file where a folder belongs\n');
    await expect(makeNew(['room', 'attic'], folder)).rejects.toThrow(/\.schemas cannot be written/);
  });
});

describe('npm run new', () => {
  it('makes a kit in an empty folder', async () => {
    const folder = await emptyFolder('run');
    const { code, stdout, stderr } = await run(folder, 'kit', 'melting-ice');
    expect(stderr).toBe('');
    expect(code).toBe(0);
    expect(listed(stdout).sort()).toEqual(lessonFiles(folder));
    expect(listed(stdout)).toContain('kits/melting-ice/kit.yaml');

    const again = await run(folder, 'kit', 'melting-ice');
    expect(again.code).toBe(1);
    expect(again.stdout).toBe('');
    expect(again.stderr).toContain('melting-ice-2');
    expect(again.stderr).not.toMatch(STACK);
  });

  it.each([
    [['kitt', 'x'], '`kit`'],
    [['room', '--colour'], '--colour'],
  ])('%j is answered with %s and the help, exit code 2', async (args, answer) => {
    const { code, stdout, stderr } = await run(join(GOOD, 'minimal'), ...args);
    expect(code).toBe(2);
    expect(stderr).toContain(answer);
    expect(stderr).toContain('npm run new -- KIND NAME');
    expect(stderr).not.toMatch(STACK);
    expect(stdout).toBe('');
  });

  it('names a content folder that is not there', async () => {
    const missing = join(place, 'nowhere');
    const { code, stderr } = await run(missing, 'kit', 'melting-ice');
    expect(code).toBe(2);
    expect(stderr).toContain(missing);
    expect(stderr).not.toMatch(STACK);
  });

  it.each(['--help', '-h'])('explains itself with %s', async (help) => {
    const { code, stdout, stderr } = await runCommand('new', [help]);
    expect(code).toBe(0);
    expect(stdout).toContain('npm run new -- kit melting-ice');
    expect(stdout).toContain('LAPSEBOOK_CONTENT');
    expect(stderr).toBe('');
  });
});
