/** Uncertainty of a computed result by drawing its inputs at random: JCGM 101. */
import { randomSource } from './random.ts';
import { inRange } from './range.ts';
import { evaluate, namesOf, settle, type Inputs, type Model, type Settings } from './uncertain-input.ts';

export interface MonteCarloPropagation {
  readonly mean: number;
  readonly standardUncertainty: number;
  /** 95 % coverage interval with equal shares outside on both sides */
  readonly interval: readonly [low: number, high: number];
  readonly trials: number;
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
  const trials = Math.floor(inRange('trials', options.trials ?? 200_000, 1000, 1e7));
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

function drawing(input: Settings, seed: number, name: string): () => number {
  const source = randomSource(seed, name);
  const { value, standardUncertainty: u } = input;
  if (input.distribution === 'rectangular') return () => value + u * Math.sqrt(3) * (2 * source.uniform() - 1);
  if (input.distribution === 'triangular') return () => value + u * Math.sqrt(6) * (source.uniform() + source.uniform() - 1);
  if (input.degreesOfFreedom < Infinity) return () => value + u * source.student(input.degreesOfFreedom);
  return () => value + u * source.normal();
}
