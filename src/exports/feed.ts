/** What changed in the kits, newest first: Atom, RFC 4287. Its dates are those that the kits state, never that of a build. */
import type { Book, KitView } from '../sheets/index.ts';
import { FILE_TEXTS, FRAME_TEXTS, type Language } from '../texts/index.ts';
import { element, escapeXml, XML_HEAD } from './xml.ts';

interface Entry {
  readonly kit: KitView;
  readonly version: string;
  readonly date: string;
  readonly text: string;
}

/**
 * @param root - whole address of the site, ends in `/`
 * @param addressOf - whole address of a kit's page
 */
export function atomFeed(book: Book, root: string, addressOf: (kit: KitView) => string): string {
  const entries = entriesOf(book);
  const first = entries[0]?.date;
  return [
    `${XML_HEAD}<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escapeXml(book.language)}">`,
    element('title', FRAME_TEXTS[book.language].kitsOf(book.school)),
    element('id', root),
    `<link href="${escapeXml(root)}"/>`,
    `<link rel="self" href="${escapeXml(`${root}feed.xml`)}"/>`,
    element('updated', instant(first ?? NO_DATE)),
    `<author>${element('name', book.school)}</author>`,
    element('rights', book.license),
    ...entries.map((entry) => entryXml(entry, addressOf(entry.kit), book.language)),
    '</feed>\n',
  ].join('\n');
}

/** The feed of a book without any change still needs a date. */
const NO_DATE = '1970-01-01';

const instant = (date: string): string => `${date}T00:00:00Z`;

/** Each version of each kit once; told by the edition that is of this version, else by the newest kit that lists it. */
function entriesOf(book: Book): Entry[] {
  const found = new Map<string, Entry>();
  for (const kit of book.kits) {
    for (const { version, date, text } of kit.changes) {
      const key = `${kit.id} ${version}`;
      if (!found.has(key) || !kit.draft && kit.version === version) found.set(key, { kit, version, date, text });
    }
  }
  return [...found].sort(([keyA, a], [keyB, b]) => (a.date === b.date ? (keyA < keyB ? -1 : 1) : a.date < b.date ? 1 : -1)).map(([, entry]) => entry);
}

function entryXml({ kit, version, date, text }: Entry, address: string, siteLanguage: Language): string {
  const title = `${kit.title} ${version}`;
  return [
    kit.language === siteLanguage ? '<entry>' : `<entry xml:lang="${kit.language}">`,
    element('title', kit.draft ? FILE_TEXTS[kit.language].draftOf(title) : title),
    element('id', `${address}#version-${version}`),
    `<link href="${escapeXml(address)}"/>`,
    element('updated', instant(date)),
    element('summary', text),
    '</entry>',
  ].join('\n');
}
