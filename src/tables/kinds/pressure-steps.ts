/** Pressure drop by pressure drop: gauge, both end states, and the heights at which the sky does the same. */
import { CURVE_TEXTS } from '../../texts/index.ts';
import { axisUnit } from '../display.ts';
import { columnOf, pointsOf, roundSteps, rowsOfQuantities, withPoints, type TableKind } from '../table-kind.ts';

const columns = [
  columnOf('pressureDrop', 'pressureDrop', { given: true }),
  columnOf('gauge', 'gaugeAtDrop', { given: true }),
  columnOf('absolutePressure', 'absolutePressure'),
  columnOf('temperatureClear', 'temperatureClear'),
  columnOf('saturationRatioClear', 'saturationRatioClear'),
  columnOf('temperatureCloudy', 'temperatureCloudy'),
  columnOf('cloudWater', 'cloudWater'),
  columnOf('altitudeSamePressure', 'altitudeSamePressure'),
  columnOf('parcelHeightSamePressure', 'parcelHeightSamePressure'),
  columnOf('parcelRiseSameCooling', 'parcelRiseSameCooling'),
] as const;

export const pressureSteps: TableKind = {
  kind: 'pressure-steps',
  over: 'drop',
  listAttribute: 'drops',
  takes: ['humidity', 'temperature', 'elevation'],
  columns,
  defaultList: (state) => roundSteps(state.plannedDrop, 4),
  rows: rowsOfQuantities('drop', columns),
  curve: (rows, id, style) => {
    const said = CURVE_TEXTS[style.language].pressureSteps;
    const pressure = axisUnit('pressure', style);
    const temperature = axisUnit('temperature', style);
    const x = { index: 0, fromSi: pressure.fromSi };
    return withPoints({
      id: `${id}-curve`,
      title: said.title,
      description: said.description,
      x: { label: said.x, unit: pressure.symbol },
      y: { label: said.y, unit: temperature.symbol },
      series: [
        { label: said.clear, points: pointsOf(rows, x, { index: 3, fromSi: temperature.fromSi }), stroke: 'dashed' },
        { label: said.cloudy, points: pointsOf(rows, x, { index: 5, fromSi: temperature.fromSi }), stroke: 'solid', accent: true },
      ],
    });
  },
  formula: () => 'T_2 = T_1\\left(\\frac{p_2}{p_1}\\right)^{R/c_p},\\quad S = \\frac{e_1}{e_s(T_2)}\\cdot\\frac{p_2}{p_1}',
  sources: ['murphyKoop', 'wmo8', 'emanuel', 'iso2533'],
};
