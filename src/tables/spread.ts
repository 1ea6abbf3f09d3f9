/** How far the uncertainty of the conditions moves what is computed from them (JCGM 100, 5.1.2, first order). */
import { stateOf, type Conditions, type InputName, type State } from './conditions.ts';

/** A computed number in SI; null where it does not apply: saturation not reached, liquid water too cold. */
export type Cell = number | null;

export interface Spread {
  readonly rows: readonly (readonly Cell[])[];
  /** Standard uncertainties in the same places; 0 for what depends on nothing uncertain. */
  readonly uncertainties: readonly (readonly number[])[];
}

/** Smaller than this share of a value, a difference is rounding error of the arithmetic. */
const NEGLIGIBLE = 1e-9;

/** Computes rows of numbers at the conditions' estimates, and again with each input moved up and down by its uncertainty. */
export function spreadOver(conditions: Conditions, compute: (state: State) => readonly (readonly Cell[])[]): Spread {
  const rows = compute(stateOf(conditions));
  const moved = (Object.keys(conditions.inputs) as InputName[]).flatMap((input) => {
    const { uncertainty } = conditions.inputs[input];
    return uncertainty === 0 ? [] : [{ up: compute(stateOf(conditions, input, uncertainty)), down: compute(stateOf(conditions, input, -uncertainty)) }];
  });
  const uncertainties = rows.map((row, r) =>
    row.map((value, c) => {
      if (value === null) return 0;
      const variance = moved.reduce((sum, { up, down }) => sum + halfSpan(value, up[r]?.[c], down[r]?.[c]) ** 2, 0);
      const uncertainty = Math.sqrt(variance);
      return uncertainty <= NEGLIGIBLE * Math.abs(value) ? 0 : uncertainty;
    }),
  );
  return { rows, uncertainties };
}

/** Half of the way from `down` to `up`; one side alone where the other has no answer. */
function halfSpan(value: number, up: Cell | undefined, down: Cell | undefined): number {
  if (typeof up === 'number' && typeof down === 'number') return (up - down) / 2;
  if (typeof up === 'number') return up - value;
  return typeof down === 'number' ? value - down : 0;
}
