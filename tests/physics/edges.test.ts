/**
 * Edges of ranges: each argument of each public function at its lowest and its highest value works and gives finite
 * numbers; just outside, and for NaN, a RangeError names it. The edges are those of the functions' own descriptions.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as physics from '../../src/physics/index.ts';

/**
 * Function and argument as the error names it, edges, a call with the argument at a value; and, where the rest of the
 * call allows less than the range, values beyond the range in place of those just outside the edges.
 */
type Edge = readonly [
  fn: string, argument: string, low: number, high: number, call: (x: number) => unknown, outside?: readonly [tooLow: number, tooHigh: number],
];

const air = physics.moistAir({ temperature: 293.15, pressure: 1e5, relativeHumidity: 0.6 });
const dry = physics.moistAir({ temperature: 293.15, pressure: 1e5, relativeHumidity: 0 });
const cool = physics.moistAir({ temperature: 283.15, pressure: 1e5, relativeHumidity: 0.8 });

const KOEHLER = { dryDiameter: 1e-7, kappa: 0.3, temperature: 283 };
const DROP = { diameter: 1e-5, air: cool };
const CLOUD = { number: 1e9, diameter: 1e-5, efficiency: 2 };
const WATER_CLOUD = { liquidWaterContent: 1e-3, effectiveRadius: 5e-6 };
const SEEN = { opticalDepth: 0.1, lighting: 'side', backing: 'black' } as const;
const PUMP = { startPressure: 1e5, vesselVolume: 0.003, strokeVolume: 2e-4, strokes: 3 };
const SHAPE = { shape: 'cylinder', volume: 0.003, diameter: 0.14, pressure: 9e4, temperatureDifference: 5 } as const;
const WALL = { pressureDifference: 1e4, diameter: 0.2, wallThickness: 0.004 };
const TUBE = { youngsModulus: 2e9, poissonRatio: 0.37, diameter: 0.2, wallThickness: 0.004 };
const CAN = { shape: 'cylinder', volume: 0.003, diameter: 0.14 } as const;
const SMOKE = { number: 1e10, medianDiameter: 2e-7, geometricStandardDeviation: 1.5, vessel: CAN, times: [60] };
const HOLD = [0, 60, 120].map((time) => ({ time, pressure: 7e4 + time }));
const MODE = { medianDryDiameter: 1e-7, geometricStandardDeviation: 1, kappa: 0.3, number: 1e9 };
const HISTORY = [{ time: 0, pressure: 1e5 }, { time: 5, pressure: 9.5e4 }];
const CLOUDED = { start: cool, modes: [MODE], pressureHistory: HISTORY };
const RUN = { start: air, pressureHistory: HISTORY, wallTimeConstant: 6 };
const READINGS = Array.from({ length: 8 }, (_, i) => ({ time: 2 * i, pressure: 1e5 - 1e3 * i, thermometer: 293.15 - 0.2 * i }));
const GUESS = { start: dry, initial: { wallTimeConstant: 6, thermometerTimeConstant: 10 } };

const EDGES: readonly Edge[] = [
  ['saturationVaporPressure', 'temperature', 123, 332, physics.saturationVaporPressure],
  ['saturationVaporPressureIce', 'temperature', 111, 273.16, physics.saturationVaporPressureIce],
  ['enhancementFactor', 'temperature', 123, 332, (x) => physics.enhancementFactor(x, 1e5)],
  ['enhancementFactor', 'pressure', 5e3, 5e5, (x) => physics.enhancementFactor(280, x)],
  ['dewPoint', 'vaporPressure', 1e-3, 1.89e4, physics.dewPoint],
  ['latentHeatOfVaporization', 'temperature', 230, 332, physics.latentHeatOfVaporization],
  ['surfaceTension', 'temperature', 235, 332, physics.surfaceTension],
  ['moistAir', 'temperature', 173.15, 331, (x) => physics.moistAir({ temperature: x, pressure: 1e5, relativeHumidity: 0.5 })],
  ['moistAir', 'pressure', 5e3, 5e5, (x) => physics.moistAir({ temperature: 283, pressure: x, relativeHumidity: 0.5 })],
  ['moistAir', 'relativeHumidity', 0, 1, (x) => physics.moistAir({ temperature: 283, pressure: 1e5, relativeHumidity: x })],
  ['moistAirOfMixingRatio', 'temperature', 123, 332, (x) => physics.moistAirOfMixingRatio(x, 1e5, 1e-9)],
  ['moistAirOfMixingRatio', 'pressure', 5e3, 5e5, (x) => physics.moistAirOfMixingRatio(283, x, 0.004)],
  ['moistAirOfMixingRatio', 'mixingRatio', 0, 0.6, (x) => physics.moistAirOfMixingRatio(283, 1e5, x)],
  ['expandWithoutCondensation', 'pressure', 5e3, 1.5e5, (x) => physics.expandWithoutCondensation(dry, x), [4999, 500_001]],
  ['standardAtmosphere', 'geopotentialAltitude', -5000, 32_000, physics.standardAtmosphere],
  ['pressureAltitude', 'pressure', physics.standardAtmosphere(32_000).pressure, physics.standardAtmosphere(-5000).pressure, physics.pressureAltitude],
  ['stationPressure', 'elevation', -4000, 9000, physics.stationPressure],
  ['thickness', 'bottomPressure', 5e4, 5e5, (x) => physics.thickness({ bottomPressure: x, topPressure: 5e4, virtualTemperature: 280 }), [99, 500_001]],
  ['thickness', 'topPressure', 100, 1e5, (x) => physics.thickness({ bottomPressure: 1e5, topPressure: x, virtualTemperature: 280 })],
  ['thickness', 'virtualTemperature', 150, 350, (x) => physics.thickness({ bottomPressure: 1e5, topPressure: 5e4, virtualTemperature: x })],
  ['risingParcel', 'height', 0, 5000, (x) => physics.risingParcel(cool, { heights: [x] }), [-1e-9, 20_001]],
  ['heightOfEqualPressure', 'pressure', 5e4, 1e5, (x) => physics.heightOfEqualPressure(cool, x), [4999, 1e5 + 1e-6]],
  ['heightOfEqualTemperature', 'temperature', 240, cool.temperature, (x) => physics.heightOfEqualTemperature(cool, x), [122.9, cool.temperature + 1e-9]],
  ['koehlerSaturation', 'dryDiameter', 1e-9, 1e-4, (x) => physics.koehlerSaturation({ ...KOEHLER, dryDiameter: x, wetDiameter: 2e-4 })],
  ['koehlerSaturation', 'wetDiameter', 1e-7, 1, (x) => physics.koehlerSaturation({ ...KOEHLER, wetDiameter: x })],
  ['criticalSaturation', 'dryDiameter', 1e-9, 1e-4, (x) => physics.criticalSaturation({ ...KOEHLER, dryDiameter: x })],
  ['criticalSaturation', 'kappa', 0, 2, (x) => physics.criticalSaturation({ ...KOEHLER, kappa: x })],
  ['criticalSaturation', 'temperature', 235, 332, (x) => physics.criticalSaturation({ ...KOEHLER, temperature: x })],
  ['criticalDryDiameter', 'saturationRatio', 1.0001, 5, (x) => physics.criticalDryDiameter({ saturationRatio: x, kappa: 0.3, temperature: 283 }), [1, 5.0001]],
  ['criticalDryDiameter', 'kappa', 0, 2, (x) => physics.criticalDryDiameter({ saturationRatio: 1.01, kappa: x, temperature: 283 })],
  ['equilibriumDiameter', 'saturationRatio', 0, 1, (x) => physics.equilibriumDiameter({ ...KOEHLER, saturationRatio: x }), [-Number.MIN_VALUE, 1.5]],
  ['kelvinDiameter', 'saturationRatio', 1.001, 20, (x) => physics.kelvinDiameter(x, 283), [1, 20.001]],
  ['kelvinDiameter', 'temperature', 235, 332, (x) => physics.kelvinDiameter(1.1, x)],
  ['homogeneousNucleationRate', 'temperature', 235, 332, (x) => physics.homogeneousNucleationRate(x, 5)],
  ['homogeneousNucleationRate', 'saturationRatio', 1.5, 100, (x) => physics.homogeneousNucleationRate(270, x), [1, 100.001]],
  ['homogeneousOnset', 'temperature', 235, 332, (x) => physics.homogeneousOnset(x)],
  ['homogeneousOnset', 'rate', 1, 1e20, (x) => physics.homogeneousOnset(290, { rate: x })],
  ['ionLimit', 'temperature', 235, 332, physics.ionLimit],
  ['growthRate', 'diameter', 1e-9, 1e-3, (x) => physics.growthRate({ ...DROP, diameter: x })],
  ['growthRate', 'dryDiameter', 1e-9, 1e-5, (x) => physics.growthRate({ ...DROP, dryDiameter: x, kappa: 0.3 })],
  ['growthRate', 'kappa', 0, 2, (x) => physics.growthRate({ ...DROP, dryDiameter: 1e-7, kappa: x })],
  ['growthRate', 'condensationCoefficient', 1e-3, 1, (x) => physics.growthRate({ ...DROP, condensationCoefficient: x })],
  ['growthRate', 'thermalAccommodation', 1e-3, 1, (x) => physics.growthRate({ ...DROP, thermalAccommodation: x })],
  ['growthRate', 'air.temperature', 235.15, 325, (x) => physics.growthRate({ ...DROP, air: { ...cool, temperature: x } })],
  ['condense', 'classes', 1, 1000, (x) => physics.condense({ ...CLOUDED, classes: x }), [0, 1001]],
  ['condense', 'modes[0].medianDryDiameter', 5e-9, 1e-5, (x) => physics.condense({ ...CLOUDED, modes: [{ ...MODE, medianDryDiameter: x, number: 1e4 }] })],
  ['condense', 'modes[0].geometricStandardDeviation', 1, 3, (x) => physics.condense({ ...CLOUDED, classes: 3, modes: [{ ...MODE, geometricStandardDeviation: x }] })],
  ['condense', 'modes[0].kappa', 1e-3, 2, (x) => physics.condense({ ...CLOUDED, modes: [{ ...MODE, kappa: x }] })],
  ['condense', 'modes[0].number', 0, 1e13, (x) => physics.condense({ ...CLOUDED, modes: [{ ...MODE, number: x }] })],
  ['condense', 'wall.timeConstant', 1e-2, 1e6, (x) => physics.condense({ ...CLOUDED, wall: { timeConstant: x, temperature: 283, wet: false } })],
  ['slipCorrection', 'diameter', 1e-9, 2e-4, (x) => physics.slipCorrection(x)],
  ['slipCorrection', 'temperature', 173.15, 332, (x) => physics.slipCorrection(1e-7, { temperature: x })],
  ['slipCorrection', 'pressure', 5e3, 5e5, (x) => physics.slipCorrection(1e-7, { pressure: x })],
  ['settlingVelocity', 'diameter', 1e-9, 2e-4, (x) => physics.settlingVelocity(x)],
  ['settlingVelocity', 'density', 100, 2e4, (x) => physics.settlingVelocity(1e-6, { density: x })],
  ['coagulationCoefficient', 'diameter', 1e-9, 2e-4, (x) => physics.coagulationCoefficient(x, 1e-7)],
  ['coagulationCoefficient', 'diameter', 1e-9, 2e-4, (x) => physics.coagulationCoefficient(1e-7, x)],
  ['particleHistory', 'number', 1, 1e16, (x) => physics.particleHistory({ ...SMOKE, number: x })],
  ['particleHistory', 'medianDiameter', 2e-9, 2e-5, (x) => physics.particleHistory({ ...SMOKE, medianDiameter: x })],
  ['particleHistory', 'geometricStandardDeviation', 1, 3, (x) => physics.particleHistory({ ...SMOKE, geometricStandardDeviation: x })],
  ['particleHistory', 'volume', 1e-5, 1e4, (x) => physics.particleHistory({ ...SMOKE, vessel: { shape: 'sphere', volume: x } })],
  ['particleHistory', 'eddyParameter', 1e-5, 100, (x) => physics.particleHistory({ ...SMOKE, eddyParameter: x })],
  ['particleHistory', 'stepShare', 1e-4, 0.2, (x) => physics.particleHistory({ ...SMOKE, stepShare: x, times: [1] })],
  ['particleHistory', 'classesPerDoubling', 1, 8, (x) => physics.particleHistory({ ...SMOKE, classesPerDoubling: x, times: [1] })],
  ['extinctionEfficiency', 'diameter', 1e-8, 2e-4, (x) => physics.extinctionEfficiency({ diameter: x })],
  ['extinctionEfficiency', 'wavelength', 3e-7, 1e-6, (x) => physics.extinctionEfficiency({ diameter: 1e-6, wavelength: x })],
  ['extinctionEfficiency', 'refractiveIndex', 1.05, 2.5, (x) => physics.extinctionEfficiency({ diameter: 1e-6, refractiveIndex: x })],
  ['extinctionCoefficient', 'number', 0, 1e14, (x) => physics.extinctionCoefficient({ ...CLOUD, number: x })],
  ['extinctionCoefficient', 'diameter', 1e-8, 1e-3, (x) => physics.extinctionCoefficient({ ...CLOUD, diameter: x })],
  ['extinctionCoefficient', 'efficiency', 0, 5, (x) => physics.extinctionCoefficient({ ...CLOUD, efficiency: x })],
  ['extinctionCoefficient', 'liquidWaterContent', 0, 0.1, (x) => physics.extinctionCoefficient({ ...WATER_CLOUD, liquidWaterContent: x })],
  ['extinctionCoefficient', 'effectiveRadius', 5e-9, 5e-4, (x) => physics.extinctionCoefficient({ ...WATER_CLOUD, effectiveRadius: x })],
  ['opticalDepth', 'extinction', 0, 1e4, (x) => physics.opticalDepth(x, 1)],
  ['opticalDepth', 'path', 0, 1e5, (x) => physics.opticalDepth(1, x)],
  ['transmittance', 'opticalDepth', 0, 700, physics.transmittance],
  ['visibleContrast', 'opticalDepth', 0, 700, (x) => physics.visibleContrast({ ...SEEN, opticalDepth: x })],
  ['visibleContrast', 'lampOverRoom', 0, 1e5, (x) => physics.visibleContrast({ ...SEEN, lampOverRoom: x })],
  ['visibleContrast', 'threshold', 0.001, 0.9, (x) => physics.visibleContrast({ ...SEEN, threshold: x })],
  ['coronaRadius', 'dropletDiameter', 2e-6, 2e-4, (x) => physics.coronaRadius({ dropletDiameter: x })],
  ['coronaRadius', 'wavelength', 3e-7, 1e-6, (x) => physics.coronaRadius({ dropletDiameter: 1e-5, wavelength: x })],
  ['leakRate', 'volume', 1e-9, 10, (x) => physics.leakRate({ readings: HOLD, volume: x })],
  ['leakRate', 'readings[2].pressure', -1e7, 1e7, (x) => physics.leakRate({ readings: [...HOLD.slice(0, 2), { time: 120, pressure: x }], volume: 1e-3 })],
  ['gaugeReading', 'pressure', 0, 1e7, (x) => physics.gaugeReading(x, 1e5)],
  ['gaugeReading', 'roomPressure', 100, 1e6, (x) => physics.gaugeReading(1e5, x)],
  ['pumpStrokes', 'startPressure', 100, 1e6, (x) => physics.pumpStrokes({ ...PUMP, startPressure: x })],
  ['pumpStrokes', 'vesselVolume', 1e-9, 10, (x) => physics.pumpStrokes({ ...PUMP, vesselVolume: x })],
  ['pumpStrokes', 'strokeVolume', 1e-9, 1, (x) => physics.pumpStrokes({ ...PUMP, strokeVolume: x })],
  ['pumpStrokes', 'deadVolume', 0, 2e-4, (x) => physics.pumpStrokes({ ...PUMP, deadVolume: x })],
  ['pumpStrokes', 'ultimatePressure', 0, 1e5, (x) => physics.pumpStrokes({ ...PUMP, ultimatePressure: x })],
  ['strokesTo', 'targetPressure', 1, 1e5, (x) => physics.strokesTo(PUMP, x), [-1, 100_001]],
  ['wallTimeConstantOf', 'volume', 1e-5, 1, (x) => physics.wallTimeConstantOf({ ...SHAPE, height: 0.2, volume: x })],
  ['wallTimeConstantOf', 'pressure', 5e3, 5e5, (x) => physics.wallTimeConstantOf({ ...SHAPE, pressure: x })],
  ['wallTimeConstantOf', 'temperatureDifference', -60, 60, (x) => physics.wallTimeConstantOf({ ...SHAPE, temperatureDifference: x })],
  ['wallTimeConstantOf', 'fill', 0, 0.95, (x) => physics.wallTimeConstantOf({ ...SHAPE, fill: x })],
  ['simulateRun', 'vessel.wallTemperature', 235, 331, (x) => physics.simulateRun({ start: dry, pressureHistory: HISTORY, wallTimeConstant: 1e6, vessel: { wallTemperature: x } })],
  ['simulateRun', 'thermometer.wallShare', 0, 1, (x) => physics.simulateRun({ ...RUN, thermometer: { wallShare: x } })],
  ['simulateRun', 'accuracy', 1e-9, 0.01, (x) => physics.simulateRun({ ...RUN, accuracy: x })],
  ['simulateRun', 'nuclei.dryDiameter', 1e-8, 1e-5, (x) => physics.simulateRun({ ...RUN, nuclei: { number: 1e6, dryDiameter: x } })],
  ['simulateRun', 'nuclei.kappa', 1e-3, 2, (x) => physics.simulateRun({ ...RUN, nuclei: { number: 1e9, kappa: x } })],
  ['simulateRun', 'pressureHistory[1].pressure', 5e4, 1.3e5, (x) => physics.simulateRun({ start: dry, pressureHistory: [HISTORY[0]!, { time: 5, pressure: x }] }), [4999, 500_001]],
  ['fitVessel', 'wallShare', 0, 0.95, (x) => physics.fitVessel(READINGS, { ...GUESS, wallShare: x })],
  ['fitVessel', 'initial.wallTimeConstant', 0.02, 1e5, (x) => physics.fitVessel(READINGS, { start: dry, initial: { wallTimeConstant: x, thermometerTimeConstant: 10 } })],
  ['hoopStress', 'pressureDifference', -1e7, 1e7, (x) => physics.hoopStress({ ...WALL, pressureDifference: x })],
  ['hoopStress', 'wallThickness', 1e-6, 0.02, (x) => physics.hoopStress({ ...WALL, wallThickness: x })],
  ['sphereStress', 'diameter', 0.04, 10, (x) => physics.sphereStress({ ...WALL, diameter: x }), [9e-4, 10.001]],
  ['discArea', 'diameter', 1e-4, 10, physics.discArea],
  ['pressureForce', 'pressureDifference', -1e7, 1e7, (x) => physics.pressureForce({ pressureDifference: x, area: 0.01 })],
  ['pressureForce', 'area', 0, 100, (x) => physics.pressureForce({ pressureDifference: 1e4, area: x })],
  ['storedEnergy', 'volume', 1e-6, 10, (x) => physics.storedEnergy({ volume: x, pressure: 2e5, surroundings: 1e5 })],
  ['storedEnergy', 'pressure', 0, 1e7, (x) => physics.storedEnergy({ volume: 0.003, pressure: x, surroundings: 1e5 })],
  ['storedEnergy', 'surroundings', 5e4, 1.2e5, (x) => physics.storedEnergy({ volume: 0.003, pressure: 2e5, surroundings: x })],
  ['collapseMargin', 'youngsModulus', 1e8, 1e12, (x) => physics.collapseMargin({ ...TUBE, youngsModulus: x }, 1e4)],
  ['collapseMargin', 'poissonRatio', 0, 0.5, (x) => physics.collapseMargin({ ...TUBE, poissonRatio: x }, 1e4)],
  ['collapseMargin', 'wallThickness', 2e-5, 0.02, (x) => physics.collapseMargin({ ...TUBE, wallThickness: x }, 1e4)],
  ['collapseMargin', 'length', 0.05, 1000, (x) => physics.collapseMargin({ ...TUBE, length: x }, 1e4)],
  ['collapseMargin', 'pressureDifference', 1, 1e7, (x) => physics.collapseMargin(TUBE, x)],
  ['rectangular', 'halfWidth', 0, 1e300, (x) => physics.rectangular(x), [-Number.MIN_VALUE, Infinity]],
  ['propagate', 'probability', 0.01, 0.9999, (x) => physics.propagate(({ a }) => a, { a: { value: 1, standardUncertainty: 0.1, degreesOfFreedom: 5 } }, { probability: x })],
  ['propagateMonteCarlo', 'trials', 1000, 2000, (x) => physics.propagateMonteCarlo(({ a }) => a, { a: { value: 1, standardUncertainty: 0.1 } }, { seed: 1, trials: x }), [999, 10_000_001]],
];

/** Without a limit by their meaning, these may be infinite. */
const MAY_BE_INFINITE = ['degreesOfFreedom', 'effectiveDegreesOfFreedom', 'timeConstant', 'standardError', 'low', 'high'];

/** Numbers of a result that are not finite. */
function wrongNumbers(value: unknown, name = ''): number[] {
  if (typeof value === 'number') return Number.isFinite(value) || (MAY_BE_INFINITE.includes(name) && !Number.isNaN(value)) ? [] : [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, field]) => wrongNumbers(field, key));
}

/** They take too long to be asked many times, and have such tests of their own. */
const SLOW = ['condense', 'simulateRun', 'fitVessel', 'particleHistory', 'propagateMonteCarlo'];

const below = (x: number): number => (x === 0 ? -Number.MIN_VALUE : x - Math.abs(x) * 1e-9);
const above = (x: number): number => (x === 0 ? Number.MIN_VALUE : x + Math.abs(x) * 1e-9);

function refusal(call: () => unknown): Error {
  try {
    call();
  } catch (error) {
    if (error instanceof Error) return error;
  }
  throw new Error('it was taken');
}

for (const [fn, argument, low, high, call, outside = [below(low), above(high)]] of EDGES) {
  describe(`${fn}: ${argument}`, () => {
    it.each([low, high])('works at %d', (edge) => {
      expect(wrongNumbers(call(edge))).toEqual([]);
    });

    it.each([...outside, NaN])('refuses %d and names it', (value) => {
      const error = refusal(() => call(value));
      expect(error).toBeInstanceOf(RangeError);
      expect(error.message.toLowerCase()).toContain(argument.toLowerCase());
    });

    if (SLOW.includes(fn)) return;
    it('gives numbers at all values between', () => {
      fc.assert(
        fc.property(fc.double({ min: low, max: high, noNaN: true }), (x) => wrongNumbers(call(x)).length === 0),
        { seed: 20261125, numRuns: 60 },
      );
    });
  });
}
