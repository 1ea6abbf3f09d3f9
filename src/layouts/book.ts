/** The book the pages lay out: put in place by the build before the pages are made. */
import type { Book, HistoryView, KitView } from '../sheets/book.ts';
import { stateFor, titlesOf, type Title } from '../sheets/titles.ts';

const holder = globalThis as { lapsebook?: Book };

const present = (): Book => {
  if (!holder.lapsebook) {
    throw new Error('The pages were asked for without the content they show. Run `npm run build`: it checks the content, computes it and then makes the pages.');
  }
  return holder.lapsebook;
};

export const book: Book = present();

/** The two editions of every page: for everybody at the root, for teachers below `teachers/`. */
export const EDITIONS = [undefined, 'teachers'] as const;

export type Edition = (typeof EDITIONS)[number];

/** The kits one to a title. */
export const TITLES: readonly Title[] = titlesOf(book.kits);

const titles = new Map(TITLES.map((title) => [title.id, title]));

/** Titles by the kit that they translate: asked for on every page of every kit. */
const translations = new Map<string, Title[]>();
for (const title of TITLES) {
  for (const original of new Set(title.kits.map(({ translationOf }) => translationOf))) {
    if (original !== undefined) translations.set(original, [...(translations.get(original) ?? []), title]);
  }
}

/** The kit that a kit translates. */
export function originalOf(kit: KitView): KitView | undefined {
  const title = kit.translationOf === undefined ? undefined : titles.get(kit.translationOf);
  return title && stateFor(kit, title);
}

/** The kits that translate a kit. */
export const translationsOf = (kit: KitView): readonly KitView[] => (translations.get(kit.id) ?? []).map((title) => stateFor(kit, title));

/** The same kit in the other languages that it is there in. */
export const inOtherLanguages = (kit: KitView): readonly KitView[] => {
  const original = originalOf(kit);
  return original === undefined ? translationsOf(kit) : [original, ...translationsOf(original).filter(({ id }) => id !== kit.id)];
};

const histories = new Map(book.histories.map((history) => [history.kit, history]));

/** What changed from one edition of a kit to the next; undefined where none is published. */
export const historyOf = ({ id }: Pick<KitView, 'id'>): HistoryView | undefined => histories.get(id);

/** The edition of a kit that came before this one. */
export function earlierEdition(kit: KitView): KitView | undefined {
  const { kits = [] } = titles.get(kit.id) ?? {};
  return kits[kits.indexOf(kit) - 1];
}

/** An edition of the same kit by its version. */
export const editionOf = ({ id }: KitView, version: string): KitView | undefined => titles.get(id)?.kits.find((kit) => kit.version === version);
