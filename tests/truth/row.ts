/** A published value and how far the library may be from it. */

/** Named numbers, each with its unit in its name. */
export type Inputs = Readonly<Record<string, number>>;

/** Calls the library and returns the computed value in the row's unit. */
export type Evaluator = (inputs: Record<string, number>) => number;

export interface TruthRow {
  readonly id: string;
  /** Name of the evaluator */
  readonly check: string;
  readonly inputs: Inputs;
  readonly value: number;
  readonly unit: string;
  readonly tolerance: Tolerance;
  readonly toleranceReason: string;
  readonly source: string;
  /** Where the figure was read, or "from memory" */
  readonly seenIn: string;
}

/** `rel` and `abs` allow that much on either side; `max` and `min` make the row's value a bound. */
export type Tolerance =
  | { readonly kind: 'rel' | 'abs'; readonly value: number }
  | { readonly kind: 'max' | 'min'; readonly value?: number };

/**
 * One input of a row.
 * @throws RangeError if the row does not give it
 */
export function input(inputs: Inputs, name: string): number {
  const value = inputs[name];
  if (value === undefined) throw new RangeError(`input ${name} is missing; given are ${Object.keys(inputs).join(', ')}`);
  return value;
}

/** An input in kelvin, given as `T_K` or, in degrees Celsius, as `t_C`. */
export function temperatureInput(inputs: Inputs): number {
  return inputs['T_K'] ?? input(inputs, 't_C') + 273.15;
}
