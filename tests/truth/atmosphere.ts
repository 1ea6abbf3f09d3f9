import { geopotentialAltitude, pressureAltitude, standardAtmosphere, stationPressure, thickness } from '../../src/physics/atmosphere.ts';
import { hectopascal, inchOfMercury } from '../../src/physics/units.ts';
import { input, type Evaluator } from './row.ts';

export const evaluators: Record<string, Evaluator> = {
  temperature: (inputs) => standardAtmosphere(input(inputs, 'H_m')).temperature,
  pressure: (inputs) => standardAtmosphere(input(inputs, 'H_m')).pressure,
  density: (inputs) => standardAtmosphere(input(inputs, 'H_m')).density,
  geometricTemperature: (inputs) => standardAtmosphere(geopotentialAltitude(input(inputs, 'Z_m'))).temperature,
  geometricDensity: (inputs) => standardAtmosphere(geopotentialAltitude(input(inputs, 'Z_m'))).density,
  stationPressure: (inputs) => stationPressure(input(inputs, 'Z_m')),
  geopotentialAltitude: (inputs) => geopotentialAltitude(input(inputs, 'Z_m')),
  pressureAltitude: (inputs) => pressureAltitude(input(inputs, 'p_Pa')),
  pressureAltitudeOfInches: (inputs) => pressureAltitude(inchOfMercury(input(inputs, 'p_inHg'))),
  thickness: (inputs) =>
    thickness({
      bottomPressure: hectopascal(input(inputs, 'p1_hPa')),
      topPressure: hectopascal(input(inputs, 'p2_hPa')),
      virtualTemperature: input(inputs, 'Tv_K'),
    }),
};
