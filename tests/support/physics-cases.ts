/**
 * Calls of every public function of the physics library and of many more, for holding one engine against another: the
 * function's name, here and there with a word more, and what gives its numbers. Inputs are literals, so that only the
 * library computes.
 */
import { coagulationTime, diffusionCoefficient, wallLoss } from '../../src/physics/aerosol.ts';
import { geopotentialAltitude } from '../../src/physics/atmosphere.ts';
import { dropletTemperature } from '../../src/physics/droplets.ts';
import { entropy } from '../../src/physics/expansion.ts';
import * as face from '../../src/physics/index.ts';
import { boltonCondensationTemperature, liftingDepositionLevel } from '../../src/physics/lifting-levels.ts';
import { saturationPressureInAir } from '../../src/physics/moist-air.ts';
import * as nucleation from '../../src/physics/nucleation.ts';
import * as openings from '../../src/physics/opening.ts';
import { dropletDiameterFromCorona, visualRange } from '../../src/physics/optics.ts';
import * as pumps from '../../src/physics/pump.ts';
import { triangular } from '../../src/physics/uncertain-input.ts';
import { wallHeatTransferCoefficient } from '../../src/physics/wall-heat.ts';
import * as walls from '../../src/physics/walls.ts';
import { densityOfWater } from '../../src/physics/water.ts';

const physics = {
  ...face, ...nucleation, ...openings, ...pumps, ...walls,
  boltonCondensationTemperature, coagulationTime, densityOfWater, diffusionCoefficient, dropletDiameterFromCorona, dropletTemperature,
  entropy, geopotentialAltitude, liftingDepositionLevel, saturationPressureInAir, triangular, visualRange,
  wallHeatTransferCoefficient, wallLoss,
};

/** Name -> numbers. The name up to the first space is that of the function. */
export type PhysicsCases = Readonly<Record<string, () => number[]>>;

/** All numbers of a result, in the order of its fields. */
function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value === 'boolean') return [Number(value)];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
}

const each = <T>(values: readonly T[], f: (value: T) => unknown) => (): number[] => values.flatMap((value) => numbersOf(f(value)));
const once = (f: () => unknown) => (): number[] => numbersOf(f());

const room = physics.moistAir({ temperature: 293.15, pressure: 101325, relativeHumidity: 0.5 });
const moist = physics.moistAir({ temperature: 295.15, pressure: 83000, relativeHumidity: 0.97 });
const cold = physics.moistAir({ temperature: 258.15, pressure: 70000, relativeHumidity: 0.8 });
const airs = [room, moist, cold];

const temperatures = [240, 253.15, 273.15, 293.15, 313.15];
const diameters = [2e-9, 5e-8, 1e-6, 4e-5];
const particles = [
  { dryDiameter: 3e-8, kappa: 0.61, temperature: 283.15 },
  { dryDiameter: 2e-7, kappa: 0.05, temperature: 263.15 },
  { dryDiameter: 1e-6, kappa: 1.28, temperature: 300 },
];

const conversions: Readonly<Record<string, number>> = {
  celsius: 21.3, toCelsius: 294.7, fahrenheit: 71.3, toFahrenheit: 295.2, hectopascal: 1013.7, toHectopascal: 98765.4,
  kilopascal: 83.17, toKilopascal: 83173.3, inchOfMercury: 29.92, toInchOfMercury: 101325, millimeterOfMercury: 757.3,
  toMillimeterOfMercury: 99999, poundPerSquareInch: 14.7, toPoundPerSquareInch: 101325, foot: 5280, toFoot: 1609.3,
  liter: 3.7, toLiter: 0.0037, micrometer: 7.3, toMicrometer: 7.3e-6, minute: 47, toMinute: 2777,
  perCubicCentimeter: 1234.5, toPerCubicCentimeter: 1.2345e9, percent: 73.1, toPercent: 0.731,
};
const byName = physics as unknown as Readonly<Record<string, (x: number) => number>>;
const unitCases: PhysicsCases = Object.fromEntries(
  Object.entries(conversions).map(([name, sample]) => [name, once(() => byName[name]!(sample))]),
);

const airCases: PhysicsCases = {
  saturationVaporPressure: each([...temperatures, 150, 200, 331.9], physics.saturationVaporPressure),
  saturationVaporPressureIce: each([150, 200, 240, 273.15], physics.saturationVaporPressureIce),
  enhancementFactor: each([6e3, 5e4, 101325, 4e5], (p) => physics.enhancementFactor(280, p)),
  dewPoint: each([0.01, 5, 300, 1500, 18000], physics.dewPoint),
  latentHeatOfVaporization: each(temperatures, physics.latentHeatOfVaporization),
  surfaceTension: each(temperatures, physics.surfaceTension),
  densityOfWater: each(temperatures, physics.densityOfWater),
  saturationPressureInAir: each(temperatures, (T) => physics.saturationPressureInAir(T, 9e4)),
  moistAir: each(temperatures, (temperature) => physics.moistAir({ temperature, pressure: 9e4, relativeHumidity: 0.7 })),
  moistAirOfMixingRatio: each(temperatures, (T) => physics.moistAirOfMixingRatio(T, 9e4, 0.004)),
  entropy: each(airs, physics.entropy),
  expandWithoutCondensation: each(airs, (air) => physics.expandWithoutCondensation(air, 0.8 * air.pressure)),
  expandWithCondensation: each(airs, (air) => physics.expandWithCondensation(air, 0.8 * air.pressure)),
  'expandWithCondensation and back': each(airs, (air) =>
    physics.expandWithCondensation(physics.expandWithCondensation(air, 0.75 * air.pressure), 0.9 * air.pressure)),
  cloudOnset: each(airs, physics.cloudOnset),
};

const heightCases: PhysicsCases = {
  standardAtmosphere: each([-4000, 0, 5000, 11000, 15000, 28000], physics.standardAtmosphere),
  pressureAltitude: each([1e3, 1e4, 5e4, 101325, 1.5e5], physics.pressureAltitude),
  stationPressure: each([-300, 0, 1600, 8848], physics.stationPressure),
  geopotentialAltitude: each([-1000, 0, 5000, 80000], physics.geopotentialAltitude),
  thickness: once(() => physics.thickness({ bottomPressure: 1e5, topPressure: 5e4, virtualTemperature: 268 })),
  liftingCondensationLevel: each(airs, physics.liftingCondensationLevel),
  liftingDepositionLevel: each([cold], physics.liftingDepositionLevel),
  boltonCondensationTemperature: once(() => physics.boltonCondensationTemperature(293.15, 283.15)),
  risingParcel: each(airs, (air) => physics.risingParcel(air, { heights: [0, 300, 900, 1800] })),
  heightOfEqualPressure: each(airs, (air) => physics.heightOfEqualPressure(air, 0.8 * air.pressure)),
  heightOfEqualTemperature: each(airs, (air) => physics.heightOfEqualTemperature(air, air.temperature - 9)),
  cloudBase: each(airs, physics.cloudBase),
};

const nucleationCases: PhysicsCases = {
  kelvinLength: each(temperatures, (T) => physics.kelvinLength(T)),
  kelvinSaturation: each(diameters, (d) => physics.kelvinSaturation(d, 280)),
  kelvinDiameter: each([1.001, 1.2, 4, 15], (S) => physics.kelvinDiameter(S, 280)),
  koehlerSaturation: each(particles, (p) => physics.koehlerSaturation({ ...p, wetDiameter: 3 * p.dryDiameter })),
  criticalSaturation: each(particles, physics.criticalSaturation),
  criticalPoint: each(particles, physics.criticalPoint),
  criticalDryDiameter: each([1.0005, 1.01, 1.4, 4], (saturationRatio) => physics.criticalDryDiameter({ saturationRatio, kappa: 0.3, temperature: 283 })),
  equilibriumDiameter: each(particles, (p) => physics.equilibriumDiameter({ ...p, saturationRatio: 0.95 })),
  homogeneousNucleationRate: each([3.5, 6, 12], (S) => physics.homogeneousNucleationRate(270, S)),
  criticalCluster: each([3.5, 6, 12], (S) => physics.criticalCluster(270, S)),
  homogeneousOnset: each(temperatures, (T) => physics.homogeneousOnset(T)),
  ionLimit: each(temperatures, physics.ionLimit),
  noParticleLimit: each([moist, room], physics.noParticleLimit),
};

const history = [{ time: 0, pressure: 83000 }, { time: 15, pressure: 62000 }, { time: 40, pressure: 62000 }, { time: 42, pressure: 83000 }, { time: 60, pressure: 83000 }];
const smoke = { medianDryDiameter: 1.2e-7, geometricStandardDeviation: 1.7, kappa: 0.2, number: 1e10 };
const salt = { medianDryDiameter: 6e-8, geometricStandardDeviation: 1.5, kappa: 1.28, number: 1e9 };
const drops = [{ diameter: 1e-6 }, { diameter: 4e-7, dryDiameter: 1e-7, kappa: 0.5 }, { diameter: 2e-5 }];
const can = { shape: 'cylinder', volume: 0.003, diameter: 0.14 } as const;
const ball = { shape: 'sphere', volume: 0.003 } as const;
const cloudCycles = [{ time: 600, duration: 60, dropletDiameter: 8e-6 }, { time: 900, duration: 60, liquidWaterContent: 1e-3, activatedFraction: 0.7 }];

const dropletCases: PhysicsCases = {
  growthRate: each(drops, (drop) => physics.growthRate({ ...drop, air: moist })),
  dropletTemperature: each(drops, (drop) => physics.dropletTemperature({ ...drop, air: room, thermalAccommodation: 0.7, condensationCoefficient: 0.3 })),
  condense: once(() => physics.condense({ start: moist, modes: [smoke], pressureHistory: history })),
  'condense with wet walls': once(() =>
    physics.condense({ start: moist, modes: [smoke, salt], pressureHistory: history, classes: 60, wall: { timeConstant: 6, temperature: 295.15, wet: true } })),
  'condense on nothing': once(() => physics.condense({ start: moist, modes: [], pressureHistory: history, outputTimes: [5, 15, 30] })),
  slipCorrection: each(diameters, (d) => physics.slipCorrection(d, { temperature: 280, pressure: 8e4 })),
  settlingVelocity: each(diameters, (d) => physics.settlingVelocity(d, { density: 1300 })),
  diffusionCoefficient: each(diameters, (d) => physics.diffusionCoefficient(d)),
  coagulationCoefficient: each(diameters, (d) => physics.coagulationCoefficient(d, 1e-7)),
  coagulationTime: once(() => physics.coagulationTime(1e12, 1.4e-15)),
  wallLoss: each(diameters, (d) => [physics.wallLoss(d, can, 0.05), physics.wallLoss(d, ball, 0.05)]),
  particleHistory: once(() =>
    physics.particleHistory({ number: 1e11, medianDiameter: 2e-7, geometricStandardDeviation: 1.6, vessel: can, times: [60, 600, 1800, 3600], cloudCycles })),
};

const opticsCases: PhysicsCases = {
  extinctionEfficiency: each([3e-8, 5e-7, 1.7e-6, 2e-5], (diameter) => physics.extinctionEfficiency({ diameter })),
  extinctionCoefficient: each([{ number: 1e9, diameter: 7e-6 }, { liquidWaterContent: 1e-3, effectiveRadius: 6e-7 }], physics.extinctionCoefficient),
  opticalDepth: once(() => physics.opticalDepth(0.3, 0.14)),
  transmittance: each([0, 0.01, 3, 200], physics.transmittance),
  visualRange: once(() => physics.visualRange(0.013, 0.05)),
  visibleContrast: each(['room', 'side', 'front', 'back'] as const, (lighting) => physics.visibleContrast({ opticalDepth: 0.2, lighting, backing: 'black' })),
  coronaRadius: each(['dark', 'bright', 'red'] as const, (feature) => physics.coronaRadius({ dropletDiameter: 1.1e-5, feature, ring: 2 })),
  dropletDiameterFromCorona: each(['dark', 'bright', 'red'] as const, (feature) => physics.dropletDiameterFromCorona(0.06, { feature })),
};

const jarPump = { startPressure: 101325, vesselVolume: 0.003, strokeVolume: 2e-4, deadVolume: 1e-5 };
const opening = { volume: 0.003, area: 3e-6, pressure: 7e4, roomPressure: 101325, temperature: 293 };
const wallHeat = [
  { ...can, pressure: 9e4, temperatureDifference: 6 },
  { ...ball, pressure: 7e4, temperatureDifference: -2, fill: 0.2 },
];
const lesson = [
  { kind: 'pump', to: 6.5e4, duration: 20 },
  { kind: 'hold', duration: 15 },
  { kind: 'vent', duration: 2 },
  { kind: 'particles', number: 1e10 },
  { kind: 'hold', duration: 60 },
  { kind: 'stroke-pump', strokeVolume: 2e-4, strokeTime: 1, strokes: 6 },
  { kind: 'squeeze', volumeChange: -2e-4, duration: 2 },
  { kind: 'wait', duration: 30 },
] as const satisfies readonly face.RunEvent[];
/** Of a made-up vessel: time in s, gauge in Pa, thermometer in K. */
const readings = (
  [
    [0, 0, 294.2], [4, -8e3, 293.6], [8, -16e3, 292.1], [12, -24e3, 290.2], [16, -23.5e3, 289.1], [20, -23.2e3, 289],
    [26, -23e3, 289.4], [34, -22.9e3, 290.4], [44, -22.8e3, 291.5], [60, -22.7e3, 292.8], [80, -22.6e3, 293.6], [100, -22.5e3, 293.9],
  ] as const
).map(([time, gauge, thermometer]) => ({ time, gauge, thermometer }));
const jarAir = physics.moistAir({ temperature: 294.15, pressure: 101325, relativeHumidity: 0.5 });

const vesselCases: PhysicsCases = {
  pumpStrokes: once(() => physics.pumpStrokes({ ...jarPump, strokes: 12 })),
  strokesTo: once(() => physics.strokesTo(jarPump, 6e4)),
  strokeLaw: once(() => physics.strokeLaw(jarPump)),
  compressionStrokes: once(() => physics.compressionStrokes({ ...jarPump, strokes: 5 })),
  steadyPumpPressure: once(() => physics.steadyPumpPressure({ startPressure: 101325, vesselVolume: 0.003, speed: 1e-4, time: 17 })),
  squeezePressure: once(() => physics.squeezePressure({ startPressure: 101325, volume: 0.0015, volumeChange: -2e-4 })),
  gaugeReading: once(() => physics.gaugeReading(7e4, 83000)),
  openingMassFlow: each([0, 5e4, 9e4], (downstreamPressure) =>
    physics.openingMassFlow({ area: 2e-6, upstreamPressure: 101325, downstreamPressure, temperature: 290 })),
  equalizingTime: each([7e4, 1.2e5], (pressure) => physics.equalizingTime({ ...opening, pressure })),
  leakRate: once(() => physics.leakRate({ readings: [0, 60, 120, 180].map((time) => ({ time, pressure: 7e4 + 3.3 * time })), volume: 0.003, roomPressure: 101325 })),
  wallHeatTransferCoefficient: each(wallHeat, physics.wallHeatTransferCoefficient),
  wallTimeConstantOf: each(wallHeat, physics.wallTimeConstantOf),
  simulateRun: once(() =>
    physics.simulateRun({ start: room, pressureHistory: [{ time: 0, pressure: 101325 }, { time: 20, pressure: 8e4 }, { time: 120, pressure: 8e4 }], wallTimeConstant: 6, thermometerTimeConstant: 20 })),
  'simulateRun of a lesson': once(() =>
    physics.simulateRun({
      start: moist,
      vessel: { volume: 0.003, wallTimeConstant: 6, walls: 'wet', leakTimeConstant: 5000, height: 0.2 },
      thermometer: { timeConstant: 15, wallShare: 0.2 }, nuclei: { number: 1e9 }, room: { particles: 1e9 }, events: lesson,
    })),
  fitVessel: once(() => physics.fitVessel(readings, { start: jarAir, holds: [{ from: 16, to: 100 }] })),
  'fitVessel without a hold': once(() => physics.fitVessel(readings, { start: jarAir })),
};

const wall = { pressureDifference: 3e4, diameter: 0.2, wallThickness: 0.004 };
const tube = { ...physics.MATERIALS.polycarbonate, diameter: 0.2, wallThickness: 0.004 };
const pane = { pressureDifference: -2e4, diameter: 0.2, thickness: 0.008, edge: 'supported', poissonRatio: 0.37 } as const;

const wallCases: PhysicsCases = {
  discArea: once(() => physics.discArea(0.13)),
  pressureForce: once(() => physics.pressureForce({ pressureDifference: 2.7e4, area: 0.0133 })),
  hoopStress: once(() => physics.hoopStress(wall)),
  axialStress: once(() => physics.axialStress(wall)),
  sphereStress: once(() => physics.sphereStress(wall)),
  paneStress: once(() => physics.paneStress(pane)),
  paneDeflection: once(() => physics.paneDeflection(pane, 2.3e9)),
  storedEnergy: each([3e4, 2e5], (pressure) => physics.storedEnergy({ volume: 0.003, pressure, surroundings: 101325 })),
  collapsePressure: each([tube, { ...tube, length: 0.4 }, { ...tube, shape: 'sphere' as const }], physics.collapsePressure),
  collapseMargin: once(() => physics.collapseMargin({ ...tube, length: 0.4 }, 3e4)),
};

const uncertain = {
  pressure: { value: 1e5, standardUncertainty: 150, distribution: 'rectangular' },
  temperature: { value: 293, standardUncertainty: 0.3, degreesOfFreedom: 7 },
  humidity: { value: 0.6, standardUncertainty: 0.02, distribution: 'triangular' },
  offset: { value: 0.1, standardUncertainty: 0.02 },
} as const;
const model = (x: Record<keyof typeof uncertain, number>): number => x.offset + (x.humidity * x.temperature ** 2) / Math.sqrt(x.pressure);

const uncertaintyCases: PhysicsCases = {
  rectangular: once(() => physics.rectangular(0.05)),
  triangular: once(() => physics.triangular(0.05)),
  propagate: once(() => physics.propagate(model, uncertain, { probability: 0.99 })),
  propagateMonteCarlo: once(() => physics.propagateMonteCarlo(model, uncertain, { seed: 11, trials: 5000 })),
  randomSource: once(() => {
    const { uniform, normal, student } = physics.randomSource(20261125, 'parity');
    return [uniform(), normal(), student(1), student(7), student(1e5), normal()];
  }),
};

export const physicsCases: PhysicsCases = {
  ...unitCases, ...airCases, ...heightCases, ...nucleationCases, ...dropletCases, ...opticsCases, ...vesselCases, ...wallCases, ...uncertaintyCases,
};
