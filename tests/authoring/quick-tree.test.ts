/** The quick reading of lesson text: the same tree as the thorough one where it gives a tree, and no way to its parser of code. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { arrange } from '../../src/authoring/lesson/arrange.ts';
import { partFrontMatter } from '../../src/authoring/lesson/front-matter.ts';
import { parseTree } from '../../src/authoring/lesson/processor.ts';
import { quickTree } from '../../src/authoring/lesson/quick-tree.ts';
import { slowPart } from '../../src/authoring/lesson/slow.ts';
import { lessonSource } from '../../src/authoring/lesson/source.ts';
import { ROOT } from '../support/root.ts';
import { change, randomFrom } from './fuzz.ts';
import { vocabulary } from './vocabulary.ts';

const quick = (text: string) => quickTree(lessonSource('a.mdx', text));

/** Trees as both parsers agree to write them: each notes for itself how it came by a node, and leaves out or empties what is not there. */
function written(tree: Parameters<typeof arrange>[0] | undefined): string | undefined {
  if (tree === undefined) return undefined;
  arrange(tree, vocabulary);
  return JSON.stringify(tree, (key, value: unknown) => (key === 'data' || value === null ? undefined : inOrder(value)));
}

const inOrder = (value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))) : value;

function thorough(text: string): string | undefined {
  const read = parseTree(text);
  return 'tree' in read ? written(read.tree) : undefined;
}

const lessonsIn = (folder: string): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.mdx'))
    .sort()
    .map((path) => partFrontMatter(readFileSync(join(ROOT, folder, path), 'utf8')).body);
const LESSONS = [...lessonsIn('content'), ...lessonsIn('tests/content/good')];

describe('quickTree', () => {
  it('reads every lesson without findings, its places included, as the thorough parser does', () => {
    expect(LESSONS.length).toBeGreaterThan(50);
    for (const text of LESSONS) expect(written(quick(text)), text).toBe(thorough(text));
  });

  it.each([
    ['a sentence of components', 'Read <Value of="roomPressure"/> <Value of="dewPoint"/>.\n'],
    ['a component around a sentence', '<Step at="0 min">Press *once*, <Given>5 min</Given> long.</Step>\n'],
    ['a component on three lines', '<Step\n  at="0 min"\n  title=\'Wait\'>\n\nWait.\n\n</Step>\n'],
    ['lists, quotes and tables', '- a\n  1. b\n\n> c <Given>5 kPa</Given>\n\n| a | $b$ |\n|---|---:|\n| c | `d` |\n'],
    ['formulas and code with braces', '$$\n\\frac{a}{b}\n$$\n\nSo $x_{1}$ and `{x}`.\n\n```\n{y}\n```\n'],
    ['letters of more than one unit', '😀 <Given source="a-1990">5 µm</Given> é 😀\n'],
    ['line ends of another kind', 'One\r\n\r\n<Value of="roomPressure"/> two\r\n'],
  ])('reads %s alike', (_, text) => {
    expect(quick(text)).toBeDefined();
    expect(written(quick(text))).toBe(thorough(text));
  });

  it('gives the same tree of changed lessons, but for one wrong one in many', () => {
    const random = randomFrom(20261125);
    const any = (): string => LESSONS[Math.floor(random() * LESSONS.length)]!;
    const counts = { same: 0, other: 0 };
    while (counts.same + counts.other < 600) {
      const text = change(change(any(), any(), random), any(), random);
      const tree = slowPart(text) === undefined ? written(quick(text)) : undefined;
      if (tree !== undefined) counts[tree === thorough(text) ? 'same' : 'other']++;
    }
    expect(counts.other).toBeLessThanOrEqual(1);
  });

  const DEEP = 30_000;
  it.each([
    ['code in an attribute', `<A a={${'['.repeat(DEEP)}${']'.repeat(DEEP)}}/>`],
    ['code among attributes', `<A {...${'['.repeat(DEEP)}}/>`],
    ['code in a paragraph', `a {${'!'.repeat(DEEP)}b}`],
    ['code by itself', `{${'('.repeat(DEEP)}a${')'.repeat(DEEP)}}`],
    ['code between dollar signs of attributes', `<A a="$" b={${'['.repeat(DEEP)}} c="$"/>`],
    ['an export', `export default ${'['.repeat(DEEP)}`],
    ['an import within a component', `<Step>\nimport ${'('.repeat(DEEP)}\n</Step>`],
    ['a brace in words', 'a \\{b\\}'],
    ['a brace in an address', '[a](b{c})'],
    ['a brace in the name of a language', '```a{b}\n```'],
    ['a bare address', 'See https://example.org or www.example.org.'],
    ['an address of mail', 'Write to a@example.org.'],
    ['a stand-in of a brace', 'a \ue000 b'],
    ['half a letter', 'a \ud800 b'],
    ['many tags', '<Given>'.repeat(1001)],
    ['tags in each other', '<Given>\n'.repeat(900)],
    ['a tag closed in a quote', '<Predict>\n\nWhat?\n\n> </Predict>\n'],
    ['a backslash in a value', 'a <Value of="a\\b"/> b'],
  ])('leaves %s to the thorough parser', (_, text) => {
    expect(quick(text)).toBeUndefined();
  });
});
