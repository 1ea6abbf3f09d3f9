/** Work shared out over threads is the work of one thread. */
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { checkGates, loadFolder, readFolder, type ContentFile } from '../../src/authoring/index.ts';
import { inParts, withCrew } from '../../src/commands/crew.ts';
import { TASKS } from '../../src/commands/tasks.ts';
import { compileBook, VOCABULARY } from '../../src/sheets/index.ts';
import { ROOT } from '../support/root.ts';

const filesOf = async (): Promise<readonly ContentFile[]> => (await readFolder(join(ROOT, 'content'))).files;

it('reads files in the same way and in their order, whatever is wrong with them', async () => {
  const good = await filesOf();
  const files = good.flatMap((file, i) => (i % 3 === 0 ? [file, { ...file, text: `${file.text ?? ''}\n\n{1 + ${i}} <Nowhere/> 3 kPa\n` }] : [file]));
  const alone = TASKS.read(files);
  expect(alone.filter(({ findings }) => findings.length > 0).length).toBeGreaterThan(5);
  const together = await withCrew(true, ({ work }) => work('read', inParts(files, 20)));
  expect(together.flat()).toEqual(alone);
});

it('makes the same book', async () => {
  const folder = await readFolder(join(ROOT, 'content'));
  const { content } = loadFolder(folder, VOCABULARY);
  expect(checkGates(content!)).toEqual([]);
  const { locate: _, ...plain } = content!;
  const parts = [...plain.kits].map((kit) => ({ ...plain, kits: new Map([kit]) }));
  const compiled = await withCrew(true, ({ work }) => work('compile', parts));
  expect(compileBook(content!, compiled)).toEqual(compileBook(content!));
});

it('tells what fails in any of its threads', async () => {
  const nothing = undefined as unknown as readonly ContentFile[];
  await expect(withCrew(true, ({ work }) => work('read', Array.from({ length: 40 }, (_, i) => (i === 30 ? nothing : []))))).rejects.toThrow(TypeError);
});

it.each([
  [[], 4, []],
  [[1, 2, 3, 4, 5], 2, [[1, 2, 3], [4, 5]]],
  [[1, 2], 5, [[1], [2]]],
])('%j in %i parts', (list, parts, expected) => expect(inParts(list, parts)).toEqual(expected));
