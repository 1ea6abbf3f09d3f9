import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { saturationVaporPressure } from '../../src/physics/saturation.ts';
import * as units from '../../src/physics/units.ts';

const PAIRS: readonly (readonly [string, (x: number) => number, (x: number) => number])[] = [
  ['degree Celsius', units.celsius, units.toCelsius],
  ['degree Fahrenheit', units.fahrenheit, units.toFahrenheit],
  ['hectopascal', units.hectopascal, units.toHectopascal],
  ['kilopascal', units.kilopascal, units.toKilopascal],
  ['inch of mercury', units.inchOfMercury, units.toInchOfMercury],
  ['millimeter of mercury', units.millimeterOfMercury, units.toMillimeterOfMercury],
  ['pound per square inch', units.poundPerSquareInch, units.toPoundPerSquareInch],
  ['foot', units.foot, units.toFoot],
  ['liter', units.liter, units.toLiter],
  ['micrometer', units.micrometer, units.toMicrometer],
  ['minute', units.minute, units.toMinute],
  ['per cubic centimeter', units.perCubicCentimeter, units.toPerCubicCentimeter],
  ['percent', units.percent, units.toPercent],
];

describe('units', () => {
  it.each(PAIRS)('%s: there and back', (_, into, back) => {
    fc.assert(
      fc.property(fc.double({ min: -1e3, max: 1e3, noNaN: true }), (x) => {
        expect(back(into(x))).toBeCloseTo(x, 9);
      }),
      { seed: 2 },
    );
  });

  // Exact by definition: SI Brochure (9th ed. 2019), tables 7 and 8, and NIST SP 811 (2008), B.8.
  it.each([
    ['1 hPa', units.hectopascal(1), 100],
    ['1 kPa', units.kilopascal(1), 1000],
    ['1 ft', units.foot(1), 0.3048],
    ['1 L', units.liter(1), 0.001],
    ['1 µm', units.micrometer(1), 1e-6],
    ['1 min', units.minute(1), 60],
    ['1 cm⁻³', units.perCubicCentimeter(1), 1e6],
    ['1 %', units.percent(1), 0.01],
    ['0 °C', units.celsius(0), 273.15],
    ['32 °F', units.fahrenheit(32), 273.15],
  ])('%s is exact', (_, computed, exact) => {
    expect(computed).toBe(exact);
  });

  it('keeps a pressure from standing where a temperature belongs', () => {
    const pressure: units.Pascal = units.hectopascal(3);
    // @ts-expect-error a pascal is not a kelvin
    expect(saturationVaporPressure(pressure)).toBeGreaterThan(0);
  });
});
