/** How far the uncertainty of the conditions moves what is computed from them (JCGM 100, 5.1.2, first order). */
import { hangsOn, noting, type Asked } from './asked.ts';
import { stateOf, type Conditions, type InputName, type State } from './conditions.ts';

/** A computed number in SI, or a yes or no; null where it does not apply: saturation not reached, liquid water too cold. */
export type Cell = number | boolean | null;

export interface Spread {
  readonly rows: readonly (readonly Cell[])[];
  /** Standard uncertainties in the same places; 0 for what depends on nothing uncertain. */
  readonly uncertainties: readonly (readonly number[])[];
}

/** Smaller than this share of a value, a difference is rounding error of the arithmetic. */
const NEGLIGIBLE = 1e-9;

type Compute = (state: State) => readonly (readonly Cell[])[];

/**
 * Computes rows of numbers at the conditions' estimates, and again with each input moved up and down by its uncertainty.
 * @param inputs those to move; all unless given
 */
export function spreadOver(conditions: Conditions, compute: Compute, inputs?: readonly InputName[]): Spread {
  const { result: rows, asked } = noting(() => compute(stateOf(conditions)));
  return { rows, uncertainties: uncertaintiesOf(rows, asked, conditions, compute, inputs) };
}

/**
 * How uncertain rows are that have been computed at the conditions' estimates.
 * @param asked the inputs that they hang on
 * @param compute the same rows in another state
 * @param sides `one` moves down only, where that has an answer: of first order too, a second-order term off, and half the work
 */
export function uncertaintiesOf(rows: Spread['rows'], asked: Asked, conditions: Conditions, compute: Compute, inputs?: readonly InputName[], sides: 'both' | 'one' = 'both'): Spread['uncertainties'] {
  const ends = (inputs ?? (Object.keys(conditions.inputs) as InputName[])).flatMap((input) => {
    const { uncertainty } = conditions.inputs[input];
    if (uncertainty === 0 || !hangsOn(asked, input)) return [];
    const down = compute(stateOf(conditions, input, -uncertainty));
    const isEnough = sides === 'one' && rows.every((row, r) => row.every((value, c) => typeof value !== 'number' || typeof down[r]?.[c] === 'number'));
    return [{ up: isEnough ? [] : compute(stateOf(conditions, input, uncertainty)), down }];
  });
  return rows.map((row, r) =>
    row.map((value, c) => {
      if (typeof value !== 'number') return 0;
      const variance = ends.reduce((sum, { up, down }) => sum + halfSpan(value, up[r]?.[c], down[r]?.[c]) ** 2, 0);
      const uncertainty = Math.sqrt(variance);
      return uncertainty <= NEGLIGIBLE * Math.abs(value) ? 0 : uncertainty;
    }),
  );
}

/** Half of the way from `down` to `up`; one side alone where the other has no answer. */
function halfSpan(value: number, up: Cell | undefined, down: Cell | undefined): number {
  if (typeof up === 'number' && typeof down === 'number') return (up - down) / 2;
  if (typeof up === 'number') return up - value;
  return typeof down === 'number' ? value - down : 0;
}
