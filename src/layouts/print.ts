/** What stands in the margins of a kit's printed pages: a stylesheet made for the kit, because a page may hold no styles of its own. */
import { changesPath, fullAddress, kitPath } from '../sheets/addresses.ts';
import type { Book, KitView } from '../sheets/book.ts';
import { editionText, noticesOf } from '../sheets/kit-edition.ts';
import { FRAME_TEXTS, KIT_TEXTS, NOTICE_TEXTS } from '../texts/index.ts';
import { SHEETS, sheetName } from './sheets.ts';

/** Text as a CSS string. */
const quoted = (text: string): string => `"${text.replace(/[\\"]/g, '\\$&').replace(/\s*\n\s*/g, ' ')}"`;

/** Where a printed sheet says that it is found, and that of an edition where its corrections are; beside a whole address so much of it as differs, so that both stand on one line. */
export function printedAddress(book: Book, kit: KitView, slug: string, teachers: boolean): string {
  const own = teachers ? KIT_TEXTS[kit.language].teachersEditionOf(`${kit.id}/${kit.version}`) : fullAddress(book, kitPath(kit, slug));
  const corrections = teachers ? fullAddress(book, changesPath(kit)) : `…${changesPath(kit)}`;
  return kit.draft ? own : `${own} · ${NOTICE_TEXTS[kit.language].foundAt(corrections)}`;
}

/** The name of the printed page that belongs to a sheet. */
export const pageName = (slug: string): string => `sheet-${slug === '' ? 'kit' : slug}`;

/** In the middle of the head of every page, so that none is handed out without it. */
function withdrawnInMargin(kit: KitView): string[] {
  const said = NOTICE_TEXTS[kit.language];
  return noticesOf(kit).filter(({ kind }) => kind === 'withdrawn').slice(0, 1).map(({ date, replacement }) => {
    const words = [said.inMargin(date), ...(replacement === undefined ? [] : [said.useInstead(replacement)])].join(' ');
    return `  @top-center { content: ${quoted(words)}; font-size: 9pt; font-weight: 600; border-block: 1.2pt solid; height: 6mm; margin-block: auto; padding-inline: 2mm; white-space: nowrap; }`;
  });
}

/** The stylesheet of a kit's printed pages: one named page for each sheet. */
export const printCss = (book: Book, kit: KitView, teachers: boolean): string =>
  SHEETS.map((slug) => {
    const title = slug === '' ? kit.title : `${kit.title} · ${sheetName(slug, kit.language)}`;
    const address = printedAddress(book, kit, slug, teachers);
    return [
      `@page ${pageName(slug)} {`,
      `  @top-left { content: ${quoted(title)}; }`,
      ...withdrawnInMargin(kit),
      `  @top-right { content: ${quoted(teachers ? `${FRAME_TEXTS[kit.language].teachersEdition} · ${editionText(kit)}` : editionText(kit))}; }`,
      `  @bottom-left { content: ${quoted(kit.computedFor)} "\\A" ${quoted(address)}; white-space: pre-line; }`,
      `  @bottom-right { content: counter(page) " / " counter(pages); white-space: nowrap; }`,
      '}',
    ].join('\n');
  }).join('\n');
