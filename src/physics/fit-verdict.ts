/** What a fit's numbers mean in words: which constants the readings determine, and whether the model is enough. */
import type { FittedConstant, VesselFit } from './fit.ts';
import type { LeastSquaresFit } from './least-squares.ts';

/** A time constant of a larger standard error, as a share of itself, counts as not determined: it may be off by half. */
const LARGEST_LOGARITHMIC_ERROR = 0.25;
/** K; a worse known offset counts as not determined. */
const LARGEST_OFFSET_ERROR = 1;
/** 1/s: a leak that would halve the difference from the room within a minute or so. */
const LARGEST_LEAK_ERROR = 0.01;
/** Two constants so correlated change together almost without changing the fit. */
const INSEPARABLE = 0.95;
/** Correlation of each residual with the next, times the root of their number: beyond this the residuals show a course. */
const SIGNIFICANT_COURSE = 4;
/** K; residuals below what any thermometer here resolves are not looked at. */
const SMALLEST_RESIDUAL = 1e-3;

const WORDS: Readonly<Record<FittedConstant, string>> = {
  wallTimeConstant: 'the time constant of the walls',
  thermometerTimeConstant: 'the time constant of the thermometer',
  leak: 'the leak',
  offset: 'the offset of the thermometer',
};

const LARGEST_ERRORS: Readonly<Record<FittedConstant, number>> = {
  wallTimeConstant: LARGEST_LOGARITHMIC_ERROR,
  thermometerTimeConstant: LARGEST_LOGARITHMIC_ERROR,
  leak: LARGEST_LEAK_ERROR,
  offset: LARGEST_OFFSET_ERROR,
};

/**
 * Verdict on a fit.
 * @param names of the parameters in their order; time constants enter by their logarithms
 * @param fit of these parameters
 * @param residuals of the thermometer in order of time, K
 */
export function verdictOn(
  names: readonly FittedConstant[],
  fit: LeastSquaresFit,
  residuals: readonly number[],
): Pick<VesselFit, 'undetermined' | 'inseparable' | 'verdict'> {
  const undetermined = names.filter((name, i) => !(fit.standardErrors[i]! <= LARGEST_ERRORS[name]));
  const inseparable = names.flatMap((a, i) =>
    names.slice(i + 1).flatMap((b, k) => (Math.abs(fit.correlation[i]![i + 1 + k]!) > INSEPARABLE ? [[a, b] as const] : [])),
  );
  const sentences = [
    undetermined.length === 0 && inseparable.length === 0
      ? 'The readings determine each constant.'
      : '',
    undetermined.length > 0 ? `The readings do not determine ${listed(undetermined)}: faster pumping or more readings would.` : '',
    ...inseparable.map(([a, b]) => `The readings hardly tell ${WORDS[a]} from ${WORDS[b]}: what one adds the other can take away.`),
    hasCourse(residuals) ? 'The residuals are not random: something happened that the model leaves out.' : '',
  ];
  return { undetermined, inseparable, verdict: sentences.filter((sentence) => sentence !== '').join(' ') };
}

function listed(names: readonly FittedConstant[]): string {
  const words = names.map((name) => WORDS[name]);
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]!}`;
}

function hasCourse(residuals: readonly number[]): boolean {
  const squares = residuals.reduce((sum, value) => sum + value * value, 0);
  const neighbors = residuals.slice(1).reduce((sum, value, i) => sum + value * residuals[i]!, 0);
  const size = Math.sqrt(squares / residuals.length);
  return size > SMALLEST_RESIDUAL && (neighbors / squares) * Math.sqrt(residuals.length) > SIGNIFICANT_COURSE;
}
