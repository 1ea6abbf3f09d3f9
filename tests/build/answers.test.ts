/** What only teachers may see is nowhere in the public folder, whatever kind of file, and whole in theirs. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { sharedBuild } from '../support/builds.ts';
import { filesBelow } from '../support/folders.ts';
import { lettersOf, questionsOf, secretsOf } from '../support/lesson-secrets.ts';
import { ROOT } from '../support/root.ts';

const builds = inject('builds');
const cases = [
  { name: 'the project’s own content', content: join(ROOT, 'content'), out: await sharedBuild(builds, 'own') },
  { name: 'the highland content', content: join(ROOT, 'tests', 'content', 'good', 'highland'), out: await sharedBuild(builds, 'highland') },
];

const NAMED: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: ' ' };

/** The words of a file: of a page without its tags, what its pictures say among them; of others as they are. */
const wordsOf = (path: string, text: string): string =>
  lettersOf(path.endsWith('.html') ? text.replace(/<img\b[^>]*\balt="([^"]*)"[^>]*>/g, '$1').replace(/<[^>]*>/g, '').replace(/&#(x?)([0-9a-f]+);|&([a-z]+);/gi, (_, hex: string, code: string, name: string) => (code ? String.fromCodePoint(parseInt(code, hex ? 16 : 10)) : (NAMED[name] ?? ''))) : text);

/** Words and raw text of all files that are text. */
const readAll = (folder: string): { path: string; text: string; words: string; raw: string }[] =>
  filesBelow(folder)
    .filter((path) => !/\.(woff2|png)$/.test(path))
    .map((path) => ({ path, text: readFileSync(join(folder, path), 'utf8') }))
    .map((file) => ({ ...file, words: wordsOf(file.path, file.text), raw: lettersOf(file.text) }));

describe.each(cases)('$name', ({ content, out }) => {
  const secrets = secretsOf(content);
  const forAll = readAll(out);
  const forTeachers = readAll(`${out}-teachers`);
  const questions = questionsOf(content);

  it('holds something to hide', () => {
    expect(secrets.length).toBeGreaterThan(3);
    expect(questions.length).toBeGreaterThan(1);
  });

  it('hides every text for teachers and every reason', () => {
    const leaks = secrets.flatMap(({ where, letters }) => forAll.filter(({ words, raw }) => words.includes(letters) || raw.includes(letters)).map(({ path }) => `${path} holds ${where}: ${letters.slice(0, 60)}`));
    expect(leaks).toEqual([]);
  });

  it('shows them all to teachers', () => {
    expect(secrets.filter(({ letters }) => !forTeachers.some(({ words }) => words.includes(letters))).map(({ where, letters }) => `${where}: ${letters.slice(0, 60)}`)).toEqual([]);
  });

  it('marks no option as right and gives no tolerance or rule of marking', () => {
    const marks = /class="(?:[^" ]+ )*(?:right-answer|right|wrong|correct|solution|reasons|rubric)[ "]|data-(?:right|correct|answer|tolerance)|right within|also right|>right order:|marked out of|"(?:right|correct|answer|tolerance|accepts|why|solution|rubric)"\s*:/i;
    expect(forAll.filter(({ path, text }) => !path.endsWith('.css') && marks.test(text)).map(({ path, text }) => `${path}: ${marks.exec(text)?.[0]}`)).toEqual([]);
    expect(forTeachers.some(({ text }) => marks.test(text))).toBe(true);
  });

  it('does not give the right order away', () => {
    const orderings = questions.filter(({ items }) => items !== undefined);
    for (const { id, items = [] } of orderings) {
      const inOrder = lettersOf(items.join(''));
      const shown = forAll.filter(({ words }) => items.every((item) => words.includes(lettersOf(item))));
      expect(shown.length, id).toBeGreaterThan(0);
      for (const { path, words } of shown) {
        const places = items.map((item) => words.indexOf(lettersOf(item)));
        expect(places, `${path}: ${id}`).not.toEqual([...places].sort((a, b) => a - b));
        expect(words.includes(inOrder), `${path}: ${id}`).toBe(false);
      }
    }
  });

  it('does not put the right option always in one place', () => {
    const page = forAll.find(({ path }) => path.endsWith('/questions/index.html'))?.words ?? '';
    const places = questions
      .filter(({ kind, options = [] }) => kind === 'choice' && options.every(({ text }) => text !== undefined))
      .map(({ options = [] }) => {
        const inOrder = options.map(({ text = '', right }) => ({ right, at: page.indexOf(lettersOf(text)) })).sort((a, b) => a.at - b.at);
        return inOrder.findIndex(({ right }) => right === true);
      });
    expect(places.length).toBeGreaterThan(0);
    if (places.length > 2) expect(new Set(places).size).toBeGreaterThan(1);
  });
});
