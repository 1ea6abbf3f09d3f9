/** Pressure drop by pressure drop: gauge, both end states, and the heights at which the sky does the same. */
import { toCelsius, toKilopascal } from '../../physics/index.ts';
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

const x = { index: 0, fromSi: toKilopascal };

export const pressureSteps: TableKind = {
  kind: 'pressure-steps',
  title: 'What each fall in pressure does',
  over: 'drop',
  listAttribute: 'drops',
  takes: ['humidity', 'temperature', 'elevation'],
  columns,
  defaultList: (state) => roundSteps(state.plannedDrop, 4),
  rows: rowsOfQuantities('drop', columns),
  curve: (rows, id) => withPoints({
    id: `${id}-curve`,
    title: 'Cooling with droplets and without',
    description: 'Air temperature in the vessel against the fall in pressure: without droplets it falls about twice as far as with droplets.',
    x: { label: 'pressure drop', unit: 'kPa' },
    y: { label: 'air temperature', unit: '°C' },
    series: [
      { label: 'no droplets', points: pointsOf(rows, x, { index: 3, fromSi: toCelsius }), stroke: 'dashed' },
      { label: 'with droplets', points: pointsOf(rows, x, { index: 5, fromSi: toCelsius }), stroke: 'solid', accent: true },
    ],
  }),
  method: {
    formula: 'T_2 = T_1\\left(\\frac{p_2}{p_1}\\right)^{R/c_p},\\quad S = \\frac{e_1}{e_s(T_2)}\\cdot\\frac{p_2}{p_1}',
    words:
      'Without droplets: all vapor stays and the entropy of the moist air is conserved. With droplets: the vapor stays at saturation and ' +
      'the entropy of air, vapor and liquid is conserved. Neither gives off heat to the walls. The altitude of equal pressure is that of the ' +
      'standard atmosphere above the room; the parcel is the vessel’s own air, rising.',
  },
  sources: ['murphyKoop', 'wmo8', 'emanuel', 'iso2533'],
};
