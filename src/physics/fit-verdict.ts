/** What a fit's numbers mean: which constants the readings determine, and whether the model is enough. */
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
): Pick<VesselFit, 'undetermined' | 'inseparable' | 'hasCourse'> {
  const undetermined = names.filter((name, i) => !(fit.standardErrors[i]! <= LARGEST_ERRORS[name]));
  const inseparable = names.flatMap((a, i) =>
    names.slice(i + 1).flatMap((b, k) => (Math.abs(fit.correlation[i]![i + 1 + k]!) > INSEPARABLE ? [[a, b] as const] : [])),
  );
  return { undetermined, inseparable, hasCourse: hasCourse(residuals) };
}

function hasCourse(residuals: readonly number[]): boolean {
  const squares = residuals.reduce((sum, value) => sum + value * value, 0);
  const neighbors = residuals.slice(1).reduce((sum, value, i) => sum + value * residuals[i]!, 0);
  const size = Math.sqrt(squares / residuals.length);
  return size > SMALLEST_RESIDUAL && (neighbors / squares) * Math.sqrt(residuals.length) > SIGNIFICANT_COURSE;
}
