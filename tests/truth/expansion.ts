import { cloudOnset, expandWithCondensation, expandWithoutCondensation } from '../../src/physics/expansion.ts';
import { moistAir, type MoistAir } from '../../src/physics/moist-air.ts';
import { celsius, hectopascal, toCelsius, toHectopascal } from '../../src/physics/units.ts';
import { airOfDewPoint } from './moist-air.ts';
import { input, type Evaluator, type Inputs } from './row.ts';

export const evaluators: Record<string, Evaluator> = {
  dryTemperature: (inputs) => expandWithoutCondensation(start(inputs, 0), end(inputs)).temperature,
  saturatedTemperature: (inputs) => expandWithCondensation(start(inputs, 1), end(inputs)).temperature,
  liftedTemperature: (inputs) => expandWithCondensation(startOfDewPoint(inputs), end(inputs)).temperature,
  /** hPa */
  onsetPressure: (inputs) => toHectopascal(cloudOnset(startOfDewPoint(inputs)).pressure),
  /** °C */
  onsetTemperature: (inputs) => toCelsius(cloudOnset(startOfDewPoint(inputs)).temperature),
};

function start(inputs: Inputs, relativeHumidity: number): MoistAir {
  return moistAir({ temperature: input(inputs, 'T1_K'), pressure: hectopascal(input(inputs, 'p1_hPa')), relativeHumidity });
}

function startOfDewPoint(inputs: Inputs): MoistAir {
  return airOfDewPoint(celsius(input(inputs, 't_C')), celsius(input(inputs, 'td_C')), hectopascal(input(inputs, 'p1_hPa')));
}

function end(inputs: Inputs): number {
  return hectopascal(input(inputs, 'p2_hPa'));
}
