/** What a page carries so that the reader's device can compute it again: plain data in attributes, since a page holds no script of its own. */
import { renderRunChart, type ChartStep } from '../../figures/run-chart.ts';
import { axisUnit, lessonRun, type Conditions, type Level, type PlannedStep, type Style } from '../../tables/index.ts';
import type { Language } from '../../texts/index.ts';
import { escapeHtml } from './text.ts';

/** All that the numbers of a page follow from. */
export interface Live {
  readonly conditions: Conditions;
  /** Levels of the apparatus that move with the room's pressure. */
  readonly moving: readonly Level[];
  /** Of the page. */
  readonly language: Language;
}

/** All that a run chart follows from, beside the conditions. */
export interface LiveRun {
  readonly id: string;
  readonly minutes: number;
  /** Whether the temperature of the air itself is drawn. */
  readonly teachers: boolean;
  readonly steps: readonly (ChartStep & PlannedStep)[];
}

/** For `data-live`. */
export const writeLive = (live: Live): string => JSON.stringify(live);
export const readLive = (text: string): Live => JSON.parse(text) as Live;
/** From `data-run`. */
export const readLiveRun = (text: string): LiveRun => JSON.parse(text) as LiveRun;

/**
 * The simulated lesson over its steps: gauge and thermometer, for teachers the gas as well.
 * @param simulated the run of these steps in these conditions, where it is known already
 */
export function renderLiveRun(run: LiveRun, conditions: Conditions, style: Style, { series } = lessonRun(conditions, run.steps)): string {
  const pressure = axisUnit('pressure', style);
  const temperature = axisUnit('temperature', style);
  const chart = renderRunChart({
    id: run.id,
    minutes: run.minutes,
    series: {
      time: series.map(({ time }) => time),
      gauge: series.map(({ gauge }) => pressure.fromSi(gauge)),
      thermometer: series.map(({ thermometerReading }) => temperature.fromSi(thermometerReading)),
      gas: series.map(({ gasTemperature }) => temperature.fromSi(gasTemperature)),
    },
    units: { gauge: pressure.symbol, temperature: temperature.symbol },
    steps: run.steps,
    linkSteps: true,
    teachers: run.teachers,
    style,
  });
  return chart.replace('<div', `<div data-run="${escapeHtml(JSON.stringify(run))}"`);
}
