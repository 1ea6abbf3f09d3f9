/** The readings page of a kit: its classes' readings fitted, and what its own apparatus lets expect. */
import { FIT_TEXTS } from '../texts/index.ts';
import type { Kit } from '../authoring/index.ts';
import type { Setting } from './html/table.ts';
import { renderComparison, renderExpected } from './html/readings.ts';
import { compareWithModel, expectedReadings, type Comparison } from './readings.ts';

export interface ReadingsView {
  /** Recorded classes, fitted; as HTML, and as data for the reader's device to draw it in other units. */
  readonly classes: readonly { readonly id: string; readonly title: string; readonly html: string; readonly data: string }[];
  /** What the model lets expect of the clean run; HTML. */
  readonly expected: string;
}

/** A fitted class as it travels in a page. */
export interface DrawnComparison {
  readonly id: string;
  readonly title: string;
  readonly comparison: Comparison;
}

/** More digits than any reading has, and fewer than a page should carry. */
const DIGITS = 7;
const shorter = (_: string, value: unknown): unknown => (typeof value === 'number' && Number.isFinite(value) ? Number(value.toPrecision(DIGITS)) : value);

/** Each line holds its residual already. */
const withoutResiduals = (comparison: Comparison): Comparison => (comparison.fit === undefined ? comparison : { ...comparison, fit: { ...comparison.fit, residuals: [] } });

/** `class-8b` as a title: "Class 8b". */
const titleOf = (name: string): string => name.replace(/-/g, ' ').replace(/^./, (letter) => letter.toUpperCase());

/** All readings of a kit, in the order of their names. */
export function readingsView(kit: Kit, { conditions, style }: Setting): ReadingsView {
  const said = FIT_TEXTS[style.language];
  const classes = [...kit.readings].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, readings]) => {
    const title = titleOf(name);
    const id = `readings-${name}`;
    const comparison = compareWithModel(readings, conditions);
    const drawn: DrawnComparison = { id, title: said.titleOf(title), comparison: withoutResiduals(comparison) };
    return { id, title, html: renderComparison(comparison, { id, title: drawn.title, style }).html, data: JSON.stringify(drawn, shorter) };
  });
  return { classes, expected: renderExpected(expectedReadings(conditions), { id: 'expected', title: said.expected, style }).html };
}
