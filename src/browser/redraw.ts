/** The numbers of a page drawn again for other conditions: values, tolerances, tables, figures, run chart, and for which room they are. */
import { answerTo, toleranceText } from '../questions/answer.ts';
import { renderCurve } from '../figures/draw-curve.ts';
import { readTableRequest, readValueQuestion } from '../sheets/html/ask.ts';
import { readLiveRun, renderLiveRun } from '../sheets/html/live.ts';
import { curveOf, renderRows } from '../sheets/html/table.ts';
import { renderPrinted } from '../sheets/html/value.ts';
import { computeTable, printTable } from '../tables/table.ts';
import { computeValue, printValue } from '../tables/value.ts';
import { elementOf, morph } from './morph.ts';
import type { Piece } from './piece.ts';
import { linesPiece } from './room-lines.ts';

/** All pieces of a page, in its order; read once. */
export function piecesOf(root: ParentNode): Piece[] {
  return [
    ...grouped(root, 'data-value', valuePiece),
    ...grouped(root, 'data-tolerance', tolerancePiece),
    ...each(root, 'data-table', tablePiece),
    ...each(root, 'data-curve', curvePiece),
    ...each(root, 'data-run', runPiece),
    linesPiece(root),
  ].map((draw): Piece => ({ draw, isSlow: false }));
}

type Draw = Piece['draw'];

const withAttribute = (root: ParentNode, name: string): HTMLElement[] => [...root.querySelectorAll<HTMLElement>(`[${name}]`)];
const each = (root: ParentNode, name: string, make: (element: HTMLElement, text: string) => Draw): Draw[] =>
  withAttribute(root, name).map((element) => make(element, element.getAttribute(name)!));

/** What is asked in several places is computed once. */
function grouped(root: ParentNode, name: string, make: (elements: readonly HTMLElement[], text: string) => Draw): Draw[] {
  const byText = new Map<string, HTMLElement[]>();
  for (const element of withAttribute(root, name)) {
    const text = element.getAttribute(name)!;
    byText.set(text, [...(byText.get(text) ?? []), element]);
  }
  return [...byText].map(([text, elements]) => make(elements, text));
}

function valuePiece(elements: readonly HTMLElement[], text: string): Draw {
  const { of, at, unit } = readValueQuestion(text);
  return (conditions, style) => {
    const { html } = renderPrinted(printValue(of, computeValue(conditions, of, at), unit, style));
    for (const element of elements) if (element.innerHTML !== html) element.innerHTML = html;
  };
}

function tolerancePiece(elements: readonly HTMLElement[], text: string): Draw {
  const question = readValueQuestion(text);
  return (conditions, style) => {
    const said = toleranceText(answerTo(question, conditions, style), style);
    for (const element of elements) element.textContent = said;
  };
}

function tablePiece(figure: HTMLElement, text: string): Draw {
  const asked = readTableRequest(text);
  const table = figure.querySelector('table');
  const name = table?.caption?.textContent ?? '';
  return (conditions, style) => {
    if (asked === undefined || table === null) return;
    morph(table, elementOf(renderRows(printTable(computeTable(asked.kind, conditions, asked.request), style), name).html));
  };
}

function curvePiece(figure: HTMLElement, text: string): Draw {
  const asked = readTableRequest(text);
  const place = figure.querySelector('.curve');
  return (conditions) => {
    const curve = asked && curveOf(asked.kind, asked.request, conditions, figure.id);
    figure.hidden = curve === undefined;
    if (curve === undefined || place === null) return;
    const drawn = elementOf(renderCurve(curve));
    if (place.firstElementChild === null) place.append(drawn);
    else morph(place.firstElementChild, drawn);
  };
}

function runPiece(chart: HTMLElement, text: string): Draw {
  const run = readLiveRun(text);
  return (conditions) => morph(chart, elementOf(renderLiveRun(run, conditions)));
}
