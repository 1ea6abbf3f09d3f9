/** A published edition: complete in itself, never changed, its numbers computed anew each time. */
import { cp, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { formatFinding } from '../../src/authoring/index.ts';
import { correct, withdraw } from '../../src/commands/editions/notify.ts';
import { publishEdition } from '../../src/commands/editions/publish.ts';
import { checkContent, readBook } from '../../src/commands/read-book.ts';
import { MINIMAL, PUBLISHED } from '../authoring/folders.ts';
import { filesBelow } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';
import { KIT, publishedAs, sha256, withWorkingCopy } from './published.ts';

const FOLDER = `editions/${KIT}/1.0.1`;
const findingsIn = async (content: string): Promise<string[]> => (await checkContent(content)).findings.map(formatFinding);

describe('what is frozen', () => {
  it('is every file that the kit uses, to the byte, and no other', () =>
    withWorkingCopy(MINIMAL, async ({ content, read, write, publish }) => {
      await write('rooms/attic.yaml', (await read('rooms/workshop.yaml')).replace('Workshop', 'Attic'));
      await write('hazards/other.mdx', await read('hazards/vacuum.mdx'));
      await publish('1.0.0');
      const edition = join(content, 'editions', KIT, '1.0.0');
      const files = filesBelow(edition);
      const expected = filesBelow(MINIMAL).filter((path) => !path.startsWith('.'));
      expect(files.filter((path) => path !== 'manifest.json' && path !== 'results.json').sort()).toEqual(expected.sort());
      for (const path of expected) if (path !== 'site.yaml' && path !== 'sources.yaml') expect(await readFile(join(edition, path)), path).toEqual(await readFile(join(MINIMAL, path)));
    }));

  it('is listed with the SHA-256 of every file', async () => {
    const edition = join(PUBLISHED, FOLDER);
    const manifest = JSON.parse(await readFile(join(edition, 'manifest.json'), 'utf8')) as { files: Record<string, string>; kit: string; version: string };
    expect(manifest).toMatchObject({ kit: KIT, version: '1.0.1' });
    expect(Object.keys(manifest.files).sort()).toEqual(filesBelow(edition).filter((path) => path !== 'manifest.json' && path !== 'notice.yaml').sort());
    for (const [path, digest] of Object.entries(manifest.files)) expect(sha256(await readFile(join(edition, path), 'utf8')), path).toBe(digest);
  });

  it('says the same whatever becomes of the working copy', () =>
    withWorkingCopy(PUBLISHED, async ({ content, edit, remove }) => {
      const shown = async () => {
        const read = await readBook(content);
        if ('findings' in read) throw new Error(read.findings.map(formatFinding).join('\n'));
        return JSON.stringify(read.book.kits.filter(({ draft }) => !draft));
      };
      const before = await shown();
      await edit('rooms/workshop.yaml', 'temperature: 20.0 °C', 'temperature: 27.0 °C');
      await edit('apparatus/jar.yaml', 'volume: 4 L', 'volume: 2 L');
      await edit('hazards/vacuum.mdx', 'Goggles', 'A screen');
      await edit('site.yaml', 'room: workshop', 'room: workshop\ncontact: mailto:somebody@school.example');
      expect(await shown()).toBe(before);
      await remove(`kits/${KIT}`);
      await edit('sources.yaml', '- id: bohren-1998', '- id: bohren-1998'); // still cited by the misconception
      expect(await shown()).toBe(before);
    }));
});

describe('numbers', () => {
  it('are all those of tables.json, at full precision', () =>
    withWorkingCopy(join(ROOT, 'content'), async ({ content }) => {
      const kit = 'cloud-by-pumping-down';
      expect(await publishEdition({ content, kit, version: '9.0.0', date: '2026-11-28' })).toMatchObject({ isDone: true });
      const { numbers } = JSON.parse(await readFile(join(content, 'editions', kit, '9.0.0', 'results.json'), 'utf8')) as { numbers: Record<string, unknown> };
      const read = await readBook(content);
      const view = 'book' in read ? read.book.kits.find(({ id, version }) => id === kit && version === '9.0.0') : undefined;
      const built = JSON.parse(view?.tablesJson ?? '') as { tables: { sheet: string; columns: { key: string }[]; rows: unknown[][] }[] };
      const count = new Map<string, number>();
      for (const { sheet, columns, rows } of built.tables) {
        for (const row of rows) for (const [c, cell] of row.entries()) {
          const key = `${sheet} ${columns[c]!.key} ${String(cell)}`;
          count.set(key, (count.get(key) ?? 0) + 1);
        }
      }
      const published = new Set(Object.entries(numbers).map(([key, value]) => [key.split('/')[0], key.split('/').at(-1), String(value)].join(' ')));
      expect([...count.keys()].filter((key) => !published.has(key))).toEqual([]);
    }));

  it('are for everybody where everybody reads them, else for teachers', () =>
    withWorkingCopy(MINIMAL, async ({ content, read, write, publish }) => {
      const path = `kits/${KIT}/background.mdx`;
      const [open, hidden, both] = ['coolingClear', 'temperatureClear', 'temperatureCloudy'].map((of) => `Air: <Value of="${of}" drop="7 kPa"/>.\n\n`);
      await write(path, `${await read(path)}\n\n${open}${both}<TeacherOnly>\n\n${hidden}${both}</TeacherOnly>\n`);
      await publish('1.0.0');
      const { editions } = await checkContent(content);
      const found = editions[0]!.numbers.filter(({ key }) => key.endsWith('/drop=7000')).map(({ key, forTeachers }) => [key.split('/')[1], forTeachers]);
      expect(Object.fromEntries(found)).toEqual({ coolingClear: false, temperatureClear: true, temperatureCloudy: false });
    }));

  it('of a figure are published with it, unless a table has the same', () =>
    withWorkingCopy(MINIMAL, async ({ content, read, write, publish }) => {
      const path = `kits/${KIT}/background.mdx`;
      await write(path, `${await read(path)}\n\n<Curve kind="rising-parcel" heights="0 m, 333 m"/>\n\n<WorkedTable kind="pressure-steps" drops="0 kPa, 7 kPa"/>\n\n<Curve kind="pressure-steps" drops="0 kPa, 7 kPa"/>\n`);
      await publish('1.0.0');
      const { numbers } = JSON.parse(await readFile(join(content, 'editions', KIT, '1.0.0', 'results.json'), 'utf8')) as { numbers: Record<string, unknown> };
      expect(numbers['background/rising-parcel-figure/height=333/temperature']).toBeGreaterThan(273.15);
      expect(Object.keys(numbers).filter((key) => key.includes('pressure-steps-figure'))).toEqual([]);
    }));

  it('may differ by the rounding of another machine', () =>
    withWorkingCopy(PUBLISHED, async (working) => {
      await publishedAs(working, 'run/step-1/thermometer', (value) => value * (1 + 5e-10));
      expect(await findingsIn(working.content)).toEqual([]);
    }));

  it('that do not come out stop the build, with edition, key and both values, until a notice corrects them', () =>
    withWorkingCopy(PUBLISHED, async (working) => {
      const key = 'run/step-1/thermometer';
      const { old, now } = await publishedAs(working, key, (value) => value * (1 + 2e-9));
      const [finding, ...others] = await findingsIn(working.content);
      expect(others).toEqual([]);
      for (const part of [`edition 1.0.1 of ${KIT}`, key, String(old), String(now)]) expect(finding).toContain(part);
      const wanted = { content: working.content, kit: KIT, version: '1.0.1', date: '2026-11-29' };
      expect(await correct(wanted, 'The thermometer was taken for another.')).toMatchObject({ isDone: true });
      expect(await working.read(`${FOLDER}/notice.yaml`)).toContain(`- key: ${key}\n        old: ${old}\n        new: ${now}\n`);
      expect(await findingsIn(working.content)).toEqual([]);
    }));

  it('that somebody edited are told once, as an edit, however many they are', () =>
    withWorkingCopy(PUBLISHED, async ({ content, read, write }) => {
      const path = `${FOLDER}/results.json`;
      const edited = (await read(path)).replace(/(?<="run\/[^"]*": )\d[\d.]*/g, '90000');
      expect(edited.match(/90000/g)!.length).toBeGreaterThan(3);
      await write(path, edited);
      const found = await findingsIn(content);
      expect(found).toHaveLength(1);
      expect(found[0]).toMatch(/results\.json:1:1: this file of edition 1\.0\.1 of first-cloud was edited/);
    }));
});

describe('files', () => {
  it('of which only the ends of lines changed are told how to be mended', () =>
    withWorkingCopy(PUBLISHED, async ({ content, read, write }) => {
      const path = `${FOLDER}/kits/${KIT}/student.mdx`;
      await write(path, (await read(path)).replaceAll('\n', '\r\n'));
      expect((await findingsIn(content)).join('\n')).toMatch(/student\.mdx:1:1: .*only the ends of its lines changed: write `\* -text`/);
    }));

  it.each([['manifest.json', /1\.0\.1 of first-cloud has no manifest/], ['results.json', /results\.json:1:1: this file of edition 1\.0\.1 of first-cloud is missing/], ['site.yaml', /site\.yaml:1:1: this file of edition 1\.0\.1/]])('that are missing are found: %s', (path, told) =>
    withWorkingCopy(PUBLISHED, async ({ content, remove }) => {
      await remove(`${FOLDER}/${path}`);
      const found = await findingsIn(content);
      expect(found.join('\n')).toMatch(told);
      expect(found).toHaveLength(1);
    }));

  it.each(['1.0', 'v1', 'Draft'])('stand in folders named for their versions: %s is none', (name) =>
    withWorkingCopy(PUBLISHED, async ({ content }) => {
      await cp(join(content, FOLDER), join(content, 'editions', KIT, name), { recursive: true });
      expect(await findingsIn(content)).toEqual([expect.stringContaining(`\`${name}\` is not of the form of a version`)]);
    }));
});

describe('notices', () => {
  it('are the one thing that is added', () =>
    withWorkingCopy(PUBLISHED, async ({ content, read }) => {
      const before = await read(`${FOLDER}/manifest.json`);
      expect(await withdraw({ content, kit: KIT, version: '1.0.1', date: '2026-11-29' }, 'The jar is no longer sold.', undefined)).toMatchObject({ isDone: true });
      expect(await read(`${FOLDER}/manifest.json`)).toBe(before);
      const book = await readBook(content);
      expect('book' in book && book.book.kits.map(({ version, notices }) => [version, notices.map(({ kind }) => kind)])).toEqual([['1.0.0', ['withdrawn']], ['1.0.1', ['correction', 'withdrawn']], ['draft', []]]);
    }));

  it('send nobody to an edition that is withdrawn too', () =>
    withWorkingCopy(PUBLISHED, async ({ content, edit, publish }) => {
      const replacements = async (): Promise<unknown> => {
        const read = await readBook(content);
        return 'book' in read ? Object.fromEntries(read.book.kits.flatMap(({ version, notices }) => notices.filter(({ kind }) => kind === 'withdrawn').map(({ replacement }) => [version, replacement]))) : read.findings;
      };
      const of = (version: string) => ({ content, kit: KIT, version, date: '2026-11-29' });
      expect(await replacements()).toEqual({ '1.0.0': '1.0.1' });
      await edit(`kits/${KIT}/kit.yaml`, 'minutes: ', 'minutes: 1');
      expect(await publish('2.0.0')).toMatchObject({ isDone: true });
      await withdraw(of('1.0.1'), 'The jar is no longer sold.', '2.0.0');
      expect(await replacements()).toEqual({ '1.0.0': '2.0.0', '1.0.1': '2.0.0' });
      await withdraw(of('2.0.0'), 'Nor is the pump.', '1.0.0');
      expect(await replacements()).toEqual({ '1.0.0': undefined, '1.0.1': undefined, '2.0.0': undefined });
    }));

  it('with anything wrong in them are findings at their place', () =>
    withWorkingCopy(PUBLISHED, async ({ content, edit }) => {
      await edit(`${FOLDER}/notice.yaml`, 'correction:', 'corection:');
      expect((await findingsIn(content)).join('\n')).toMatch(/1\.0\.1\/notice\.yaml:3:3: /);
    }));
});
