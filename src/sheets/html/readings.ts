/** Readings beside the model as HTML: what is explained and what is not, the chart, the constants, the table. Pure: drawn at build and again in the browser. */
import { renderReadingsChart, type ChartReading } from '../../figures/readings-chart.ts';
import type { FittedValue, VesselFit } from '../../physics/fit.ts';
import { toCelsius, toKilopascal } from '../../physics/units.ts';
import { formatNumber, type NumberStyle } from '../../tables/display.ts';
import type { ClassReading, ComparedReading, Comparison } from '../readings.ts';
import { html, NOTHING, raw, type Raw } from './text.ts';

export interface ReadingsSetting {
  /** Unique on the page; what is drawn begins its own ids with it. */
  readonly id: string;
  readonly title: string;
  readonly style?: NumberStyle | undefined;
}

/** Standard uncertainties to each side of a reading: about 95 %, JCGM 100, 6.3. */
const COVERAGE = 2;
/** Scatter beyond this many times what the reading of the instrument brings is something else's. */
const MORE_THAN_READING = 1.5;
const MOST_DECIMALS = 5;

/** Verdict, chart, constants and table of a comparison. */
export function renderComparison(comparison: Comparison, setting: ReadingsSetting): Raw {
  const { fit, notes, lines } = comparison;
  return html`<div class="comparison">${notes.map((note) => html`<p class="doubt">${note}</p>`)}${fit === undefined ? NOTHING : verdictOf(fit, comparison, setting)}${chartOf(comparison, setting)}${fit === undefined ? NOTHING : constantsOf(fit, comparison, setting)}${linesOf(lines, setting)}</div>`;
}

/** Chart and table of what the model lets expect. */
export function renderExpected(readings: readonly ClassReading[], { id, title, style }: ReadingsSetting): Raw {
  const points = readings.map(({ time, gauge, thermometer }): ChartReading => ({ time, gauge: toKilopascal(gauge), thermometer: toCelsius(thermometer), gaugeBar: 0, thermometerBar: 0 }));
  const number = numbers(style);
  const rows = points.map(({ time, gauge, thermometer }) => [number(time, 0), number(gauge, 1), number(thermometer, 1)]);
  return html`<div class="comparison"><div class="curve">${raw(renderReadingsChart({ id: `${id}-chart`, title, readings: points, expected: true }))}</div>${asTable(title, ['Time', 'Gauge', 'Thermometer'], ['s', 'kPa', '°C'], rows)}</div>`;
}

/** What is explained, and what is not. */
function verdictOf(fit: VesselFit, { closed, closedFound, declared }: Comparison, { style }: ReadingsSetting): Raw {
  const number = numbers(style);
  const left = fit.residualStandardDeviation;
  const reading = declared.thermometerResolution / Math.sqrt(12);
  const isMore = left > MORE_THAN_READING * reading;
  const spans = closed === undefined
    ? 'The gauge shows no time when pump and valve were left alone, so there is nothing to find a leak from.'
    : `Pump and valve count as left alone from ${number(closed.from, 0)} to ${number(closed.to, 0)} s${closedFound ? ', as the gauge shows' : ''}.`;
  return html`<div class="found"><p><strong>Explained.</strong> Heat from the walls and the lag of the thermometer account for ${number(100 * fit.explained, 0)} % of what the thermometer did (of its squared deviations from their mean). ${fit.verdict}</p><p><strong>Not explained.</strong> Readings scatter about the model by ${number(left, 2)} K, one standard deviation. Reading to ${number(declared.thermometerResolution, 2)} K brings ${number(reading, 2)} K by itself${isMore ? ': something else adds to it. Look for a course in what is left over' : ', so the model leaves over hardly more than reading does'}.</p><p class="aside">${spans}</p></div>`;
}

function chartOf({ lines, closed }: Comparison, { id, title }: ReadingsSetting): Raw {
  const readings = lines.map((line): ChartReading => ({
    time: line.time,
    gauge: toKilopascal(line.gauge),
    thermometer: toCelsius(line.thermometer),
    gaugeBar: COVERAGE * toKilopascal(line.gaugeUncertainty),
    thermometerBar: COVERAGE * line.thermometerUncertainty,
    model: line.model === undefined ? undefined : toCelsius(line.model),
    gaugeModel: line.gaugeModel === undefined ? undefined : toKilopascal(line.gaugeModel),
  }));
  return html`<div class="curve">${raw(renderReadingsChart({ id: `${id}-chart`, title, readings, closed }))}</div><p class="aside">Bars reach two standard uncertainties to each side, about 95 %: as stated with the readings, else those of reading to the instrument’s resolution.</p>`;
}

/** One constant, in the unit it is printed in. */
interface Constant {
  readonly name: string;
  readonly unit: string;
  readonly fitted: FittedValue | undefined;
  readonly scale: number;
  readonly declared?: number | undefined;
}

function constantsOf(fit: VesselFit, { declared }: Comparison, { title, style }: ReadingsSetting): Raw {
  const constants: readonly Constant[] = [
    { name: 'Time constant of the walls', unit: 's', fitted: fit.wallTimeConstant, scale: 1, declared: declared.wallTimeConstant },
    { name: 'Time constant of the thermometer', unit: 's', fitted: fit.thermometerTimeConstant, scale: 1, declared: declared.thermometerTimeConstant },
    { name: 'Leak, of the difference from the room', unit: '% a minute', fitted: fit.leak, scale: 6000 },
    { name: 'Thermometer less true temperature', unit: 'K', fitted: fit.offset, scale: 1 },
  ];
  const rows = constants.map((constant) => constantRow(constant, numbers(style)));
  return html`<h3>The vessel’s own constants</h3><div class="scroll worked" tabindex="0" role="group" aria-label="${title}: constants"><table class="constants"><caption class="unseen">${title}: constants that fit the readings best</caption><thead><tr><th scope="col">Constant</th><th scope="col">Fitted</th><th scope="col">Standard error</th><th scope="col">95 % interval</th><th scope="col">The kit’s own</th></tr></thead><tbody>${rows}</tbody></table></div><p class="aside">Intervals hold the true constant in 95 of 100 such runs, if the model is right: Student’s factor for ${fit.degreesOfFreedom} degrees of freedom, errors of the linearized model, the scatter of each instrument taken from what is left over.</p>`;
}

function constantRow({ name, unit, fitted, scale, declared }: Constant, number: NumberWriter): Raw {
  if (fitted === undefined) return html`<tr><th scope="row">${name}</th><td colspan="4">not found: it takes readings with the valve closed</td></tr>`;
  const [value, error, low, high] = [fitted.value, fitted.standardError, fitted.low, fitted.high].map((one) => one * scale) as [number, number, number, number];
  if (![value, error, low, high].every(Number.isFinite)) return html`<tr><th scope="row">${name}</th><td colspan="4">not determined by these readings</td></tr>`;
  const decimals = decimalsFor(error);
  const own = declared === undefined ? NOTHING : html`${number(declared, 0)} ${unit}, ${declared >= low && declared <= high ? 'inside' : 'outside'}`;
  return html`<tr><th scope="row">${name}</th><td>${number(value, decimals)} ${unit}</td><td>${number(error, decimals)}</td><td>${number(low, decimals)} to ${number(high, decimals)}</td><td>${own}</td></tr>`;
}

/** Two digits of the standard error: JCGM 100, 7.2.6. */
const decimalsFor = (error: number): number => (error > 0 ? Math.min(MOST_DECIMALS, Math.max(0, 1 - Math.floor(Math.log10(error)))) : 2);

function linesOf(lines: readonly ComparedReading[], { title, style }: ReadingsSetting): Raw {
  const number = numbers(style);
  const isFitted = lines.some(({ model }) => model !== undefined);
  const rows = lines.map(({ time, gauge, thermometer, model, residual }) => [
    number(time, time % 1 === 0 ? 0 : 1), number(toKilopascal(gauge), 1), number(toCelsius(thermometer), 2),
    ...(isFitted ? [model === undefined ? '' : number(toCelsius(model), 2), residual === undefined ? '' : number(residual, 2)] : []),
  ]);
  const heads = ['Time', 'Gauge', 'Thermometer', ...(isFitted ? ['Model', 'Reading less model'] : [])];
  return asTable(title, heads, ['s', 'kPa', '°C', '°C', 'K'], rows);
}

function asTable(name: string, heads: readonly string[], units: readonly string[], rows: readonly (readonly string[])[]): Raw {
  const head = heads.map((label, i) => html`<th scope="col"><span class="label">${label}</span> <span class="unit">${units[i]}</span></th>`);
  const body = rows.map(([first, ...rest]) => html`<tr><th scope="row">${first}</th>${rest.map((cell) => html`<td>${cell}</td>`)}</tr>`);
  return html`<details class="as-table readings-table"><summary>${rows.length} rows as a table</summary><div class="scroll" tabindex="0" role="group" aria-label="${name} as a table"><table><caption class="unseen">${name}</caption><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table></div></details>`;
}

type NumberWriter = (value: number, decimals: number) => string;
const numbers = (style: NumberStyle | undefined): NumberWriter => (value, decimals) => formatNumber(value, decimals, style);
