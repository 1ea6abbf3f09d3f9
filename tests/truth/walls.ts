/** Computes the rows of walls.json. */
import { collapsePressure, MATERIALS, paneDeflection, paneStress, type Pane } from '../../src/physics/walls.ts';
import { poundPerSquareInch, toPoundPerSquareInch } from '../../src/physics/units.ts';
import { input, type Evaluator } from './row.ts';

const inch = (length: number): number => length * 0.0254;

const pane = (edge: Pane['edge'], poissonRatio: number): Pane => ({
  pressureDifference: 1e5,
  diameter: 0.2,
  thickness: 0.01,
  edge,
  poissonRatio,
});

export const evaluators: Record<string, Evaluator> = {
  collapsePressurePsi: (i) => {
    const wall = {
      diameter: inch(input(i, 'D_in')),
      wallThickness: inch(input(i, 't_in')),
      youngsModulus: poundPerSquareInch(input(i, 'E_psi')),
      poissonRatio: input(i, 'nu'),
    };
    const length = inch(input(i, 'L_in'));
    return toPoundPerSquareInch(collapsePressure(length === 0 ? wall : { ...wall, length }));
  },
  sphereCollapseCoefficient: (i) =>
    collapsePressure({ shape: 'sphere', diameter: 2, wallThickness: 0.01, youngsModulus: 1e11, poissonRatio: input(i, 'nu') }) /
    (1e11 * 0.01 ** 2),
  paneDeflectionMicrometers: (i) =>
    paneDeflection(
      {
        pressureDifference: input(i, 'p_Pa'),
        diameter: 2 * input(i, 'r_m'),
        thickness: input(i, 'h_m'),
        edge: 'clamped',
        poissonRatio: input(i, 'nu'),
      },
      input(i, 'E_Pa'),
    ) * 1e6,
  paneStressCoefficient: (i) => paneStress(pane(input(i, 'clamped') === 1 ? 'clamped' : 'supported', input(i, 'nu'))) / (1e5 * 100),
  supportedOverClamped: (i) =>
    paneDeflection(pane('supported', input(i, 'nu')), 1e10) / paneDeflection(pane('clamped', input(i, 'nu')), 1e10),
  ...Object.fromEntries(
    Object.entries(MATERIALS).map(([name, material]) => [`modulus-${name}`, () => material.youngsModulus / 1e9]),
  ),
};
