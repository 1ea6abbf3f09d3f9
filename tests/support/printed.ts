/** Reads a PDF that Chromium printed: its pages, their size and their text. */
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PrintedPage {
  /** Width and height, mm. */
  readonly size: readonly [number, number];
  /** In the order of drawing; spaces are as drawn. */
  readonly text: string;
  /** The lowest line of the page's matter, from left to right; empty on an empty page. */
  readonly lastLine: string;
}

/** 1 pt is 1/72 in. */
const MM_PER_POINT = 25.4 / 72;

/** What stands lower is the foot of the page: the margin of the style sheet for paper, pt. */
const FOOT = 17 / MM_PER_POINT;
/** Raised and lowered letters of one line are no farther apart, pt. */
const LINE = 4;

interface Piece {
  readonly str: string;
  readonly transform: readonly number[];
}

function lastLineOf(items: readonly Piece[], bottom: number): string {
  const matter = items.filter(({ str, transform }) => str.trim() !== '' && transform[5]! - bottom > FOOT);
  const lowest = Math.min(...matter.map(({ transform }) => transform[5]!));
  return matter.filter(({ transform }) => transform[5]! - lowest < LINE).sort((a, b) => a.transform[4]! - b.transform[4]!).map(({ str }) => str).join(' ');
}

/** The pages in their order. */
export async function pagesOfPdf(bytes: Uint8Array): Promise<PrintedPage[]> {
  const opening = getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS });
  try {
    const file = await opening.promise;
    const pages: PrintedPage[] = [];
    for (let number = 1; number <= file.numPages; number++) {
      const page = await file.getPage(number);
      const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
      const { items } = await page.getTextContent({ disableNormalization: true });
      const text = items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? '\n' : ''}` : '')).join('');
      const lastLine = lastLineOf(items.filter((item) => 'str' in item), bottom);
      pages.push({ size: [(right - left) * MM_PER_POINT, (top - bottom) * MM_PER_POINT], text, lastLine });
    }
    return pages;
  } finally {
    await opening.destroy();
  }
}
