import { GAS_CONSTANT_DRY_AIR } from '../../src/physics/constants.ts';
import { moistAir, type MoistAir } from '../../src/physics/moist-air.ts';
import { liter, perCubicCentimeter } from '../../src/physics/units.ts';
import { CRITICAL_PRESSURE_RATIO, openingMassFlow } from '../../src/physics/opening.ts';
import { simulateRun } from '../../src/physics/run.ts';
import type { RunEvent } from '../../src/physics/run-events.ts';
import type { RunInput } from '../../src/physics/run-input.ts';
import type { RunPoint } from '../../src/physics/run-recorder.ts';
import { wallHeatTransferCoefficient, wallTimeConstantOf, type VesselShape } from '../../src/physics/wall-heat.ts';
import { input, temperatureInput, type Evaluator, type Inputs } from './row.ts';

const ROOM = 294.15;
const PRESSURE = 1e5;
const HUMIDITY = 0.97;

const dryAir = (temperature: number, pressure: number): MoistAir => moistAir({ temperature, pressure, relativeHumidity: 0 });
const lowest = (series: readonly RunPoint[], of: (point: RunPoint) => number): number => Math.min(...series.map(of));
const highest = (series: readonly RunPoint[], of: (point: RunPoint) => number): number => Math.max(...series.map(of));
const last = (series: readonly RunPoint[]): RunPoint => series[series.length - 1]!;

/** A wet vessel at a bench, pumped, held for half a minute, and what may follow. */
function benchRun(inputs: Inputs, options: Partial<RunInput> = {}, then: readonly RunEvent[] = []): readonly RunPoint[] {
  return simulateRun({
    start: moistAir({ temperature: ROOM, pressure: PRESSURE, relativeHumidity: HUMIDITY }),
    vessel: { wallTimeConstant: inputs['tauWall_s'] ?? 8, walls: 'wet' },
    thermometer: { timeConstant: inputs['tauThermometer_s'] ?? 45, wallShare: inputs['wallShare'] ?? 0 },
    events: [
      { kind: 'pump', to: PRESSURE - 1000 * input(inputs, 'drop_kPa'), duration: input(inputs, 'pump_s') },
      { kind: 'hold', duration: 30 },
      ...then,
    ],
    interval: 0.1,
    ...options,
  }).series;
}

const nuclei = (inputs: Inputs): { number: number } => ({ number: perCubicCentimeter(input(inputs, 'number_cm3')) });

/** Light lost across a depth by scattering, each droplet taking away twice what falls on it. */
const lightLost = (point: RunPoint, depth: number): number =>
  1 - Math.exp(-2 * Math.PI * (point.dropletDiameter / 2) ** 2 * point.particles * depth);

const standingCylinder = (inputs: Inputs): VesselShape => {
  const volume = liter(input(inputs, 'volume_L'));
  return {
    shape: 'cylinder',
    volume,
    diameter: Math.cbrt((4 * volume) / (Math.PI * input(inputs, 'heightOverDiameter'))),
    pressure: 1000 * input(inputs, 'p_kPa'),
    temperatureDifference: input(inputs, 'difference_K'),
  };
};

const ventedRun = (inputs: Inputs): readonly RunPoint[] =>
  benchRun(inputs, { nuclei: nuclei(inputs) }, [{ kind: 'vent', duration: input(inputs, 'vent_s') }, { kind: 'wait', duration: 30 }]);

export const evaluators: Record<string, Evaluator> = {
  criticalPressureRatio: () => CRITICAL_PRESSURE_RATIO,
  chokedFlowParameter: (inputs) => {
    const temperature = temperatureInput(inputs);
    const upstreamPressure = input(inputs, 'p_Pa');
    const flow = openingMassFlow({ area: 1e-4, dischargeCoefficient: 1, upstreamPressure, downstreamPressure: 0, temperature });
    return (flow * Math.sqrt(GAS_CONSTANT_DRY_AIR * temperature)) / (1e-4 * upstreamPressure);
  },
  chokedOverSubsonicFlow: (inputs) => {
    const flow = (ratio: number): number =>
      openingMassFlow({ area: 1e-4, upstreamPressure: 1e5, downstreamPressure: 1e5 * ratio, temperature: 300 });
    return flow(0) / flow(input(inputs, 'pressureRatio'));
  },
  /** The air that entered, over the energy it brought: what it alone would fill an evacuated tank with */
  fillingTemperature: (inputs) => {
    const supply = input(inputs, 'supply_K');
    const start = dryAir(supply, 100 * input(inputs, 'p1_hPa'));
    const room = { pressure: 100 * input(inputs, 'p2_hPa'), temperature: supply, relativeHumidity: 0 };
    const end = last(simulateRun({ start, room, events: [{ kind: 'vent', duration: 1 }] }).series);
    return (end.pressure - start.pressure) / (end.pressure / end.gasTemperature - start.pressure / start.temperature);
  },
  adiabaticRun: (inputs) => {
    const start = dryAir(temperatureInput(inputs), 100 * input(inputs, 'p1_hPa'));
    const to = { time: input(inputs, 'time_s'), pressure: 100 * input(inputs, 'p2_hPa') };
    return last(simulateRun({ start, pressureHistory: [{ time: 0, pressure: start.pressure }, to] }).series).gasTemperature;
  },
  saturatedRun: (inputs) => {
    const start = moistAir({ temperature: temperatureInput(inputs), pressure: 100 * input(inputs, 'p1_hPa'), relativeHumidity: 1 });
    const pump = { kind: 'pump', to: 100 * input(inputs, 'p2_hPa'), duration: 600 } as const;
    return last(simulateRun({ start, nuclei: nuclei(inputs), pump }).series).gasTemperature;
  },
  wallCoefficient: (inputs) => wallHeatTransferCoefficient(standingCylinder(inputs)),
  wallTime: (inputs) => wallTimeConstantOf(standingCylinder(inputs)),
  thermometerFall: (inputs) => ROOM - lowest(benchRun(inputs, {}, [{ kind: 'hold', duration: 60 }]), (point) => point.thermometerReading),
  gasOverThermometerFall: (inputs) => {
    const series = benchRun(inputs, {}, [{ kind: 'hold', duration: 60 }]);
    return (ROOM - lowest(series, (point) => point.gasTemperature)) / (ROOM - lowest(series, (point) => point.thermometerReading));
  },
  /** Strokes begun when the cloud is seen */
  strokesToCloud: (inputs) => {
    const strokeTime = input(inputs, 'strokeTime_s');
    const { series } = simulateRun({
      start: moistAir({ temperature: ROOM, pressure: PRESSURE, relativeHumidity: HUMIDITY }),
      vessel: { volume: liter(input(inputs, 'volume_L')), wallTimeConstant: 8, walls: 'wet' },
      nuclei: nuclei(inputs),
      pump: { kind: 'stroke-pump', strokeVolume: liter(input(inputs, 'stroke_L')), strokeTime, strokes: 10 },
      interval: 0.1,
    });
    const seen = series.find((point) => lightLost(point, input(inputs, 'depth_m')) > input(inputs, 'lightLost'));
    return seen === undefined ? Infinity : Math.ceil(seen.time / strokeTime);
  },
  lightLostWithoutParticles: (inputs) => highest(benchRun(inputs), (point) => lightLost(point, 0.15)),
  /** s after the valve is opened until a hundredth of the cloud's water is left */
  clearingTime: (inputs) => {
    const series = ventedRun(inputs);
    const opened = input(inputs, 'pump_s') + 30;
    const most = highest(series, (point) => point.liquidWaterContent);
    const clear = series.find((point) => point.time > opened && point.liquidWaterContent < most / 100);
    return clear === undefined ? Infinity : clear.time - opened;
  },
  warmingOnVenting: (inputs) => highest(ventedRun(inputs), (point) => point.gasTemperature) - ROOM,
  /** s after pumping until a hundredth of the cloud's water is left */
  cloudLifeDryWalls: (inputs) => {
    const series = benchRun(inputs, { nuclei: nuclei(inputs), vessel: { wallTimeConstant: 8, walls: 'dry' } });
    const stopped = input(inputs, 'pump_s');
    const most = highest(series, (point) => point.liquidWaterContent);
    const gone = series.find((point) => point.time > stopped && point.liquidWaterContent < most / 100);
    return gone === undefined ? Infinity : gone.time - stopped;
  },
  isothermalHumidity: (inputs) =>
    last(
      simulateRun({
        start: moistAir({ temperature: ROOM, pressure: PRESSURE, relativeHumidity: input(inputs, 'humidity') }),
        vessel: { wallTimeConstant: 0 },
        pump: { kind: 'pump', to: PRESSURE - 1000 * input(inputs, 'drop_kPa'), duration: 600 },
      }).series,
    ).saturationRatio,
};
