/** Uncertainty of a computed result to first order, with its budget: JCGM 100. */
import { inRange } from './range.ts';
import { coverageFactor } from './student.ts';
import { evaluate, namesOf, settle, type Distribution, type EvaluationType, type Inputs, type Model } from './uncertain-input.ts';

/** A row of the uncertainty budget. */
export interface BudgetRow {
  readonly name: string;
  readonly estimate: number;
  readonly standardUncertainty: number;
  readonly type: EvaluationType;
  readonly distribution: Distribution;
  readonly degreesOfFreedom: number;
  /** Partial derivative of the result by this input */
  readonly sensitivity: number;
  /** Standard uncertainty of the result from this input alone */
  readonly contribution: number;
  /** Of the combined variance; the shares add up to 1, or are all 0 where nothing is uncertain */
  readonly share: number;
}

export interface Propagation {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly budget: readonly BudgetRow[];
  readonly effectiveDegreesOfFreedom: number;
  readonly coverageFactor: number;
  readonly expandedUncertainty: number;
}

export interface Correlation<Name extends string> {
  readonly between: readonly [Name, Name];
  /** −1 to 1 */
  readonly coefficient: number;
}

/** Step of the numerical derivative, in standard uncertainties: small against a curve, large against rounding. */
const DERIVATIVE_STEP = 0.01;
const RELATIVE_STEP = 1e-6;
/** A variance below zero by no more than rounding is zero. */
const ROUNDING = 1e-12;

/**
 * Combined standard uncertainty of a result to first order, with its budget and expanded uncertainty.
 * @param model of the measurement: the result from the inputs' values; it must be smooth near the estimates
 * @param inputs by name, see {@link UncertainInput}
 * @param options.correlations between inputs; none unless given
 * @param options.probability that the expanded uncertainty covers, 0.01 to 0.9999; 0.95 unless given
 * @returns in the unit of the model's result. With correlated inputs, for which the effective degrees of freedom
 *   are not defined, the smallest of the inputs' is used, which errs on the wide side
 * @throws RangeError outside a range, for correlations that cannot exist together, or if the model gives no number
 * Source: JCGM 100:2008, eq. 13, 16 and G.2b; sensitivities by central differences.
 */
export function propagate<Name extends string>(
  model: Model<Name>,
  inputs: Inputs<Name>,
  options: { readonly correlations?: readonly Correlation<Name>[]; readonly probability?: number } = {},
): Propagation {
  const names = namesOf(inputs);
  const settings = names.map((name) => settle(name, inputs[name]));
  const estimates = Object.fromEntries(names.map((name, i) => [name, settings[i]!.value])) as Record<Name, number>;
  const sensitivities = names.map((name, i) => derivative(model, estimates, name, settings[i]!.standardUncertainty));
  const effects = settings.map((setting, i) => sensitivities[i]! * setting.standardUncertainty);
  const correlations = correlationTable(names, options.correlations ?? []);
  // One input's part of the variance, its share of the covariances included.
  const parts = effects.map((effect, i) => effect * effects.reduce((sum, other, j) => sum + correlations[i]![j]! * other, 0));
  const total = parts.reduce((sum, part) => sum + part, 0);
  const scale = effects.reduce((sum, effect) => sum + effect * effect, 0);
  if (total < -ROUNDING * scale) throw new RangeError('correlations contradict each other');
  const variance = Math.max(0, total);
  const standardUncertainty = Math.sqrt(variance);
  const budget = names.map((name, i): BudgetRow => {
    const { value: estimate, ...rest } = settings[i]!;
    return {
      name,
      estimate,
      ...rest,
      sensitivity: sensitivities[i]!,
      contribution: Math.abs(effects[i]!),
      share: variance === 0 ? 0 : parts[i]! / variance,
    };
  });
  const freedom = effectiveDegreesOfFreedom(budget, standardUncertainty, (options.correlations ?? []).length > 0);
  const factor = coverageFactor(freedom, options.probability);
  return {
    value: evaluate(model, estimates),
    standardUncertainty,
    budget,
    effectiveDegreesOfFreedom: freedom,
    coverageFactor: factor,
    expandedUncertainty: factor * standardUncertainty,
  };
}

function derivative<Name extends string>(model: Model<Name>, at: Record<Name, number>, name: Name, uncertainty: number): number {
  const step = uncertainty > 0 ? DERIVATIVE_STEP * uncertainty : RELATIVE_STEP * (Math.abs(at[name]) || 1);
  const center: number = at[name];
  const [low, high] = [center - step, center + step];
  if (!(high > low)) throw new RangeError(`${name}.standardUncertainty is ${uncertainty}; too small beside its value ${at[name]}`);
  return (evaluate(model, { ...at, [name]: high }) - evaluate(model, { ...at, [name]: low })) / (high - low);
}

function correlationTable<Name extends string>(names: readonly Name[], correlations: readonly Correlation<Name>[]): number[][] {
  const table: number[][] = names.map((_, i) => names.map((__, j) => (i === j ? 1 : 0)));
  for (const { between, coefficient } of correlations) {
    const [i, j] = [names.indexOf(between[0]), names.indexOf(between[1])];
    const [row, mirror] = [table[i], table[j]];
    if (row === undefined || mirror === undefined || i === j) {
      throw new RangeError(`correlation between ${between.join(' and ')}; it must be between two of ${names.join(', ')}`);
    }
    const r = inRange(`correlation between ${between.join(' and ')}`, coefficient, -1, 1);
    row[j] = r;
    mirror[i] = r;
  }
  return table;
}

function effectiveDegreesOfFreedom(budget: readonly BudgetRow[], combined: number, correlated: boolean): number {
  const finite = budget.filter((row) => row.contribution > 0 && row.degreesOfFreedom < Infinity);
  if (finite.length === 0 || combined === 0) return Infinity;
  if (correlated) return Math.min(...finite.map((row) => row.degreesOfFreedom));
  return 1 / finite.reduce((sum, row) => sum + (row.contribution / combined) ** 4 / row.degreesOfFreedom, 0);
}
