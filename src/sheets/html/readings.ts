/** Readings beside the model as HTML: what is explained and what is not, the chart, the constants, the table. Pure: drawn at build and again in the browser. */
import { renderReadingsChart, type ChartReading } from '../../figures/readings-chart.ts';
import type { FittedConstant, FittedValue, VesselFit } from '../../physics/fit.ts';
import { uncertaintyOfSteps } from '../../tables/conditions.ts';
import { DISPLAY_UNITS, formatIn, formatNumber, inOrder, UNITS_OF, type Style, type UnitName } from '../../tables/display.ts';
import type { PrintedCell, PrintedColumn } from '../../tables/table.ts';
import { FIT_TEXTS } from '../../texts/index.ts';
import { FEWEST_FOR_FIT, type ClassReading, type ComparedReading, type Comparison } from '../readings.ts';
import { renderRows } from './rows.ts';
import { html, NOTHING, raw, type Raw } from './text.ts';

export interface ReadingsSetting {
  /** Unique on the page; what is drawn begins its own ids with it. */
  readonly id: string;
  readonly title: string;
  readonly style: Style;
}

/** What is measured, in the units of a reader: the main one, and the second beside it. */
const MEASURED = { gauge: UNITS_OF.pressure, thermometer: UNITS_OF.temperature, difference: ['K difference', '°F difference'] } as const satisfies Record<string, readonly [UnitName, UnitName?]>;
type Measured = keyof typeof MEASURED;
const unitOf = (what: Measured, style: Style): UnitName => inOrder(MEASURED[what], style)[0];
const inUnit = (what: Measured, value: number, style: Style): number => DISPLAY_UNITS[unitOf(what, style)].fromSi(value);
/** An inch of mercury is three kilopascals: one more decimal says as much. */
const finer = (unit: UnitName, decimals: number): number => (unit === 'inHg' ? decimals + 1 : decimals);
const inWords = (what: Measured, value: number, decimals: number, style: Style): string => {
  const unit = unitOf(what, style);
  return `${formatIn(unit, value, finer(unit, decimals), style)} ${DISPLAY_UNITS[unit].symbol}`;
};

/** Standard uncertainties to each side of a reading: about 95 %, JCGM 100, 6.3. */
const COVERAGE = 2;
/** Scatter beyond this many times what the reading of the instrument brings is something else's. */
const MORE_THAN_READING = 1.5;
const MOST_DECIMALS = 5;

/** Verdict, chart, constants and table of a comparison. */
export function renderComparison(comparison: Comparison, setting: ReadingsSetting): Raw {
  const { fit, lines } = comparison;
  const notes = notesOf(comparison, setting.style);
  return html`<div class="comparison">${notes.map((note) => html`<p class="doubt">${note}</p>`)}${fit === undefined ? NOTHING : verdictOf(fit, comparison, setting)}${chartOf(comparison, setting)}${fit === undefined ? NOTHING : constantsTable(fit, comparison, setting)}${tableOf(lines, 2, setting)}</div>`;
}

/** Chart and table of what the model lets expect. */
export function renderExpected(readings: readonly ClassReading[], setting: ReadingsSetting): Raw {
  return html`<div class="comparison">${chartOf({ lines: readings.map((one) => ({ ...one, gaugeUncertainty: 0, thermometerUncertainty: 0 })), closed: undefined }, setting, true)}${tableOf(readings, 1, setting)}</div>`;
}

/** Why there is no fit, or what makes it doubtful, in words. */
export const notesOf = ({ notes, lines, roomPressure }: Comparison, style: Style): string[] => {
  const said = FIT_TEXTS[style.language];
  return notes.map((note) => (note === 'tooFew' ? said.tooFew(lines.length, FEWEST_FOR_FIT) : note === 'absolute' ? said.absolute(inWords('gauge', roomPressure, 1, style)) : said[note]));
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
function verdictOf(fit: VesselFit, comparison: Comparison, { style }: ReadingsSetting): Raw {
  const { closed, closedFound, declared } = comparison;
  const said = FIT_TEXTS[style.language];
  const left = fit.residualStandardDeviation;
  const reading = uncertaintyOfSteps(declared.thermometerResolution);
  const brings = left > MORE_THAN_READING * reading ? said.somethingElse : said.readingBrings;
  const spans = closed === undefined ? said.noClosed : (closedFound ? said.closedAsGauge : said.closed)(formatNumber(closed.from, 0, style), formatNumber(closed.to, 0, style));
  const found = constantsOf(fit, comparison, style).flatMap(({ name, known, unit }) => (known === undefined ? [] : [`${said.constants[name]} ${known.value} ± ${known.error} ${unit}`]));
  const kelvin = (value: number): string => inWords('difference', value, 2, style);
  return html`<div class="found"><p><strong>${said.explained}</strong> ${said.accountFor(formatNumber(100 * fit.explained, 0, style))} ${found.length === 0 ? '' : said.found(found.join(', '))} ${fitInWords(fit, style)}</p><p><strong>${said.notExplained}</strong> ${said.scatter(kelvin(left))} ${brings(kelvin(declared.thermometerResolution), kelvin(reading))}</p><p class="aside">${spans}</p></div>`;
}

function chartOf({ lines, closed }: Pick<Comparison, 'lines' | 'closed'>, { id, title, style }: ReadingsSetting, expected = false): Raw {
  const reads = (what: Measured, value: number | undefined): number | undefined => (value === undefined ? undefined : inUnit(what, value, style));
  const readings = lines.map((line): ChartReading => ({
    time: line.time,
    gauge: inUnit('gauge', line.gauge, style),
    thermometer: inUnit('thermometer', line.thermometer, style),
    gaugeBar: COVERAGE * inUnit('gauge', line.gaugeUncertainty, style),
    thermometerBar: COVERAGE * inUnit('difference', line.thermometerUncertainty, style),
    model: reads('thermometer', line.model),
    gaugeModel: reads('gauge', line.gaugeModel),
  }));
  const symbol = (what: Measured): string => DISPLAY_UNITS[unitOf(what, style)].symbol;
  const units = { gauge: symbol('gauge'), thermometer: symbol('thermometer'), residual: symbol('difference') };
  const chart = raw(renderReadingsChart({ id: `${id}-chart`, title, readings, expected, closed, units }, style));
  return html`<div class="curve">${chart}</div>${expected ? NOTHING : html`<p class="aside">${FIT_TEXTS[style.language].bars}</p>`}`;
}

/** One constant as it is printed. */
interface Constant {
  readonly name: FittedConstant;
  readonly unit: string;
  /** Undefined where it was not looked for, or the readings do not determine it */
  readonly known?: { readonly value: string; readonly error: string; readonly low: string; readonly high: string };
  readonly isFound: boolean;
  /** What the kit says of it, and whether that lies in the interval */
  readonly own?: string;
}

function constantsOf(fit: VesselFit, { declared }: Comparison, style: Style): readonly Constant[] {
  const said = FIT_TEXTS[style.language];
  const difference = unitOf('difference', style);
  const constant = (name: FittedConstant, unit: string, scale: number, own?: number): Constant => {
    const fitted: FittedValue | undefined = fit[name];
    const [value, error, low, high] = [fitted?.value, fitted?.standardError, fitted?.low, fitted?.high].map((one) => (one ?? NaN) * scale) as [number, number, number, number];
    if (![value, error, low, high].every(Number.isFinite)) return { name, unit, isFound: fitted !== undefined };
    const print = (one: number): string => formatNumber(one, decimalsFor(error), style);
    return {
      name, unit, isFound: true,
      known: { value: print(value), error: print(error), low: print(low), high: print(high) },
      ...(own === undefined ? {} : { own: (own >= low && own <= high ? said.inside : said.outside)(`${formatNumber(own, 0, style)} ${unit}`) }),
    };
  };
  return [
    constant('wallTimeConstant', 's', 1, declared.wallTimeConstant),
    constant('thermometerTimeConstant', 's', 1, declared.thermometerTimeConstant),
    constant('leak', said.perMinute, 6000),
    constant('offset', DISPLAY_UNITS[difference].symbol, DISPLAY_UNITS[difference].fromSi(1)),
  ];
}

function constantsTable(fit: VesselFit, comparison: Comparison, { title, style }: ReadingsSetting): Raw {
  const said = FIT_TEXTS[style.language];
  const { heads, names } = said;
  const rows = constantsOf(fit, comparison, style).map(({ name, unit, known, isFound, own }) => {
    const head = html`<th scope="row">${names[name]}</th>`;
    if (known === undefined) return html`<tr>${head}<td colspan="4">${isFound ? said.notDetermined : said.notFound}</td></tr>`;
    return html`<tr>${head}<td>${known.value} ${unit}</td><td>${known.error}</td><td>${said.between(known.low, known.high)}</td><td>${own}</td></tr>`;
  });
  return html`<h3>${said.ownConstants}</h3><div class="scroll worked" tabindex="0" role="group" aria-label="${said.constantsOf(title)}"><table class="constants"><caption class="unseen">${said.bestConstants(title)}</caption><thead><tr>${[heads.constant, heads.fitted, heads.error, heads.interval, heads.own].map((head) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${rows}</tbody></table></div><p class="aside">${said.intervals(fit.degreesOfFreedom)}</p>`;
}

/** Two digits of the standard error: JCGM 100, 7.2.6. */
const decimalsFor = (error: number): number => (error > 0 ? Math.min(MOST_DECIMALS, Math.max(0, 1 - Math.floor(Math.log10(error)))) : 2);

/** All lines as a table that opens on demand, both units beside each other. @param decimals of the thermometer in °C */
function tableOf(lines: readonly (ClassReading & Partial<ComparedReading>)[], decimals: number, { title, style }: ReadingsSetting): Raw {
  const said = FIT_TEXTS[style.language];
  const { columns } = said;
  const measured = (label: string, what: Measured, digits: number, read: (line: Partial<ComparedReading>) => number | undefined) => {
    const [main, also] = inOrder(MEASURED[what], style) as readonly [UnitName, UnitName];
    const print = (unit: UnitName, value: number): string => formatIn(unit, value, finer(unit, digits), style);
    const head: PrintedColumn = { label, unit: DISPLAY_UNITS[main].symbol, alsoUnit: DISPLAY_UNITS[also].symbol };
    const cell = (line: Partial<ComparedReading>): PrintedCell => {
      const value = read(line);
      return value === undefined ? { text: '' } : { text: print(main, value), also: print(also, value) };
    };
    return { head, cell };
  };
  const shown = [
    measured(columns.gauge, 'gauge', 1, ({ gauge }) => gauge),
    measured(columns.thermometer, 'thermometer', decimals, ({ thermometer }) => thermometer),
    ...(lines.some(({ model }) => model !== undefined)
      ? [measured(columns.model, 'thermometer', decimals, ({ model }) => model), measured(columns.residual, 'difference', decimals, ({ residual }) => residual)]
      : []),
  ];
  const table = {
    columns: [{ label: columns.time, unit: 's' }, ...shown.map(({ head }) => head)],
    rows: lines.map((line) => ({ cells: [{ text: formatNumber(line.time, line.time % 1 === 0 ? 0 : 1, style) }, ...shown.map(({ cell }) => cell(line))] })),
  };
  return html`<details class="as-table readings-table"><summary>${said.rowsAsTable(lines.length)}</summary><div class="scroll" tabindex="0" role="group" aria-label="${said.asTable(title)}">${renderRows(table, title)}</div></details>`;
}
