/** A piece of a page as text: what the page asks, drawn for some conditions. It touches no page, so that a thread without one can draw as well. */
import { renderCurve } from '../figures/draw-curve.ts';
import { readTableRequest, readValueQuestion } from '../sheets/html/ask.ts';
import { readLiveRun, renderLiveRun } from '../sheets/html/live.ts';
import { renderLiveSetup } from '../sheets/html/setup.ts';
import { renderRows } from '../sheets/html/rows.ts';
import { curveOf } from '../sheets/html/table.ts';
import { renderPrinted } from '../sheets/html/value.ts';
import type { Conditions } from '../tables/conditions.ts';
import type { Style } from '../tables/display.ts';
import { computeTable, printTable } from '../tables/table.ts';
import { computeValue, printValue } from '../tables/value.ts';

/** What a piece is, the text by which the page asks for it, and its own name there, as far as it shows one. */
export interface Asked {
  readonly as: keyof typeof DRAWERS;
  readonly text: string;
  readonly name: string;
}

/** HTML; undefined where there is nothing to show. */
export type Drawer = (conditions: Conditions, style: Style) => string | undefined;

const DRAWERS = { value, table, curve, run, setup };

/** What draws a piece; the text is read once. */
export const drawerOf = ({ as, text, name }: Asked): Drawer => DRAWERS[as](text, name);

function value(text: string): Drawer {
  const { of, at, unit } = readValueQuestion(text);
  return (conditions, style) => renderPrinted(printValue(of, computeValue(conditions, of, at), unit, style)).html;
}

function table(text: string, name: string): Drawer {
  const asked = readTableRequest(text)!;
  return (conditions, style) => renderRows(printTable(computeTable(asked.kind, conditions, asked.request), style), name).html;
}

function curve(text: string, name: string): Drawer {
  const asked = readTableRequest(text)!;
  return (conditions, style) => {
    const drawn = curveOf(asked.kind, asked.request, conditions, name, style);
    return drawn && renderCurve(drawn, style);
  };
}

function run(text: string): Drawer {
  const live = readLiveRun(text);
  return (conditions, style) => renderLiveRun(live, conditions, style);
}

function setup(id: string): Drawer {
  return (conditions, style) => renderLiveSetup(id, conditions, style);
}
