/** The conditions in words: what every page, table and print says it was computed for. */
import { computeValue, printValue, type Conditions, type NumberStyle, type QuantityName } from '../tables/index.ts';
import type { Condition } from './book.ts';
import { writeValueQuestion } from './html/ask.ts';

const STATED: readonly { readonly of: QuantityName; readonly label: string; readonly note?: string }[] = [
  { of: 'roomPressure', label: 'Room pressure, absolute' },
  { of: 'roomTemperature', label: 'Room temperature' },
  { of: 'roomHumidity', label: 'Humidity of the room' },
  { of: 'startHumidity', label: 'Humidity in the vessel' },
  { of: 'vesselVolume', label: 'Volume of the vessel' },
  { of: 'ratedLowestGauge', label: 'Vessel rated down to', note: 'gauge, by its maker' },
  { of: 'plannedDrop', label: 'Planned drop' },
  { of: 'gaugeResolution', label: 'Gauge read to' },
  { of: 'thermometerResolution', label: 'Thermometer read to' },
];

/** The stated conditions, one by one. */
export function conditionsList(conditions: Conditions, style?: NumberStyle): Condition[] {
  return STATED.map(({ of, label, note }) => ({ label, reading: { ...printValue(of, computeValue(conditions, of, {}), undefined, style), ask: writeValueQuestion({ of, at: {} }) }, note }));
}

/** One sentence: `Computed for Room 14: 21.0 °C, 100.3 kPa, 97 % in the vessel`. */
export function computedFor(conditions: Conditions, style?: NumberStyle): string {
  const text = (of: QuantityName): string => printValue(of, computeValue(conditions, of, {}), undefined, style).text;
  return `Computed for ${conditions.roomTitle}: ${text('roomTemperature')}, ${text('roomPressure')}, ${text('startHumidity')} humidity in the vessel`;
}
