/** A notice of an edition in plain words, where no page stands around it. */
import type { NoticeView } from '../sheets/index.ts';
import { NOTICE_TEXTS, type Language } from '../texts/index.ts';

/** What to do about it, then why. */
export function noticeText({ kind, why, replacement }: NoticeView, language: Language): string {
  const said = NOTICE_TEXTS[language];
  if (kind === 'correction') return why;
  return [said.doNotUse, ...(replacement === undefined ? [] : [said.useInstead(replacement)]), why].join(' ');
}
