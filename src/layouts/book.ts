/** The book the pages lay out: put in place by the build before the pages are made. */
import type { Book, KitView } from '../sheets/book.ts';

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

const editionsOf = new Map<string, readonly KitView[]>();
for (const kit of book.kits) editionsOf.set(kit.id, [...(editionsOf.get(kit.id) ?? []), kit]);

/** The kits one to a title, drafts and editions together, in the order of the book. */
export const TITLES: readonly { readonly id: string; readonly title: string; readonly kits: readonly KitView[] }[] =
  [...editionsOf].map(([id, kits]) => ({ id, title: kits[0]?.title ?? id, kits }));

/** Titles by the kit that they translate: asked for on every page of every kit. */
const translations = new Map<string, (typeof TITLES)[number][]>();
for (const title of TITLES) {
  for (const original of new Set(title.kits.map(({ translationOf }) => translationOf))) {
    if (original !== undefined) translations.set(original, [...(translations.get(original) ?? []), title]);
  }
}

/** Among the editions of a kit the one that goes with another kit's: its draft with a draft, else its newest, which is its last. */
const matching = (id: string, { draft }: KitView): KitView | undefined => {
  const editions = editionsOf.get(id) ?? [];
  return editions.find((kit) => kit.draft === draft) ?? editions.at(-1);
};

/** The kit that a kit translates. */
export const originalOf = (kit: KitView): KitView | undefined => (kit.translationOf === undefined ? undefined : matching(kit.translationOf, kit));

/** The kits that translate a kit. */
export const translationsOf = (kit: KitView): readonly KitView[] =>
  (translations.get(kit.id) ?? []).flatMap(({ id }) => matching(id, kit) ?? []);

/** The same kit in the other languages that it is there in. */
export const inOtherLanguages = (kit: KitView): readonly KitView[] => {
  const original = originalOf(kit);
  return original === undefined ? translationsOf(kit) : [original, ...translationsOf(original).filter(({ id }) => id !== kit.id)];
};
