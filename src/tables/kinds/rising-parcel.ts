/** A real parcel of air on its way up: clear below its cloud base, cloudy above. */
import { cloudBase, toCelsius } from '../../physics/index.ts';
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
  title: 'The same air, rising',
  over: 'height',
  listAttribute: 'heights',
  takes: ['air', 'humidity', 'temperature', 'elevation'],
  columns,
  defaultList: () => [0, 500, 1000, 1500, 2000, 2500, 3000],
  marked: (state, at) => [{ at: cloudBase(risingAir(stateAt(state, at), at.air)).height, mark: 'cloud base' }],
  rows: (state, at, list) => {
    answered(() => parcelsAt(stateAt(state, at), list, at.air).length); // one ascent for all; heights without an answer are told one by one
    return rowsOfQuantities('height', columns)(state, at, list);
  },
  curve: (rows, id) => withPoints({
    id: `${id}-curve`,
    title: 'Temperature of the rising parcel',
    description: 'Temperature of the parcel against its height above the room; above the cloud base it cools more slowly, because vapor that condenses gives off heat.',
    x: { label: 'height above the room', unit: 'm' },
    y: { label: 'temperature', unit: '°C' },
    series: [{ label: 'parcel', points: pointsOf(rows, { index: 0, fromSi: (h) => h }, { index: 2, fromSi: toCelsius }), stroke: 'solid', accent: true }],
  }),
  method: {
    formula: '\\mathrm{d}z = -\\frac{R\\,T}{g}\\,\\frac{\\mathrm{d}p}{p}',
    words:
      'The parcel has the pressure of its surroundings, mixes with nothing and gives off no heat. Below the cloud base its vapor stays ' +
      'vapor; above, what exceeds saturation is cloud water and travels along. Heights follow from its own weight.',
  },
  sources: ['murphyKoop', 'wmo8', 'emanuel', 'hypsometric'],
};
