/** One gauge reading in every unit that gauges are sold with, and absolute for the room. */
import { columnOf, gaugeSteps, rowsOfQuantities, type TableKind } from '../table-kind.ts';

const columns = [
  columnOf('gauge', 'gaugeReading', { given: true, units: ['kPa'], beside: ['inHg', 'mmHg', 'psi', 'mbar'] }),
  columnOf('absolutePressure', 'absoluteAtReading', { units: ['kPa'], beside: ['inHg'] }),
] as const;

export const gaugeReadings: TableKind = {
  kind: 'gauge-readings',
  over: 'reading',
  listAttribute: 'readings',
  takes: ['elevation'],
  columns,
  defaultList: gaugeSteps,
  rows: rowsOfQuantities('reading', columns),
  formula: ({ room, gauge }) => `p = p_{\\mathrm{${room}}} + p_{\\mathrm{${gauge}}}`,
  sources: ['nist811'],
};
