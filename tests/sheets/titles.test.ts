/** Which edition of a kit is shown, and which goes with a translation: "`/kits/<kit>/` shows the newest edition not withdrawn". */
import { describe, expect, it } from 'vitest';
import type { KitView } from '../../src/sheets/index.ts';
import { isWithdrawn } from '../../src/sheets/kit-edition.ts';
import { stateFor, titlesOf } from '../../src/sheets/titles.ts';

/** `1.0.0`, `1.0.0 withdrawn`, `1.0.0 corrected`, `draft`. */
function state(name: string, id = 'cloud'): KitView {
  const [version = '', noticed] = name.split(' ');
  const kind = noticed === 'withdrawn' ? 'withdrawn' : 'correction';
  const notices = noticed === undefined ? [] : [{ kind, date: '2026-09-01', why: 'So.', numbers: [], unseen: 0 }];
  return { id, version, draft: version === 'draft', notices } as unknown as KitView;
}

const titleOf = (names: readonly string[]) => titlesOf(names.map((name) => state(name)))[0]!;

describe('what is shown of a kit', () => {
  it.each([
    [['draft'], 'draft'],
    [['1.0.0'], '1.0.0'],
    [['1.0.0', 'draft'], '1.0.0'],
    [['1.0.0', '1.1.0', '2.0.0', 'draft'], '2.0.0'],
    [['1.0.0', '1.1.0 withdrawn', 'draft'], '1.0.0'],
    [['1.0.0 withdrawn', '1.1.0 corrected'], '1.1.0'],
    // Nothing else is left: it is shown with its notice first, and no draft takes its place unasked.
    [['1.0.0 withdrawn', '1.1.0 withdrawn', 'draft'], '1.1.0'],
    [['1.0.0 withdrawn'], '1.0.0'],
  ])('%j: %s', (names, shown) => expect(titleOf(names).shown.version).toBe(shown));

  it('keeps the order of the book, each kit once', () => {
    const kits = [state('1.0.0', 'a'), state('draft', 'a'), state('draft', 'b'), state('1.0.0', 'c')];
    expect(titlesOf(kits).map(({ id, kits: own, draft }) => [id, own.length, draft?.version])).toEqual([['a', 2, 'draft'], ['b', 1, 'draft'], ['c', 1, undefined]]);
  });
});

describe('what goes with a kit in another language', () => {
  it.each([
    ['draft', ['1.0.0', 'draft'], 'draft'],
    ['draft', ['1.0.0'], '1.0.0'],
    ['1.0.0', ['1.0.0', '1.1.0', 'draft'], '1.1.0'],
    ['1.0.0', ['1.0.0', '1.1.0 withdrawn'], '1.0.0'],
    ['1.0.0', ['draft'], 'draft'],
  ])('%s beside %j: %s', (kit, names, expected) => expect(stateFor(state(kit), titleOf(names)).version).toBe(expected));
});

it('is withdrawn by a notice of that kind alone', () => expect(['1.0.0', '1.0.0 corrected', '1.0.0 withdrawn'].map((name) => isWithdrawn(state(name)))).toEqual([false, false, true]));
