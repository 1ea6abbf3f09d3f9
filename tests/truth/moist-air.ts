import { moistAir, moistAirOfMixingRatio, saturationPressureInAir, type MoistAir } from '../../src/physics/moist-air.ts';
import { saturationVaporPressure } from '../../src/physics/saturation.ts';
import { MOLAR_MASS_RATIO } from '../../src/physics/constants.ts';
import { celsius, millimeterOfMercury, toCelsius } from '../../src/physics/units.ts';
import { input, temperatureInput, type Evaluator, type Inputs } from './row.ts';

/** Air of the given temperature whose vapor is that of saturated air at the dew point. */
export function airOfDewPoint(temperature: number, dewPoint: number, pressure: number): MoistAir {
  return moistAirOfMixingRatio(temperature, pressure, moistAir({ temperature: dewPoint, pressure, relativeHumidity: 1 }).mixingRatio);
}

export const evaluators: Record<string, Evaluator> = {
  saturationMixingRatio: (inputs) =>
    moistAir({ temperature: temperatureInput(inputs), pressure: input(inputs, 'p_Pa'), relativeHumidity: 1 }).mixingRatio,
  mixingRatio: (inputs) => {
    const temperature = temperatureInput(inputs);
    const pressure = input(inputs, 'p_Pa');
    const relativeHumidity = input(inputs, 'e_Pa') / saturationPressureInAir(temperature, pressure);
    return moistAir({ temperature, pressure, relativeHumidity }).mixingRatio;
  },
  specificHumidity: (inputs) => moistAirOfMixingRatio(293.15, 1e5, input(inputs, 'w_kg_kg')).specificHumidity,
  /** %, at 1000 hPa, on which it hardly depends */
  relativeHumidityOfDewPoint: (inputs) => 100 * airOfDewPoint(celsius(input(inputs, 't_C')), celsius(input(inputs, 'td_C')), 1e5).saturationRatio,
  pureSaturationOfMoleFraction: (inputs) => {
    const x = input(inputs, 'x_1');
    const temperature = temperatureInput(inputs);
    const air = moistAirOfMixingRatio(temperature, input(inputs, 'p_Pa'), (MOLAR_MASS_RATIO * x) / (1 - x));
    return air.vaporPressure / saturationVaporPressure(temperature);
  },
  /** °C */
  virtualTemperature: (inputs) =>
    toCelsius(airOfDewPoint(celsius(input(inputs, 't_C')), celsius(input(inputs, 'td_C')), input(inputs, 'p_Pa')).virtualTemperature),
  density: (inputs) =>
    moistAir({
      temperature: temperatureInput(inputs),
      pressure: millimeterOfMercury(input(inputs, 'p_mmHg')),
      relativeHumidity: input(inputs, 'RH_percent') / 100,
    }).density,
  densityOfMixingRatio: (inputs) => given(inputs).density,
  /** °C */
  dewPointOfMixingRatio: (inputs) => toCelsius(given(inputs).dewPoint ?? 0),
  saturationRatioOfMixingRatio: (inputs) => given(inputs).saturationRatio,
  /** m³ per kg of dry air */
  volumePerDryAir: (inputs) => (1 + input(inputs, 'w_kg_kg')) / given(inputs).density,
};

function given(inputs: Inputs): MoistAir {
  return moistAirOfMixingRatio(temperatureInput(inputs), input(inputs, 'p_Pa'), input(inputs, 'w_kg_kg'));
}
