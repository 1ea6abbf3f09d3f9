/** The kits of a book one to a title: which of its editions is shown where none is named. */
import type { KitView } from './book.ts';
import { isWithdrawn } from './kit-edition.ts';

export interface Title {
  readonly id: string;
  /** The editions from the oldest to the newest, the draft last. */
  readonly kits: readonly KitView[];
  /** The newest edition that is not withdrawn; of those that all are, the newest; the draft where nothing is published. */
  readonly shown: KitView;
  readonly draft: KitView | undefined;
}

/** In the order of the book. */
export function titlesOf(kits: readonly KitView[]): Title[] {
  const states = new Map<string, KitView[]>();
  for (const kit of kits) states.set(kit.id, [...(states.get(kit.id) ?? []), kit]);
  return [...states].map(([id, own]) => {
    const editions = own.filter(({ draft }) => !draft);
    const shown = editions.findLast((kit) => !isWithdrawn(kit)) ?? editions.at(-1) ?? own[0]!;
    return { id, kits: own, shown, draft: own.find(({ draft }) => draft) };
  });
}

/** Of another title what goes with a kit: its draft with a draft where it has one, else what is shown of it. */
export const stateFor = ({ draft }: Pick<KitView, 'draft'>, title: Title): KitView => (draft ? (title.draft ?? title.shown) : title.shown);
