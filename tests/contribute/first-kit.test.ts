/** The first page of the guide, followed word by word in a fresh folder. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { formatFinding } from '../../src/authoring/index.ts';
import { checkContent } from '../../src/commands/read-book.ts';
import { edited, FIRST_KIT, type Command, type Deed, type DeedName, type Edit } from '../../src/components/contribute/first-kit.ts';
import { runCommand } from '../support/command.ts';
import { newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

const page = readFileSync(join(ROOT, 'src', 'components', 'contribute', 'first-kit.mdx'), 'utf8');
/** The deeds in the order in which the page tells them. */
const told = [...page.matchAll(/<Deed name="([^"]+)"/g)].map(([, name]) => name as DeedName);
const deeds: readonly (readonly [DeedName, Deed])[] = told.map((name) => [name, FIRST_KIT[name]]);

let content: string;
/** Findings after the last edit. */
let expected: readonly string[] = [];

beforeAll(async () => {
  content = join(newFolder(), 'content');
  await cp(join(ROOT, 'content'), content, { recursive: true });
});
afterAll(() => removeFolder(join(content, '..')));

it('tells every deed once, and no other', () => {
  expect([...told].sort()).toEqual(Object.keys(FIRST_KIT).sort());
});

it('names commands that there are', () => {
  const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { scripts: Record<string, string> };
  for (const { text } of deeds.map(([, deed]) => deed).filter((deed): deed is Command => deed.do === 'command')) expect(Object.keys(scripts), text).toContain(nameIn(text));
});

describe('word by word', () => {
  it.each(deeds)('%s', (_, deed) => (deed.do === 'command' ? carryOut(deed) : change(deed)));

  it('ends with a kit of its own that has nothing to mend', async () => {
    const { content: loaded, findings } = await checkContent(content);
    expect(findings.map(formatFinding)).toEqual([]);
    expect(loaded?.kits.get('melting-ice')?.meta.title).toBe('How ice melts');
    expect(loaded?.kits.get('melting-ice')?.student.components.at(-1)).toMatchObject({ name: 'Value', attributes: { of: 'roomTemperature' } });
  });
});

/** `npm run new -- kit x`: new. */
const nameIn = (text: string): string => /^npm (?:run )?(\S+)/.exec(text)?.[1] ?? '';

async function carryOut({ text }: Command): Promise<void> {
  const name = nameIn(text);
  // Serving has tests of its own; it does not end.
  if (name === 'start') return;
  const args = text.split(' -- ')[1]?.split(' ') ?? [];
  const { code, stdout, stderr } = await runCommand(name, args, { env: { LAPSEBOOK_CONTENT: content } });
  expect(code, stdout + stderr).toBe(expected.length === 0 ? 0 : 1);
  if (name === 'new') expect(existsSync(join(content, 'kits', 'melting-ice', 'kit.yaml'))).toBe(true);
}

async function change(edit: Edit): Promise<void> {
  const file = join(content, edit.file);
  writeFileSync(file, edited(readFileSync(file, 'utf8'), edit));
  expected = edit.finds ?? [];
  const { findings } = await checkContent(content);
  expect(findings.map(({ code }) => code), findings.map(formatFinding).join('\n')).toEqual(expected);
}

describe('an edit', () => {
  const edit = { do: 'edit', file: 'a.mdx' } as const;
  it.each([
    [{ ...edit, lineThatBegins: 'title:', by: 'title: B' }, 'x: 1\ntitle: A b\ny: 2\n', 'x: 1\ntitle: B\ny: 2\n'],
    [{ ...edit, by: 'end' }, 'x\n', 'x\n\nend\n'],
  ])('%o', (one, before, after) => expect(edited(before, one)).toBe(after));
  it('is refused where no line begins so, or two do', () => {
    expect(() => edited('x\n', { ...edit, lineThatBegins: 'a', by: 'b' })).toThrow(/^0 lines/);
    expect(() => edited('a\na\n', { ...edit, lineThatBegins: 'a', by: 'b' })).toThrow(/^2 lines/);
  });
});
