/** What a computation asked of a state: an input that moves nothing of it cannot have moved the answer. */
import type { State } from './conditions.ts';

export type Asked = ReadonlySet<keyof State>;

/** Of the computation that goes on. */
let noted: Set<keyof State> | undefined;

/** The same state, whose parts are noted as they are asked for. */
export const watched = (state: State): State =>
  new Proxy(state, {
    get: (target, part: keyof State) => {
      noted?.add(part);
      return target[part];
    },
  });

/** Says that something was asked for before, as a remembered answer was found. */
export function askedBefore(asked: Asked): void {
  if (noted !== undefined) for (const part of asked) noted.add(part);
}

/** Computes, and tells of which parts of a watched state the answer is made; whoever asked for it has asked for them too. */
export function noting<T>(compute: () => T): { readonly result: T; readonly asked: Asked } {
  const before = noted;
  const asked = (noted = new Set<keyof State>());
  try {
    return { result: compute(), asked };
  } finally {
    noted = before;
    askedBefore(asked);
  }
}
