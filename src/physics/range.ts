/** Refuses an argument outside its range: the one guard of the library, so that no function returns NaN. */

/**
 * Returns `value` if it lies in [low, high].
 * @throws RangeError naming the argument, its value, the range and the unit.
 */
export function inRange(name: string, value: number, low: number, high: number, unit: string): number {
  if (value >= low && value <= high) return value;
  const suffix = unit === '' ? '' : ` ${unit}`;
  throw new RangeError(`${name} is ${value}${suffix}; the range is ${low} to ${high}${suffix}`);
}
