/**
 * Calls per second of the physics library's main functions, beside PsychroLib (Meyer & Thevenard 2019, J. Open Source
 * Softw. 4, 1137) where both have the function.
 */
import { createRequire } from 'node:module';
import * as lib from '../../src/physics/index.ts';
import { callsPerSecond, rounded, type BenchSection } from './section.ts';

/** What is called of PsychroLib, which ships without types. Degrees Celsius, Pa, kg/kg. */
interface Psychrometrics {
  readonly SI: number;
  SetUnitSystem(system: number): void;
  GetSatVapPres(celsius: number): number;
  GetHumRatioFromRelHum(celsius: number, relativeHumidity: number, pressure: number): number;
  GetTDewPointFromVapPres(celsius: number, vaporPressure: number): number;
  GetMoistAirDensity(celsius: number, humidityRatio: number, pressure: number): number;
  GetStandardAtmPressure(meters: number): number;
  CalcPsychrometricsFromRelHum(celsius: number, relativeHumidity: number, pressure: number): readonly number[];
}

const psychrolib = createRequire(import.meta.url)('psychrolib') as Psychrometrics;
psychrolib.SetUnitSystem(psychrolib.SI);

interface State {
  readonly celsius: number;
  readonly temperature: number;
  readonly pressure: number;
  readonly humidity: number;
  readonly vaporPressure: number;
  readonly height: number;
  readonly air: lib.MoistAir;
}

/** Rooms of 15 to 29 °C at 78 to 103 kPa, 30 to 98 %. */
const STATES: readonly State[] = Array.from({ length: 256 }, (_, i) => {
  const celsius = 15 + 14 * ((i * 37) % 256) / 256;
  const pressure = 78000 + (25000 * ((i * 101) % 256)) / 256;
  const humidity = 0.3 + (0.68 * ((i * 151) % 256)) / 256;
  const air = lib.moistAir({ temperature: celsius + 273.15, pressure, relativeHumidity: humidity });
  return { celsius, temperature: air.temperature, pressure, humidity, vaporPressure: air.vaporPressure, height: 40 * (i % 100), air };
});

type Call = (state: State) => number;

/** Name, our call, PsychroLib's. */
const CALLS: readonly (readonly [name: string, own: Call, theirs?: Call])[] = [
  ['saturationVaporPressure', ({ temperature }) => lib.saturationVaporPressure(temperature), ({ celsius }) => psychrolib.GetSatVapPres(celsius)],
  ['dewPoint', ({ vaporPressure }) => lib.dewPoint(vaporPressure), ({ celsius, vaporPressure }) => psychrolib.GetTDewPointFromVapPres(celsius, vaporPressure)],
  [
    'moistAir, for its mixing ratio',
    ({ temperature, pressure, humidity }) => lib.moistAir({ temperature, pressure, relativeHumidity: humidity }).mixingRatio,
    ({ celsius, humidity, pressure }) => psychrolib.GetHumRatioFromRelHum(celsius, humidity, pressure),
  ],
  [
    'moistAir, for its density',
    ({ temperature, pressure, humidity }) => lib.moistAir({ temperature, pressure, relativeHumidity: humidity }).density,
    ({ celsius, humidity, pressure }) => psychrolib.GetMoistAirDensity(celsius, psychrolib.GetHumRatioFromRelHum(celsius, humidity, pressure), pressure),
  ],
  [
    'moistAir, for all of it',
    ({ temperature, pressure, humidity }) => lib.moistAir({ temperature, pressure, relativeHumidity: humidity }).dewPoint!,
    ({ celsius, humidity, pressure }) => psychrolib.CalcPsychrometricsFromRelHum(celsius, humidity, pressure)[2]!,
  ],
  ['standardAtmosphere, for its pressure', ({ height }) => lib.standardAtmosphere(height).pressure, ({ height }) => psychrolib.GetStandardAtmPressure(height)],
  ['latentHeatOfVaporization', ({ temperature }) => lib.latentHeatOfVaporization(temperature)],
  ['expandWithoutCondensation', ({ air }) => lib.expandWithoutCondensation(air, 0.8 * air.pressure).temperature],
  ['expandWithCondensation', ({ air }) => lib.expandWithCondensation(air, 0.8 * air.pressure).temperature],
  ['cloudOnset', ({ air }) => lib.cloudOnset(air).pressure],
  ['liftingCondensationLevel', ({ air }) => lib.liftingCondensationLevel(air).height],
  ['heightOfEqualPressure', ({ air }) => lib.heightOfEqualPressure(air, 0.9 * air.pressure)],
  ['criticalSaturation', ({ temperature }) => lib.criticalSaturation({ dryDiameter: 1e-7, kappa: 0.3, temperature })],
  ['equilibriumDiameter', ({ temperature, humidity }) => lib.equilibriumDiameter({ dryDiameter: 1e-7, kappa: 0.3, temperature, saturationRatio: humidity })],
  ['homogeneousOnset', ({ temperature }) => lib.homogeneousOnset(temperature)],
  ['growthRate', ({ air }) => lib.growthRate({ diameter: 2e-6, air })],
  ['coagulationCoefficient', ({ temperature }) => lib.coagulationCoefficient(1e-7, 3e-7, { temperature })],
];

export const physics: BenchSection = {
  name: 'physics',
  title: 'Physics: calls per second, and PsychroLib’s for the same. A ratio above 1: this library is the faster.',
  head: ['function', 'calls per second', 'PsychroLib', 'ratio'],
  measure: (progress) =>
    CALLS.map(([name, own, theirs]) => {
      progress(name);
      const mine = callsPerSecond(STATES, own);
      if (theirs === undefined) return [name, rounded(mine), '', ''];
      const other = callsPerSecond(STATES, theirs);
      return [name, rounded(mine), rounded(other), (mine / other).toPrecision(2)];
    }),
};
