/** Notices of an edition in their order. */
import { expect, it } from 'vitest';
import type { KitView, NoticeView } from '../../src/sheets/index.ts';
import { noticesOf } from '../../src/sheets/kit-edition.ts';

const notice = (kind: NoticeView['kind'], why: string): NoticeView => ({ kind, date: '2026-09-01', why, numbers: [], unseen: 0 });

it('says first that an edition is withdrawn, then what is newest', () => {
  const notices = [notice('correction', 'oldest'), notice('withdrawn', 'out'), notice('correction', 'newest')];
  expect(noticesOf({ notices } as unknown as KitView).map(({ why }) => why)).toEqual(['out', 'newest', 'oldest']);
});
