/** Uncertainty of a computed result: first-order propagation (JCGM 100) and propagation of distributions (JCGM 101). */
import { randomSource } from './random.ts';
import { inRange } from './range.ts';
import { coverageFactor } from './student.ts';

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

export interface MonteCarloPropagation {
  readonly mean: number;
  readonly standardUncertainty: number;
  /** 95 % coverage interval with equal shares outside on both sides */
  readonly interval: readonly [low: number, high: number];
  readonly trials: number;
}

export interface Correlation<Name extends string> {
  readonly between: readonly [Name, Name];
  /** −1 to 1 */
  readonly coefficient: number;
}

type Model<Name extends string> = (inputs: Record<Name, number>) => number;
type Inputs<Name extends string> = Readonly<Record<Name, UncertainInput>>;
type Settings = Required<UncertainInput>;

/** Step of the numerical derivative, in standard uncertainties: small against a curve, large against rounding. */
const DERIVATIVE_STEP = 0.01;
const RELATIVE_STEP = 1e-6;
/** A variance below zero by no more than rounding is zero. */
const ROUNDING = 1e-12;

/**
 * Standard uncertainty of a rectangular distribution: a reading known only to lie within ± halfWidth.
 * @param halfWidth in the unit of the quantity, 0 and above
 * @throws RangeError for another half-width
 * Source: JCGM 100:2008, eq. 7.
 */
export function rectangular(halfWidth: number): number {
  return inRange('halfWidth', halfWidth, 0, Number.MAX_VALUE, '') / Math.sqrt(3);
}

/**
 * Standard uncertainty of a triangular distribution: values near the middle of ± halfWidth are likelier.
 * @param halfWidth in the unit of the quantity, 0 and above
 * @throws RangeError for another half-width
 * Source: JCGM 100:2008, eq. 9b.
 */
export function triangular(halfWidth: number): number {
  return inRange('halfWidth', halfWidth, 0, Number.MAX_VALUE, '') / Math.sqrt(6);
}

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

/**
 * Mean, standard uncertainty and 95 % interval of a result by drawing its inputs at random: right where the model
 * is curved as well. The same seed gives the same numbers, whatever the order of the inputs.
 * @param model of the measurement: the result from the inputs' values
 * @param inputs by name, see {@link UncertainInput}; taken as independent of each other
 * @param options.seed whole number, 0 and above
 * @param options.trials 1000 to 10⁷; 200,000 unless given, as the source advises for 95 %
 * @returns in the unit of the model's result
 * @throws RangeError outside a range, or if the model gives no number in some trial
 * Source: JCGM 101:2008, clauses 6.4 (distributions), 7.6 and 7.7.
 */
export function propagateMonteCarlo<Name extends string>(
  model: Model<Name>,
  inputs: Inputs<Name>,
  options: { readonly seed: number; readonly trials?: number },
): MonteCarloPropagation {
  const trials = Math.floor(inRange('trials', options.trials ?? 200_000, 1000, 1e7, ''));
  const draws = namesOf(inputs).map((name) => [name, drawing(settle(name, inputs[name]), options.seed, name)] as const);
  const results = new Float64Array(trials);
  // One object for all trials: making a new one for each would take longer than most models.
  const drawn = {} as Record<Name, number>;
  for (let i = 0; i < trials; i++) {
    for (const [name, draw] of draws) drawn[name] = draw();
    results[i] = evaluate(model, drawn);
  }
  results.sort();
  // Deviations from the middle keep the digits of a small spread around a large value.
  const middle = results[trials >> 1]!;
  let sum = 0;
  for (const result of results) sum += result - middle;
  const offset = sum / trials;
  let squares = 0;
  for (const result of results) squares += (result - middle - offset) ** 2;
  const covered = Math.floor(0.95 * trials + 0.5);
  const below = Math.floor((trials - covered + 1) / 2);
  return {
    mean: middle + offset,
    standardUncertainty: Math.sqrt(squares / (trials - 1)),
    interval: [results[below - 1]!, results[below + covered - 1]!],
    trials,
  };
}

/**
 * A result and its uncertainty as they are reported: two digits of uncertainty, the value rounded to match.
 * @param value any finite number
 * @param standardUncertainty in the same unit, above 0
 * @returns both rounded, and the number of decimals (negative: whole tens, hundreds …)
 * @throws RangeError for another value or uncertainty
 * Source: JCGM 100:2008, 7.2.6.
 */
export function roundToUncertainty(
  value: number,
  standardUncertainty: number,
): { readonly value: number; readonly standardUncertainty: number; readonly decimals: number } {
  inRange('value', value, -Number.MAX_VALUE, Number.MAX_VALUE, '');
  inRange('standardUncertainty', standardUncertainty, 1e-90, 1e90, '');
  const text = standardUncertainty.toExponential(1);
  const decimals = 1 - Number(text.slice(text.indexOf('e') + 1));
  return { value: roundTo(value, decimals), standardUncertainty: Number(text), decimals };
}

function roundTo(value: number, decimals: number): number {
  if (decimals >= 0) return decimals > 100 ? value : Number(value.toFixed(decimals));
  const unit = 10 ** -decimals;
  return Math.round(value / unit) * unit;
}

function namesOf<Name extends string>(inputs: Inputs<Name>): Name[] {
  return Object.keys(inputs) as Name[];
}

function settle(name: string, input: UncertainInput): Settings {
  return {
    value: inRange(`${name}.value`, input.value, -Number.MAX_VALUE, Number.MAX_VALUE, ''),
    standardUncertainty: inRange(`${name}.standardUncertainty`, input.standardUncertainty, 0, Number.MAX_VALUE, ''),
    type: input.type ?? 'B',
    distribution: input.distribution ?? 'normal',
    degreesOfFreedom: inRange(`${name}.degreesOfFreedom`, input.degreesOfFreedom ?? Infinity, 1, Infinity, ''),
  };
}

function evaluate<Name extends string>(model: Model<Name>, values: Record<Name, number>): number {
  return inRange('result of the model', model(values), -Number.MAX_VALUE, Number.MAX_VALUE, '');
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
    const r = inRange(`correlation between ${between.join(' and ')}`, coefficient, -1, 1, '');
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

function drawing(input: Settings, seed: number, name: string): () => number {
  const source = randomSource(seed, name);
  const { value, standardUncertainty: u } = input;
  if (input.distribution === 'rectangular') return () => value + u * Math.sqrt(3) * (2 * source.uniform() - 1);
  if (input.distribution === 'triangular') return () => value + u * Math.sqrt(6) * (source.uniform() + source.uniform() - 1);
  if (input.degreesOfFreedom < Infinity) return () => value + u * source.student(input.degreesOfFreedom);
  return () => value + u * source.normal();
}
