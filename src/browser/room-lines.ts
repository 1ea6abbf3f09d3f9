/** The lines of a page that say for which room everything is. */
import { computedFor } from '../sheets/conditions-text.ts';
import type { Piece } from './piece.ts';

/** Says it again for other conditions. */
export function linesPiece(root: ParentNode): Piece['draw'] {
  const sentences = [...root.querySelectorAll<HTMLElement>('figcaption .for, [data-computed-for]')];
  const rooms = [...root.querySelectorAll<HTMLElement>('[data-room-title]')];
  return (conditions, style) => {
    const sentence = computedFor(conditions, style);
    for (const element of sentences) element.textContent = sentence;
    for (const element of rooms) element.textContent = conditions.roomTitle;
  };
}
