/** What the air outside does to the vessel, and how far that is from its maker's rating. */
import { stateAt } from '../air.ts';
import { startsAbove } from '../release.ts';
import { columnOf, gaugeSteps, rowsOfQuantities, type TableKind } from '../table-kind.ts';

const columns = [
  columnOf('lidForce', 'lidForce'),
  columnOf('wallStress', 'wallStress'),
  columnOf('storedEnergy', 'storedEnergy'),
  columnOf('ratingUsed', 'ratingUsed'),
  columnOf('ratingMargin', 'ratingMargin'),
] as const;

const rowsAtDrop = rowsOfQuantities('drop', columns);

export const wallForces: TableKind = {
  kind: 'wall-forces',
  over: 'reading',
  listAttribute: 'readings',
  takes: ['elevation'],
  columns: [columnOf('pressureDifference', 'gaugeReading', { label: 'insideLessOutside', given: true }), ...columns],
  defaultList: gaugeSteps,
  marked: ({ apparatus }) => [
    startsAbove(apparatus)
      ? { at: apparatus.vessel.highestGauge, mark: 'highestRated' }
      : { at: apparatus.vessel.lowestGauge, mark: 'lowestRated' },
  ],
  rows: (kitState, at, list) => {
    const state = stateAt(kitState, at);
    const fromStart = state.startPressure - state.roomPressure;
    const cells = rowsAtDrop(state, {}, list.map((reading) => fromStart - reading));
    return list.map((reading, i) => [reading, ...cells[i]!]);
  },
  formula: ({ cylinder, sphere }) => `F = \\Delta p\\,\\frac{\\pi d^2}{4},\\quad \\sigma = \\frac{\\Delta p\\,d}{2\\,s}\\ \\text{${cylinder}},\\quad \\frac{\\Delta p\\,d}{4\\,s}\\ \\text{${sphere}}`,
  sources: ['youngBudynas', 'baker'],
};
