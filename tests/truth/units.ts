import {
  celsius,
  fahrenheit,
  inchOfMercury,
  millimeterOfMercury,
  poundPerSquareInch,
  toCelsius,
  toFahrenheit,
  toFoot,
  toInchOfMercury,
  toMillimeterOfMercury,
  toPoundPerSquareInch,
} from '../../src/physics/units.ts';
import { input, type Evaluator } from './row.ts';

export const evaluators: Record<string, Evaluator> = {
  inchOfMercury: (inputs) => inchOfMercury(input(inputs, 'p_inHg')),
  millimeterOfMercury: (inputs) => millimeterOfMercury(input(inputs, 'p_mmHg')),
  poundPerSquareInch: (inputs) => poundPerSquareInch(input(inputs, 'p_psi')),
  toMillimeterOfMercury: (inputs) => toMillimeterOfMercury(input(inputs, 'p_Pa')),
  toInchOfMercury: (inputs) => toInchOfMercury(input(inputs, 'p_Pa')),
  toPoundPerSquareInch: (inputs) => toPoundPerSquareInch(input(inputs, 'p_Pa')),
  celsius: (inputs) => celsius(input(inputs, 't_C')),
  toCelsius: (inputs) => toCelsius(input(inputs, 'T_K')),
  fahrenheit: (inputs) => fahrenheit(input(inputs, 't_F')),
  toFahrenheit: (inputs) => toFahrenheit(input(inputs, 'T_K')),
  toFoot: (inputs) => toFoot(input(inputs, 'l_m')),
};
