/** The guide leaves nothing out: every component, table kind, finding, unit, quantity and field is on its pages. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FINDINGS, formatFinding, loadContent, UNITS } from '../../src/authoring/index.ts';
import { EXAMPLE_GROUPS } from '../../src/components/contribute/examples/index.ts';
import { FIRST_KIT } from '../../src/components/contribute/first-kit.ts';
import { drawExample } from '../../src/components/contribute/practice/draw.ts';
import { PRACTICE_FILES } from '../../src/components/contribute/practice/files.ts';
import { findingsOfSheet, loadPractice } from '../../src/components/contribute/practice/folder.ts';
import { attributesOf, columnRows, findingGroups, unitRows, valueRows } from '../../src/components/contribute/reference-lists.ts';
import { COMPONENTS, VOCABULARY } from '../../src/sheets/index.ts';
import { QUANTITIES, TABLE_KINDS } from '../../src/tables/index.ts';
import { newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

const examples = EXAMPLE_GROUPS.flatMap((group) => group.examples.map((example) => ({ ...example, group: group.id })));
const prose = (name: string): string => readFileSync(join(ROOT, 'src', 'components', 'contribute', `${name}.mdx`), 'utf8');

describe('live examples', () => {
  it.each([...COMPONENTS.keys()])('there is one of <%s>', (name) => {
    const own = examples.filter(({ of }) => of === name);
    expect(own).toHaveLength(1);
    expect(own[0]?.source).toMatch(new RegExp(`<${name}[ >]`));
  });

  it.each(TABLE_KINDS.map(({ kind }) => kind))('there is one of a table of %s', (kind) => {
    const own = examples.filter(({ of }) => of === kind);
    expect(own).toHaveLength(1);
    expect(own[0]?.source).toContain(`<WorkedTable kind="${kind}"`);
  });

  it.each(examples)('$of is drawn from its source', ({ source, on, of, teachers }) => {
    const markup = drawExample(source, on, 'example', teachers);
    expect(markup).toMatch(/<[a-z]/);
    expect(markup).not.toMatch(/undefined|NaN|\[object|style="/);
    if (TABLE_KINDS.some(({ kind }) => kind === of)) expect(markup).toMatch(/<tbody><tr[^>]*><th scope="row">/);
  });

  it('would stop the build if one could not be built', () => {
    expect(() => drawExample('It was <Value of="roomTemprature"/>.', 'student', 'x')).toThrow(/unknown|not a choice/);
    expect(() => drawExample('It was 21 °C.', 'student', 'x')).toThrow(/typed in/);
  });

  it('shows every group on the page, once', () => {
    const shown = [...prose('text').matchAll(/<Examples group="([^"]+)"/g)].map(([, id]) => id);
    expect(shown).toEqual(EXAMPLE_GROUPS.map(({ id }) => id));
  });
});

describe('the practice folder', () => {
  it('has nothing to mend, read from files as any content folder is', async () => {
    const folder = newFolder();
    for (const [path, text] of Object.entries(PRACTICE_FILES)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    const { content, findings } = await loadContent(folder, VOCABULARY);
    await removeFolder(folder);
    expect(findings.map(formatFinding)).toEqual([]);
    expect([...(content?.kits.keys() ?? [])]).toEqual(['practice']);
    expect(loadPractice().findings).toEqual([]);
  });

  it.each(['breakIt', 'misspell'] as const)('shows the finding of %s', (name) => {
    expect(prose('first-kit')).toContain(`<FindingShown deed="${name}" />`);
    expect(findingsOfSheet(FIRST_KIT[name].by).map(({ code }) => code)).toEqual(FIRST_KIT[name].finds);
  });
});

describe('lists made from the code', () => {
  it('explain every finding, each once', () => {
    const listed = findingGroups().flatMap(({ findings }) => findings.map(({ code }) => code));
    expect(listed).toEqual(Object.keys(FINDINGS));
    for (const { title, findings } of findingGroups()) expect(findings.length, title).toBeGreaterThan(0);
  });

  it('name every unit, quantity and column', () => {
    expect(unitRows().flatMap(({ units }) => units).sort()).toEqual(UNITS.map(({ symbol }) => symbol).sort());
    expect(valueRows().map(({ name }) => name)).toEqual(Object.keys(QUANTITIES));
    for (const kind of TABLE_KINDS) expect(columnRows(kind).map(({ key }) => key)).toEqual(kind.columns.map(({ key }) => key));
  });

  it('name the attributes of every component that takes some by itself', () => {
    expect(attributesOf('Step').map(({ path }) => path)).toEqual(['at', 'for', 'title', 'action', 'drop', 'particles', 'expect']);
    expect(attributesOf('TeacherOnly')).toEqual([]);
    for (const { kind, listAttribute } of TABLE_KINDS) expect(attributesOf(kind).map(({ path }) => path)).toContain(listAttribute);
  });
});
