/** The run chart: pressure and thermometer against minutes, with the steps standing on the same axis. */
import { RUN_TEXTS } from '../texts/index.ts';
import { runTable } from './run-table.ts';
import { tallRunChart } from './run-chart-tall.ts';
import { wideRunChart } from './run-chart-wide.ts';
import { tenths } from './svg.ts';
import type { PreparedRun, RunChart } from './run.ts';

export type { ChartStep, RunChart } from './run.ts';

const lowestOf = (values: readonly number[]): number => values.reduce((low, value) => Math.min(low, value), Infinity);
const highestOf = (values: readonly number[]): number => values.reduce((high, value) => Math.max(high, value), -Infinity);

const describe = ({ minutes, series, units, steps, style }: RunChart): string => {
  const ends = (values: readonly number[]): readonly [string, string] => [tenths(lowestOf(values), style), tenths(highestOf(values), style)];
  return RUN_TEXTS[style.language].describe(steps.length, String(minutes), ...ends(series.gauge), units.gauge, ...ends(series.thermometer), units.temperature);
};

/**
 * The run chart as HTML text: one drawing for wide pages and paper, one that runs downward for
 * narrow screens (the stylesheet shows one of them), and the same run as a table.
 * @throws RangeError where the series are empty, unequal in length, or hold a value that is not finite
 */
export const renderRunChart = (chart: RunChart): string => {
  const { series } = chart;
  const lengths = [series.gauge, series.thermometer, series.gas ?? series.time].map((values) => values.length);
  if (series.time.length === 0 || lengths.some((length) => length !== series.time.length)) {
    throw new RangeError('A run chart needs one reading of gauge and thermometer for each moment.');
  }
  const id = chart.id ?? 'run-chart';
  const run: PreparedRun = {
    id,
    minutes: chart.minutes,
    series,
    units: chart.units,
    gas: chart.teachers ? series.gas : undefined,
    steps: [...chart.steps].sort((a, b) => a.at - b.at),
    linkSteps: chart.linkSteps,
    description: describe(chart),
    style: chart.style,
  };
  return `<div class="run-chart">${wideRunChart(run)}${tallRunChart(run)}${runTable(run)}</div>`;
};
