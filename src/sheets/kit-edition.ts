/** An edition of a kit, or its draft: whether it may be used, what is to be known of it, how it is named. */
import { FRAME_TEXTS, KIT_TEXTS, NOTICE_TEXTS } from '../texts/index.ts';
import type { KitView, NoticeView } from './book.ts';

/** Whether it must not be used any more. */
export const isWithdrawn = ({ notices }: Pick<KitView, 'notices'>): boolean => notices.some(({ kind }) => kind === 'withdrawn');

/** That it is withdrawn first, then the newest first. */
export const noticesOf = ({ notices }: KitView): NoticeView[] =>
  notices.toReversed().sort((a, b) => Number(b.kind === 'withdrawn') - Number(a.kind === 'withdrawn'));

/** How it is named in words. */
export const editionText = ({ draft, version, language }: KitView): string => (draft ? KIT_TEXTS[language].draftNoEdition : KIT_TEXTS[language].editionOf(version));

/** What the window's title says of one of its pages: which state it is of as well. */
export function windowTitle(kit: KitView, title: string): string {
  if (kit.draft) return FRAME_TEXTS[kit.language].draft(title);
  const whole = `${title} · ${editionText(kit)}`;
  return isWithdrawn(kit) ? NOTICE_TEXTS[kit.language].withdrawnTitle(whole) : whole;
}
