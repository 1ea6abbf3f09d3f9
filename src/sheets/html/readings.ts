/** Readings beside the model as HTML: what is explained and what is not, the chart, the constants, the table. Pure: drawn at build and again in the browser. */
import { renderReadingsChart, type ChartReading } from '../../figures/readings-chart.ts';
import type { FittedValue, VesselFit } from '../../physics/fit.ts';
import { toCelsius, toKilopascal } from '../../physics/units.ts';
import { formatNumber, type Style } from '../../tables/display.ts';
import { FIT_TEXTS } from '../../texts/index.ts';
import { FEWEST_FOR_FIT, type ClassReading, type ComparedReading, type Comparison } from '../readings.ts';
import { html, NOTHING, raw, type Raw } from './text.ts';

export interface ReadingsSetting {
  /** Unique on the page; what is drawn begins its own ids with it. */
  readonly id: string;
  readonly title: string;
  readonly style: Style;
}

/** Standard uncertainties to each side of a reading: about 95 %, JCGM 100, 6.3. */
const COVERAGE = 2;
/** Scatter beyond this many times what the reading of the instrument brings is something else's. */
const MORE_THAN_READING = 1.5;
const MOST_DECIMALS = 5;

/** Verdict, chart, constants and table of a comparison. */
export function renderComparison(comparison: Comparison, setting: ReadingsSetting): Raw {
  const { fit, lines } = comparison;
  const notes = notesOf(comparison, setting.style);
  return html`<div class="comparison">${notes.map((note) => html`<p class="doubt">${note}</p>`)}${fit === undefined ? NOTHING : verdictOf(fit, comparison, setting)}${chartOf(comparison, setting)}${fit === undefined ? NOTHING : constantsOf(fit, comparison, setting)}${linesOf(lines, setting)}</div>`;
}

/** Chart and table of what the model lets expect. */
export function renderExpected(readings: readonly ClassReading[], { id, title, style }: ReadingsSetting): Raw {
  const points = readings.map(({ time, gauge, thermometer }): ChartReading => ({ time, gauge: toKilopascal(gauge), thermometer: toCelsius(thermometer), gaugeBar: 0, thermometerBar: 0 }));
  const number = numbers(style);
  const { columns } = FIT_TEXTS[style.language];
  const rows = points.map(({ time, gauge, thermometer }) => [number(time, 0), number(gauge, 1), number(thermometer, 1)]);
  return html`<div class="comparison"><div class="curve">${raw(renderReadingsChart({ id: `${id}-chart`, title, readings: points, expected: true }, style))}</div>${asTable(title, [columns.time, columns.gauge, columns.thermometer], ['s', 'kPa', '°C'], rows, style)}</div>`;
}

type Said = (typeof FIT_TEXTS)['en'];

/** Why there is no fit, or what makes it doubtful, in words. */
export const notesOf = ({ notes, lines }: Comparison, { language }: Style): string[] => {
  const said = FIT_TEXTS[language];
  return notes.map((note) => (note === 'tooFew' ? said.tooFew(lines.length, FEWEST_FOR_FIT) : said[note]));
};

/** Which constants the readings determine, and whether the model is enough, in words. */
export function fitInWords({ undetermined, inseparable, hasCourse }: VesselFit, { language }: Style): string {
  const said = FIT_TEXTS[language];
  return [
    ...(undetermined.length === 0 && inseparable.length === 0 ? [said.determined] : []),
    ...(undetermined.length > 0 ? [said.undetermined(undetermined.map((name) => said.constants[name]))] : []),
    ...inseparable.map(([one, other]) => said.inseparable(said.constants[one], said.constants[other])),
    ...(hasCourse ? [said.course] : []),
  ].join(' ');
}

/** What is explained, and what is not. */
function verdictOf(fit: VesselFit, { closed, closedFound, declared }: Comparison, { style }: ReadingsSetting): Raw {
  const number = numbers(style);
  const said = FIT_TEXTS[style.language];
  const left = fit.residualStandardDeviation;
  const reading = declared.thermometerResolution / Math.sqrt(12);
  const brings = left > MORE_THAN_READING * reading ? said.somethingElse : said.readingBrings;
  const spans = closed === undefined ? said.noClosed : (closedFound ? said.closedAsGauge : said.closed)(number(closed.from, 0), number(closed.to, 0));
  return html`<div class="found"><p><strong>${said.explained}</strong> ${said.accountFor(number(100 * fit.explained, 0))} ${fitInWords(fit, style)}</p><p><strong>${said.notExplained}</strong> ${said.scatter(number(left, 2))} ${brings(number(declared.thermometerResolution, 2), number(reading, 2))}</p><p class="aside">${spans}</p></div>`;
}

function chartOf({ lines, closed }: Comparison, { id, title, style }: ReadingsSetting): Raw {
  const readings = lines.map((line): ChartReading => ({
    time: line.time,
    gauge: toKilopascal(line.gauge),
    thermometer: toCelsius(line.thermometer),
    gaugeBar: COVERAGE * toKilopascal(line.gaugeUncertainty),
    thermometerBar: COVERAGE * line.thermometerUncertainty,
    model: line.model === undefined ? undefined : toCelsius(line.model),
    gaugeModel: line.gaugeModel === undefined ? undefined : toKilopascal(line.gaugeModel),
  }));
  return html`<div class="curve">${raw(renderReadingsChart({ id: `${id}-chart`, title, readings, closed }, style))}</div><p class="aside">${FIT_TEXTS[style.language].bars}</p>`;
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
  const said = FIT_TEXTS[style.language];
  const { heads, names } = said;
  const constants: readonly Constant[] = [
    { name: names.walls, unit: 's', fitted: fit.wallTimeConstant, scale: 1, declared: declared.wallTimeConstant },
    { name: names.thermometer, unit: 's', fitted: fit.thermometerTimeConstant, scale: 1, declared: declared.thermometerTimeConstant },
    { name: names.leak, unit: said.perMinute, fitted: fit.leak, scale: 6000 },
    { name: names.offset, unit: 'K', fitted: fit.offset, scale: 1 },
  ];
  const rows = constants.map((constant) => constantRow(constant, numbers(style), said));
  return html`<h3>${said.ownConstants}</h3><div class="scroll worked" tabindex="0" role="group" aria-label="${said.constantsOf(title)}"><table class="constants"><caption class="unseen">${said.bestConstants(title)}</caption><thead><tr>${[heads.constant, heads.fitted, heads.error, heads.interval, heads.own].map((head) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${rows}</tbody></table></div><p class="aside">${said.intervals(fit.degreesOfFreedom)}</p>`;
}

function constantRow({ name, unit, fitted, scale, declared }: Constant, number: NumberWriter, said: Said): Raw {
  if (fitted === undefined) return html`<tr><th scope="row">${name}</th><td colspan="4">${said.notFound}</td></tr>`;
  const [value, error, low, high] = [fitted.value, fitted.standardError, fitted.low, fitted.high].map((one) => one * scale) as [number, number, number, number];
  if (![value, error, low, high].every(Number.isFinite)) return html`<tr><th scope="row">${name}</th><td colspan="4">${said.notDetermined}</td></tr>`;
  const decimals = decimalsFor(error);
  const own = declared === undefined ? NOTHING : html`${(declared >= low && declared <= high ? said.inside : said.outside)(`${number(declared, 0)} ${unit}`)}`;
  return html`<tr><th scope="row">${name}</th><td>${number(value, decimals)} ${unit}</td><td>${number(error, decimals)}</td><td>${said.between(number(low, decimals), number(high, decimals))}</td><td>${own}</td></tr>`;
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
  const { columns } = FIT_TEXTS[style.language];
  const heads = [columns.time, columns.gauge, columns.thermometer, ...(isFitted ? [columns.model, columns.residual] : [])];
  return asTable(title, heads, ['s', 'kPa', '°C', '°C', 'K'], rows, style);
}

function asTable(name: string, heads: readonly string[], units: readonly string[], rows: readonly (readonly string[])[], { language }: Style): Raw {
  const said = FIT_TEXTS[language];
  const head = heads.map((label, i) => html`<th scope="col"><span class="label">${label}</span> <span class="unit">${units[i]}</span></th>`);
  const body = rows.map(([first, ...rest]) => html`<tr><th scope="row">${first}</th>${rest.map((cell) => html`<td>${cell}</td>`)}</tr>`);
  return html`<details class="as-table readings-table"><summary>${said.rowsAsTable(rows.length)}</summary><div class="scroll" tabindex="0" role="group" aria-label="${said.asTable(name)}"><table><caption class="unseen">${name}</caption><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table></div></details>`;
}

type NumberWriter = (value: number, decimals: number) => string;
const numbers = (style: Style): NumberWriter => (value, decimals) => formatNumber(value, decimals, style);
