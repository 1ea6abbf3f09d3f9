/** A printed code that leads from a sheet of paper back to its page: a QR code, ISO/IEC 18004:2015. Pure: drawn at build and again in the browser. */
import { encode } from 'uqr';
import { CODE_TEXTS, type Language } from '../texts/index.ts';
import { escape } from './svg.ts';

/** Light modules that must stand around the code: ISO/IEC 18004:2015, section 6.3.8. */
const QUIET = 4;

/** The dark modules of a row as rectangles: neighbors are one, so that no hairline shows between them on paper. */
const rowPath = (row: readonly boolean[], y: number): string => {
  let path = '';
  for (let start = row.indexOf(true); start >= 0; start = row.indexOf(true, start)) {
    const light = row.indexOf(false, start);
    const end = light < 0 ? row.length : light;
    path += `M${start + QUIET} ${y + QUIET}h${end - start}v1h${start - end}z`;
    start = end;
  }
  return path;
};

/**
 * The code of an address.
 * @param address - whole address of a page, with the reader's room after `#` where there is one
 * @returns SVG, black on white whatever the page's colors, one unit a module, with the quiet zone; readable with 15 % of it lost (level M)
 * @throws RangeError where the address is longer than a code can hold (2,331 bytes)
 */
export const printedCode = (address: string, language: Language): string => {
  if (last?.address !== address || last.language !== language) last = { address, language, code: draw(address, language) };
  return last.code;
};

/** Both editions of a sheet are made one after the other and print one address, and choosing among the masks of a code takes longer than the rest of the page. */
let last: { readonly address: string; readonly language: Language; readonly code: string } | undefined;

const draw = (address: string, language: Language): string => {
  const { data, size } = encode(address, { ecc: 'M', boostEcc: false, border: 0 });
  const side = size + 2 * QUIET;
  return (
    `<svg class="code" viewBox="0 0 ${side} ${side}" role="img" aria-label="${escape(CODE_TEXTS[language].of(address))}" shape-rendering="crispEdges">` +
    `<path d="M0 0h${side}v${side}H0z" fill="#fff"/><path d="${data.map(rowPath).join('')}" fill="#000"/></svg>`
  );
};
