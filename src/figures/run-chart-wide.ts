/** The run chart along the page: time from left to right, steps above, gauge and thermometer below. */
import type { Style } from '../tables/display.ts';
import { RUN_TEXTS } from '../texts/index.ts';
import { linked, movesAir, type ChartStep, type PreparedRun } from './run.ts';
import { drawing, extent, linear, lineAt, pathData, round, simplify, textAt, textWidth, ticks, tickText, wholeTicks, type Scale } from './svg.ts';

const WIDTH = 880;
const LEFT = 44;
const SIZE = 12.5;
const ROW = 18;
const LANE = 12;
const PANEL = 104;
const GAP = 34;
const CURVE_LABELS = 104;

const labelOf = (step: ChartStep, index: number): string => `${index + 1} ${step.title}`;

/** Rows of the labels, from the top: a label stands lower than every earlier one that reaches over its moment, so no leader crosses a label. */
const labelRows = (starts: readonly number[], widths: readonly number[]): number[] => {
  const rows: number[] = [];
  starts.forEach((start, index) => {
    let row = 0;
    for (let other = 0; other < index; other += 1) {
      if ((starts[other] ?? 0) + (widths[other] ?? 0) > start) row = Math.max(row, (rows[other] ?? 0) + 1);
    }
    rows.push(row);
  });
  return rows;
};

interface Panel {
  readonly top: number;
  readonly name: string;
  readonly domain: readonly [number, number];
}

const panelFrame = (panel: Panel, right: number, y: Scale, style: Style): string =>
  ticks(panel.domain, 3)
    .map((tick) => lineAt('grid', LEFT, y(tick), right, y(tick)) + textAt(LEFT - 7, y(tick) + 4.5, tickText(tick, style), { anchor: 'end', size: SIZE }))
    .join('') + textAt(LEFT, panel.top - 8, panel.name, { size: SIZE, bold: true });

const trace = (time: readonly number[], values: readonly number[], x: Scale, y: Scale, accent: boolean, dashes = ''): string =>
  `<path class="curve-line${accent ? ' accent' : ''}" d="${pathData(simplify(time.map((t, index) => [x(t), y(values[index] ?? 0)] as const)))}" fill="none" stroke="${accent ? '#5b2188' : 'currentColor'}" stroke-width="${accent ? 2 : 1.6}" stroke-linejoin="round"${dashes}/>`;

/** The drawing for wide pages and paper. */
export const wideRunChart = (run: PreparedRun): string => {
  const { time, gauge, thermometer } = run.series;
  const { style } = run;
  const said = RUN_TEXTS[style.language];
  const end = run.minutes * 60;
  const widths = run.steps.map((step, index) => textWidth(labelOf(step, index), SIZE) + 10);
  const reach = Math.max(run.gas ? CURVE_LABELS : 8, ...run.steps.map((step, index) => Math.max(0, (widths[index] ?? 0) - (1 - step.at / end) * (WIDTH - LEFT))));
  const right = WIDTH - Math.min(reach, 220);
  const x = linear([0, end], [LEFT, right]);
  const starts = run.steps.map((step) => x(step.at));
  const rows = labelRows(starts, widths);
  const laneTop = 8 + (Math.max(0, ...rows) + 1) * ROW;
  const gaugePanel: Panel = { top: laneTop + LANE + GAP + 4, name: said.gaugePanel(run.units.gauge), domain: wholeTicks(extent([...gauge, 0]), 3) };
  const warmPanel: Panel = { top: gaugePanel.top + PANEL + GAP, name: said.thermometerPanel(run.units.temperature), domain: wholeTicks(extent(run.gas ? [...thermometer, ...run.gas] : thermometer), 3) };
  const floor = warmPanel.top + PANEL;
  const height = floor + 40;
  const yGauge = linear(gaugePanel.domain, [gaugePanel.top + PANEL, gaugePanel.top]);
  const yWarm = linear(warmPanel.domain, [floor, warmPanel.top]);

  const steps = run.steps.map((step, index) => {
    const [x0, x1] = [x(step.at), x(Math.min(step.at + step.duration, end))];
    const y = 4 + (rows[index] ?? 0) * ROW + 10;
    const bar = `<rect class="${movesAir(step) ? 'bar-full' : 'bar'}" x="${round(x0)}" y="${round(laneTop)}" width="${round(Math.max(x1 - x0 - 1, 1.5))}" height="${LANE}" fill="${movesAir(step) ? 'currentColor' : 'none'}" stroke="currentColor" stroke-width="0.75"/>`;
    const target = `<rect class="target" x="${round(x0)}" y="${round(y - 13)}" width="${round(widths[index] ?? 0)}" height="${ROW}" fill="none"/>`;
    return (
      lineAt('grid', x0, laneTop + LANE, x0, floor) +
      linked(run, step, index + 1, `${target}${lineAt('lead', x0, y - 9, x0, laneTop)}${bar}${textAt(x0 + 4, y, labelOf(step, index), { size: SIZE })}`)
    );
  });

  const minutesAxis =
    lineAt('axis', LEFT, floor, right, floor) +
    ticks([0, run.minutes], run.minutes > 25 ? 10 : 5)
      .map((tick) => lineAt('axis', x(tick * 60), floor, x(tick * 60), floor + 6) + textAt(x(tick * 60), floor + 20, tickText(tick, style), { anchor: 'middle', size: SIZE }))
      .join('') +
    textAt(right, floor + 35, said.minutesAxis, { anchor: 'end', size: SIZE, bold: true });

  const last = thermometer.at(-1) ?? 0;
  const lastGas = run.gas?.at(-1) ?? last;
  const near = Math.abs(yWarm(last) - yWarm(lastGas)) < 16;
  const names = run.gas
    ? textAt(x(time.at(-1) ?? 0) + 6, yWarm(last) + 4, said.thermometerCurve, { size: SIZE, className: 'accent-text' }) + textAt(x(time.at(-1) ?? 0) + 6, yWarm(lastGas) + 4 + (near ? 16 : 0), said.airCurve, { size: SIZE })
    : '';

  const content =
    steps.join('') +
    panelFrame(gaugePanel, right, yGauge, style) +
    panelFrame(warmPanel, right, yWarm, style) +
    minutesAxis +
    trace(time, gauge, x, yGauge, false) +
    (run.gas ? trace(time, run.gas, x, yWarm, false, ' stroke-dasharray="1.5 3" stroke-linecap="round"') : '') +
    trace(time, thermometer, x, yWarm, true) +
    names;
  return drawing({ id: `${run.id}-wide`, width: WIDTH, height, title: said.title, description: run.description, className: 'run-wide', role: run.linkSteps ? 'group' : 'img' }, content);
};
