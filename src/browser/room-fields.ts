/** What a reader can say of room, vessel and instruments: each a number with its units, its range and where it stands in the conditions. */
import { toCelsius, toFahrenheit, celsius, fahrenheit, toFoot, foot, toInchOfMercury, inchOfMercury, toKilopascal, kilopascal } from '../physics/units.ts';
import { pressureAltitude } from '../physics/atmosphere.ts';
import { formatNumber, type Style } from '../tables/display.ts';
import { ROOM_FIELD_TEXTS, ROOM_TEXTS, type RoomFieldName } from '../texts/index.ts';
import type { Conditions } from '../tables/conditions.ts';
import { startsAbove } from '../tables/release.ts';

/** How a field is written and read in one unit. */
export interface FieldUnit {
  /** As people read it. */
  readonly symbol: string;
  /** As an address carries it. */
  readonly written: string;
  readonly fromSi: (value: number) => number;
  readonly toSi: (value: number) => number;
  readonly decimals: number;
  /** What a step button adds. */
  readonly step: number;
}

export interface Field {
  /** Metric, and customary where there is another. */
  readonly units: readonly [FieldUnit, FieldUnit?];
  /** SI. */
  readonly low: number;
  readonly high: number;
  /** SI; undefined where the apparatus has no such thing. */
  readonly own: (conditions: Conditions) => number | undefined;
}

const same = (value: number): number => value;
const unit = (symbol: string, written: string, fromSi: (value: number) => number, toSi: (value: number) => number, decimals: number, step: number): FieldUnit =>
  ({ symbol, written, fromSi, toSi, decimals, step });
const scaled = (symbol: string, written: string, perSi: number, decimals: number, step: number): FieldUnit =>
  unit(symbol, written, (value) => value * perSi, (value) => value / perSi, decimals, step);

const METERS = unit('m', 'm', same, same, 0, 50);
const FEET = unit('ft', 'ft', toFoot, foot, 0, 100);
const DEGREES = unit('°C', 'C', toCelsius, celsius, 1, 0.5);
const FAHRENHEIT = unit('°F', 'F', toFahrenheit, fahrenheit, 1, 1);
const KILOPASCALS = unit('kPa', 'kPa', toKilopascal, kilopascal, 2, 0.5);
const INCHES = unit('inHg', 'inHg', toInchOfMercury, inchOfMercury, 2, 0.1);
const PERCENT = scaled('%', '', 100, 1, 1);
const LITERS = scaled('L', 'L', 1000, 2, 0.5);
const MILLIMETERS = scaled('mm', 'mm', 1000, 0, 5);
const MILLILITERS = scaled('mL', 'mL', 1e6, 0, 10);
const PER_MINUTE = scaled('L/min', 'L/min', 60_000, 2, 0.5);
const SECONDS = unit('s', 's', same, same, 1, 1);

export const FIELDS = {
  elevation: { units: [METERS, FEET], low: -430, high: 5000, own: (c) => c.elevation ?? pressureAltitude(c.inputs.roomPressure.value) },
  pressure: { units: [KILOPASCALS, INCHES], low: 5e4, high: 1.1e5, own: (c) => c.inputs.roomPressure.value },
  temperature: { units: [DEGREES, FAHRENHEIT], low: 253.15, high: 323.15, own: (c) => c.inputs.roomTemperature.value },
  humidity: { units: [PERCENT], low: 0, high: 1, own: (c) => c.inputs.roomHumidity.value },
  moisture: { units: [PERCENT], low: 0.01, high: 1, own: (c) => c.inputs.startHumidity.value },
  volume: { units: [LITERS], low: 5e-5, high: 0.1, own: (c) => c.apparatus.vessel.volume },
  diameter: { units: [MILLIMETERS], low: 0.02, high: 1, own: (c) => c.apparatus.vessel.diameter },
  /** On the side of the room to which the source goes. */
  rating: { units: [KILOPASCALS, INCHES], low: -1.1e5, high: 4e5, own: ({ apparatus }) => (startsAbove(apparatus) ? apparatus.vessel.highestGauge : apparatus.vessel.lowestGauge) },
  stroke: { units: [MILLILITERS], low: 1e-6, high: 5e-3, own: ({ apparatus: { source } }) => (source.kind === 'stroke-pump' ? source.strokeVolume : undefined) },
  pumping: { units: [PER_MINUTE], low: 1e-2 / 60_000, high: 1 / 60, own: ({ apparatus: { source } }) => (source.kind === 'steady-pump' ? source.speed : undefined) },
  thermometer: { units: [SECONDS], low: 0.01, high: 3600, own: (c) => c.apparatus.thermometer.timeConstant },
  drop: { units: [KILOPASCALS, INCHES], low: 500, high: 9e4, own: (c) => c.plannedDrop },
} as const satisfies Record<RoomFieldName, Field>;

export type FieldName = RoomFieldName;
export const FIELD_NAMES = Object.keys(FIELDS) as FieldName[];

/** The unit in which a reader reads a field. */
export const unitOf = (name: FieldName, customary: boolean): FieldUnit => {
  const [metric, other]: Field['units'] = FIELDS[name].units;
  return (customary ? other : undefined) ?? metric;
};

/** A number in SI as it stands in an input: no grouping, no more decimals than it needs. */
export const plainText = (value: number, { fromSi, decimals }: FieldUnit): string => String(Number(fromSi(value).toFixed(decimals)));

/** The same as it stands in an input, with the decimal sign of the page's language. */
export const inputText = (value: number, unit: FieldUnit, { decimal }: Style): string => plainText(value, unit).replace('.', decimal);

/** What stands in an input as a number; NaN where it is none. */
export const typedNumber = (text: string): number => Number(text.trim().replace(/^[−–]/, '-').replace(',', '.') || Number.NaN);

/** A plain number as it is read in a sentence. */
const spoken = (plain: string, { symbol }: FieldUnit, style: Style): string => `${formatNumber(Number(plain), plain.split('.')[1]?.length ?? 0, style)} ${symbol}`;

export type Typed = { readonly value: number } | { readonly problem: string };

/** A number as typed into a field, in SI; or what is wrong with it, in words. */
export function readTyped(name: FieldName, text: string, fieldUnit: FieldUnit, style: Style): Typed {
  const { low, high } = FIELDS[name];
  const label = ROOM_FIELD_TEXTS[style.language][name];
  const said = ROOM_TEXTS[style.language];
  const plain = text.trim().replace(/^[−–]/, '-').replace(',', '.');
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain)) return { problem: said.noNumber(label, text.trim(), inputText((low + high) / 2, fieldUnit, style)) };
  const value = fieldUnit.toSi(Number(plain));
  // A bound converted to another unit and back may miss itself by a rounding.
  const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
  if (value >= low - slack && value <= high + slack) return { value };
  const [lowest, highest] = [low, high].map((bound) => spoken(plainText(bound, fieldUnit), fieldUnit, style)) as [string, string];
  return { problem: said.outside(label, spoken(plain, fieldUnit, style), lowest, highest) };
}
