/** The same lesson in a school higher up. */
import { columnOf, rowsOfQuantities, type TableKind } from '../table-kind.ts';

const columns = [
  columnOf('elevation', 'elevation', { given: true }),
  columnOf('stationPressure', 'stationPressure'),
  columnOf('gaugeSameCooling', 'gaugeSameCooling'),
  columnOf('onsetPressureDrop', 'onsetPressureDrop'),
] as const;

export const elevations: TableKind = {
  kind: 'elevations',
  title: 'The same cooling at another elevation',
  over: 'elevation',
  listAttribute: 'elevations',
  takes: ['drop', 'humidity', 'temperature'],
  columns,
  defaultList: () => [0, 500, 1000, 1600, 2500, 3500],
  rows: rowsOfQuantities('elevation', columns),
  method: {
    formula: '\\frac{p_2}{p_1} = \\left(\\frac{T_2}{T_1}\\right)^{c_p/R}',
    words:
      'Pressure by elevation is that of the standard atmosphere; the weather moves it by a percent or so. Cooling depends on the ratio of ' +
      'pressures, so that higher up, where there is less pressure to begin with, a smaller gauge reading does the same.',
  },
  sources: ['iso2533', 'murphyKoop'],
};
