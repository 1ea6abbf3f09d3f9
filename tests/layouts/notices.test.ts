/** Numbers for who may read them, editions with what changed. */
import { describe, expect, it } from 'vitest';
import { editionRows, shownNumbers } from '../../src/layouts/notices.ts';
import type { ChangeView, KitView } from '../../src/sheets/index.ts';
import { titlesOf } from '../../src/sheets/titles.ts';

it('shows a number that tells an answer to teachers alone', () => {
  const numbers = [{ label: 'a', before: '1', after: '2', forTeachers: false }, { label: 'b', before: '3', after: '4', forTeachers: true }];
  expect(shownNumbers(numbers, true)).toEqual(numbers);
  expect(shownNumbers(numbers, false).map(({ label }) => label)).toEqual(['a']);
});

describe('the editions of a kit', () => {
  const told = (...versions: readonly string[]) => versions.map((version) => ({ version, date: '2026-09-01', text: `says ${version}` }));
  const change = (from: string, to: string): ChangeView => ({ from, to, words: [], numbers: [] });
  const state = (version: string, changes: KitView['changes']): KitView => ({ id: 'cloud', version, draft: version === 'draft', notices: [], changes }) as unknown as KitView;
  const kits = [state('1.0.0', told('0.1.0')), state('1.1.0', told('0.1.0', '1.1.0')), state('draft', told('0.1.0', '1.0.0', '1.1.0', '1.2.0'))];
  const rows = editionRows(titlesOf(kits)[0]!, { kit: 'cloud', changes: [change('1.1.0', 'draft'), change('1.0.0', '1.1.0')] });

  it('stand with the newest first, each with what changed since the one before', () =>
    expect(rows.map(({ kit, change: since }) => [kit.version, since?.from])).toEqual([['draft', '1.1.0'], ['1.1.0', '1.0.0'], ['1.0.0', undefined]]));

  it('are told in the words of the newest state; the draft what no edition has told yet', () =>
    expect(rows.map(({ texts }) => texts)).toEqual([['says 1.2.0'], ['says 1.1.0'], ['says 1.0.0']]));
});
