/** The set-up drawing of some conditions. Pure: drawn at build and again in the browser, for the reader's vessel and pump. */
import { renderApparatus } from '../../figures/setup-parts.ts';
import { computeValue, formatWithUnit, inOrder, printValue, unitFor, UNITS_OF, type Apparatus, type Conditions, type QuantityName, type Style } from '../../tables/index.ts';
import { escapeHtml } from './text.ts';

/** `<div class="setup">`: the labelled drawing and the list of parts. */
export function renderLiveSetup(id: string, conditions: Conditions, style: Style): string {
  const text = (of: QuantityName): string => printValue(of, computeValue(conditions, of, {}), undefined, style).text;
  const { apparatus: { gauge, source }, plannedDrop } = conditions;
  const drawn = renderApparatus(id, style.language, conditions.apparatus, {
    volume: text('vesselVolume'),
    ratedLowest: text('ratedLowestGauge'),
    ratedHighest: text('ratedHighestGauge'),
    // In the unit that stands on the instrument, whatever the reader's.
    gaugeResolution: formatWithUnit(unitFor('pressure', gauge.unit) ?? 'kPa', gauge.resolution, 0, style),
    amount: amountOf(source, plannedDrop, style),
  });
  return drawn.replace('<div', `<div data-setup="${escapeHtml(id)}"`);
}

/** What its source is known by. */
function amountOf(source: Apparatus['source'], plannedDrop: number, style: Style): string {
  switch (source.kind) {
    case 'stroke-pump':
      return formatWithUnit('mL', source.strokeVolume, 0, style);
    case 'steady-pump':
      return formatWithUnit('L', source.speed * 60, 0, style);
    case 'squeeze':
      return formatWithUnit('mL', source.volumeChange, 0, style);
    case 'pressurise':
      return formatWithUnit(inOrder(UNITS_OF.pressure, style)[0], plannedDrop, 0, style);
  }
}
