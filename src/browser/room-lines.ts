/** The lines of a page that say for which room everything is. */
import { computedFor } from '../sheets/conditions-text.ts';
import { readTableRequest } from '../sheets/html/ask.ts';
import type { Conditions } from '../tables/conditions.ts';
import type { Style } from '../tables/display.ts';
import type { Piece } from './piece.ts';

/** Each says it again for other conditions. */
export function linePieces(root: ParentNode): Piece[] {
  const sentences = [...root.querySelectorAll<HTMLElement>('figcaption .for, [data-computed-for]')].map((element) => {
    const { table, curve } = element.closest<HTMLElement>('figure')?.dataset ?? {};
    const at = readTableRequest(table ?? curve ?? '')?.request.at;
    return lineOf(element, (conditions, style) => computedFor(conditions, style, at));
  });
  return [...sentences, ...[...root.querySelectorAll<HTMLElement>('[data-room-title]')].map((element) => lineOf(element, ({ roomTitle }) => roomTitle))];
}

function lineOf(element: HTMLElement, said: (conditions: Conditions, style: Style) => string): Piece {
  const make: Piece['make'] = (conditions, style) => {
    const line = said(conditions, style);
    return () => (element.textContent = line);
  };
  return { make, places: [element], isSlow: false };
}
