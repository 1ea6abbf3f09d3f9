/** Which inputs a computation hangs on: one that moves nothing of what was asked of a state cannot have moved the answer. */
import type { InputName, State } from './conditions.ts';

/** Some of the inputs, a bit for each: asked for at every cell, they are to cost nothing. */
export type Asked = number;

/** What of a state each input moves. */
const MOVED: Record<InputName, readonly (keyof State)[]> = {
  roomTemperature: ['roomTemperature', 'startTemperature'],
  roomPressure: ['roomPressure', 'startPressure', 'kitStartPressure'],
  roomHumidity: ['roomHumidity'],
  startTemperatureDifference: ['startTemperature'],
  startHumidity: ['startHumidity'],
  gaugeError: ['gaugeError'],
  formulaError: ['formulaError'],
  weather: ['weather'],
};

const INPUTS = Object.keys(MOVED) as InputName[];
const BITS = Object.fromEntries(INPUTS.map((input, at) => [input, 1 << at])) as Record<InputName, Asked>;
const bitsOf = (part: keyof State): Asked => INPUTS.reduce((bits, input) => (MOVED[input].includes(part) ? bits | BITS[input] : bits), 0);

/** Of the computation that goes on. */
let noted: Asked = 0;

/** What a state is made of, told from another whose parts are noted as they are asked for. */
const TELLING = Object.defineProperties({}, Object.fromEntries([...new Set(Object.values(MOVED).flat())].map((part) => {
  const bits = bitsOf(part);
  const get = function (this: { readonly of: State }): unknown {
    noted |= bits;
    return this.of[part];
  };
  return [part, { get }];
})));

/** The same state, which notes what is asked of it. */
export const watched = (state: State): State => {
  const { apparatus, particles, plannedDrop } = state;
  return Object.assign(Object.create(TELLING) as State, { of: state, apparatus, particles, plannedDrop });
};

/** Whether an answer can hang on an input. */
export const hangsOn = (asked: Asked, input: InputName): boolean => (asked & BITS[input]) !== 0;

/** Says that something was asked for before, as a remembered answer was found. */
export function askedBefore(asked: Asked): void {
  noted |= asked;
}

/** Computes, and tells on which inputs of a watched state the answer hangs; what asked for it hangs on them too. */
export function noting<T>(compute: () => T): { readonly result: T; readonly asked: Asked } {
  const before = noted;
  noted = 0;
  try {
    const result = compute();
    return { result, asked: noted };
  } finally {
    noted |= before;
  }
}
