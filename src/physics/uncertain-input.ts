/** What a measurement model is given: quantities of which each is known only so well. */
import { inRange } from './range.ts';

export type Distribution = 'normal' | 'rectangular' | 'triangular';
export type EvaluationType = 'A' | 'B';

/** An input quantity of a measurement model. */
export interface UncertainInput {
  /** Best estimate, in any unit */
  readonly value: number;
  /** In the unit of the value, 0 and above */
  readonly standardUncertainty: number;
  /** A from repeated observations, B from other knowledge; B unless given */
  readonly type?: EvaluationType;
  /** Normal unless given; Student's t takes the place of a normal one with few degrees of freedom */
  readonly distribution?: Distribution;
  /** Of the standard uncertainty, 1 and above; Infinity unless given */
  readonly degreesOfFreedom?: number;
}

export type Model<Name extends string> = (inputs: Record<Name, number>) => number;
export type Inputs<Name extends string> = Readonly<Record<Name, UncertainInput>>;
export type Settings = Required<UncertainInput>;

/**
 * Standard uncertainty of a rectangular distribution: a reading known only to lie within ± halfWidth.
 * @param halfWidth in the unit of the quantity, 0 and above
 * @returns in the same unit
 * @throws RangeError for another half-width
 * Source: JCGM 100:2008, eq. 7.
 */
export function rectangular(halfWidth: number): number {
  return inRange('halfWidth', halfWidth, 0, Number.MAX_VALUE) / Math.sqrt(3);
}

/**
 * Standard uncertainty of a triangular distribution: values near the middle of ± halfWidth are likelier.
 * @param halfWidth in the unit of the quantity, 0 and above
 * @returns in the same unit
 * @throws RangeError for another half-width
 * Source: JCGM 100:2008, eq. 9b.
 */
export function triangular(halfWidth: number): number {
  return inRange('halfWidth', halfWidth, 0, Number.MAX_VALUE) / Math.sqrt(6);
}

export function namesOf<Name extends string>(inputs: Inputs<Name>): Name[] {
  return Object.keys(inputs) as Name[];
}

/** An input with everything said that need not be given. @throws RangeError naming what is outside its range */
export function settle(name: string, input: UncertainInput): Settings {
  return {
    value: inRange(`${name}.value`, input.value, -Number.MAX_VALUE, Number.MAX_VALUE),
    standardUncertainty: inRange(`${name}.standardUncertainty`, input.standardUncertainty, 0, Number.MAX_VALUE),
    type: input.type ?? 'B',
    distribution: input.distribution ?? 'normal',
    degreesOfFreedom: inRange(`${name}.degreesOfFreedom`, input.degreesOfFreedom ?? Infinity, 1, Infinity),
  };
}

/** @throws RangeError if the model gives no number */
export function evaluate<Name extends string>(model: Model<Name>, values: Record<Name, number>): number {
  return inRange('result of the model', model(values), -Number.MAX_VALUE, Number.MAX_VALUE);
}
