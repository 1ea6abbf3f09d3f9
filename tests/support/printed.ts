/** Reads a PDF that Chromium printed: its pages, their size and their text. */
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PrintedPage {
  /** Width and height, mm. */
  readonly size: readonly [number, number];
  /** In the order of drawing; spaces are as drawn. */
  readonly text: string;
  /** The lowest line of the page's matter, from left to right; empty on an empty page. */
  readonly lastLine: string;
  /** How much of the page's height is left below that line, to its foot; from 0 to 1. */
  readonly left: number;
  /** Words that lie on other words, each pair as "these | those". */
  readonly overlaps: readonly string[];
}

/** 1 pt is 1/72 in. */
const MM_PER_POINT = 25.4 / 72;

/** What stands higher is the head of the page, what stands lower its foot: the margins of the style sheet for paper, pt. */
const HEAD = 16 / MM_PER_POINT;
const FOOT = 17 / MM_PER_POINT;
/** Raised and lowered letters of one line are no farther apart, pt. */
const LINE = 4;

/** Of the size of letters, what a letter without ascender fills above its line: lines that are set close touch only beyond it. */
const X_HEIGHT = 0.45;
/** Words that share less than this lie beside each other: an italic leans that far, and no index under a letter is wider, pt. */
const TOUCHING = { across: 4.5, along: 1 };

interface Piece {
  readonly str: string;
  readonly transform: readonly number[];
  readonly width: number;
}

interface Box {
  readonly str: string;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** The box of a piece's small letters, turned as the piece is. */
function boxOf({ str, transform, width }: Piece): Box {
  const [a = 1, b = 0, c = 0, d = 1, x = 0, y = 0] = transform;
  const size = Math.hypot(c, d);
  const along = Math.hypot(a, b);
  const corners = [[0, 0], [width, 0], [0, size * X_HEIGHT], [width, size * X_HEIGHT]].map(([u = 0, v = 0]) => [x + (a / along) * u + (c / size) * v, y + (b / along) * u + (d / size) * v] as const);
  const edge = (pick: (...numbers: number[]) => number): [number, number] => [pick(...corners.map(([across]) => across)), pick(...corners.map(([, up]) => up))];
  return { str, from: edge(Math.min), to: edge(Math.max) };
}

/** Whether two boxes share more than neighbours do. The same words twice are one label and the halo behind it. */
const lieOnEachOther = (one: Box, other: Box): boolean =>
  one.str !== other.str &&
  Math.min(one.to[0], other.to[0]) - Math.max(one.from[0], other.from[0]) > TOUCHING.across &&
  Math.min(one.to[1], other.to[1]) - Math.max(one.from[1], other.from[1]) > TOUCHING.along;

function overlapsOf(items: readonly Piece[]): string[] {
  const boxes = items.filter(({ str }) => str.trim() !== '').map(boxOf);
  return boxes.flatMap((one, at) => boxes.slice(at + 1).filter((other) => lieOnEachOther(one, other)).map((other) => `${one.str} | ${other.str}`));
}

/** The lowest line between head and foot, and how high above the foot. */
function lowestLine(items: readonly Piece[], foot: number, head: number): { readonly lastLine: string; readonly above: number } {
  const matter = items.filter(({ str, transform }) => str.trim() !== '' && transform[5]! > foot && transform[5]! < head);
  const lowest = Math.min(head, ...matter.map(({ transform }) => transform[5]!));
  const lastLine = matter.filter(({ transform }) => transform[5]! - lowest < LINE).sort((a, b) => a.transform[4]! - b.transform[4]!).map(({ str }) => str).join(' ');
  return { lastLine, above: lowest - foot };
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
      const pieces = items.filter((item) => 'str' in item);
      const { lastLine, above } = lowestLine(pieces, bottom + FOOT, top - HEAD);
      pages.push({ size: [(right - left) * MM_PER_POINT, (top - bottom) * MM_PER_POINT], text, lastLine, left: above / (top - bottom), overlaps: overlapsOf(pieces) });
    }
    return pages;
  } finally {
    await opening.destroy();
  }
}
