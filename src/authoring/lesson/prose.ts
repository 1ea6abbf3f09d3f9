/** A paragraph, heading or table cell as it is read: quantities in it, also where emphasis parts number and unit. */
import { isComponent, isParent, type LessonNode } from './nodes.ts';
import { placeOfPart, type LessonSource } from './source.ts';
import { typedQuantities } from './typed-quantities.ts';

/** Stands for what is no plain text: a computed value, a picture, a formula. */
const OTHER = '\ufffc';

interface Piece {
  readonly node: LessonNode;
  readonly text: string;
}

/** Whether a quantity is stated or computed. */
export function vouchedFor(nodes: readonly LessonNode[]): boolean {
  return nodes.some((one) => isComponent(one) && (one.name === 'Given' || one.name === 'Value'));
}

/** Reports the quantities typed into one block of prose. */
export function checkProse(source: LessonSource, block: LessonNode, ancestors: readonly LessonNode[]): void {
  if (vouchedFor(ancestors)) return;
  const pieces: Piece[] = [];
  collect(block, pieces);
  for (const { text, index } of typedQuantities(pieces.map((piece) => piece.text).join(''))) {
    let start = 0;
    const piece = pieces.find((one) => (start += one.text.length) > index);
    if (piece === undefined) continue;
    start -= piece.text.length;
    const part = text.slice(0, piece.text.length - (index - start));
    source.reportTyped(placeOfPart(source, piece.node, part, index - start), text);
  }
}

function collect(node: LessonNode, pieces: Piece[]): void {
  if (vouchedFor([node])) pieces.push({ node, text: OTHER });
  else if (node.type === 'text' || node.type === 'inlineCode') pieces.push({ node, text: node.value });
  else if (node.type === 'inlineMath') pieces.push({ node, text: /^[\d.,\s]+$/.test(node.value) ? node.value : OTHER });
  else if (node.type === 'break') pieces.push({ node, text: ' ' });
  else if (isParent(node) && node.children.length > 0) for (const child of node.children) collect(child, pieces);
  else pieces.push({ node, text: OTHER });
}
