/** The same lesson in a school higher up. */
import { toKilopascal } from '../../physics/index.ts';
import { columnOf, pointsOf, rowsOfQuantities, withPoints, type TableKind } from '../table-kind.ts';

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
  curve: (rows, id) => withPoints({
    id: `${id}-curve`,
    title: 'Gauge for the same cooling',
    description: 'Gauge reading that cools the air equally far, against the elevation of the school: the higher the school, the smaller the reading.',
    x: { label: 'elevation of the school', unit: 'm' },
    y: { label: 'gauge', unit: 'kPa' },
    series: [{ label: 'same cooling', points: pointsOf(rows, { index: 0, fromSi: (height) => height }, { index: 2, fromSi: toKilopascal }), stroke: 'solid', accent: true }],
  }),
  method: {
    formula: '\\frac{p_2}{p_1} = \\left(\\frac{T_2}{T_1}\\right)^{c_p/R}',
    words:
      'Pressure by elevation is that of the standard atmosphere; the weather moves it by a percent or so. Cooling depends on the ratio of ' +
      'pressures, so that higher up, where there is less pressure to begin with, a smaller gauge reading does the same.',
  },
  sources: ['iso2533', 'murphyKoop'],
};
