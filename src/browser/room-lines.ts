/** The lines of a page that say for which room everything is. */
import { computedFor } from '../sheets/conditions-text.ts';
import { readTableRequest } from '../sheets/html/ask.ts';
import type { Piece } from './piece.ts';

/** Says it again for other conditions. */
export function linesPiece(root: ParentNode): Piece['draw'] {
  const sentences = [...root.querySelectorAll<HTMLElement>('figcaption .for, [data-computed-for]')].map((element) => {
    const { table, curve } = element.closest<HTMLElement>('figure')?.dataset ?? {};
    return { element, at: readTableRequest(table ?? curve ?? '')?.request.at };
  });
  const rooms = [...root.querySelectorAll<HTMLElement>('[data-room-title]')];
  return (conditions, style) => {
    for (const { element, at } of sentences) element.textContent = computedFor(conditions, style, at);
    for (const element of rooms) element.textContent = conditions.roomTitle;
  };
}
