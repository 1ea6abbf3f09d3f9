/** Safety signs: own plain drawings in the shapes and colors of ISO 3864-1. */
import { SIGN_TEXTS, type Language, type SignNumber } from '../texts/index.ts';
import { SIGNS, type SignKind } from './sign-table.ts';
import { escape } from './svg.ts';

/** Signal yellow, red, blue and green near RAL 1003, 3001, 5005 and 6032, which ISO 3864-4:2011 gives as examples. */
const YELLOW = '#f9a800';
const RED = '#9b2423';
const BLUE = '#005387';
const GREEN = '#237f52';
const BLACK = '#000';
const WHITE = '#fff';

const on = (color: string, symbol: string): string => `<g color="${color}">${symbol}</g>`;

const GROUNDS: Record<SignKind, (symbol: string) => string> = {
  warning: (symbol) => `<path d="M50 7 96 89H4z" fill="${YELLOW}" stroke="${BLACK}" stroke-width="6" stroke-linejoin="round"/>${on(BLACK, symbol)}`,
  prohibition: (symbol) =>
    `<circle cx="50" cy="50" r="43" fill="${WHITE}" stroke="${RED}" stroke-width="9"/>${on(BLACK, symbol)}<path d="M20 20 80 80" stroke="${RED}" stroke-width="8" fill="none"/>`,
  mandatory: (symbol) => `<circle cx="50" cy="50" r="48" fill="${BLUE}"/>${on(WHITE, symbol)}`,
  'safe-condition': (symbol) => `<rect x="3" y="3" width="94" height="94" fill="${GREEN}"/>${on(WHITE, symbol)}`,
  'fire-equipment': (symbol) => `<rect x="3" y="3" width="94" height="94" fill="${RED}"/>${on(WHITE, symbol)}`,
};

const isDrawn = (number: string): number is SignNumber => Object.hasOwn(SIGNS, number);

/**
 * A safety sign as SVG text.
 * @param number - its number in ISO 7010, for example `W021`
 * @throws RangeError where the sign is not among those drawn
 */
export const renderSign = (number: string, language: Language): string => {
  if (!isDrawn(number)) throw new RangeError(`No sign ${number} is drawn; there are ${Object.keys(SIGNS).join(', ')}.`);
  const sign = SIGNS[number];
  return `<svg class="sign sign-${sign.kind}" viewBox="0 0 100 100" width="48" height="48" role="img"><title>${escape(`${SIGN_TEXTS[language][number]} (ISO 7010 ${number})`)}</title>${GROUNDS[sign.kind](sign.symbol)}</svg>`;
};
