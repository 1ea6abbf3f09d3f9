/** Pages of the site as a browser prints them. */
import { existsSync, readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright-core';
import type { BuiltPage } from './browsing.ts';
import { lettersOf } from './lesson-secrets.ts';
import { pagesOfPdf, type PrintedPage } from './printed.ts';

/** Papers: ISO 216 and ANSI/ASME Y14.1, width and height, mm. */
export const PAPERS = { A4: [210, 297], Letter: [215.9, 279.4] } as const;
export type PaperSize = keyof typeof PAPERS;
export const PAPER_SIZES = Object.keys(PAPERS) as PaperSize[];

/** All headings, the captions of tables and figures, and the signal words of hazards. */
export const TITLES = 'main :is(h1, h2, h3, h4, figcaption, .signal-word)';

/** Pages that end in a title, while what it names stands on the next. @param titles their letters */
export const endingInTitles = (pages: readonly PrintedPage[], titles: readonly string[]): string[] =>
  pages.flatMap(({ lastLine }, at) => {
    const letters = lettersOf(lastLine);
    // A title of two lines ends in the lowest one. None ends in a stop, as a last line of text may that reads like its end.
    return letters === '' || (!lastLine.trimEnd().endsWith('.') && titles.some((title) => title.endsWith(letters))) ? [`page ${at + 1}: ${lastLine}`] : [];
  });

type Open = (options: BrowserContextOptions, look: (page: Page) => Promise<void>) => Promise<void>;

/** Where the build has printed a sheet, on the paper that it takes if none is named. */
const fileOfPrint = ({ file }: BuiltPage): string => file.replace(/\/index\.html$/, '.pdf');

/** Each page as the build has printed it, or else printed once on each paper for all tests of a file, since that takes long. */
export function printerForFile(open: Open): (built: BuiltPage, format: PaperSize) => Promise<PrintedPage[]> {
  const known = new Map<string, Promise<PrintedPage[]>>();
  const print = async (built: BuiltPage, format: PaperSize): Promise<PrintedPage[]> => {
    if (format === 'A4' && existsSync(fileOfPrint(built))) return pagesOfPdf(readFileSync(fileOfPrint(built)));
    let pages: PrintedPage[] = [];
    await open({}, async (page) => {
      await page.goto(built.address, { waitUntil: 'load' });
      pages = await pagesOfPdf(await page.pdf({ format }));
    });
    return pages;
  };
  return (built, format) => {
    const key = `${format} ${built.address}`;
    const pages = known.get(key) ?? print(built, format);
    known.set(key, pages);
    return pages;
  };
}
