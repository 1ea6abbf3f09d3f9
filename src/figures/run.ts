/** A run as its chart takes it: steps and readings over time. */
import type { Style } from '../tables/display.ts';
import { RUN_TEXTS } from '../texts/index.ts';
import { escape } from './svg.ts';

/** A step as the chart needs it. */
export interface ChartStep {
  /** Seconds from the bell. */
  readonly at: number;
  /** Seconds. */
  readonly duration: number;
  readonly title: string;
  readonly action: string;
  readonly anchor: string;
}

export interface RunSeries {
  /** s from the bell, rising */
  readonly time: readonly number[];
  /** Against the room, in the unit of the chart, one per time */
  readonly gauge: readonly number[];
  /** Shown by the thermometer, in the unit of the chart, one per time */
  readonly thermometer: readonly number[];
  /** Of the air in the vessel, in the unit of the chart, one per time */
  readonly gas?: readonly number[];
}

export interface RunUnits {
  readonly gauge: string;
  readonly temperature: string;
}

export interface RunChart {
  /** Unique on the page. */
  readonly id?: string;
  /** Length of the lesson, min. */
  readonly minutes: number;
  readonly series: RunSeries;
  /** Symbols of the units in which the series are. */
  readonly units: RunUnits;
  readonly steps: readonly ChartStep[];
  /** Whether each step is a link to its anchor on the same page. */
  readonly linkSteps: boolean;
  /** Whether the temperature of the air itself is drawn beside the thermometer's. */
  readonly teachers: boolean;
  readonly style: Style;
}

/** The same run with nothing left to decide, as the two drawings take it. */
export interface PreparedRun {
  readonly id: string;
  readonly minutes: number;
  readonly series: RunSeries;
  readonly units: RunUnits;
  readonly gas: readonly number[] | undefined;
  readonly steps: readonly ChartStep[];
  readonly linkSteps: boolean;
  readonly description: string;
  readonly style: Style;
}

/** Kinds of step in which the pressure in the vessel changes: drawn full, the others hollow. */
const MOVING = new Set(['pump', 'vent']);

/** Whether the pressure in the vessel changes during a step. */
export const movesAir = (step: ChartStep): boolean => MOVING.has(step.action);

/** A drawing of a step wrapped in the link to its anchor, where links are asked for. */
export const linked = (run: PreparedRun, step: ChartStep, number: number, content: string): string =>
  run.linkSteps ? `<a class="step-link" href="#${escape(step.anchor)}" aria-label="${escape(RUN_TEXTS[run.style.language].step(number, minutesOf(step.at), step.title))}">${content}</a>` : content;

/** A moment as minutes and seconds from the bell: "12 min", "12 min 30 s". */
export const minutesOf = (seconds: number): string => {
  const whole = Math.floor(seconds / 60);
  const rest = Math.round(seconds - whole * 60);
  return rest === 0 ? `${whole} min` : `${whole} min ${rest} s`;
};
