/** Refuses an argument outside its range: the one guard of the library, so that no function returns NaN. */

/**
 * Returns `value` if it lies in [low, high].
 * @param unit of a value that is no pure number
 * @throws RangeError naming the argument, its value, the range and the unit.
 */
export function inRange(name: string, value: number, low: number, high: number, unit = ''): number {
  if (value >= low && value <= high) return value;
  const suffix = unit === '' ? '' : ` ${unit}`;
  throw new RangeError(`${name} is ${value}${suffix}; the range is ${low} to ${high}${suffix}`);
}

/**
 * Returns `value` if it is a whole number in [low, high].
 * @throws RangeError naming the argument and its value
 */
export function wholeInRange(name: string, value: number, low: number, high: number): number {
  if (Number.isInteger(value)) return inRange(name, value, low, high);
  throw new RangeError(`${name} is ${value}; it must be a whole number`);
}

/**
 * Returns what stands for a choice.
 * @throws RangeError naming the argument, its value and the choices
 */
export function chosen<Choice extends string, T>(name: string, choice: Choice, from: Readonly<Record<Choice, T>>): T {
  const value = from[choice];
  if (value !== undefined) return value;
  throw new RangeError(`${name} is ${choice}; choose ${Object.keys(from).join(', ')}`);
}
