import { moistAir, type MoistAir } from '../../src/physics/moist-air.ts';
import {
  boltonCondensationTemperature,
  cloudBase,
  heightOfEqualTemperature,
  liftingCondensationLevel,
  liftingDepositionLevel,
  risingParcel,
} from '../../src/physics/parcel.ts';
import { celsius, hectopascal, toCelsius, toHectopascal } from '../../src/physics/units.ts';
import { airOfDewPoint } from './moist-air.ts';
import { input, type Evaluator, type Inputs } from './row.ts';

export const evaluators: Record<string, Evaluator> = {
  condensationLevel: (inputs) => liftingCondensationLevel(ofHumidity(inputs)).height,
  depositionLevel: (inputs) => liftingDepositionLevel(ofHumidity(inputs)).height,
  cloudBaseHeight: (inputs) => cloudBase(ofHumidity(inputs)).height,
  /** hPa */
  condensationPressure: (inputs) => toHectopascal(liftingCondensationLevel(ofDewPoint(inputs)).pressure),
  /** °C */
  condensationTemperature: (inputs) => toCelsius(liftingCondensationLevel(ofDewPoint(inputs)).temperature),
  /** °C */
  boltonTemperature: (inputs) => toCelsius(boltonCondensationTemperature(celsius(input(inputs, 't_C')), celsius(input(inputs, 'td_C')))),
  cloudBaseHeightOfDewPoint: (inputs) => cloudBase(ofDewPoint(inputs)).height,
  saturatedLapseRate: (inputs) => {
    const air = moistAir({ temperature: input(inputs, 'T_K'), pressure: input(inputs, 'p_Pa'), relativeHumidity: 1 });
    const rise = 10;
    const top = risingParcel(air, { heights: [rise] })[0];
    return top === undefined ? 0 : (air.temperature - top.temperature) / rise;
  },
  equalTemperatureHeight: (inputs) => {
    const air = moistAir({ temperature: celsius(input(inputs, 't1_C')), pressure: hectopascal(input(inputs, 'p_hPa')), relativeHumidity: 0 });
    return heightOfEqualTemperature(air, celsius(input(inputs, 't2_C')));
  },
};

function ofHumidity(inputs: Inputs): MoistAir {
  return moistAir({ temperature: input(inputs, 'T_K'), pressure: input(inputs, 'p_Pa'), relativeHumidity: input(inputs, 'RH_1') });
}

function ofDewPoint(inputs: Inputs): MoistAir {
  return airOfDewPoint(celsius(input(inputs, 't_C')), celsius(input(inputs, 'td_C')), hectopascal(input(inputs, 'p_hPa')));
}
