/** A real parcel of air on its way up: clear below its cloud base, cloudy above. */
import { cloudBase, toCelsius } from '../../physics/index.ts';
import { CURVE_TEXTS } from '../../texts/index.ts';
import { parcelsAt, risingAir, stateAt } from '../air.ts';
import { answered } from '../answered.ts';
import { columnOf, pointsOf, rowsOfQuantities, withPoints, type TableKind } from '../table-kind.ts';

const columns = [
  columnOf('height', 'parcelHeight', { given: true }),
  columnOf('pressure', 'parcelPressure'),
  columnOf('temperature', 'parcelTemperature'),
  columnOf('relativeHumidity', 'parcelHumidity'),
  columnOf('cloudWater', 'parcelCloudWater'),
] as const;

export const risingParcelTable: TableKind = {
  kind: 'rising-parcel',
  over: 'height',
  listAttribute: 'heights',
  takes: ['air', 'humidity', 'temperature', 'elevation'],
  columns,
  defaultList: () => [0, 500, 1000, 1500, 2000, 2500, 3000],
  marked: (state, at) => [{ at: cloudBase(risingAir(stateAt(state, at), at.air)).height, mark: 'cloudBase' }],
  rows: (state, at, list) => {
    answered(() => parcelsAt(stateAt(state, at), list, at.air).length); // one ascent for all; heights without an answer are told one by one
    return rowsOfQuantities('height', columns)(state, at, list);
  },
  curve: (rows, id, language) => {
    const said = CURVE_TEXTS[language].risingParcel;
    return withPoints({
      id: `${id}-curve`,
      title: said.title,
      description: said.description,
      x: { label: said.x, unit: 'm' },
      y: { label: said.y, unit: '°C' },
      series: [{ label: said.parcel, points: pointsOf(rows, { index: 0, fromSi: (h) => h }, { index: 2, fromSi: toCelsius }), stroke: 'solid', accent: true }],
    });
  },
  formula: () => '\\mathrm{d}z = -\\frac{R\\,T}{g}\\,\\frac{\\mathrm{d}p}{p}',
  sources: ['murphyKoop', 'wmo8', 'emanuel', 'hypsometric'],
};
