/** A room, a vessel and particles for tests of tables: chosen for round numbers, not taken from a kit. */
import type { Conditions } from '../../src/tables/index.ts';

const exact = (value: number) => ({ value, uncertainty: 0 });

export const conditions: Conditions = {
  roomTitle: 'Test room',
  inputs: {
    roomTemperature: { value: 293.15, uncertainty: 0.3 },
    roomPressure: { value: 100_000, uncertainty: 100 },
    roomHumidity: { value: 0.5, uncertainty: 0.03 },
    startTemperatureDifference: exact(0),
    startHumidity: { value: 0.97, uncertainty: 0.01 },
    gaugeError: { value: 0, uncertainty: 300 },
    formulaError: { value: 0, uncertainty: 0.003 },
    weather: { value: 0, uncertainty: 800 },
  },
  plannedDrop: 20_000,
  apparatus: {
    title: 'Cylinder',
    vessel: {
      shape: 'cylinder', volume: 0.005, diameter: 0.16, wallThickness: 0.005, material: 'polycarbonate',
      lowestGauge: -90_000, highestGauge: 10_000, wallTimeConstant: 7,
    },
    source: { kind: 'stroke-pump', strokeVolume: 2e-4, deadVolume: 0, strokeTime: 1.5, ultimatePressure: 10_000 },
    gauge: { kind: 'dial', lowestGauge: -100_000, highestGauge: 0, resolution: 1000, unit: 'kPa' },
    thermometer: { kind: 'stem', resolution: 0.5, timeConstant: 45, wallShare: 0.15, position: 'on the axis' },
    light: { kind: 'lamp', from: 'side' },
    backing: 'black card',
    valve: 'one valve',
  },
  particles: [
    { id: 'salt', title: 'Salt', dryDiameter: 1e-7, spread: 1.6, kappa: 0.61, number: 1e10 },
    { id: 'smoke', title: 'Smoke', dryDiameter: 1.5e-7, spread: 1.8, kappa: 0.1, number: 1e11 },
  ],
};

/** The same with another source of pressure. */
export const withSource = (source: Conditions['apparatus']['source']): Conditions => ({ ...conditions, apparatus: { ...conditions.apparatus, source } });

/** The same with every input exact. */
export const certain: Conditions = {
  ...conditions,
  inputs: Object.fromEntries(Object.entries(conditions.inputs).map(([name, { value }]) => [name, exact(value)])) as unknown as Conditions['inputs'],
};
