/** Readings against the model: gauge, thermometer and what is left, on one time axis. */
import type { Style } from '../tables/display.ts';
import { FIT_TEXTS } from '../texts/index.ts';
import { drawing, extent, linear, lineAt, pathData, round, spread, tenths, textAt, ticks, tickText, wholeTicks, type Scale } from './svg.ts';

/** One moment; each in the unit printed on its axis. */
export interface ChartReading {
  /** s */
  readonly time: number;
  /** Against the room */
  readonly gauge: number;
  readonly thermometer: number;
  /** Half of the error bar; 0 for none */
  readonly gaugeBar: number;
  /** Half of the error bar; 0 for none */
  readonly thermometerBar: number;
  readonly gaugeModel?: number | undefined;
  readonly model?: number | undefined;
}

export interface ReadingsChart {
  /** Unique on the page. */
  readonly id: string;
  readonly title: string;
  readonly readings: readonly ChartReading[];
  /** Whether these are the model's own values, drawn as a curve, and not readings. */
  readonly expected?: boolean;
  /** Times between which the valve was closed, s. */
  readonly closed?: { readonly from: number; readonly to: number } | undefined;
  /** As printed on the axes. */
  readonly units: { readonly gauge: string; readonly thermometer: string; readonly residual: string };
}

const WIDTH = 500;
const LEFT = 42;
const RIGHT = WIDTH - 70;
const PANEL = 130;
const LOW_PANEL = 84;
const GAP = 36;
const SIZE = 12.5;
const LABEL_GAP = 16;

type Line = readonly (readonly [number, number])[];

interface Panel {
  readonly name: string;
  readonly height: number;
  readonly dots?: { readonly points: Line; readonly bars: readonly number[]; readonly label: string };
  readonly curve?: { readonly points: Line; readonly label: string };
  /** Drawn through, where it is a reference. */
  readonly zero?: boolean;
}

const panelsOf = ({ readings, expected, units }: ReadingsChart, { language }: Style): Panel[] => {
  const said = FIT_TEXTS[language];
  const [gaugeName, thermometerName] = [said.gaugePanel(units.gauge), said.thermometerPanel(units.thermometer)];
  const line = (of: (reading: ChartReading) => number | undefined): Line =>
    readings.flatMap((reading) => {
      const value = of(reading);
      return value === undefined ? [] : [[reading.time, value] as const];
    });
  const gauge = line((one) => one.gauge);
  const thermometer = line((one) => one.thermometer);
  if (expected === true) {
    return [
      { name: gaugeName, height: PANEL, curve: { points: gauge, label: said.model } },
      { name: thermometerName, height: PANEL, curve: { points: thermometer, label: said.model } },
    ];
  }
  const gaugeModel = line((one) => one.gaugeModel);
  const model = line((one) => one.model);
  const left = line((one) => (one.model === undefined ? undefined : one.thermometer - one.model));
  const [gaugeBars, bars] = [readings.map((one) => one.gaugeBar), readings.map((one) => one.thermometerBar)];
  return [
    { name: gaugeName, height: PANEL, dots: { points: gauge, bars: gaugeBars, label: said.readings }, ...(gaugeModel.length > 1 ? { curve: { points: gaugeModel, label: said.model } } : {}) },
    { name: thermometerName, height: PANEL, dots: { points: thermometer, bars, label: said.readings }, ...(model.length > 1 ? { curve: { points: model, label: said.model } } : {}) },
    ...(left.length === 0 ? [] : [{ name: said.residualPanel(units.residual), height: LOW_PANEL, dots: { points: left, bars, label: said.leftOver }, zero: true }]),
  ];
};

const domainOf = ({ dots, curve, zero }: Panel): readonly [number, number] => {
  const values = [
    ...(dots?.points.flatMap(([, y], i) => [y - (dots.bars[i] ?? 0), y + (dots.bars[i] ?? 0)]) ?? []),
    ...(curve?.points.map(([, y]) => y) ?? []),
    ...(zero === true ? [0] : []),
  ];
  return wholeTicks(extent(values), 4);
};

/** All error bars as one path, with short caps, and all readings as one path of round dots. */
const dotsOf = (points: Line, bars: readonly number[], x: Scale, y: Scale): string => {
  const uprights = points
    .flatMap(([t, value], i) => {
      const bar = bars[i] ?? 0;
      if (bar <= 0) return [];
      const [at, top, bottom] = [x(t), y(value + bar), y(value - bar)];
      return [`M${round(at)} ${round(top)}V${round(bottom)}M${round(at - 2)} ${round(top)}h4M${round(at - 2)} ${round(bottom)}h4`];
    })
    .join('');
  const dots = points.map(([t, value]) => `M${round(x(t))} ${round(y(value))}h0`).join('');
  return (
    (uprights === '' ? '' : `<path class="error-bars" d="${uprights}" fill="none" stroke="currentColor" stroke-width="0.9"/>`) +
    `<path class="dots" d="${dots}" fill="none" stroke="currentColor" stroke-width="5" stroke-linecap="round"/>`
  );
};

const labelsOf = (panel: Panel, top: number, y: Scale): string => {
  const named = [
    ...(panel.dots === undefined ? [] : [{ text: panel.dots.label, at: y(panel.dots.points.at(-1)?.[1] ?? 0), className: 'ink-text' }]),
    ...(panel.curve === undefined ? [] : [{ text: panel.curve.label, at: y(panel.curve.points.at(-1)?.[1] ?? 0) + 0.1, className: 'accent-text' }]),
  ];
  const places = spread(named.map(({ at }) => at), LABEL_GAP, [top, top + panel.height]);
  return named.map(({ text, className }, i) => textAt(RIGHT + 12, (places[i] ?? 0) + 4, text, { size: SIZE, className })).join('');
};

const panelAt = (panel: Panel, top: number, x: Scale, style: Style): string => {
  const domain = domainOf(panel);
  const y = linear(domain, [top + panel.height, top]);
  const frame = ticks(domain, 4)
    .map((tick) => lineAt('grid', LEFT, y(tick), RIGHT, y(tick)) + textAt(LEFT - 7, y(tick) + 4.5, tickText(tick, style), { anchor: 'end', size: SIZE }))
    .join('');
  const { dots, curve, zero } = panel;
  return (
    frame +
    (zero === true ? lineAt('ink', LEFT, y(0), RIGHT, y(0)) : '') +
    textAt(LEFT, top - 9, panel.name, { size: SIZE, bold: true }) +
    (dots === undefined ? '' : dotsOf(dots.points, dots.bars, x, y)) +
    (curve === undefined ? '' : `<path class="curve-line accent" d="${pathData(curve.points.map(([t, value]) => [x(t), y(value)] as const))}" fill="none" stroke="#5b2188" stroke-width="2" stroke-linejoin="round"/>`) +
    labelsOf(panel, top, y)
  );
};

const describe = ({ readings, expected, units }: ReadingsChart, style: Style): string => {
  const said = FIT_TEXTS[style.language];
  const [coldest, warmest] = extent(readings.map(({ thermometer }) => thermometer));
  const [lowest, highest] = extent(readings.map(({ gauge }) => gauge));
  const span = said.span(tenths(lowest, style), `${tenths(highest, style)} ${units.gauge}`, tenths(coldest, style), `${tenths(warmest, style)} ${units.thermometer}`);
  return expected === true ? said.describeModel(span) : said.describeReadings(readings.length, span);
};

/**
 * Readings with error bars, the model's curve through them, and below what the model leaves over.
 * @returns an `<svg>` with title and description, each curve labelled at its end
 * @throws RangeError without readings, or where a value is not finite
 */
export const renderReadingsChart = (chart: ReadingsChart, style: Style): string => {
  const said = FIT_TEXTS[style.language];
  const panels = panelsOf(chart, style);
  const tops: number[] = [];
  let floor = 8;
  for (const { height } of panels) {
    tops.push(floor + GAP - 12);
    floor += GAP - 12 + height + 14;
  }
  floor -= 14;
  const times = extent(chart.readings.map(({ time }) => time));
  const x = linear(times, [LEFT + 6, RIGHT]);
  const closed = chart.closed === undefined ? '' : valveSpan(chart.closed, (tops[0] ?? 0) + 2, x, said.leftAlone);
  const axis =
    lineAt('axis', LEFT, floor, RIGHT, floor) +
    ticks(times, 7)
      .map((tick) => lineAt('axis', x(tick), floor, x(tick), floor + 5) + textAt(x(tick), floor + 19, tickText(tick, style), { anchor: 'middle', size: SIZE }))
      .join('') +
    textAt(RIGHT, floor + 36, said.timeAxis, { anchor: 'end', size: SIZE, bold: true });
  return drawing(
    { id: chart.id, width: WIDTH, height: floor + 42, title: chart.title, description: describe(chart, style), className: 'plot readings-plot' },
    panels.map((panel, i) => panelAt(panel, tops[i] ?? 0, x, style)).join('') + closed + axis,
  );
};

/** A brace over the times with the valve closed. */
const valveSpan = ({ from, to }: { readonly from: number; readonly to: number }, top: number, x: Scale, label: string): string =>
  `<path class="lead" d="M${round(x(from))} ${round(top + 7)}V${round(top)}H${round(x(to))}V${round(top + 7)}" fill="none" stroke="#5d7268" stroke-width="1"/>` +
  textAt((x(from) + x(to)) / 2, top + 15, label, { anchor: 'middle', size: 12, className: 'halo' });
