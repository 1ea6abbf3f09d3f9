/** One computed quantity for a sentence, a question or a key. */
import type { Conditions } from './conditions.ts';
import { DISPLAY_UNITS, formatWithUnit, inOrder, UNITS_OF, type Style, type UnitName } from './display.ts';
import type { Parameters } from './parameters.ts';
import { QUANTITIES, valueIn, type QuantityName } from './quantities.ts';
import type { QuantityKind } from './quantity-kind.ts';
import { spreadOver } from './spread.ts';

export interface Value {
  /** SI; null where physics has no answer */
  readonly value: number | null;
  /** Standard uncertainty, SI */
  readonly uncertainty: number;
}

/** A quantity at given conditions and parameters. */
export function computeValue(conditions: Conditions, name: QuantityName, at: Parameters): Value {
  const { varies, model }: QuantityKind = QUANTITIES[name];
  const { rows, uncertainties } = spreadOver(conditions, (state) => [[valueIn(state, name, at)]], varies);
  const value = rows[0]![0] as number | null;
  const fromInputs = uncertainties[0]![0]!;
  return { value, uncertainty: value === null || model === undefined ? fromInputs : Math.hypot(fromInputs, model(value)) };
}

/** A quantity as read in a sentence: `−20.0 kPa`, and `−5.91 inHg` where people meet either unit. */
export interface PrintedValue {
  readonly text: string;
  readonly also?: string;
}

/**
 * A value as text with its unit.
 * @param unit prints in this unit alone; the dimension's own units where absent
 */
export function printValue(name: QuantityName, { value, uncertainty }: Value, unit: UnitName | undefined, style: Style): PrintedValue {
  if (value === null) return { text: '–' };
  const [main, also] = unit === undefined ? inOrder(UNITS_OF[QUANTITIES[name].dimension], style) : [unit];
  return {
    text: formatWithUnit(main, value, uncertainty, style),
    also: also === undefined ? undefined : formatWithUnit(also, value, uncertainty, style),
  };
}

/** A value in a unit at full precision. */
export const inUnit = (value: number, unit: UnitName): number => DISPLAY_UNITS[unit].fromSi(value);
