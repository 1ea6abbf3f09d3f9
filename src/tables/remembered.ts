/** Columns of one row, and tables of one page, ask for the same end state: it is computed once for each state and argument. */
import { askedBefore, noting, type Asked } from './asked.ts';
import type { State } from './conditions.ts';

type Argument = number | string | undefined;

/** What is known at some arguments, and at more of them. */
interface Known<T> {
  answer?: { readonly result: T; readonly asked: Asked };
  readonly further: Map<Argument, Known<T>>;
}

/**
 * A function that remembers what it computed for a state, as long as the state lives, and on which inputs it hangs.
 * Calls are marked as pure, so that a script leaves out the functions that it does not use.
 */
export function remembered<A extends Argument[], T>(compute: (state: State, ...rest: A) => T): (state: State, ...rest: A) => T {
  const known = new WeakMap<State, Known<T>>();
  return (state, ...rest) => {
    let at = known.get(state);
    if (at === undefined) known.set(state, (at = { further: new Map() }));
    for (const argument of rest) {
      let next = at.further.get(argument);
      if (next === undefined) at.further.set(argument, (next = { further: new Map() }));
      at = next;
    }
    if (at.answer === undefined) at.answer = noting(() => compute(state, ...rest));
    else askedBefore(at.answer.asked);
    return at.answer.result;
  };
}
