/** The physics library: the public names, one module a line. */
export * from './units.ts';
export * from './constants.ts';
export * from './saturation.ts';
export * from './moist-air.ts';
export * from './expansion.ts';
export * from './atmosphere.ts';
export * from './parcel.ts';
export * from './nucleation.ts';
export * from './vessel.ts';
export * from './wall-heat.ts';
export * from './version.ts';
