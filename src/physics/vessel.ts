/** The vessel: pumping, leaks, the heat of its walls and whole runs. */
export * from './leak.ts';
export * from './opening.ts';
export * from './pump.ts';
export { simulateRun, type Run } from './run.ts';
export type * from './run-events.ts';
export type { RunInput, RunNuclei, RunRoom, RunThermometer, RunVessel } from './run-input.ts';
export type { RunPoint } from './run-recorder.ts';
export * from './wall-heat.ts';
