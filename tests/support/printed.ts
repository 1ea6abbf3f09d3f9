/** Reads a PDF that Chromium printed: its pages, their size and their text. */
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PrintedPage {
  /** Width and height, mm. */
  readonly size: readonly [number, number];
  /** In the order of drawing; spaces are as drawn. */
  readonly text: string;
}

/** 1 pt is 1/72 in. */
const MM_PER_POINT = 25.4 / 72;

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
      pages.push({ size: [(right - left) * MM_PER_POINT, (top - bottom) * MM_PER_POINT], text });
    }
    return pages;
  } finally {
    await opening.destroy();
  }
}
