/** The physics library: the public names, one module a block. What is not named here is internal. */
export * from './units.ts';
export * from './constants.ts';
export * from './saturation.ts';
export { densityOfWater, surfaceTension } from './water.ts';
export { moistAir, moistAirOfMixingRatio, saturationPressureInAir, type MoistAir } from './moist-air.ts';
export * from './expansion.ts';
export * from './atmosphere.ts';
export * from './parcel.ts';
export * from './nucleation.ts';
export {
  condense, dropletTemperature, growthRate,
  type AerosolMode, type Condensation, type CondensationPoint, type CondensationRun, type DropletSize, type GrowingDroplet,
  type PressurePoint, type Wall,
} from './droplets.ts';
export {
  coagulationCoefficient, coagulationTime, diffusionCoefficient, settlingVelocity, slipCorrection, wallLoss,
  type ParticleInAir, type ParticleVessel, type SurroundingAir, type WallLoss,
} from './aerosol.ts';
export { type ParticleMode } from './particle-classes.ts';
export * from './particle-history.ts';
export * from './optics.ts';
export * from './vessel.ts';
export * from './walls.ts';
export { fitVessel, type FitOptions, type FitResidual, type FittedConstant, type FittedValue, type VesselFit, type VesselReading } from './fit.ts';
export * from './uncertainty.ts';
export * from './version.ts';
