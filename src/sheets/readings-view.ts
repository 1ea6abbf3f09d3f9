/** The readings page of a kit: its classes' readings fitted, and what its own apparatus lets expect. */
import { FIT_TEXTS } from '../texts/index.ts';
import type { Kit } from '../authoring/index.ts';
import type { Setting } from './html/table.ts';
import { renderComparison, renderExpected } from './html/readings.ts';
import { compareWithModel, expectedReadings } from './readings.ts';

export interface ReadingsView {
  /** Recorded classes, fitted; HTML. */
  readonly classes: readonly { readonly id: string; readonly title: string; readonly html: string }[];
  /** What the model lets expect of the clean run; HTML. */
  readonly expected: string;
}

/** `class-8b` as a title: "Class 8b". */
const titleOf = (name: string): string => name.replace(/-/g, ' ').replace(/^./, (letter) => letter.toUpperCase());

/** All readings of a kit, in the order of their names. */
export function readingsView(kit: Kit, { conditions, style }: Setting): ReadingsView {
  const said = FIT_TEXTS[style.language];
  const classes = [...kit.readings].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, readings]) => {
    const title = titleOf(name);
    const id = `readings-${name}`;
    return { id, title, html: renderComparison(compareWithModel(readings, conditions), { id, title: said.titleOf(title), style }).html };
  });
  return { classes, expected: renderExpected(expectedReadings(conditions), { id: 'expected', title: said.expected, style }).html };
}
