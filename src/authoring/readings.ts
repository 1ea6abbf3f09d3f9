/** `readings/<class>.csv`: what a class read off its instruments, a row for each time. */
import type { FindingCode } from './catalogue.ts';
import { findingAt, START, type Finding, type Place } from './findings.ts';
import { nearestName } from './names.ts';
import { dimensionInWords, parseQuantity } from './quantities.ts';
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
const NAMES = COLUMNS.map(({ name }) => name);
const HEADER = COLUMNS.filter(({ required }) => required).map(({ example }) => example).join(',');

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
 */
export function readReadings(text: string, file: string): ReadReadings {
  const findings: Finding[] = [];
  const report = (place: Place, code: FindingCode, what: string, instead: string): void => {
    findings.push(findingAt(file, place, { code, what, instead }));
  };
  const lines = text.split(/\r\n|\n|\r/).map((line, i) => ({ cells: cellsOf(line, i + 1), empty: line.trim() === '' }));
  const header = lines[0]?.cells ?? [];
  const rows = lines.slice(1).filter(({ empty }) => !empty).map(({ cells }) => cells);
  if (rows.length > MOST_ROWS) {
    report(START, 'file-too-large', `there are ${rows.length} rows, and ${MOST_ROWS} are the most`, 'keep every second or tenth row');
    return { readings: undefined, findings };
  }
  const columns = readHeader(header, report);
  for (const row of rows) readFormulas(row, report);
  if (columns === undefined) return { readings: undefined, findings };
  if (rows.length < FEWEST_ROWS)
    report(START, 'readings-value', `there are ${rows.length} rows of readings`, `write at least ${FEWEST_ROWS}, each on a line of its own`);
  const readings = rows.map((row) => readRow(row, columns, report));
  for (const [i, { time }] of readings.entries()) {
    const before = readings[i - 1]?.time;
    if (before === undefined || time === undefined || time > before) continue;
    report(rows[i]?.[0]?.place ?? START, 'readings-value', `the time ${time} s does not come after ${before} s, that of the row above`, 'put the rows in the order of their times');
  }
  return { readings: findings.length > 0 ? undefined : (readings as RecordedReading[]), findings };
}

type Report = (place: Place, code: FindingCode, what: string, instead: string) => void;

interface UnitColumn extends Column {
  readonly unit: Unit;
}

/** The columns in their order, undefined if one of them is not understood. */
function readHeader(header: readonly Cell[], report: Report): readonly UnitColumn[] | undefined {
  const first = header[0]?.place ?? START;
  if (header.length === 1 && /[;\t]/.test(header[0]?.text ?? '')) {
    report(first, 'readings-header', 'the columns are not parted by commas', `part them by commas, and write decimal points: \`${HEADER}\``);
    return undefined;
  }
  const columns = header.map((cell) => readColumn(cell, report));
  for (const [i, column] of columns.entries()) {
    if (column !== undefined && columns.findIndex((other) => other?.key === column.key) < i)
      report(header[i]?.place ?? first, 'readings-header', `the column \`${column.name}\` is given a second time`, 'remove one of the two');
  }
  const known = columns.filter((column) => column !== undefined);
  if (known.length < columns.length) return undefined;
  const missing = COLUMNS.filter(({ key, required }) => required && !known.some((column) => column.key === key));
  for (const { name, example } of missing)
    report(first, 'readings-header', `the column \`${name}\` is missing`, `add it with its unit, as in \`${example}\``);
  return missing.length > 0 ? undefined : known;
}

function readColumn({ text, place }: Cell, report: Report): UnitColumn | undefined {
  if (FORMULA.test(text)) {
    reportFormula({ text, place }, report);
    return undefined;
  }
  const parts = /^(?<name>[^()]*?)\s*(?:\((?<unit>[^()]+)\))?$/u.exec(text)?.groups;
  const name = (parts?.['name'] ?? text).toLowerCase();
  const column = COLUMNS.find((one) => one.name === name);
  if (column === undefined) {
    const nearest = nearestName(name, NAMES);
    const example = COLUMNS.find((one) => one.name === nearest)?.example ?? HEADER;
    report(place, 'readings-header', `there is no column \`${shown(text)}\``, `write \`${example}\``);
    return undefined;
  }
  if (parts?.['unit'] === undefined) {
    report(place, 'readings-header', `the column \`${name}\` has no unit`, `write the unit after it, as in \`${column.example}\``);
    return undefined;
  }
  const reading = parseQuantity(`0 ${parts['unit']}`, column.dimension);
  if ('problem' in reading) {
    report(place, reading.problem.code, reading.problem.what, reading.problem.instead);
    return undefined;
  }
  const unit = UNITS.find(({ symbol, dimension }) => symbol === reading.quantity.unit && dimension === column.dimension);
  return unit === undefined ? undefined : { ...column, unit };
}

function readFormulas(row: readonly Cell[], report: Report): void {
  for (const cell of row) if (isFormula(cell)) reportFormula(cell, report);
}

function readRow(row: readonly Cell[], columns: readonly UnitColumn[], report: Report): Partial<RecordedReading> {
  if (row.length !== columns.length) {
    const instead = row.length > columns.length ? 'write decimal points, and commas between columns only' : 'write a number in every column';
    report(row[0]?.place ?? START, 'readings-value', `this row has ${row.length} cells, and the header has ${columns.length} columns`, instead);
    return {};
  }
  const values = columns.flatMap((column, i): [string, number][] => {
    const cell = row[i];
    const value = cell === undefined ? undefined : readCell(cell, column, report);
    return value === undefined ? [] : [[column.key, value]];
  });
  return Object.fromEntries(values);
}

function readCell(cell: Cell, { name, unit, dimension, lowest, highest }: UnitColumn, report: Report): number | undefined {
  const { text, place } = cell;
  if (isFormula(cell)) return undefined;
  if (!NUMBER.test(text)) {
    report(place, 'readings-value', text === '' ? `\`${name}\` is empty` : `\`${shown(text)}\` is not a plain number`, `write ${dimensionInWords(dimension)} in ${unit.symbol} without the unit, as in \`12.5\``);
    return undefined;
  }
  const value = unit.toSI(Number(text.replace('−', '-')));
  if (value >= lowest && value <= highest) return value;
  report(place, 'readings-value', `\`${shown(text)} ${unit.symbol}\` is beyond what \`${name}\` can be`, 'check the number and the unit in the header');
  return undefined;
}

const isFormula = ({ text }: Cell): boolean => FORMULA.test(text) && !NUMBER.test(text);

function reportFormula({ text, place }: Cell, report: Report): void {
  report(place, 'csv-formula', `\`${shown(text)}\` begins like a formula, which a spreadsheet would run`, 'write the number that it gives');
}

/** Cells of a line, outer spaces and quotation marks taken off. */
function cellsOf(line: string, number: number): Cell[] {
  let column = 1;
  return line.split(',').map((written) => {
    const start = column + (written.length - written.replace(/^ +/, '').length);
    column += written.length + 1;
    return { text: written.replace(/^ +| +$/g, '').replace(/^"(.*)"$/, '$1'), place: { line: number, column: start } };
  });
}

const shown = (text: string): string => (text.length > 40 ? `${text.slice(0, 37)}…` : text);
