/** Columns of one row, and tables of one page, ask for the same end state: it is computed once for each state and argument. */
import { askedBefore, noting, type Asked } from './asked.ts';
import type { State } from './conditions.ts';

type Argument = number | string | undefined;

interface Answer<T> {
  readonly result: T;
  readonly asked: Asked;
}

/** A function that remembers what it computed for a state, as long as the state lives, and what of the state it asked for. */
export function remembered<A extends Argument[], T>(compute: (state: State, ...rest: A) => T): (state: State, ...rest: A) => T {
  const known = new WeakMap<State, Map<Argument, Answer<T>>>();
  return (state, ...rest) => {
    const ofState = known.get(state) ?? new Map<Argument, Answer<T>>();
    known.set(state, ofState);
    const key = rest.length === 1 ? rest[0] : rest.join(' ');
    const found = ofState.get(key);
    if (found !== undefined) {
      askedBefore(found.asked);
      return found.result;
    }
    const answer = noting(() => compute(state, ...rest));
    ofState.set(key, answer);
    return answer.result;
  };
}
