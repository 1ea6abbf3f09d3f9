/** The run chart's data as a table: each step with what gauge and thermometer show at its end. */
import { RUN_TEXTS } from '../texts/index.ts';
import { minutesOf, type PreparedRun } from './run.ts';
import { escape, tenths } from './svg.ts';

/** Index of the first of rising times that is not before a moment; their number where all are. */
const firstFrom = (time: readonly number[], moment: number): number => {
  let [low, high] = [0, time.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! < moment) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** The value of a series at a moment, linear between its points. */
const at = (time: readonly number[], values: readonly number[], moment: number): number => {
  const after = firstFrom(time, moment);
  if (after === time.length) return values.at(-1) ?? 0;
  if (after === 0) return values[0] ?? 0;
  const [t0, t1] = [time[after - 1] ?? 0, time[after] ?? 0];
  const [v0, v1] = [values[after - 1] ?? 0, values[after] ?? 0];
  return t1 === t0 ? v1 : v0 + ((v1 - v0) * (moment - t0)) / (t1 - t0);
};

/** A closed table of the run: one row a step. */
export const runTable = (run: PreparedRun): string => {
  const { time, gauge, thermometer } = run.series;
  const { asTable, heads } = RUN_TEXTS[run.style.language];
  const reading = (value: number): string => tenths(value, run.style);
  const head = [heads.step, heads.begins, heads.gauge, heads.thermometer];
  const units = ['', '', run.units.gauge, run.units.temperature];
  if (run.gas) head.push(heads.air);
  if (run.gas) units.push(run.units.temperature);
  const columns = head.map((label, index) => `<th scope="col"><span class="label">${label}</span>${units[index] ? ` <span class="unit">${units[index]}</span>` : ''}</th>`);
  const rows = run.steps.map((step, index) => {
    const end = step.at + step.duration;
    const cells = [minutesOf(step.at), reading(at(time, gauge, end)), reading(at(time, thermometer, end))];
    if (run.gas) cells.push(reading(at(time, run.gas, end)));
    return `<tr><th scope="row">${index + 1} ${escape(step.title)}</th>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`;
  });
  return (
    `<details class="as-table"><summary>${asTable}</summary><div class="scroll" tabindex="0" role="group" aria-label="${asTable}">` +
    `<table><caption class="unseen">${asTable}</caption><thead><tr>${columns.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></div></details>`
  );
};
