/** How humid the vessel starts, and how far it must then be pumped. */
import { toPercent } from '../../physics/index.ts';
import { CURVE_TEXTS } from '../../texts/index.ts';
import { axisUnit } from '../display.ts';
import { columnOf, pointsOf, rowsOfQuantities, withPoints, type TableKind } from '../table-kind.ts';

const columns = [
  columnOf('relativeHumidity', 'startingHumidity', { given: true }),
  columnOf('onsetPressureDrop', 'onsetPressureDrop'),
  columnOf('onsetTemperature', 'onsetTemperature'),
  columnOf('cloudBaseHeight', 'cloudBaseHeight'),
] as const;

export const startingHumidity: TableKind = {
  kind: 'starting-humidity',
  over: 'humidity',
  listAttribute: 'humidities',
  takes: ['temperature', 'elevation'],
  columns,
  defaultList: () => [0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99],
  rows: rowsOfQuantities('humidity', columns),
  curve: (rows, id, style) => {
    const said = CURVE_TEXTS[style.language].startingHumidity;
    const pressure = axisUnit('pressure', style);
    return withPoints({
      id: `${id}-curve`,
      title: said.title,
      description: said.description,
      x: { label: said.x, unit: '%' },
      y: { label: said.y, unit: pressure.symbol },
      series: [{ label: said.reached, points: pointsOf(rows, { index: 0, fromSi: toPercent }, { index: 1, fromSi: pressure.fromSi }), stroke: 'solid', accent: true }],
    });
  },
  formula: () => 'S\\,\\frac{e_s(T_1)}{e_s(T_2)}\\,\\frac{p_2}{p_1} = 1',
  sources: ['murphyKoop', 'wmo8', 'hypsometric'],
};
