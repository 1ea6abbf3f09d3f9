/** What counts as right, drawn again for other conditions. On teachers' pages only: the public scripts know no marking. */
import { answerTo, toleranceText } from '../questions/answer.ts';
import { readValueQuestion } from '../sheets/html/ask.ts';
import type { Piece } from './piece.ts';
import { grouped } from './redraw.ts';

/** The tolerances of a page as pieces of it. */
export const tolerancesOf = (root: ParentNode): Piece[] => grouped(root, 'data-tolerance', tolerancePiece);

function tolerancePiece(elements: readonly HTMLElement[], text: string): Piece {
  const question = readValueQuestion(text);
  const make: Piece['make'] = (conditions, style) => {
    const said = toleranceText(answerTo(question, conditions, style), style);
    return () => elements.forEach((element) => (element.textContent = said));
  };
  return { make, places: elements, isSlow: false };
}
