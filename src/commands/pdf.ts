/** Sheets on paper as files: a built site printed with the machine's Chromium. */
import { writeFile } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { kitPath, type Book, type KitView } from '../sheets/index.ts';
import { CHROMIUM_ADVICE, chromiumPath, launchChromium } from './chromium.ts';
import { UsageError } from './run-command.ts';
import { staticServer } from './static-server.ts';

/** Papers by the names that --paper takes. */
export const PAPERS = { a4: 'A4', letter: 'Letter' } as const;
export type Paper = keyof typeof PAPERS;

/** Sheets that are handed out on paper. */
const PRINTED_SHEETS = ['run', 'student', 'numbers', 'safety', 'questions', 'booklet'] as const;

/** @throws UsageError if there is no such paper */
export function paperNamed(name: string): Paper {
  const paper = (Object.keys(PAPERS) as Paper[]).find((known) => known === name.toLowerCase());
  if (paper === undefined) throw new UsageError(`${name} is no paper that is known here; write --paper a4 or --paper letter`);
  return paper;
}

export interface Printing {
  /** Path of the browser, from {@link printer}. */
  readonly chromium: string;
  readonly paper: Paper;
  /** Is told each file as it is written, its path from the folder. */
  readonly onFile: (path: string) => void;
}

/**
 * Prints the sheets of every kit in a built folder, each beside the kit's own page.
 * @param folder - the public site or the teachers' folder
 * @returns how many files were written
 */
export async function printSheets(book: Book, folder: string, { chromium, paper, onFile }: Printing): Promise<number> {
  const browser = await launchChromium(chromium);
  const { server } = staticServer(folder);
  try {
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
    const page = await browser.newPage();
    let files = 0;
    for (const { kit, sheet } of book.kits.flatMap((one) => PRINTED_SHEETS.map((name) => ({ kit: one, sheet: name })))) {
      await page.goto(`${origin}${kitPath(kit, sheet)}index.html`, { waitUntil: 'load' });
      const print = (): Promise<Uint8Array> => page.pdf({ format: PAPERS[paper], tagged: true, outline: true });
      let bytes = await print();
      if (sheet === 'booklet') {
        await numberContents(page, await pagesOfAnchors(bytes));
        bytes = await print();
      }
      const path = fileOf(kit, sheet);
      await writeFile(join(folder, path), bytes);
      onFile(path);
      files += 1;
    }
    return files;
  } finally {
    await browser.close();
    server.close().closeAllConnections();
  }
}

/** On which page of a print each anchor stands that something leads to. The reader of prints is loaded where there is one. */
async function pagesOfAnchors(bytes: Uint8Array): Promise<Record<string, number>> {
  const { getDocument, VerbosityLevel } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  // It takes the bytes that it is given.
  const opening = getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS });
  try {
    const file = await opening.promise;
    const anchors = Object.entries(await file.getDestinations());
    return Object.fromEntries(await Promise.all(anchors.map(async ([name, [page]]) => [name, (await file.getPageIndex(page)) + 1])));
  } finally {
    await opening.destroy();
  }
}

/** A browser cannot number its own contents: it is told what a first print has shown. The style sheet has kept room for it, so that no line breaks differently. */
const numberContents = (page: Page, pages: Record<string, number>): Promise<void> =>
  page.locator('.contents a').evaluateAll((links, known) => {
    for (const link of links) {
      const number = known[decodeURIComponent((link as HTMLAnchorElement).hash.slice(1))];
      if (number !== undefined) link.setAttribute('data-page', String(number));
    }
  }, pages);

const fileOf = (kit: KitView, sheet: string): string => `${kitPath(kit).slice(1)}${sheet}.pdf`;

/** The browser that prints, or a sentence on why there is none. */
export function printer(): { readonly path: string } | { readonly missing: string } {
  try {
    const path = chromiumPath();
    return path === undefined ? { missing: `There is no Chromium on this machine. ${CHROMIUM_ADVICE}` } : { path };
  } catch (error) {
    if (error instanceof Error) return { missing: error.message };
    throw error;
  }
}
