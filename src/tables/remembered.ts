/** Columns of one row, and tables of one page, ask for the same end state: it is computed once for each state and argument. */
import type { State } from './conditions.ts';

type Argument = number | string | undefined;

/** A function that remembers what it computed for a state, as long as the state lives. */
export function remembered<A extends Argument[], T>(compute: (state: State, ...rest: A) => T): (state: State, ...rest: A) => T {
  const known = new WeakMap<State, Map<Argument, { readonly result: T }>>();
  return (state, ...rest) => {
    const ofState = known.get(state) ?? new Map<Argument, { readonly result: T }>();
    known.set(state, ofState);
    const key = rest.length === 1 ? rest[0] : rest.join(' ');
    const found = ofState.get(key) ?? { result: compute(state, ...rest) };
    ofState.set(key, found);
    return found.result;
  };
}
