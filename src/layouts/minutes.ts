/** Moments of a lesson in minutes. */
import { formatNumber, STYLES } from '../tables/display.ts';
import type { Language } from '../texts/index.ts';

/** Seconds from the bell as minutes to a tenth, without one where it is whole. */
export const minutesText = (seconds: number, language: Language): string => {
  const tenths = Math.round(seconds / 6);
  return formatNumber(tenths / 10, tenths % 10 === 0 ? 0 : 1, STYLES[language]);
};
