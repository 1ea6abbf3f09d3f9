/** Computes the rows of nucleation.json. */
import {
  criticalCluster,
  criticalPoint,
  homogeneousNucleationRate,
  homogeneousOnset,
  ionLimit,
  kelvinDiameter,
  kelvinSaturation,
  noParticleLimit,
  type NucleationLimit,
} from '../../src/physics/nucleation.ts';
import { moistAir, type MoistAir } from '../../src/physics/moist-air.ts';
import { celsius, hectopascal } from '../../src/physics/units.ts';
import { densityOfWater, surfaceTension } from '../../src/physics/water.ts';
import { input, type Evaluator, type Inputs } from './row.ts';

const critical = (inputs: Inputs): { saturationRatio: number; wetDiameter: number } =>
  criticalPoint({
    dryDiameter: input(inputs, 'D_nm') * 1e-9,
    kappa: input(inputs, 'kappa'),
    temperature: input(inputs, 'T_K'),
    surfaceTension: input(inputs, 'sigma'),
  });

const saturatedStart = (inputs: Inputs): MoistAir =>
  moistAir({ temperature: celsius(input(inputs, 't_C')), pressure: hectopascal(input(inputs, 'p_hPa')), relativeHumidity: 1 });

const volumeRatio = (start: MoistAir, end: NucleationLimit | undefined): number => {
  if (end === undefined) throw new Error('the limit is not reached');
  return (start.pressure / end.pressure) * (end.temperature / start.temperature);
};

export const evaluators: Record<string, Evaluator> = {
  criticalClusterRadius: (i) => criticalCluster(input(i, 'T_K'), input(i, 'S')).radius * 1e10,
  criticalClusterMolecules: (i) => criticalCluster(input(i, 'T_K'), input(i, 'S')).molecules,
  homogeneousRateOfGivenWater: (i) =>
    homogeneousNucleationRate(input(i, 'T_K'), input(i, 'S'), {
      surfaceTension: input(i, 'sigma'),
      saturationPressure: input(i, 'p_sat_Pa'),
      moleculeVolume: input(i, 'v1_m3'),
    }) / 1e6,
  surfaceTension: (i) => surfaceTension(input(i, 'T_K')),
  densityOfWater: (i) => densityOfWater(celsius(input(i, 't_C'))),
  criticalSupersaturation: (i) => (critical(i).saturationRatio - 1) * 100,
  criticalWetRadius: (i) => (critical(i).wetDiameter / 2) * 1e6,
  kelvinRadius: (i) => (kelvinDiameter(input(i, 'S'), celsius(input(i, 't_C'))) / 2) * 1e6,
  kelvinSupersaturation: (i) => (kelvinSaturation(input(i, 'r_um') * 2e-6, celsius(input(i, 't_C'))) - 1) * 100,
  homogeneousOnset: (i) => homogeneousOnset(input(i, 'T_K'), { rate: input(i, 'rate_per_cm3_s') * 1e6 }),
  log10Rate: (i) => Math.log10(homogeneousNucleationRate(input(i, 'T_K'), input(i, 'S'))),
  ionLimit: (i) => ionLimit(celsius(input(i, 't_C'))),
  volumeRatioOnIons: (i) => volumeRatio(saturatedStart(i), noParticleLimit(saturatedStart(i)).ion),
  volumeRatioWithNothing: (i) =>
    volumeRatio(saturatedStart(i), noParticleLimit(saturatedStart(i), { rate: input(i, 'rate_per_cm3_s') * 1e6 }).homogeneous),
};
