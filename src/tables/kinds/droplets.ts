/** Few particles or many: the cloud that each number makes. */
import { toMicrometer, toPerCubicCentimeter } from '../../physics/index.ts';
import { stateAt } from '../air.ts';
import { answered } from '../answered.ts';
import { depthAcross, cloudAt, isSeen } from '../cloud.ts';
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
  title: 'Few particles or many',
  over: 'number',
  listAttribute: 'numbers',
  takes: ['drop', 'particles', 'humidity', 'temperature', 'elevation'],
  columns: [...computed, columnOfWords('seen', 'cloud', ['seen', 'not seen'])],
  defaultList: () => [1e7, 1e8, 1e9, 1e10, 1e11, 1e12],
  varies: [],
  rows: (kitState, at, list) => {
    const state = stateAt(kitState, at);
    const cells = rowsComputed(kitState, at, list);
    return list.map((number, i) => [
      ...cells[i]!,
      answered(() => {
        const { waterContent, diameter } = cloudAt(state, at.drop ?? state.plannedDrop, number, at.particles);
        return isSeen(state, depthAcross(state, waterContent, diameter));
      }),
    ]);
  },
  curve: (rows, id) => withPoints({
    id: `${id}-curve`,
    title: 'More particles, smaller drops',
    description: 'Diameter of the droplets as pumping ends against the number of particles, on a scale of powers of ten: the more particles share the water, the smaller the drops.',
    x: { label: 'particles per cm³, as a power of ten', unit: '' },
    y: { label: 'droplet diameter', unit: 'µm' },
    series: [{ label: 'droplets', points: pointsOf(rows, { index: 0, fromSi: (number) => Math.log10(toPerCubicCentimeter(number)) }, { index: 2, fromSi: toMicrometer }), stroke: 'solid', accent: true }],
  }),
  method: {
    formula: 'r\\,\\frac{\\mathrm{d}r}{\\mathrm{d}t} \\approx \\frac{S - S_{\\mathrm{drop}}}{F_k + F_d},\\quad \\tau = \\frac{3\\,Q\\,w\\,L}{4\\,\\rho\\,r_e}',
    words:
      'Particles of all sizes take up vapor while the kit’s pump brings the vessel to the drop; the walls give off neither heat nor vapor. Optical depth τ ' +
      'is that of the water w across the vessel L, in drops of the effective radius r_e. Whether it is seen is asked of the kit’s own light and backing, at ' +
      'a contrast of 5 %. Rings are given for drops above 2 µm. Sizes and number of real particles are estimates: the figures are good to about a tenth.',
  },
  sources: ['pruppacherKlett', 'pettersKreidenweis', 'bohrenHuffman', 'koschmieder', 'hinds', 'cliftGraceWeber', 'airy'],
};
