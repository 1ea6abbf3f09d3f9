/** The same lesson in a school higher up. */
import { CURVE_TEXTS } from '../../texts/index.ts';
import { axisUnit } from '../display.ts';
import { columnOf, pointsOf, rowsOfQuantities, withPoints, type TableKind } from '../table-kind.ts';

const columns = [
  columnOf('elevation', 'elevation', { given: true }),
  columnOf('stationPressure', 'stationPressure'),
  columnOf('gaugeSameCooling', 'gaugeSameCooling'),
  columnOf('onsetPressureDrop', 'onsetPressureDrop'),
] as const;

export const elevations: TableKind = {
  kind: 'elevations',
  over: 'elevation',
  listAttribute: 'elevations',
  takes: ['drop', 'humidity', 'temperature'],
  columns,
  defaultList: () => [0, 500, 1000, 1600, 2500, 3500],
  rows: rowsOfQuantities('elevation', columns),
  curve: (rows, id, style) => {
    const said = CURVE_TEXTS[style.language].elevations;
    const height = axisUnit('height', style);
    const pressure = axisUnit('pressure', style);
    return withPoints({
      id: `${id}-curve`,
      title: said.title,
      description: said.description,
      x: { label: said.x, unit: height.symbol },
      y: { label: said.y, unit: pressure.symbol },
      series: [{ label: said.same, points: pointsOf(rows, { index: 0, fromSi: height.fromSi }, { index: 2, fromSi: pressure.fromSi }), stroke: 'solid', accent: true }],
    });
  },
  formula: () => '\\frac{p_2}{p_1} = \\left(\\frac{T_2}{T_1}\\right)^{c_p/R}',
  sources: ['iso2533', 'murphyKoop'],
};
