/** Which particles become drops: size by size. */
import { criticalDryDiameter, criticalSaturation } from '../../physics/index.ts';
import { onset, stateAt } from '../air.ts';
import { answered } from '../answered.ts';
import { cloudAt, particlesOf } from '../cloud.ts';
import { UNITS_OF } from '../display.ts';
import { share } from '../quantity-kind.ts';
import { columnOfWords, type Column, type TableKind } from '../table-kind.ts';

const columns: readonly Column[] = [
  // A marked size follows from the saturation reached, which is known within a tenth; a size goes with its power of two thirds.
  { key: 'dryDiameter', label: 'dry diameter', dimension: 'diameter', units: UNITS_OF.diameter, given: true, spans: true, model: share(0.07) },
  { key: 'criticalSupersaturation', label: 'supersaturation needed', dimension: 'fraction', units: UNITS_OF.fraction, spans: true, model: share(0.1) },
  columnOfWords('active', 'becomes a drop', ['yes', 'no']),
];

export const particleSizes: TableKind = {
  kind: 'particle-sizes',
  title: 'Which particles become drops',
  over: 'diameter',
  listAttribute: 'diameters',
  takes: ['drop', 'particles', 'number', 'humidity', 'temperature', 'elevation'],
  columns,
  defaultList: () => [0.01e-6, 0.02e-6, 0.05e-6, 0.1e-6, 0.2e-6, 0.5e-6, 1e-6],
  varies: [],
  marked: (kitState, at) => {
    const state = stateAt(kitState, at);
    const { kappa } = particlesOf(state, at.particles);
    const { peakSaturationRatio } = cloudAt(state, at.drop ?? state.plannedDrop, at.number, at.particles);
    if (peakSaturationRatio <= 1) return [];
    const smallest = criticalDryDiameter({ saturationRatio: peakSaturationRatio, kappa, temperature: onset(state).temperature });
    return [{ at: smallest, mark: 'smallest that does' }];
  },
  rows: (kitState, at, list) => {
    const state = stateAt(kitState, at);
    const needed = (dryDiameter: number): number =>
      criticalSaturation({ dryDiameter, kappa: particlesOf(state, at.particles).kappa, temperature: onset(state).temperature }) - 1;
    const reached = answered(() => cloudAt(state, at.drop ?? state.plannedDrop, at.number, at.particles).peakSaturationRatio - 1);
    return list.map((dryDiameter) => {
      const supersaturation = answered(() => needed(dryDiameter));
      // The marked size needs just what was reached, up to rounding.
      return [dryDiameter, supersaturation, supersaturation === null || reached === null ? null : supersaturation <= reached * (1 + 1e-6)];
    });
  },
  method: {
    formula: 'S(D) = \\frac{D^3 - d^3}{D^3 - d^3(1 - \\kappa)}\\,\\exp\\frac{4\\sigma M}{R\\,T\\rho\\,D}',
    words:
      'A particle of dry diameter d becomes a drop when the saturation ratio passes the highest point of this curve over the wet diameter D; κ says how ' +
      'readily its substance takes up water. The saturation that is reached follows from droplets that grow while the kit’s pump runs, on the kit’s ' +
      'own number and sizes of particles, without the walls’ help. Number and κ are estimates: the figures are good to about a tenth.',
  },
  sources: ['pettersKreidenweis', 'pruppacherKlett'],
};
