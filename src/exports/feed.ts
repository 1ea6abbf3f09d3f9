/** What changed in the kits, newest first: Atom, RFC 4287. Its dates are those that the kits state, never that of a build. */
import type { Book, KitView } from '../sheets/index.ts';
import { FILE_TEXTS, FRAME_TEXTS, NOTICE_TEXTS, type Language } from '../texts/index.ts';
import { noticeText } from './notice-text.ts';
import { element, escapeXml, XML_HEAD } from './xml.ts';

interface Entry {
  /** Parts it from the other entries of the same kit. */
  readonly mark: string;
  readonly kit: KitView;
  readonly title: string;
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

/** Each version of each kit once, and each notice of an edition. */
function entriesOf(book: Book): Entry[] {
  const all = [...versionsOf(book), ...book.kits.flatMap(noticesOf)];
  const name = ({ kit, mark }: Entry): string => `${kit.id} ${mark}`;
  return all.sort((a, b) => (a.date === b.date ? (name(a) < name(b) ? -1 : 1) : a.date < b.date ? 1 : -1));
}

/** Told by the edition that is of this version, with the day on which it was published; else by the oldest state of the kit that lists it. */
function versionsOf({ kits }: Book): Entry[] {
  const found = new Map<string, Entry>();
  for (const kit of kits) {
    for (const { version, date, text } of kit.changes) {
      const entry = { mark: `version-${version}`, kit, title: titleOf(kit, version), date, text };
      if (!found.has(`${kit.id} ${version}`)) found.set(`${kit.id} ${version}`, entry);
    }
  }
  for (const kit of kits) {
    const { id, version, published, summary } = kit;
    if (published === undefined) continue;
    const told = found.get(`${id} ${version}`);
    found.set(`${id} ${version}`, { mark: `version-${version}`, kit, title: titleOf(kit, version), date: published, text: told?.text ?? summary });
  }
  return [...found.values()];
}

const titleOf = ({ draft, language, title }: KitView, version: string): string => (draft ? FILE_TEXTS[language].draftOf(`${title} ${version}`) : `${title} ${version}`);

/** Notices are added at the end, so that each keeps its number. */
function noticesOf(kit: KitView): Entry[] {
  const said = NOTICE_TEXTS[kit.language];
  return kit.notices.map((notice, at) => ({
    mark: `notice-${at + 1}`, kit, title: `${said.kinds[notice.kind]}: ${kit.title} ${kit.version}`, date: notice.date, text: noticeText(notice, kit.language),
  }));
}

function entryXml({ kit, mark, title, date, text }: Entry, address: string, siteLanguage: Language): string {
  return [
    kit.language === siteLanguage ? '<entry>' : `<entry xml:lang="${kit.language}">`,
    element('title', title),
    element('id', `${address}#${mark}`),
    `<link href="${escapeXml(address)}"/>`,
    element('updated', instant(date)),
    element('summary', text),
    '</entry>',
  ].join('\n');
}
