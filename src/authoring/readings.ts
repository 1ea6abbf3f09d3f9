/** `readings/<class>.csv`: what a class read off its instruments, a row for each time. */
import { READINGS_FILE_TEXTS, type Language } from '../texts/index.ts';
import type { FindingCode } from './catalogue.ts';
import { findingAt, START, type Finding, type Place } from './findings.ts';
import { nearestName } from './names.ts';
import { parseQuantity } from './quantities.ts';
import { UNITS, type Dimension, type Unit } from './unit-table.ts';

/** What was read at one time. Uncertainties are standard uncertainties, undefined where none are stated. */
export interface RecordedReading {
  /** s */
  readonly time: number;
  /** against the room, Pa; negative below it */
  readonly gauge: number;
  /** K */
  readonly thermometer: number;
  /** s */
  readonly timeUncertainty?: number;
  /** Pa */
  readonly gaugeUncertainty?: number;
  /** K */
  readonly thermometerUncertainty?: number;
}

/** One column as the header may name it. */
interface Column {
  readonly name: string;
  readonly key: keyof RecordedReading;
  readonly dimension: Dimension;
  readonly example: string;
  readonly required: boolean;
  /** SI */
  readonly lowest: number;
  readonly highest: number;
}

const DAY = 86_400;
/** The widest that school instruments show: gauges of pumps and pressure bottles, thermometers for the kitchen. */
const COLUMNS: readonly Column[] = [
  { name: 'time', key: 'time', dimension: 'time', example: 'time (s)', required: true, lowest: -DAY, highest: DAY },
  { name: 'gauge', key: 'gauge', dimension: 'pressure', example: 'gauge (kPa)', required: true, lowest: -110e3, highest: 1e6 },
  { name: 'thermometer', key: 'thermometer', dimension: 'temperature', example: 'thermometer (°C)', required: true, lowest: 200, highest: 400 },
  { name: 'time uncertainty', key: 'timeUncertainty', dimension: 'time', example: 'time uncertainty (s)', required: false, lowest: 0, highest: DAY },
  { name: 'gauge uncertainty', key: 'gaugeUncertainty', dimension: 'pressure', example: 'gauge uncertainty (kPa)', required: false, lowest: 0, highest: 1e5 },
  { name: 'thermometer uncertainty', key: 'thermometerUncertainty', dimension: 'temperatureDifference', example: 'thermometer uncertainty (K)', required: false, lowest: 0, highest: 100 },
];

/** More than a reading a second for half an hour is a recording, not a table of readings. */
const MOST_ROWS = 2000;
/** Fewer say nothing of a change. */
const FEWEST_ROWS = 2;
const NUMBER = /^[+\-−]?(?:\d+(?:\.\d*)?|\.\d+)$/u;
/** Spreadsheets run what begins like this. */
const FORMULA = /^[=+\-@\t\r|%]/;

interface Cell {
  readonly text: string;
  readonly place: Place;
}

/** Readings of one class, undefined if anything is wrong with them. */
export interface ReadReadings {
  readonly readings: readonly RecordedReading[] | undefined;
  readonly findings: readonly Finding[];
}

/**
 * Reads recorded readings: a header that names columns and units, then rows of plain numbers, times rising.
 * @param text of the file, CSV with commas (RFC 4180)
 * @param file as findings name it
 * @param language of what findings say. In another than English a reader's own table may have that language's names of columns, and semicolons between them with decimal commas
 */
export function readReadings(text: string, file: string, language: Language = 'en'): ReadReadings {
  const format = formatOf(text, language);
  const { said } = format;
  const findings: Finding[] = [];
  const report: Report = (place, code, [what, instead]) => {
    findings.push(findingAt(file, place, { code, what, instead }));
  };
  const lines = text.split(/\r\n|\n|\r/).map((line, i) => ({ cells: cellsOf(line, i + 1, format), empty: line.trim() === '' }));
  const header = lines[0]?.cells ?? [];
  const rows = lines.slice(1).filter(({ empty }) => !empty).map(({ cells }) => cells);
  if (rows.length > MOST_ROWS) {
    report(START, 'file-too-large', said.tooManyRows(rows.length, MOST_ROWS));
    return { readings: undefined, findings };
  }
  const columns = readHeader(header, format, report);
  for (const row of rows) readFormulas(row, format, report);
  if (columns === undefined) return { readings: undefined, findings };
  if (rows.length < FEWEST_ROWS)
    report(START, 'readings-value', said.tooFewRows(rows.length, FEWEST_ROWS));
  const readings = rows.map((row) => readRow(row, columns, format, report));
  for (const [i, { time }] of readings.entries()) {
    const before = readings[i - 1]?.time;
    if (before === undefined || time === undefined || time > before) continue;
    report(rows[i]?.[0]?.place ?? START, 'readings-value', said.notAfter(String(time), String(before)));
  }
  return { readings: findings.length > 0 ? undefined : (readings as RecordedReading[]), findings };
}

type Report = (place: Place, code: FindingCode, said: readonly [what: string, instead: string]) => void;

/** How a table is written: what parts its cells, how its numbers and columns look. */
interface Format {
  readonly said: (typeof READINGS_FILE_TEXTS)['en'];
  readonly separator: ',' | ';';
  readonly isForeign: boolean;
}

function formatOf(text: string, language: Language): Format {
  const isForeign = language !== 'en';
  return { said: READINGS_FILE_TEXTS[language], isForeign, separator: isForeign && /^[^\n\r]*;/.test(text) ? ';' : ',' };
}

/** The name of a column and its unit as a reader is told to write them. */
const exampleOf = ({ example, key, name }: Column, { said, isForeign }: Format): string => (isForeign ? example.replace(name, said.columns[key]) : example);
const headerOf = (format: Format): string =>
  COLUMNS.filter(({ required }) => required).map((column) => exampleOf(column, format)).join(format.isForeign ? ';' : ',');

interface UnitColumn extends Column {
  readonly unit: Unit;
}

/** The columns in their order, undefined if one of them is not understood. */
function readHeader(header: readonly Cell[], format: Format, report: Report): readonly UnitColumn[] | undefined {
  const first = header[0]?.place ?? START;
  if (header.length === 1 && /[;\t]/.test(header[0]?.text ?? '')) {
    report(first, 'readings-header', format.said.notParted(headerOf(format)));
    return undefined;
  }
  const columns = header.map((cell) => readColumn(cell, format, report));
  for (const [i, column] of columns.entries()) {
    if (column !== undefined && columns.findIndex((other) => other?.key === column.key) < i)
      report(header[i]?.place ?? first, 'readings-header', format.said.twice(column.name));
  }
  const known = columns.filter((column) => column !== undefined);
  if (known.length < columns.length) return undefined;
  const missing = COLUMNS.filter(({ key, required }) => required && !known.some((column) => column.key === key));
  for (const column of missing) report(first, 'readings-header', format.said.missing(nameOf(column, format), exampleOf(column, format)));
  return missing.length > 0 ? undefined : known;
}

const nameOf = ({ name, key }: Column, { said, isForeign }: Format): string => (isForeign ? said.columns[key] : name);

function readColumn({ text, place }: Cell, format: Format, report: Report): UnitColumn | undefined {
  const { said } = format;
  if (FORMULA.test(text)) {
    reportFormula({ text, place }, format, report);
    return undefined;
  }
  const parts = /^(?<name>[^()]*?)\s*(?:\((?<unit>[^()]+)\))?$/u.exec(text)?.groups;
  const name = (parts?.['name'] ?? text).toLowerCase();
  const column = COLUMNS.find((one) => one.name === name || nameOf(one, format) === name);
  if (column === undefined) {
    const nearest = nearestName(name, COLUMNS.map((one) => nameOf(one, format)));
    const meant = COLUMNS.find((one) => nameOf(one, format) === nearest);
    report(place, 'readings-header', said.noColumn(shown(text), meant === undefined ? headerOf(format) : exampleOf(meant, format)));
    return undefined;
  }
  const example = exampleOf(column, format);
  if (parts?.['unit'] === undefined) {
    report(place, 'readings-header', said.noUnit(name, example));
    return undefined;
  }
  const reading = parseQuantity(`0 ${parts['unit']}`, column.dimension);
  if ('problem' in reading) {
    const { code, what, instead } = reading.problem;
    report(place, code, format.isForeign ? said.wrongUnit(parts['unit'], name, example) : [what, instead]);
    return undefined;
  }
  const unit = UNITS.find(({ symbol, dimension }) => symbol === reading.quantity.unit && dimension === column.dimension);
  return unit === undefined ? undefined : { ...column, name, unit };
}

function readFormulas(row: readonly Cell[], format: Format, report: Report): void {
  for (const cell of row) if (isFormula(cell, format)) reportFormula(cell, format, report);
}

function readRow(row: readonly Cell[], columns: readonly UnitColumn[], format: Format, report: Report): Partial<RecordedReading> {
  if (row.length !== columns.length) {
    const tell = row.length > columns.length ? format.said.tooManyCells : format.said.tooFewCells;
    report(row[0]?.place ?? START, 'readings-value', tell(row.length, columns.length));
    return {};
  }
  const values = columns.flatMap((column, i): [string, number][] => {
    const cell = row[i];
    const value = cell === undefined ? undefined : readCell(cell, column, format, report);
    return value === undefined ? [] : [[column.key, value]];
  });
  return Object.fromEntries(values);
}

function readCell(cell: Cell, { name, unit, lowest, highest }: UnitColumn, format: Format, report: Report): number | undefined {
  const { text, place } = cell;
  const { said } = format;
  if (isFormula(cell, format)) return undefined;
  if (!NUMBER.test(plain(text, format))) {
    report(place, 'readings-value', text === '' ? said.empty(name, unit.symbol) : said.noNumber(shown(text), unit.symbol));
    return undefined;
  }
  const value = unit.toSI(Number(plain(text, format).replace('−', '-')));
  if (value >= lowest && value <= highest) return value;
  report(place, 'readings-value', said.beyond(`${shown(text)} ${unit.symbol}`, name));
  return undefined;
}

/** A number with a decimal point, where commas are free to be decimal. */
const plain = (text: string, { separator }: Format): string => (separator === ';' ? text.replace(',', '.') : text);

const isFormula = ({ text }: Cell, format: Format): boolean => FORMULA.test(text) && !NUMBER.test(plain(text, format));

function reportFormula({ text, place }: Cell, { said }: Format, report: Report): void {
  report(place, 'csv-formula', said.formula(shown(text)));
}

/** Cells of a line, outer spaces and quotation marks taken off. */
function cellsOf(line: string, number: number, { separator }: Format): Cell[] {
  let column = 1;
  return line.split(separator).map((written) => {
    const start = column + (written.length - written.replace(/^ +/, '').length);
    column += written.length + 1;
    return { text: written.replace(/^ +| +$/g, '').replace(/^"(.*)"$/, '$1'), place: { line: number, column: start } };
  });
}

const shown = (text: string): string => (text.length > 40 ? `${text.slice(0, 37)}…` : text);
