/** `readings/<class>.csv`: what a class read off its instruments, a row for each time. */
import { READINGS_FILE_TEXTS, type Language } from '../texts/index.ts';
import type { FindingCode } from './catalogue.ts';
import { findUnit } from './find-unit.ts';
import { findingAt, START, type Finding } from './findings.ts';
import { nearestName } from './names.ts';
import { cellsOf, clockIn, isFormula, numberIn, separatorOf, type Cell, type Separator } from './readings-form.ts';
import type { Dimension, Unit } from './unit-table.ts';

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
/** `min:s`, `mm:ss`, `h:min:s` */
const CLOCK_UNIT = /^(?:h+:)?m+(?:in)?:s+$/i;
const CLOCK: Unit = { symbol: 'min:s', dimension: 'time', scale: 1, toSI: (value) => value };

/** A finding that knows the column of the table as well, where it is about one. */
export type ReadingsFinding = Finding & { readonly cell?: number };

/** Readings of one class, undefined if anything is wrong with them. */
export interface ReadReadings {
  readonly readings: readonly RecordedReading[] | undefined;
  readonly findings: readonly ReadingsFinding[];
}

/**
 * Reads recorded readings: a header that names columns and units, then rows of plain numbers, times rising.
 * @param text of the file, CSV with commas (RFC 4180)
 * @param file as findings name it
 * @param own the language of a reader, whose own table this is: it may have that language's names of columns, tabs or semicolons between them, decimal commas, and times as min:s. None for a contributor's file
 */
export function readReadings(text: string, file: string, own?: Language): ReadReadings {
  const findings: ReadingsFinding[] = [];
  const report: Report = ({ place, number }, code, [what, instead]) => {
    findings.push({ ...findingAt(file, place, { code, what, instead }), ...(number === 0 ? {} : { cell: number }) });
  };
  const lines = text.split(/\r\n|\n|\r/).map((line, i) => ({ line, at: i + 1 })).filter(({ line }) => line.trim() !== '');
  const separator = own === undefined ? ',' : separatorOf(lines[0]?.line ?? '');
  const format: Format = { said: READINGS_FILE_TEXTS[own ?? 'en'], separator, isOwn: own !== undefined, isForeign: own !== undefined && own !== 'en' };
  const { said } = format;
  const [header = [], ...rows] = lines.map(({ line, at }) => withoutEnd(cellsOf(line, at, separator))).filter(({ length }) => length > 0);
  if (rows.length > MOST_ROWS) {
    report(WHOLE, 'file-too-large', said.tooManyRows(rows.length, MOST_ROWS));
    return { readings: undefined, findings };
  }
  const columns = readHeader(header, format, report);
  for (const row of rows) for (const cell of row) if (isFormula(cell.text, format.isOwn)) report(cell, 'csv-formula', said.formula(shown(cell.text)));
  if (columns === undefined) return { readings: undefined, findings };
  if (rows.length < FEWEST_ROWS) report(WHOLE, 'readings-value', said.tooFewRows(rows.length, FEWEST_ROWS));
  const readings = rows.map((row) => readRow(row, columns, format, report));
  const timeColumn = columns.findIndex(({ key }) => key === 'time');
  for (const [i, { time }] of readings.entries()) {
    const before = readings[i - 1]?.time;
    if (before === undefined || time === undefined || time > before) continue;
    report({ ...(rows[i]?.[0] ?? WHOLE), number: timeColumn + 1 }, 'readings-value', said.notAfter(String(time), String(before)));
  }
  return { readings: findings.length > 0 ? undefined : (readings as RecordedReading[]), findings };
}

/** What is about no column, or all: the number of a cell is 0. */
const WHOLE: Where = { place: START, number: 0 };
type Where = Pick<Cell, 'place' | 'number'>;
type Report = (where: Where, code: FindingCode, said: readonly [what: string, instead: string]) => void;

/** How a table is written, and in which language its findings are. */
interface Format {
  readonly said: (typeof READINGS_FILE_TEXTS)['en'];
  readonly separator: Separator;
  readonly isOwn: boolean;
  readonly isForeign: boolean;
}

/** Spreadsheets leave empty cells at the ends of lines. */
function withoutEnd(cells: readonly Cell[]): readonly Cell[] {
  let count = cells.length;
  while (count > 0 && cells[count - 1]!.text === '') count -= 1;
  return cells.slice(0, count);
}

/** The name of a column and its unit as a reader is told to write them. */
const exampleOf = ({ example, key, name }: Column, { said, isForeign }: Format): string => (isForeign ? example.replace(name, said.columns[key]) : example);
const headerOf = (format: Format): string =>
  COLUMNS.filter(({ required }) => required).map((column) => exampleOf(column, format)).join(format.isForeign ? ';' : format.separator);

interface UnitColumn extends Column {
  readonly unit: Unit;
}

/** The columns in their order, undefined if one of them is not understood. */
function readHeader(header: readonly Cell[], format: Format, report: Report): readonly UnitColumn[] | undefined {
  const { said } = format;
  const first = { ...(header[0] ?? WHOLE), number: 0 };
  if (header.length === 1 && /[;\t]/.test(header[0]!.text)) {
    report(first, 'readings-header', said.notParted(headerOf(format)));
    return undefined;
  }
  if (!header.some(({ text }) => isFormula(text, format.isOwn) || columnOf(text, format) !== undefined)) {
    report(first, 'readings-header', said.noHeader(headerOf(format)));
    return undefined;
  }
  const columns = header.map((cell) => readColumn(cell, format, report));
  for (const [i, column] of columns.entries()) {
    if (column !== undefined && columns.findIndex((other) => other?.key === column.key) < i) report(header[i]!, 'readings-header', said.twice(column.name));
  }
  const known = columns.filter((column) => column !== undefined);
  if (known.length < columns.length) return undefined;
  const missing = COLUMNS.filter(({ key, required }) => required && !known.some((column) => column.key === key));
  for (const column of missing) report(first, 'readings-header', said.missing(nameOf(column, format), exampleOf(column, format)));
  return missing.length > 0 ? undefined : known;
}

const nameOf = ({ name, key }: Column, { said, isForeign }: Format): string => (isForeign ? said.columns[key] : name);

/** The column that a head names, with the unit as written; undefined where it names none. */
function columnOf(text: string, format: Format): { readonly column: Column; readonly name: string; readonly unit: string | undefined } | undefined {
  const [, head = text, unit] = /^([^()[\]]*?)\s*(?:[([]([^()[\]]+)[)\]])?$/u.exec(text) ?? [];
  const name = head.toLowerCase();
  const column = COLUMNS.find((one) => one.name === name || nameOf(one, format) === name);
  return column && { column, name, unit };
}

function readColumn(cell: Cell, format: Format, report: Report): UnitColumn | undefined {
  const { text } = cell;
  const { said } = format;
  if (isFormula(text, format.isOwn)) {
    report(cell, 'csv-formula', said.formula(shown(text)));
    return undefined;
  }
  const found = columnOf(text, format);
  if (found === undefined) {
    const nearest = nearestName(text.replace(/[([].*/, '').trim(), COLUMNS.map((one) => nameOf(one, format)));
    const meant = COLUMNS.find((one) => nameOf(one, format) === nearest);
    report(cell, 'readings-header', said.noColumn(shown(text), meant === undefined ? headerOf(format) : exampleOf(meant, format)));
    return undefined;
  }
  const { column, name, unit: written } = found;
  const example = exampleOf(column, format);
  if (written === undefined) {
    report(cell, 'readings-header', said.noUnit(name, example));
    return undefined;
  }
  if (format.isOwn && column.key === 'time' && CLOCK_UNIT.test(written)) return { ...column, name, unit: CLOCK };
  const unit = findUnit(written, [column.dimension]);
  if (!('code' in unit)) return { ...column, name, unit };
  report(cell, unit.code, format.isForeign ? said.wrongUnit(written, name, example) : [unit.what, unit.instead]);
  return undefined;
}

function readRow(row: readonly Cell[], columns: readonly UnitColumn[], format: Format, report: Report): Partial<RecordedReading> {
  const { said } = format;
  if (row.length > columns.length) {
    report({ ...row[0]!, number: columns.length + 1 }, 'readings-value', said.tooManyCells(row.length, columns.length));
    return {};
  }
  if (row.length < columns.length) {
    report({ ...row[0]!, number: row.length + 1 }, 'readings-value', said.tooFewCells(row.length, columns.length, columns[row.length]!.name));
    return {};
  }
  const values = columns.flatMap((column, i): [string, number][] => {
    const value = readCell(row[i]!, column, format, report);
    return value === undefined ? [] : [[column.key, value]];
  });
  return Object.fromEntries(values);
}

function readCell(cell: Cell, { key, name, unit, lowest, highest }: UnitColumn, { said, isOwn }: Format, report: Report): number | undefined {
  const { text } = cell;
  if (isFormula(text, isOwn)) return undefined;
  const clock = isOwn && key === 'time' ? clockIn(text) : undefined;
  const number = unit === CLOCK ? undefined : numberIn(text, isOwn);
  if (clock === undefined && number === undefined) {
    report(cell, 'readings-value', text === '' ? said.empty(name, unit.symbol) : unit === CLOCK ? said.noClock(shown(text)) : said.noNumber(shown(text), unit.symbol));
    return undefined;
  }
  const value = clock ?? unit.toSI(number!);
  if (value >= lowest && value <= highest) return value;
  report(cell, 'readings-value', said.beyond(`${shown(text)} ${unit.symbol}`, name));
  return undefined;
}

const shown = (text: string): string => (text.length > 40 ? `${text.slice(0, 37)}…` : text);
