import { leastSquares, type LeastSquaresFit } from '../../src/physics/least-squares.ts';
import { leakRate, type Leak } from '../../src/physics/leak.ts';
import { input, type Evaluator, type Inputs } from './row.ts';

type Model = (parameters: readonly number[], x: number) => number;

/** A reference dataset: pairs of x and y, a model, and the two starts that come with it. */
interface Dataset {
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly model: Model;
  readonly starts: readonly (readonly number[])[];
}

const MISRA1A: Dataset = {
  points: [
    [77.6, 10.07], [114.9, 14.73], [141.1, 17.94], [190.8, 23.93], [239.9, 29.61], [289, 35.18], [332.8, 40.02],
    [378.4, 44.82], [434.8, 50.76], [477.3, 55.05], [536.8, 61.01], [593.1, 66.4], [689.1, 75.47], [760, 81.78],
  ],
  model: ([b1, b2], x) => b1! * (1 - Math.exp(-b2! * x)),
  starts: [[500, 1e-4], [250, 5e-4]],
};

const THURBER: Dataset = {
  points: [
    [-3.067, 80.574], [-2.981, 84.248], [-2.921, 87.264], [-2.912, 87.195], [-2.84, 89.076], [-2.797, 89.608],
    [-2.702, 89.868], [-2.699, 90.101], [-2.633, 92.405], [-2.481, 95.854], [-2.363, 100.696], [-2.322, 101.06],
    [-1.501, 401.672], [-1.46, 390.724], [-1.274, 567.534], [-1.212, 635.316], [-1.1, 733.054], [-1.046, 759.087],
    [-0.915, 894.206], [-0.714, 990.785], [-0.566, 1090.109], [-0.545, 1080.914], [-0.4, 1122.643], [-0.309, 1178.351],
    [-0.109, 1260.531], [-0.103, 1273.514], [0.01, 1288.339], [0.119, 1327.543], [0.377, 1353.863], [0.79, 1414.509],
    [0.963, 1425.208], [1.006, 1421.384], [1.115, 1442.962], [1.572, 1464.35], [1.841, 1468.705], [2.047, 1447.894],
    [2.2, 1457.628],
  ],
  model: ([b1, b2, b3, b4, b5, b6, b7], x) =>
    (b1! + x * (b2! + x * (b3! + x * b4!))) / (1 + x * (b5! + x * (b6! + x * b7!))),
  starts: [[1000, 1000, 400, 40, 0.7, 0.3, 0.03], [1300, 1500, 500, 75, 1, 0.4, 0.05]],
};

const NORRIS: readonly (readonly [x: number, y: number])[] = [
  [0.2, 0.1], [337.4, 338.8], [118.2, 118.1], [884.6, 888], [10.1, 9.2], [226.5, 228.1], [666.3, 668.5], [996.3, 998.5],
  [448.6, 449.1], [777, 778.9], [558.2, 559.2], [0.4, 0.3], [0.6, 0.1], [775.5, 778.1], [666.9, 668.8], [338, 339.3],
  [447.5, 448.9], [11.6, 10.8], [556, 557.7], [228.1, 228.3], [995.8, 998], [887.6, 888.8], [120.2, 119.6], [0.3, 0.3],
  [0.3, 0.6], [556.8, 557.6], [339.1, 339.3], [887.2, 888], [999, 998.5], [779, 778.9], [11.1, 10.2], [118.3, 117.6],
  [229.2, 228.9], [669.1, 668.4], [448.9, 449.2], [0.5, 0.2],
];

const fits = new Map<string, LeastSquaresFit>();

function fitOf(name: string, { points, model, starts }: Dataset, inputs: Inputs): LeastSquaresFit {
  const start = input(inputs, 'start');
  const key = `${name} ${start}`;
  const known = fits.get(key);
  if (known !== undefined) return known;
  const initial = starts[start - 1]!;
  const residuals = (parameters: readonly number[]): number[] => points.map(([x, y]) => y - model(parameters, x));
  const fit = leastSquares({ residuals, initial, scales: initial });
  fits.set(key, fit);
  return fit;
}

/** A hold test with the dataset's x as times and y as pressures. */
const norris = (): Leak => leakRate({ readings: NORRIS.map(([time, pressure]) => ({ time, pressure })), volume: 1 });

const place = (inputs: Inputs): number => input(inputs, 'parameter') - 1;

export const evaluators: Record<string, Evaluator> = {
  misra1a: (inputs) => fitOf('misra1a', MISRA1A, inputs).parameters[place(inputs)]!,
  misra1aStandardError: (inputs) => fitOf('misra1a', MISRA1A, inputs).standardErrors[place(inputs)]!,
  misra1aScatter: (inputs) => fitOf('misra1a', MISRA1A, inputs).residualStandardDeviation,
  thurber: (inputs) => fitOf('thurber', THURBER, inputs).parameters[place(inputs)]!,
  thurberStandardError: (inputs) => fitOf('thurber', THURBER, inputs).standardErrors[place(inputs)]!,
  thurberSumOfSquares: (inputs) => fitOf('thurber', THURBER, inputs).sumOfSquares,
  norrisSlope: () => norris().pressureRate,
  norrisSlopeStandardError: () => norris().pressureRateStandardError,
  norrisScatter: () => norris().residualStandardDeviation,
};
