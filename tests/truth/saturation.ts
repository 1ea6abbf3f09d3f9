import {
  dewPoint,
  enhancementFactor,
  latentHeatOfVaporization,
  saturationVaporPressure,
  saturationVaporPressureIce,
} from '../../src/physics/saturation.ts';
import { hectopascal, toCelsius } from '../../src/physics/units.ts';
import { input, temperatureInput, type Evaluator } from './row.ts';

export const evaluators: Record<string, Evaluator> = {
  saturationVaporPressure: (inputs) => saturationVaporPressure(temperatureInput(inputs)),
  saturationVaporPressureIce: (inputs) => saturationVaporPressureIce(temperatureInput(inputs)),
  /** kJ/kg */
  latentHeatOfVaporization: (inputs) => latentHeatOfVaporization(temperatureInput(inputs)) / 1000,
  enhancementFactor: (inputs) => enhancementFactor(temperatureInput(inputs), hectopascal(input(inputs, 'p_hPa'))),
  /** °C */
  dewPoint: (inputs) => toCelsius(dewPoint(input(inputs, 'e_Pa'))),
};
