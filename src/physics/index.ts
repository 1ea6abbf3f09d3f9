/**
 * The physics library: its public names, one module a block. What is not named here is internal, and what is named
 * here counts toward the weight that tests/physics/bundle.test.ts holds down.
 */
export * from './units.ts';
export { STANDARD_PRESSURE } from './constants.ts';
export {
  dewPoint, enhancementFactor, latentHeatOfVaporization, saturationVaporPressure, saturationVaporPressureIce,
} from './saturation.ts';
export { surfaceTension } from './water.ts';
export { moistAir, moistAirOfMixingRatio, type MoistAir } from './moist-air.ts';
export { cloudOnset, expandWithCondensation, expandWithoutCondensation, type CloudOnset, type CloudyAir } from './expansion.ts';
export { pressureAltitude, standardAtmosphere, stationPressure, thickness, type StandardAtmosphere } from './atmosphere.ts';
export {
  cloudBase, heightOfEqualPressure, heightOfEqualTemperature, liftingCondensationLevel, risingParcel, type LiftingLevel, type ParcelState,
} from './parcel.ts';
export {
  criticalDryDiameter, criticalSaturation, equilibriumDiameter, homogeneousNucleationRate, homogeneousOnset, ionLimit,
  kelvinDiameter, koehlerSaturation, noParticleLimit,
  type DryParticle, type NucleationLimit, type NucleationProperties,
} from './nucleation.ts';
export {
  condense, growthRate,
  type AerosolMode, type Condensation, type CondensationPoint, type CondensationRun, type DropletSize, type GrowingDroplet,
  type PressurePoint, type Wall,
} from './droplets.ts';
export {
  coagulationCoefficient, settlingVelocity, slipCorrection, type ParticleInAir, type ParticleVessel, type SurroundingAir,
} from './aerosol.ts';
export {
  particleHistory, type CloudCycle, type ParticleHistoryInput, type ParticleLoss, type ParticleState,
} from './particle-history.ts';
export type { ParticleMode } from './particle-classes.ts';
export {
  coronaRadius, extinctionCoefficient, extinctionEfficiency, opticalDepth, transmittance, visibleContrast,
  type Backing, type CloudOfDroplets, type Lighting, type PerMeter, type RingFeature, type RingOfDroplets, type Visibility,
} from './optics.ts';
export { leakRate, type HoldReading, type Leak } from './leak.ts';
export { gaugeReading, pumpStrokes, strokesTo, type Stroke, type StrokePump } from './pump.ts';
export { wallTimeConstantOf, type VesselShape } from './wall-heat.ts';
export { simulateRun, type Run } from './run.ts';
export type * from './run-events.ts';
export type { RunInput, RunNuclei, RunRoom, RunThermometer, RunVessel } from './run-input.ts';
export type { RunPoint } from './run-recorder.ts';
export {
  collapseMargin, discArea, hoopStress, pressureForce, sphereStress, storedEnergy,
  type Material, type OutsideLoadedWall, type SquareMeter, type ThinWall,
} from './walls.ts';
export { fitVessel, type FitOptions, type FitResidual, type FittedConstant, type FittedValue, type VesselFit, type VesselReading } from './fit.ts';
export { rectangular, type Distribution, type EvaluationType, type UncertainInput } from './uncertain-input.ts';
export { propagate, type BudgetRow, type Correlation, type Propagation } from './uncertainty.ts';
export { propagateMonteCarlo, type MonteCarloPropagation } from './monte-carlo.ts';
export { randomSource, type RandomSource } from './random.ts';
export { ENGINE_VERSION } from './version.ts';
