/** What pages show of editions: numbers for who may read them, editions with what changed. */
import type { ChangeView, HistoryView, KitView, NumberChange } from '../sheets/book.ts';
import type { Title } from '../sheets/titles.ts';

/** Numbers that a page may show: a public one tells no answer. */
export const shownNumbers = (numbers: readonly NumberChange[], teachers: boolean): readonly NumberChange[] => numbers.filter(({ forTeachers }) => teachers || !forTeachers);

/** An edition, or the draft, as the page of changes tells it. */
export interface EditionRow {
  readonly kit: KitView;
  /** In the author's words, as the newest state of the kit has them. */
  readonly texts: readonly string[];
  /** From the edition before; of the first undefined. */
  readonly change: ChangeView | undefined;
}

/** The newest first. */
export function editionRows({ kits }: Title, { changes }: HistoryView): EditionRow[] {
  const told = kits.at(-1)!.changes;
  const known = new Set(kits.flatMap((kit) => (kit.draft ? [] : [kit.version, ...kit.changes.map(({ version }) => version)])));
  return kits.toReversed().map((kit) => ({
    kit,
    texts: told.filter(({ version }) => (kit.draft ? !known.has(version) : version === kit.version)).map(({ text }) => text),
    change: changes.find(({ to }) => to === kit.version),
  }));
}
