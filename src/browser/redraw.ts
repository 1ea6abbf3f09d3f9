/** The numbers of a page drawn again for other conditions: values, tables, figures, run chart, set-up, and for which room they are. */
import { renderCurve } from '../figures/draw-curve.ts';
import { readTableRequest, readValueQuestion } from '../sheets/html/ask.ts';
import { readLiveRun, renderLiveRun } from '../sheets/html/live.ts';
import { curveOf, renderRows } from '../sheets/html/table.ts';
import { renderLiveSetup } from '../sheets/html/setup.ts';
import { renderPrinted } from '../sheets/html/value.ts';
import { computeTable, printTable } from '../tables/table.ts';
import { computeValue, printValue } from '../tables/value.ts';
import { morph, swap } from './morph.ts';
import type { Piece } from './piece.ts';
import { redrawing } from './rewrite.ts';
import { linesPiece } from './room-lines.ts';

/** All pieces of a page, in its order; read once. */
export function piecesOf(root: ParentNode): Piece[] {
  return [
    ...[...grouped(root, 'data-value', valuePiece), linesPiece(root)].map((draw): Piece => ({ draw, isSlow: false })),
    ...each(root, 'data-table', tablePiece),
    ...each(root, 'data-curve', curvePiece),
    ...each(root, 'data-run', runPiece),
    ...each(root, 'data-setup', setupPiece),
  ];
}

type Draw = Piece['draw'];

const withAttribute = (root: ParentNode, name: string): HTMLElement[] => [...root.querySelectorAll<HTMLElement>(`[${name}]`)];
const each = (root: ParentNode, name: string, make: (element: HTMLElement, text: string) => Draw): Piece[] =>
  withAttribute(root, name).map((place) => ({ place, draw: make(place, place.getAttribute(name)!), isSlow: false }));

/** What is asked in several places is computed once. */
export function grouped(root: ParentNode, name: string, make: (elements: readonly HTMLElement[], text: string) => Draw): Draw[] {
  const byText = new Map<string, HTMLElement[]>();
  for (const element of withAttribute(root, name)) {
    const text = element.getAttribute(name)!;
    byText.set(text, [...(byText.get(text) ?? []), element]);
  }
  return [...byText].map(([text, elements]) => make(elements, text));
}

function valuePiece(elements: readonly HTMLElement[], text: string): Draw {
  const { of, at, unit } = readValueQuestion(text);
  let last = '';
  return (conditions, style) => {
    const { html } = renderPrinted(printValue(of, computeValue(conditions, of, at), unit, style));
    if (html !== last) for (const element of elements) element.innerHTML = html;
    last = html;
  };
}

function tablePiece(figure: HTMLElement, text: string): Draw {
  const asked = readTableRequest(text);
  const table = figure.querySelector('table');
  if (asked === undefined || table === null) return () => undefined;
  const name = table.caption?.textContent ?? '';
  const draw = redrawing(table, swap);
  return (conditions, style) => draw(renderRows(printTable(computeTable(asked.kind, conditions, asked.request), style), name).html);
}

function curvePiece(figure: HTMLElement, text: string): Draw {
  const asked = readTableRequest(text);
  const place = figure.querySelector('.curve > *');
  if (asked === undefined || place === null) return () => undefined;
  const draw = redrawing(place, swap);
  return (conditions, style) => {
    const curve = curveOf(asked.kind, asked.request, conditions, figure.id, style);
    figure.hidden = curve === undefined;
    if (curve !== undefined) draw(renderCurve(curve, style));
  };
}

function runPiece(chart: HTMLElement, text: string): Draw {
  const run = readLiveRun(text);
  const draw = redrawing(chart, morph);
  return (conditions, style) => draw(renderLiveRun(run, conditions, style));
}

function setupPiece(drawing: HTMLElement, id: string): Draw {
  const draw = redrawing(drawing, morph);
  return (conditions, style) => draw(renderLiveSetup(id, conditions, style));
}
