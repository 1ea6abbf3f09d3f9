/** What search finds: questions without their answers; quickly. */
import MiniSearch from 'minisearch';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { beforeAll, describe, expect, it } from 'vitest';
import { moveAmong } from '../../src/browser/search-keys.ts';
import { searchDocuments, searchIndexScript, type SearchDocument } from '../../src/exports/index.ts';
import { INDEX_NAME, INDEX_OPTIONS, SEARCH_OPTIONS } from '../../src/exports/search-options.ts';
import { lettersOf, secretsOf } from '../support/lesson-secrets.ts';
import { ROOT } from '../support/root.ts';
import { ownBook } from './data.ts';

let documents: SearchDocument[];
let script: string;
let index: MiniSearch<SearchDocument>;
beforeAll(async () => {
  documents = searchDocuments(await ownBook());
  script = searchIndexScript(documents);
  const window: Record<string, never> = {};
  runInNewContext(script, { window });
  index = MiniSearch.loadJS<SearchDocument>(window[INDEX_NAME]!, INDEX_OPTIONS);
});

const titlesFor = (words: string): string[] => index.search(words, SEARCH_OPTIONS).map((found) => String(found['title']));

describe('the index', () => {
  it('has every kind of thing', () => {
    expect(new Set(documents.map(({ kind }) => kind))).toEqual(new Set(['kit', 'table', 'question', 'hazard', 'source']));
    expect(documents.filter(({ kind }) => kind === 'question').length).toBeGreaterThan(5);
  });

  it('finds by the beginning of a word, without regard to case and accents, and over a slip of the finger', () => {
    const whole = titlesFor('evacuated vessel');
    expect(whole.length).toBeGreaterThan(0);
    for (const words of ['EVACUATED VESSEL', 'évacuated vessel', 'evacuat vess', 'evacated vessel']) expect(titlesFor(words), words).toContain(whole[0]);
  });

  it('holds no answer, no reason and nothing for teachers', () => {
    const letters = lettersOf(script);
    const secrets = secretsOf(join(ROOT, 'content'));
    expect(secrets.length).toBeGreaterThan(3);
    expect(secrets.filter((secret) => letters.includes(secret.letters)).map(({ where }) => where)).toEqual([]);
  });

  it('answers within 30 ms, also with a hundred kits', () => {
    const many = new MiniSearch<SearchDocument>(INDEX_OPTIONS);
    many.addAll(Array.from({ length: 100 }, (_, copy) => documents.map((one) => ({ ...one, id: copy * documents.length + one.id }))).flat());
    const times = ['c', 'cloud', 'pressure falls', 'thermometer reading', 'zzz'].map((words) => {
      // The least of several: what else the machine does is not the index's doing.
      const runs = Array.from({ length: 7 }, () => {
        const from = performance.now();
        many.search(words, SEARCH_OPTIONS);
        return performance.now() - from;
      });
      return Math.min(...runs);
    });
    expect(times.toSorted((a, b) => a - b)[2]).toBeLessThan(30);
  });
});

describe('arrow keys', () => {
  it.each([
    ['ArrowDown', 0, 3, 1], ['ArrowDown', 2, 3, undefined], ['ArrowUp', 1, 3, 0], ['ArrowUp', 0, 3, undefined],
    ['Home', 2, 3, 1], ['End', 1, 3, 2], ['End', 0, 3, undefined], ['x', 1, 3, undefined], ['ArrowDown', -1, 3, undefined],
  ] as const)('%s at %i of %i', (key, at, count, place) => expect(moveAmong(key, at, count)).toBe(place));
});
