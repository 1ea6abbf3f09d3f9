/** The numbers of a page drawn again for other conditions: values, tables, figures, run chart, set-up, and for which room they are. */
import { readTableRequest } from '../sheets/html/ask.ts';
import { drawerOf, type Asked } from './drawn.ts';
import { morph, swap } from './morph.ts';
import type { Piece, Ready } from './piece.ts';
import { redrawing } from './rewrite.ts';
import { linePieces } from './room-lines.ts';

/** All pieces of a page, in its order; read once. */
export function piecesOf(root: ParentNode): Piece[] {
  return [
    ...grouped(root, 'data-value', valuePiece),
    ...linePieces(root),
    ...each(root, 'data-table', tablePiece),
    ...each(root, 'data-curve', curvePiece),
    ...each(root, 'data-run', (place, text) => replaced(place, { as: 'run', text, name: '' })),
    ...each(root, 'data-setup', (place, text) => replaced(place, { as: 'setup', text, name: '' })),
  ];
}

const withAttribute = (root: ParentNode, name: string): HTMLElement[] => [...root.querySelectorAll<HTMLElement>(`[${name}]`)];

function each(root: ParentNode, name: string, make: (element: HTMLElement, text: string) => Piece | undefined): Piece[] {
  return withAttribute(root, name).flatMap((place) => make(place, place.getAttribute(name)!) ?? []);
}

/** What is asked in several places is computed once. */
export function grouped(root: ParentNode, name: string, make: (elements: readonly HTMLElement[], text: string) => Piece): Piece[] {
  const byText = new Map<string, HTMLElement[]>();
  for (const element of withAttribute(root, name)) {
    const text = element.getAttribute(name)!;
    byText.set(text, [...(byText.get(text) ?? []), element]);
  }
  return [...byText].map(([text, elements]) => make(elements, text));
}

function pieceOf(asked: Asked, ready: Ready, places: readonly Element[]): Piece {
  const drawer = drawerOf(asked);
  return { make: (conditions, style) => ready(drawer(conditions, style)), places, isSlow: false, beside: { asked, ready } };
}

function valuePiece(elements: readonly HTMLElement[], text: string): Piece {
  let last = '';
  return pieceOf({ as: 'value', text, name: '' }, (html = '') => () => {
    if (html !== last) for (const element of elements) element.innerHTML = html;
    last = html;
  }, elements);
}

function tablePiece(figure: HTMLElement, text: string): Piece | undefined {
  const table = figure.querySelector('table');
  if (readTableRequest(text) === undefined || table === null) return undefined;
  const draw = redrawing(table, swap);
  return pieceOf({ as: 'table', text, name: table.caption?.textContent ?? '' }, (html = '') => draw(html), [figure]);
}

function curvePiece(figure: HTMLElement, text: string): Piece | undefined {
  const place = figure.querySelector('.curve > *');
  if (readTableRequest(text) === undefined || place === null) return undefined;
  const draw = redrawing(place, swap);
  const ready: Ready = (html) => {
    const put = html === undefined ? undefined : draw(html);
    return () => {
      figure.hidden = put === undefined;
      put?.();
    };
  };
  return pieceOf({ as: 'curve', text, name: figure.id }, ready, [figure]);
}

/** A piece that stands on its own, and may hold the focus. */
function replaced(place: HTMLElement, asked: Asked): Piece {
  const draw = redrawing(place, morph);
  return pieceOf(asked, (html = '') => draw(html), [place]);
}
