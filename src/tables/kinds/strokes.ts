/** Stroke by stroke of the kit's own pump: pressure, air, thermometer and cloud. */
import { CURVE_TEXTS, type LabelName } from '../../texts/index.ts';
import { limitWithoutParticles, stateAt } from '../air.ts';
import { answered } from '../answered.ts';
import { isSeen, particlesOf } from '../cloud.ts';
import type { State } from '../conditions.ts';
import { axisUnit, UNITS_OF } from '../display.ts';
import type { Parameters } from '../parameters.ts';
import { share } from '../quantity-kind.ts';
import type { Cell } from '../spread.ts';
import { columnOfWords, pointsOf, withPoints, type Column, type TableKind } from '../table-kind.ts';
import { strokeRun, strokesToDrop } from '../vessel-run.ts';

const column = (key: string, label: LabelName, dimension: Column['dimension'], options: Partial<Column> = {}): Column =>
  ({ key, label, dimension, units: UNITS_OF[dimension], ...options });

/** What the walls take back is known within a third: it is this share of the way from the start. */
const WALLS = 0.1;
const THERMOMETER = 0.2;
const fromFirst = (part: number, index: number) => (value: number, _: readonly Cell[], first: readonly Cell[]): number => part * Math.abs(value - Number(first[index]));

const columns: readonly Column[] = [
  column('stroke', 'stroke', 'count', { given: true }),
  column('time', 'time', 'clock', { given: true }),
  column('absolutePressure', 'absolutePressure', 'pressure', { model: fromFirst(0.02, 2) }),
  column('gasTemperature', 'air', 'temperature', { model: fromFirst(WALLS, 3) }),
  column('thermometerReading', 'thermometer', 'temperature', { model: fromFirst(THERMOMETER, 4) }),
  column('saturationRatio', 'saturationRatio', 'ratio', { model: share(WALLS, 1) }),
  column('cloudWater', 'cloudWater', 'waterContent', { model: share(WALLS) }),
  columnOfWords('cloud', 'seen', ['seen', 'notSeen']),
];

/** As many strokes as reach the planned drop, in at most ten steps. */
function strokesListed(state: State): number[] {
  const last = answered(() => strokesToDrop(state, state.plannedDrop)) ?? 1;
  const step = Math.ceil(last / 10);
  const strokes = Array.from({ length: Math.floor(last / step) + 1 }, (_, i) => i * step);
  return strokes.at(-1) === last ? strokes : [...strokes, last];
}

function rows(kitState: State, at: Parameters, list: readonly number[]): readonly (readonly Cell[])[] {
  const state = stateAt(kitState, at);
  const none = list.map((stroke): Cell[] => [stroke, ...columns.slice(1).map(() => null)]);
  try {
    const particles = at.particles === undefined ? undefined : particlesOf(state, at.particles);
    const { run, strokeTime } = strokeRun(state, { strokes: Math.max(1, ...list) }, particles);
    const limit = limitWithoutParticles(state)?.saturationRatio ?? Infinity;
    let isPast = false;
    return list.map((stroke, i): Cell[] => {
      const point = run.series.find(({ time }) => time >= stroke * strokeTime - strokeTime / 8);
      if (point === undefined) return none[i]!;
      // Past this limit a clean vessel is no longer clear, and the run without droplets no answer.
      isPast ||= particles === undefined && point.saturationRatio >= limit;
      if (isPast) return none[i]!;
      const { time, pressure, gasTemperature, thermometerReading, saturationRatio, liquidWaterContent, dropletDiameter } = point;
      const seen = isSeen(state, { waterContent: liquidWaterContent, diameter: dropletDiameter === 0 ? undefined : dropletDiameter });
      return [stroke, time, pressure, gasTemperature, thermometerReading, saturationRatio, liquidWaterContent, seen];
    });
  } catch (error) {
    if (error instanceof RangeError) return none;
    throw error;
  }
}

const time = { index: 1, fromSi: (seconds: number) => seconds };

export const strokes: TableKind = {
  kind: 'strokes',
  over: 'stroke',
  listAttribute: 'strokes',
  takes: ['particles', 'humidity', 'temperature', 'elevation'],
  columns,
  defaultList: (state, at) => strokesListed(stateAt(state, at)),
  rows,
  varies: ['roomTemperature', 'startHumidity'],
  curve: (rows, id, style) => {
    const said = CURVE_TEXTS[style.language].strokes;
    const temperature = axisUnit('temperature', style);
    return withPoints({
      id: `${id}-curve`,
      title: said.title,
      description: said.description,
      x: { label: said.x, unit: 's' },
      y: { label: said.y, unit: temperature.symbol },
      series: [
        { label: said.air, points: pointsOf(rows, time, { index: 3, fromSi: temperature.fromSi }), stroke: 'solid', accent: true },
        { label: said.thermometer, points: pointsOf(rows, time, { index: 4, fromSi: temperature.fromSi }), stroke: 'dashed' },
      ],
    });
  },
  formula: () => '\\frac{\\mathrm{d}T}{\\mathrm{d}t} = \\frac{R\\,T}{c_p\\,p}\\,\\frac{\\mathrm{d}p}{\\mathrm{d}t} + \\frac{T_w - T}{\\tau_w},\\quad \\frac{\\mathrm{d}T_m}{\\mathrm{d}t} = \\frac{T - T_m}{\\tau_m}',
  sources: ['jousten', 'evansStefany', 'pruppacherKlett', 'murphyKoop'],
};
