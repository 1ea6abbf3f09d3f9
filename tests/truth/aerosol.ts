/** How the library computes each published row on single particles in air. */
import {
  coagulationCoefficient,
  coagulationTime,
  diffusionCoefficient,
  settlingVelocity,
  slipCorrection,
  wallLoss,
  type ParticleVessel,
} from '../../src/physics/aerosol.ts';
import { STANDARD_GRAVITY } from '../../src/physics/constants.ts';
import { input, type Evaluator, type Inputs } from './row.ts';

const air = (inputs: Inputs) => ({ temperature: input(inputs, 'T_K'), pressure: input(inputs, 'p_Pa') });
const diameter = (inputs: Inputs): number => input(inputs, 'd_um') * 1e-6;
const coagulation = (inputs: Inputs): number =>
  coagulationCoefficient(input(inputs, 'd1_um') * 1e-6, input(inputs, 'd2_um') * 1e-6, air(inputs));

function lossIn(vessel: ParticleVessel, inputs: Inputs): number {
  const particle = { ...air(inputs), density: input(inputs, 'density') };
  const loss = wallLoss(diameter(inputs), vessel, input(inputs, 'eddy_per_s'), particle);
  return loss.settling + loss.diffusion;
}

export const evaluators: Record<string, Evaluator> = {
  slipCorrection: (inputs) => slipCorrection(diameter(inputs), air(inputs)),
  settlingVelocity: (inputs) => settlingVelocity(diameter(inputs), air(inputs)),
  relaxationTime: (inputs) => settlingVelocity(diameter(inputs), air(inputs)) / STANDARD_GRAVITY,
  diffusionCoefficient: (inputs) => diffusionCoefficient(diameter(inputs), air(inputs)),
  coagulationCoefficient: (inputs) => coagulation(inputs) * 1e6,
  halfCoagulationCoefficient: (inputs) => coagulation(inputs) / 2,
  coagulationTime: (inputs) => coagulationTime(input(inputs, 'number_per_m3'), input(inputs, 'K_m3s')) / 3600,
  wallLossOfSphere: (inputs) =>
    lossIn({ shape: 'sphere', volume: (4 / 3) * Math.PI * input(inputs, 'radius_m') ** 3 }, inputs),
  wallLossOfCylinder: (inputs) => {
    const size = input(inputs, 'height_and_diameter_m');
    return lossIn({ shape: 'cylinder', volume: (Math.PI / 4) * size ** 3, diameter: size }, inputs);
  },
};
