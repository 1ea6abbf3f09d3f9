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
  { key: 'dryDiameter', label: 'dryDiameter', dimension: 'diameter', units: UNITS_OF.diameter, given: true, spans: true, model: share(0.07) },
  { key: 'criticalSupersaturation', label: 'supersaturationNeeded', dimension: 'fraction', units: UNITS_OF.fraction, spans: true, model: share(0.1) },
  columnOfWords('active', 'becomesDrop', ['yes', 'no']),
];

export const particleSizes: TableKind = {
  kind: 'particle-sizes',
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
    return [{ at: smallest, mark: 'smallest' }];
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
  formula: () => 'S(D) = \\frac{D^3 - d^3}{D^3 - d^3(1 - \\kappa)}\\,\\exp\\frac{4\\sigma M}{R\\,T\\rho\\,D}',
  sources: ['pettersKreidenweis', 'pruppacherKlett'],
};
