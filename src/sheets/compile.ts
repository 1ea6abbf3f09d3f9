/** A checked content folder to a book: everything computed, as plain data and HTML, for the pages to lay out. */
import type { Content, Kit } from '../authoring/index.ts';
import { STYLES } from '../tables/index.ts';
import type { Language } from '../texts/index.ts';
import type { Book, KitView, NoticeView } from './book.ts';
import { SITE_SOURCE_LIST, type Place } from './kit-scene.ts';
import { DRAFT, hazardView, kitView, languageOf, placeOf } from './kit-view.ts';
import { MathStyles } from './math.ts';
import { packed } from './packed.ts';
import { sourceView } from './reference.ts';
import { roomView } from './room-view.ts';

/** A kit as published: its own content, and what is noticed of it since. */
export interface PublishedKit {
  readonly id: string;
  readonly version: string;
  readonly published: string;
  readonly content: Content;
  readonly notices: readonly NoticeView[];
}

/**
 * Compiles all kits. Pure: the same content gives the same book.
 * @param editions by kit, from the oldest version to the newest
 */
export function compileBook(content: Content, editions: readonly PublishedKit[] = []): Book {
  const math = new MathStyles();
  const { school, address, language, license, answers, drafts } = content.site;
  const editionsOf = (id: string): KitView[] =>
    editions.filter((edition) => edition.id === id).map(({ version, published, notices, content: own }) => packed({ ...kitView(own, id, own.kits.get(id)!, version, math), published, notices }));
  const draftOf = (id: string): KitView[] => {
    const kit = drafts ? content.kits.get(id) : undefined;
    return kit === undefined ? [] : [packed(kitView(content, id, kit, DRAFT, math))];
  };
  const ids = [...new Set([...content.kits.keys(), ...editions.map(({ id }) => id)])].sort();
  const kits = ids.flatMap((id) => [...editionsOf(id), ...draftOf(id)]);
  return {
    school, address, language, license, answers, kits, histories: [],
    hazards: siteHazards(content, math),
    sources: [...content.sources.values()].map((source) => sourceView(source, language)),
    room: roomView(content),
    mathCss: math.css,
  };
}

/** All hazard sheets in the site's language, each with the values of the first kit that lists it, of those in that language if there is one. */
function siteHazards(content: Content, math: MathStyles): Book['hazards'] {
  const { language } = content.site;
  const all = [...content.kits.values()];
  const isOwn = (kit: Kit): boolean => languageOf(content, kit) === language;
  const kits = [...all.filter(isOwn), ...all.filter((kit) => !isOwn(kit))];
  return [...content.hazards.keys()].flatMap((id) => {
    const kit = kits.find(({ meta }) => meta.hazards.includes(id)) ?? kits[0];
    return kit === undefined ? [] : [hazardView(inLanguage(placeOf(content, kit, math, SITE_SOURCE_LIST), language), id)];
  });
}

/** The same place, what the site itself says there in another language. */
const inLanguage = (place: Place, language: Language): Place => ({ ...place, setting: { ...place.setting, style: STYLES[language] } });
