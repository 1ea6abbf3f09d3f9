/** How the library computes each published row on light in a cloud. */
import { mieSphere } from '../../src/physics/mie.ts';
import {
  coronaRadius,
  dropletDiameterFromCorona,
  extinctionCoefficient,
  extinctionEfficiency,
  opticalDepth,
  transmittance,
  visibleContrast,
  visualRange,
} from '../../src/physics/optics.ts';
import { input, type Evaluator } from './row.ts';

const DEGREE = Math.PI / 180;

export const evaluators: Record<string, Evaluator> = {
  mieExtinction: (inputs) => mieSphere(input(inputs, 'x'), input(inputs, 'm')).extinctionEfficiency,
  mieAsymmetry: (inputs) => mieSphere(input(inputs, 'x'), input(inputs, 'm')).asymmetry,
  extinctionEfficiency: (inputs) =>
    extinctionEfficiency({
      diameter: input(inputs, 'd_um') * 1e-6,
      wavelength: input(inputs, 'wavelength_um') * 1e-6,
      refractiveIndex: input(inputs, 'm'),
    }),
  extinctionAreaOfDrop: (inputs) => extinctionCoefficient({ number: 1, diameter: input(inputs, 'r_um') * 2e-6 }),
  visualRange: (inputs) => visualRange(input(inputs, 'extinction_per_m'), input(inputs, 'threshold')),
  transmittanceOverRange: (inputs) => {
    const extinction = input(inputs, 'extinction_per_m');
    return transmittance(opticalDepth(extinction, visualRange(extinction, input(inputs, 'threshold'))));
  },
  contrastThreshold: () => visibleContrast({ opticalDepth: 0, lighting: 'room', backing: 'black' }).threshold,
  sineTimesDiameterOverWavelength: (inputs) => {
    const feature = input(inputs, 'bright') === 1 ? 'bright' : 'dark';
    return Math.sin(coronaRadius({ dropletDiameter: 2e-5, wavelength: 5e-7, ring: input(inputs, 'ring'), feature })) * 40;
  },
  phaseAtFirstDarkRing: (inputs) => {
    const dropletDiameter = input(inputs, 'd_um') * 1e-6;
    const wavelength = input(inputs, 'wavelength_um') * 1e-6;
    return (Math.PI * dropletDiameter * Math.sin(coronaRadius({ dropletDiameter, wavelength }))) / wavelength;
  },
  brightRing: (inputs) =>
    coronaRadius({
      dropletDiameter: input(inputs, 'd_um') * 1e-6,
      wavelength: input(inputs, 'wavelength_um') * 1e-6,
      ring: input(inputs, 'ring'),
      feature: 'bright',
    }) / DEGREE,
  redRingInMoons: (inputs) =>
    (2 * coronaRadius({ dropletDiameter: input(inputs, 'd_um') * 1e-6, ring: input(inputs, 'ring'), feature: 'red' })) /
    DEGREE / input(inputs, 'moon_deg'),
  dropRadiusFromRedRing: (inputs) =>
    (dropletDiameterFromCorona(input(inputs, 'angle_deg') * DEGREE, { feature: 'red', ring: input(inputs, 'ring') }) / 2) * 1e6,
};
