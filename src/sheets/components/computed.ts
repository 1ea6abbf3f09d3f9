/** Components that compute: tables, figures, values in a sentence; and the quantity that is given instead. */
import { z } from 'zod';
import { reference, type Anchor, type SheetKind } from '../../authoring/index.ts';
import { TABLE_KINDS, tableKind, tableRequestOf, valueQuestionOf, type Attributes } from '../../tables/index.ts';
import type { Component, Scene } from '../component.ts';
import { renderCurveOf, renderRowsBehind, renderTable, type TableFigure } from '../html/table.ts';
import { html, NOTHING } from '../html/text.ts';
import { renderValue } from '../html/value.ts';
import { TABLES_WITH_CURVE, tableAttributes, valueAttributes } from './requests.ts';

const EVERYWHERE: readonly SheetKind[] = ['run', 'student', 'background', 'question', 'hazard', 'misconception'];
const SHEETS: readonly SheetKind[] = ['run', 'student', 'background'];

const anchorOf = ({ kind, id }: Attributes): Anchor => ({ series: kind as string, own: id as string | undefined });
const anchorOfCurve = ({ kind, id }: Attributes): Anchor => ({ series: `${kind as string}-figure`, own: id as string | undefined });

function figureOf(attributes: Attributes, scene: Scene, { series, own }: Anchor): TableFigure {
  const kind = tableKind(attributes['kind'] as string);
  if (kind === undefined) throw new Error(`there is no table kind ${String(attributes['kind'])}: lessons are checked when content is loaded`);
  return {
    id: scene.nextId(series, own),
    kind,
    request: tableRequestOf(kind, attributes),
    caption: attributes['caption'] as string | undefined,
  };
}

export const workedTable: Component = {
  spec: { name: 'WorkedTable', placement: 'block', children: 'none', allowedIn: SHEETS, attributes: tableAttributes(TABLE_KINDS), anchor: anchorOf },
  draw: (attributes, _, scene) => {
    const figure = figureOf(attributes, scene, anchorOf(attributes));
    scene.onTable(attributes, figure.id);
    return renderTable(figure, scene.setting);
  },
};

export const curve: Component = {
  spec: { name: 'Curve', placement: 'block', children: 'none', allowedIn: SHEETS, attributes: tableAttributes(TABLES_WITH_CURVE), anchor: anchorOfCurve },
  draw: (attributes, _, scene) => {
    const figure = figureOf(attributes, scene, anchorOfCurve(attributes));
    scene.onTable(attributes, figure.id, true);
    return renderCurveOf(figure, scene.setting, renderRowsBehind(figure, scene.setting));
  },
};

export const value: Component = {
  spec: { name: 'Value', placement: 'inline', children: 'none', allowedIn: EVERYWHERE, attributes: valueAttributes },
  draw: (attributes, _, scene) => renderValue(valueQuestionOf(attributes), scene.setting),
};

export const given: Component = {
  spec: { name: 'Given', placement: 'inline', children: 'inline', allowedIn: EVERYWHERE, attributes: z.strictObject({ source: reference('source').optional() }) },
  draw: (attributes, children, scene) => {
    const source = attributes['source'] as string | undefined;
    return html`<span class="given">${children()}</span>${source === undefined ? NOTHING : html` ${scene.draw('source', source)}`}`;
  },
};
