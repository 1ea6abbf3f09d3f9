/** Nonlinear least squares by the method of Levenberg and Marquardt, with standard errors. */

/** A model that is to come close to measurements. */
export interface LeastSquaresProblem {
  /** Measurement less model, each over its standard uncertainty where these differ; not finite where the model fails */
  readonly residuals: (parameters: readonly number[]) => readonly number[];
  /** Where to begin, one or more */
  readonly initial: readonly number[];
  /** Typical size of each parameter, above 0: sets the increments near 0; 1 unless given */
  readonly scales?: readonly number[];
  /** Increment of the differences that stand for derivatives, relative to the parameter or its size; 6·10⁻⁶ unless given */
  readonly increment?: number;
  /** Relative change of every parameter below which a step ends the search; 10⁻¹⁰ unless given */
  readonly smallestStep?: number;
  /** Constants that the residuals fit by themselves and that cost degrees of freedom too; 0 unless given */
  readonly hiddenParameters?: number;
}

/** The parameters that come closest, and how well they are known. */
export interface LeastSquaresFit {
  readonly parameters: readonly number[];
  /** Infinite where the measurements do not determine the parameter */
  readonly standardErrors: readonly number[];
  /** By rows, 1 on the diagonal; 0 beside it where a parameter is not determined */
  readonly correlation: readonly (readonly number[])[];
  readonly residuals: readonly number[];
  readonly sumOfSquares: number;
  readonly degreesOfFreedom: number;
  /** Root of the sum of squares over the degrees of freedom */
  readonly residualStandardDeviation: number;
  /** False where the most iterations were not enough */
  readonly hasConverged: boolean;
}

const MOST_ITERATIONS = 300;
/** Below this share of its column's length, what a parameter adds to the others is rounding. */
const NO_EFFECT = 1e-9;

/**
 * Least squares for a model that is not linear in its parameters.
 * Standard errors are those of the linearized model, with the scatter taken from the residuals.
 * @param problem see {@link LeastSquaresProblem}
 * @throws RangeError with fewer measurements than parameters, or if the model fails where it begins
 * Source: Marquardt 1963, J. SIAM 11, 431; scaling of Moré 1978; each step by Householder's orthogonal triangularization
 *   (Golub & Van Loan 2013, ch. 5), derivatives by central differences.
 */
export function leastSquares(problem: LeastSquaresProblem): LeastSquaresFit {
  const { residuals: model, initial } = problem;
  const scales = problem.scales ?? initial.map(() => 1);
  const increment = problem.increment ?? 6e-6;
  const smallestStep = problem.smallestStep ?? 1e-10;
  let parameters = [...initial];
  let residuals = model(parameters);
  let sum = sumOfSquares(residuals);
  const freedom = residuals.length - initial.length - (problem.hiddenParameters ?? 0);
  if (freedom < 1) {
    throw new RangeError(`${residuals.length} measurements for ${residuals.length - freedom} parameters; at least one more is needed`);
  }
  if (!Number.isFinite(sum)) throw new RangeError(`the model is not finite at the initial parameters ${initial.join(', ')}`);

  let damping = 1e-3;
  let hasConverged = false;
  let jacobian = derivatives(model, parameters, scales, increment);
  const lengths = initial.map(() => 0);
  for (let iteration = 0; iteration < MOST_ITERATIONS && !hasConverged; iteration++) {
    jacobian.forEach((column, j) => {
      lengths[j] = Math.max(lengths[j]!, Math.sqrt(sumOfSquares(column)));
    });
    const penalty = lengths.map((length) => Math.sqrt(damping) * (length > 0 ? length : 1));
    const step = dampedStep(jacobian, residuals, penalty);
    const trial = parameters.map((value, j) => value + step[j]!);
    const trialResiduals = model(trial);
    const trialSum = sumOfSquares(trialResiduals);
    const isSmall = step.every((change, j) => Math.abs(change) <= smallestStep * Math.max(Math.abs(parameters[j]!), 1e-3 * scales[j]!));
    if (trialSum <= sum) {
      const isLevel = sum - trialSum <= 1e-15 * sum;
      parameters = trial;
      residuals = trialResiduals;
      sum = trialSum;
      damping = Math.max(damping / 10, 1e-15);
      jacobian = derivatives(model, parameters, scales, increment);
      hasConverged = isSmall || isLevel;
    } else {
      damping *= 5;
      hasConverged = isSmall || damping > 1e15;
    }
  }
  const deviation = Math.sqrt(sum / freedom);
  return {
    parameters,
    residuals,
    sumOfSquares: sum,
    degreesOfFreedom: freedom,
    residualStandardDeviation: deviation,
    hasConverged,
    ...uncertainties(jacobian, deviation),
  };
}

function sumOfSquares(values: readonly number[]): number {
  let sum = 0;
  for (const value of values) sum += value * value;
  return Number.isNaN(sum) ? Infinity : sum;
}

/** Derivatives of the residuals, one column per parameter; a parameter beyond which the model fails counts as without effect. */
function derivatives(
  model: LeastSquaresProblem['residuals'],
  parameters: readonly number[],
  scales: readonly number[],
  increment: number,
): number[][] {
  return parameters.map((value, j) => {
    const change = increment * Math.max(Math.abs(value), scales[j]!);
    const up = model(parameters.with(j, value + change));
    const down = model(parameters.with(j, value - change));
    return up.map((residual, i) => {
      const slope = (residual - down[i]!) / (2 * change);
      return Number.isFinite(slope) ? slope : 0;
    });
  });
}

/** The step s that makes |r + Js|² + |penalty·s|² least. */
function dampedStep(jacobian: readonly number[][], residuals: readonly number[], penalty: readonly number[]): number[] {
  const columns = jacobian.map((column, j) => [...column, ...penalty.map((value, k) => (k === j ? value : 0))]);
  const right = [...residuals.map((residual) => -residual), ...penalty.map(() => 0)];
  triangularize(columns, right);
  return solveTriangle(columns, right);
}

/** Householder's reflections, in place: columns become the upper triangle of R, the right side is turned alike. */
function triangularize(columns: readonly number[][], right: number[]): void {
  columns.forEach((column, k) => {
    let length = 0;
    for (let i = k; i < column.length; i++) length += column[i]! ** 2;
    length = Math.sqrt(length);
    if (length === 0) return;
    const alpha = column[k]! > 0 ? -length : length;
    const v = column.slice(k);
    v[0]! -= alpha;
    const norm = sumOfSquares(v);
    if (norm === 0) return;
    for (const target of [...columns.slice(k), right]) {
      let dot = 0;
      for (let i = 0; i < v.length; i++) dot += v[i]! * target[k + i]!;
      const factor = (2 * dot) / norm;
      for (let i = 0; i < v.length; i++) target[k + i]! -= factor * v[i]!;
    }
  });
}

function solveTriangle(columns: readonly number[][], right: readonly number[]): number[] {
  const n = columns.length;
  const x = right.slice(0, n);
  for (let i = n - 1; i >= 0; i--) {
    for (let j = i + 1; j < n; j++) x[i]! -= columns[j]![i]! * x[j]!;
    x[i]! /= columns[i]![i]!;
  }
  return x;
}

/** Standard errors and correlations from the inverse of JᵀJ, of those parameters that have an effect of their own. */
function uncertainties(jacobian: readonly number[][], deviation: number): Pick<LeastSquaresFit, 'standardErrors' | 'correlation'> {
  const n = jacobian.length;
  const lengths = jacobian.map((column) => Math.sqrt(sumOfSquares(column)));
  const isKnown = jacobian.map((_, j) => lengths[j]! > 0 && hasOwnEffect(jacobian, lengths, j));
  const known = jacobian.flatMap((_, j) => (isKnown[j] ? [j] : []));
  const columns = known.map((j) => jacobian[j]!.map((value) => value / lengths[j]!));
  triangularize(columns, new Array<number>(jacobian[0]?.length ?? 0).fill(0));
  // Rows of the inverse of R, whose products are the covariance.
  const inverse = known.map((_, k) => solveTriangle(columns, known.map((__, i) => (i === k ? 1 : 0))));
  const covariance = (a: number, b: number): number => inverse.reduce((sum, column) => sum + column[a]! * column[b]!, 0);
  const standardErrors = jacobian.map((_, j) => {
    const k = known.indexOf(j);
    return k < 0 ? Infinity : (deviation * Math.sqrt(covariance(k, k))) / lengths[j]!;
  });
  const correlation = Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (__, j) => {
      if (i === j) return 1;
      const [a, b] = [known.indexOf(i), known.indexOf(j)];
      return a < 0 || b < 0 ? 0 : covariance(a, b) / Math.sqrt(covariance(a, a) * covariance(b, b));
    }),
  );
  return { standardErrors, correlation };
}

/** Whether a column keeps some length when the others are taken out of it. */
function hasOwnEffect(jacobian: readonly number[][], lengths: readonly number[], j: number): boolean {
  const others = jacobian.flatMap((column, k) => (k !== j && lengths[k]! > 0 ? [column.map((value) => value / lengths[k]!)] : []));
  const own = jacobian[j]!.map((value) => value / lengths[j]!);
  const columns = [...others, own];
  triangularize(columns, new Array<number>(own.length).fill(0));
  return Math.abs(own[columns.length - 1] ?? 0) > NO_EFFECT;
}
