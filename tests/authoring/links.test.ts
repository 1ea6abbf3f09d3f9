/** Relative links of lesson text: those that lead somewhere pass, each of the others is told what to write. Pages as they are built: tests/build/lesson-links.test.ts. */
import { cp, readFile, writeFile } from 'node:fs/promises';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadContent, type Finding } from '../../src/authoring/index.ts';
import { SITE_PAGES } from '../../src/authoring/link-targets.ts';
import { VOCABULARY } from '../../src/sheets/index.ts';
import { ROOT } from '../support/root.ts';
import { MINIMAL, withOverlay } from './folders.ts';

const KIT = 'kits/first-cloud';

/** Findings where texts are added to files of the smallest content folder, beside it a second kit. */
const withTexts = (texts: Readonly<Record<string, string>>): Promise<readonly Finding[]> =>
  withOverlay('none', undefined, async (folder) => {
    await cp(join(MINIMAL, KIT), join(folder, 'kits/second-cloud'), { recursive: true });
    for (const [path, text] of Object.entries(texts)) {
      const file = join(folder, path);
      await writeFile(file, existsSync(file) ? `${await readFile(file, 'utf8')}\n${text}\n` : text);
    }
    return (await loadContent(folder, VOCABULARY)).findings;
  });

const background = (text: string): Promise<readonly Finding[]> => withTexts({ [`${KIT}/background.mdx`]: text });

describe('a link leads to', () => {
  it.each([
    ['a sheet', '../student/index.html'],
    ['the page of the kit', '../index.html'],
    ['the sheet itself', 'index.html'],
    ['the top of the sheet', '#top'],
    ['a step', '../run/index.html#step-2'],
    ['a question', '../questions/index.html#question-why'],
    ['a hazard', '../safety/index.html#hazard-vacuum'],
    ['another kit', '../../../second-cloud/index.html'],
    ['an edition of another kit, which is not known here', '../../../second-cloud/1.0.0/run/index.html#step-40'],
    ['a draft while drafts are shown', '../../draft/run/index.html'],
    ['a file beside the kit', '../first-cloud.zip'],
    ['a page of the site', '../../../../safety/index.html#hazard-vacuum'],
    ['a page elsewhere', 'https://school.example/'],
    ['somebody', 'mailto:science@school.example'],
  ])('%s: %s', async (_, address) => expect(await background(`See [this](${address}).`)).toEqual([]));

  it('a table of the sheet, by its own name or by the next number of its kind', async () => {
    const tables = '<WorkedTable kind="pressure-steps" drops="0 kPa, 5 kPa"/>\n\n<WorkedTable kind="pressure-steps" id="own" drops="0 kPa, 9 kPa"/>\n\n<WorkedTable kind="pressure-steps" drops="0 kPa, 8 kPa"/>\n\n<Curve kind="pressure-steps" drops="0 kPa, 8 kPa"/>';
    expect(await background(`${tables}\n\n[a](#own) [b](#pressure-steps-1) [c](#pressure-steps-2) [d](#pressure-steps-figure-1)`)).toEqual([]);
    expect((await background(`${tables}\n\n[a](#pressure-steps-3)`)).map(({ code }) => code)).toEqual(['dead-link']);
  });

  it('a table that only teachers see, from a text that only they see', async () => {
    const hidden = '<TeacherOnly>\n\n<WorkedTable kind="pressure-steps" drops="0 kPa, 5 kPa"/>\n\n[a](#pressure-steps-1)\n\n</TeacherOnly>';
    expect(await background(hidden)).toEqual([]);
    expect((await background(`${hidden}\n\n[a](#pressure-steps-1)`)).map(({ code }) => code)).toEqual(['dead-link']);
  });
});

describe('a link that leads nowhere is told what to write', () => {
  it.each([
    ['../studnet/index.html', '../student/index.html'],
    ['student.mdx', '../student/index.html'],
    ['../student/', '../student/index.html'],
    ['run.mdx#step-2', '../run/index.html#step-2'],
    ['questions/why.mdx', '../questions/index.html#question-why'],
    ['../../hazards/vacuum.mdx', '../safety/index.html#hazard-vacuum'],
    ['../../../second-clod/index.html', '../../../second-cloud/index.html'],
    ['../second-cloud/run.mdx', '../../../second-cloud/index.html'],
    ['../..', '../../index.html'],
    ['#step-2', '../run/index.html#step-2'],
    ['../safety/index.html#hazard-vacum', '../safety/index.html#hazard-vacuum'],
  ])('%s: %s', async (address, proposed) => {
    const [finding, ...more] = await background(`See [this](${address}).`);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ code: 'dead-link', instead: `write \`${proposed}\`` });
    expect(await background(`See [this](${proposed}).`)).toEqual([]);
  });

  it.each(['', '../../../../../../outside.html', '../../../third-cloud/index.html', '../../../../checks/index.html', '../run/index.html#the-third-run'])('`%s`', async (address) => {
    expect((await background(`See [this](${address}).`)).map(({ code }) => code)).toEqual(['dead-link']);
  });

  it('as a picture is', async () => {
    expect(await background('See [this](jar.png).')).toMatchObject([{ code: 'unknown-reference', what: 'there is no picture `jar.png`' }]);
  });

  it('in a draft where drafts are not shown', async () => {
    const findings = await withTexts({ 'site.yaml': 'drafts: false', [`${KIT}/background.mdx`]: 'See [this](../../draft/run/index.html).' });
    expect(findings.map(({ code }) => code)).toEqual(['dead-link']);
  });
});

describe('a text on several pages', () => {
  const SECOND = 'hazards/side-lamp.mdx';
  const lamp = '---\ntitle: Lamp\nsignal: CAUTION\nsigns: []\ncovers: [lamp]\nwho: All\n---\nIt is bright.';

  it('of a hazard leads to another hazard that each of its kits lists', async () => {
    const link = { 'hazards/vacuum.mdx': 'See [the lamp](../safety/index.html#hazard-side-lamp).', [SECOND]: lamp };
    const findings = await withTexts(link);
    expect(findings).toHaveLength(1);
    expect(findings[0]?.what).toContain('from the page `kits/first-cloud/…/safety/index.html`, where this text stands as well');
    expect((await withTexts({ ...link, [SECOND]: `${lamp} See [the vessel](../safety/index.html#hazard-vacuum).`, 'hazards/vacuum.mdx': '' }))).toEqual([]);
  });

  it('of a hazard leads to no sheet of a kit: it stands on a page of the site as well', async () => {
    expect((await withTexts({ 'hazards/vacuum.mdx': 'See [this](../student/index.html).' })).map(({ code }) => code)).toEqual(['dead-link']);
  });

  it('of a question or a prediction names the sheet, because the board shows it too', async () => {
    const table = { [`${KIT}/student.mdx`]: '<WorkedTable kind="pressure-steps" drops="0 kPa, 5 kPa"/>\n\n<Predict>\n\n[a](#pressure-steps-1)\n\n</Predict>' };
    expect(await withTexts(table)).toMatchObject([{ code: 'dead-link', instead: 'write `../student/index.html#pressure-steps-1`' }]);
    expect(await withTexts({ [`${KIT}/questions/why.mdx`]: 'See [this](#step-1).' })).toMatchObject([{ code: 'dead-link', instead: 'write `../run/index.html#step-1`' }]);
  });
});

it('knows no page of the site that is not made', () => {
  expect(SITE_PAGES.filter((page) => !existsSync(join(ROOT, 'src', 'pages', '[...edition]', page, 'index.astro')))).toEqual([]);
});

describe('a name that an author gives to a place', () => {
  const named = (component: string, name: string): string => `<${component} kind="pressure-steps" drops="0 kPa, 5 kPa" id="${name}"/>`;
  it.each([
    ['another table’s', [named('WorkedTable', 'steps'), named('WorkedTable', 'steps')]],
    ['a figure’s', [named('Curve', 'steps'), named('WorkedTable', 'steps')]],
    ['one that is counted', ['<WorkedTable kind="pressure-steps" drops="0 kPa, 5 kPa"/>', named('WorkedTable', 'pressure-steps-1')]],
  ])('is refused where it is %s', async (_, components) => {
    expect((await background(components.join('\n\n'))).map(({ code, line }) => `${code} ${line}`)).toEqual([`duplicate-name ${3 + (await lines())}`]);
  });
  it('may be given once on each sheet', async () => {
    expect(await background(`${named('WorkedTable', 'steps')}\n\n${named('Curve', 'drawn')}`)).toEqual([]);
  });
  const lines = async (): Promise<number> => (await readFile(join(MINIMAL, KIT, 'background.mdx'), 'utf8')).split('\n').length;
});
