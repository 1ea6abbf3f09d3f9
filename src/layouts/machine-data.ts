/** What a kit's page says to machines. */
import { learningResource, QTI_DIALECTS, qtiFile, scriptData } from '../exports/index.ts';
import type { KitView } from '../sheets/book.ts';
import { book, earlierEdition, historyOf, originalOf, translationsOf } from './book.ts';
import { changesPath, kitPath, permanentAddress } from '../sheets/addresses.ts';
import { FILE_TEXTS, PLATFORM_TEXTS } from '../texts/index.ts';
import { SHEETS, sheetTexts } from './sheets.ts';

/** The text of a JSON-LD block; undefined where the site has no address, since the data would name nothing. */
export function kitData(kit: KitView): string | undefined {
  const address = permanentAddress(book, kitPath(kit));
  if (address === undefined) return undefined;
  const said = FILE_TEXTS[kit.language];
  const addressOf = (other: KitView | undefined): string | undefined => other && permanentAddress(book, kitPath(other));
  return scriptData(
    learningResource(book, kit, {
      kit: address,
      sheets: SHEETS.filter((slug) => slug !== '').map((slug) => ({ ...sheetTexts(slug, kit.language), address: `${address}${slug}/` })),
      files: [
        { name: said.oneFile, format: 'text/html', address: `${address}${kit.id}.html` },
        { name: said.zip, format: 'application/zip', address: `${address}${kit.id}.zip` },
        { name: said.numbers, format: 'application/json', address: `${address}tables.json` },
      ],
      questions: {
        address: `${address}questions/`,
        files: (book.answers === 'public' && kit.questions.length > 0 ? QTI_DIALECTS : []).map((dialect) => ({ name: PLATFORM_TEXTS[kit.language].file(dialect.version), format: 'application/zip', address: `${address}${qtiFile(kit, dialect)}` })),
      },
      changes: historyOf(kit) && permanentAddress(book, changesPath(kit)),
      basedOn: addressOf(earlierEdition(kit)),
      translationOf: addressOf(originalOf(kit)),
      translations: translationsOf(kit).flatMap((one) => addressOf(one) ?? []),
    }),
  );
}
