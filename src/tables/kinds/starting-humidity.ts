/** How humid the vessel starts, and how far it must then be pumped. */
import { toKilopascal, toPercent } from '../../physics/index.ts';
import { columnOf, pointsOf, rowsOfQuantities, withPoints, type TableKind } from '../table-kind.ts';

const columns = [
  columnOf('relativeHumidity', 'startingHumidity', { given: true }),
  columnOf('onsetPressureDrop', 'onsetPressureDrop'),
  columnOf('onsetTemperature', 'onsetTemperature'),
  columnOf('cloudBaseHeight', 'cloudBaseHeight'),
] as const;

export const startingHumidity: TableKind = {
  kind: 'starting-humidity',
  title: 'Starting drier, cloud begins later',
  over: 'humidity',
  listAttribute: 'humidities',
  takes: ['temperature', 'elevation'],
  columns,
  defaultList: () => [0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99],
  rows: rowsOfQuantities('humidity', columns),
  curve: (rows, id) => withPoints({
    id: `${id}-curve`,
    title: 'Pressure drop until cloud can begin',
    description: 'The fall in pressure at which the air becomes saturated, against the relative humidity it starts with.',
    x: { label: 'relative humidity at the start', unit: '%' },
    y: { label: 'pressure drop to saturation', unit: 'kPa' },
    series: [{ label: 'saturation reached', points: pointsOf(rows, { index: 0, fromSi: toPercent }, { index: 1, fromSi: toKilopascal }), stroke: 'solid', accent: true }],
  }),
  method: {
    formula: 'S\\,\\frac{e_s(T_1)}{e_s(T_2)}\\,\\frac{p_2}{p_1} = 1',
    words: 'The drop at which air expanding without droplets just reaches saturation, and the height at which a rising parcel of the same air does.',
  },
  sources: ['murphyKoop', 'wmo8', 'hypsometric'],
};
