/**
 * What a computed piece of a page was asked, as one line of text in a data attribute, so that the
 * reader's device can ask again for another room: `coolingClear drop=20000 unit=°C`.
 */
import { tableKind, tableRequestOf, unitFor, DISPLAY_UNITS, PARAMETERS, QUANTITIES, type Attributes, type Parameters, type QuantityName, type TableKind, type TableRequest, type ValueQuestion } from '../../tables/index.ts';

/** A value's question as text. */
export function writeValueQuestion({ of, at, unit }: ValueQuestion): string {
  return [of, ...writeParameters(at), ...(unit === undefined ? [] : [`unit=${DISPLAY_UNITS[unit].symbol || unit}`])].join(' ');
}

/** A value's question from {@link writeValueQuestion}. */
export function readValueQuestion(text: string): ValueQuestion {
  const [of, { unit, ...at }] = read(text);
  const name = of as QuantityName;
  return { of: name, at: readParameters(at), unit: unit === undefined ? undefined : unitFor(QUANTITIES[name].dimension, unit) };
}

/** A table's kind and request as text. */
export function writeTableRequest(kind: TableKind, { at, list, columns }: TableRequest): string {
  return [kind.kind, ...writeParameters(at), ...(list === undefined ? [] : [`list=${list.join(',')}`]), ...(columns === undefined ? [] : [`columns=${columns.join(',')}`])].join(' ');
}

/** What the rows of a table or a figure in lesson text follow from, whichever of its columns are shown. */
export function rowsAskedBy(attributes: Attributes): string {
  const kind = tableKind(attributes['kind'] as string)!;
  return writeTableRequest(kind, { ...tableRequestOf(kind, attributes), columns: undefined });
}

/** A table's kind and request from {@link writeTableRequest}; undefined for a kind that is not known here. */
export function readTableRequest(text: string): { readonly kind: TableKind; readonly request: TableRequest } | undefined {
  const [name, { list, columns, ...at }] = read(text);
  const kind = tableKind(name);
  return kind && { kind, request: { at: readParameters(at), list: list?.split(',').map(Number), columns: columns?.split(',') } };
}

const writeParameters = (at: Parameters): string[] => Object.entries(at).flatMap(([name, value]) => (value === undefined ? [] : [`${name}=${value}`]));

/** A particle may be named by digits alone: what is a number is known by the parameter, not by its looks. */
const readParameters = (at: Readonly<Record<string, string>>): Parameters =>
  Object.fromEntries(Object.entries(at).map(([name, value]) => [name, name in PARAMETERS ? Number(value) : value]));

function read(text: string): [name: string, settings: Record<string, string>] {
  const [name = '', ...rest] = text.split(' ');
  return [name, Object.fromEntries(rest.map((part) => [part.slice(0, part.indexOf('=')), part.slice(part.indexOf('=') + 1)]))];
}
