/** Few particles or many: the cloud that each number makes. */
import { toMicrometer, toPerCubicCentimeter } from '../../physics/index.ts';
import { CURVE_TEXTS } from '../../texts/index.ts';
import { stateAt } from '../air.ts';
import { answered } from '../answered.ts';
import { cloudAt, isSeen } from '../cloud.ts';
import { columnOf, columnOfWords, pointsOf, rowsOfQuantities, withPoints, type TableKind } from '../table-kind.ts';

const computed = [
  columnOf('number', 'particleNumber', { given: true, spans: true }),
  columnOf('peakSaturationRatio', 'peakSaturationRatio', { spans: true }),
  columnOf('dropletDiameter', 'dropletDiameter', { spans: true }),
  columnOf('cloudWater', 'dropletWater', { spans: true }),
  columnOf('opticalDepth', 'cloudOpticalDepth', { spans: true }),
  columnOf('fallSpeed', 'dropletFallSpeed', { spans: true }),
  columnOf('coronaRadius', 'coronaRadius', { spans: true }),
] as const;

const rowsComputed = rowsOfQuantities('number', computed);

export const droplets: TableKind = {
  kind: 'droplets',
  over: 'number',
  listAttribute: 'numbers',
  takes: ['drop', 'particles', 'humidity', 'temperature', 'elevation'],
  columns: [...computed, columnOfWords('seen', 'seen', ['seen', 'notSeen'])],
  defaultList: () => [1e7, 1e8, 1e9, 1e10, 1e11, 1e12],
  varies: [],
  rows: (kitState, at, list) => {
    const state = stateAt(kitState, at);
    const cells = rowsComputed(kitState, at, list);
    return list.map((number, i) => [
      ...cells[i]!,
      answered(() => isSeen(state, cloudAt(state, at.drop ?? state.plannedDrop, number, at.particles))),
    ]);
  },
  curve: (rows, id, style) => {
    const said = CURVE_TEXTS[style.language].droplets;
    return withPoints({
      id: `${id}-curve`,
      title: said.title,
      description: said.description,
      x: { label: said.x, unit: '' },
      y: { label: said.y, unit: 'µm' },
      series: [{ label: said.droplets, points: pointsOf(rows, { index: 0, fromSi: (number) => Math.log10(toPerCubicCentimeter(number)) }, { index: 2, fromSi: toMicrometer }), stroke: 'solid', accent: true }],
    });
  },
  formula: ({ drop }) => `r\\,\\frac{\\mathrm{d}r}{\\mathrm{d}t} \\approx \\frac{S - S_{\\mathrm{${drop}}}}{F_k + F_d},\\quad \\tau = \\frac{3\\,Q\\,w\\,L}{4\\,\\rho\\,r_e}`,
  sources: ['pruppacherKlett', 'pettersKreidenweis', 'bohrenHuffman', 'koschmieder', 'hinds', 'cliftGraceWeber', 'airy'],
};
