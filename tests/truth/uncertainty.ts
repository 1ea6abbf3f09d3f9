/** Computes the rows of uncertainty.json. */
import { coverageFactor } from '../../src/physics/student.ts';
import { propagateMonteCarlo, type MonteCarloPropagation } from '../../src/physics/monte-carlo.ts';
import { rectangular, type UncertainInput } from '../../src/physics/uncertain-input.ts';
import { propagate, type Propagation } from '../../src/physics/uncertainty.ts';
import { input, type Evaluator, type Inputs } from './row.ts';

const uncertain = (value: number, standardUncertainty: number, degreesOfFreedom = Infinity): UncertainInput => ({
  value,
  standardUncertainty,
  degreesOfFreedom,
});

/** JCGM 100:2008, H.1, in nanometers and kelvin. */
const endGauge = (): Propagation =>
  propagate(
    ({ standard, repeated, random, systematic, expansion, bed, cycle, expansionDifference, temperatureDifference }) =>
      standard + repeated + random + systematic -
      standard * (expansionDifference * (bed + cycle) + expansion * temperatureDifference),
    {
      standard: uncertain(50000623, 25, 18),
      repeated: uncertain(215, 5.8, 24),
      random: uncertain(0, 3.9, 5),
      systematic: uncertain(0, 6.7, 8),
      expansion: uncertain(11.5e-6, rectangular(2e-6)),
      bed: uncertain(-0.1, 0.2),
      cycle: uncertain(0, 0.35),
      expansionDifference: uncertain(0, rectangular(1e-6), 50),
      temperatureDifference: uncertain(0, rectangular(0.05), 2),
    },
    { probability: 0.99 },
  );

const contribution = (result: Propagation, ...names: string[]): number =>
  Math.hypot(...result.budget.filter((row) => names.includes(row.name)).map((row) => row.contribution));

type Circuit = { voltage: number; current: number; phase: number };

/** JCGM 100:2008, H.2. */
const circuit = (model: (x: Circuit) => number): Propagation =>
  propagate(
    model,
    { voltage: uncertain(4.999, 0.0032094), current: uncertain(0.019661, 9.471e-6), phase: uncertain(1.04446, 7.5206e-4) },
    {
      correlations: [
        { between: ['voltage', 'current'], coefficient: -0.3553 },
        { between: ['voltage', 'phase'], coefficient: 0.8576 },
        { between: ['current', 'phase'], coefficient: -0.6451 },
      ],
    },
  );
const resistance = (x: Circuit): number => (x.voltage / x.current) * Math.cos(x.phase);
const reactance = (x: Circuit): number => (x.voltage / x.current) * Math.sin(x.phase);
const impedance = (x: Circuit): number => x.voltage / x.current;

/** Rows of one example ask for different parts of one result: its million trials are drawn once. */
const drawnOnce = (draw: (i: Inputs) => MonteCarloPropagation): ((i: Inputs) => MonteCarloPropagation) => {
  const results = new Map<string, MonteCarloPropagation>();
  return (i) => {
    const key = JSON.stringify(i);
    const result = results.get(key) ?? draw(i);
    results.set(key, result);
    return result;
  };
};

const additive = drawnOnce((i) => {
  const distribution = input(i, 'rectangular') === 1 ? 'rectangular' : 'normal';
  const one = { value: 0, standardUncertainty: 1, distribution } as const;
  return propagateMonteCarlo(
    ({ a, b, c, d }) => a + b + c + d,
    { a: one, b: one, c: one, d: { ...one, standardUncertainty: input(i, 'lastUncertainty') } },
    { seed: input(i, 'seed'), trials: input(i, 'trials') },
  );
});

const tenth = { value: 0.6, standardUncertainty: rectangular(0.5), distribution: 'rectangular' } as const;
const logarithm = drawnOnce((i) =>
  propagateMonteCarlo(({ x }) => Math.log(x), { x: tenth }, { seed: input(i, 'seed'), trials: input(i, 'trials') }));

const fluorescence = (): Propagation =>
  propagate(({ sample, reference, known }) => (sample / reference) * known, {
    sample: uncertain(0.182, 0.00093, 9),
    reference: uncertain(0.1823, 0.00058, 19),
    known: uncertain(0.6978, 0.0026, 19),
  });

const stefanBoltzmann = (): Propagation =>
  propagate(
    ({ h, R, rydberg, electron, alpha }) =>
      (32 * Math.PI ** 5 * h * R ** 4 * rydberg ** 4) / (15 * electron ** 4 * 0.001 ** 4 * 299792458 ** 6 * alpha ** 8),
    {
      h: uncertain(6.62606957e-34, 0.00000029e-34),
      R: uncertain(8.3144621, 0.0000075),
      rydberg: uncertain(10973731.568539, 0.000055),
      electron: uncertain(5.4857990946e-4, 0.0000000022e-4),
      alpha: uncertain(7.2973525698e-3, 0.0000000024e-3),
    },
  );

export const evaluators: Record<string, Evaluator> = {
  coverageFactor: (i) => coverageFactor(input(i, 'degreesOfFreedom'), input(i, 'probability')),
  endGaugeLength: () => endGauge().value,
  endGaugeUncertainty: () => endGauge().standardUncertainty,
  endGaugeDegreesOfFreedom: () => endGauge().effectiveDegreesOfFreedom,
  endGaugeExpanded99: () => endGauge().expandedUncertainty,
  endGaugeFromStandard: () => contribution(endGauge(), 'standard'),
  endGaugeFromDifference: () => contribution(endGauge(), 'repeated', 'random', 'systematic'),
  endGaugeFromExpansion: () => contribution(endGauge(), 'expansionDifference'),
  endGaugeFromTemperatureDifference: () => contribution(endGauge(), 'temperatureDifference'),
  valueResistance: () => circuit(resistance).value,
  valueReactance: () => circuit(reactance).value,
  valueImpedance: () => circuit(impedance).value,
  uncertaintyResistance: () => circuit(resistance).standardUncertainty,
  uncertaintyReactance: () => circuit(reactance).standardUncertainty,
  uncertaintyImpedance: () => circuit(impedance).standardUncertainty,
  additiveLow: (i) => additive(i).interval[0],
  additiveHigh: (i) => additive(i).interval[1],
  additiveUncertainty: (i) => additive(i).standardUncertainty,
  logarithmMean: (i) => logarithm(i).mean,
  logarithmUncertainty: (i) => logarithm(i).standardUncertainty,
  logarithmFirstOrder: () => propagate(({ x }) => Math.log(x), { x: tenth }).standardUncertainty,
  freedomOfSum: (i) =>
    propagate(({ a, b }) => a + b, { a: uncertain(1, input(i, 'u1'), input(i, 'nu1')), b: uncertain(1, input(i, 'u2')) })
      .effectiveDegreesOfFreedom,
  fluorescenceValue: () => fluorescence().value,
  fluorescenceUncertainty: () => fluorescence().standardUncertainty,
  fluorescenceExpanded: () => fluorescence().expandedUncertainty,
  stefanBoltzmann: () => stefanBoltzmann().value,
  stefanBoltzmannUncertainty: () => stefanBoltzmann().standardUncertainty,
};
