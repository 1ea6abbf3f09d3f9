/** Clear air without particles, and the drop at which it is clear no longer. */
import { homogeneousOnset, ionLimit } from '../../physics/index.ts';
import { CURVE_TEXTS, MARKS } from '../../texts/index.ts';
import { clear, limitWithoutParticles, onset, stateAt } from '../air.ts';
import { answered } from '../answered.ts';
import { axisUnit, UNITS_OF } from '../display.ts';
import { share } from '../quantity-kind.ts';
import type { Cell } from '../spread.ts';
import { columnOf, columnOfWords, pointsOf, roundSteps, withPoints, type Along, type Column, type RowAt, type TableKind } from '../table-kind.ts';

/** Theory and measured onsets differ by up to this share (Wölk and Strey 2001; Wilson 1897). */
const THEORY = 0.07;

const limit = (key: 'ionLimit' | 'homogeneousLimit'): Column => ({ key, label: key, dimension: 'ratio', units: UNITS_OF.ratio, model: share(THEORY) });

const columns: readonly Column[] = [
  columnOf('pressureDrop', 'pressureDrop', { given: true }),
  columnOf('temperatureClear', 'temperatureClear'),
  columnOf('saturationRatioClear', 'saturationRatioClear', { spans: true }),
  limit('ionLimit'),
  limit('homogeneousLimit'),
  columnOfWords('clear', 'withoutParticles', ['clear', 'cloud']),
];

const ratio = (index: number): Along => ({ index, fromSi: (value) => value });

/** The drop, Pa, at which a row first holds something: marked rows stand exactly there. */
function firstAt(rows: readonly (readonly Cell[])[], holds: (row: readonly Cell[]) => boolean): number | undefined {
  const row = rows.find(holds);
  return typeof row?.[0] === 'number' ? row[0] : undefined;
}

const ROUNDING = 1e-6;
/** Beyond the limit, so that it can be seen to be passed. */
const BEYOND = 1.15;

export const noParticleLimitTable: TableKind = {
  kind: 'no-particle-limit',
  over: 'drop',
  listAttribute: 'drops',
  takes: ['humidity', 'temperature', 'elevation'],
  columns,
  defaultList: (kitState, at) => {
    const state = stateAt(kitState, at);
    const reached = answered(() => state.startPressure - (limitWithoutParticles(state)?.pressure ?? Number.NaN));
    const end = reached === null ? state.plannedDrop : Math.max(state.plannedDrop, BEYOND * reached);
    const step = roundSteps(end, 6)[1]!;
    return Array.from({ length: Math.ceil(end / step - ROUNDING) + 1 }, (_, i) => Number((i * step).toPrecision(12)));
  },
  marked: (kitState, at) => {
    const state = stateAt(kitState, at);
    const saturated: RowAt = { at: state.startPressure - onset(state).pressure, mark: 'saturated' };
    const reached = limitWithoutParticles(state);
    return reached === undefined ? [saturated] : [saturated, { at: state.startPressure - reached.pressure, mark: 'cloudWithoutParticles' }];
  },
  rows: (kitState, at, list) => {
    const state = stateAt(kitState, at);
    const last = answered(() => state.startPressure - (limitWithoutParticles(state)?.pressure ?? 0));
    return list.map((drop): Cell[] => {
      const temperature = answered(() => clear(state, drop).temperature);
      const at = (bound: (temperature: number) => number): number | null => (temperature === null ? null : answered(() => bound(temperature)));
      return [
        drop, temperature, answered(() => clear(state, drop).saturationRatio), at(ionLimit), at(homogeneousOnset),
        temperature === null || last === null ? null : drop < last,
      ];
    });
  },
  curve: (rows, id, style) => {
    const said = CURVE_TEXTS[style.language].noParticleLimit;
    const saturated = firstAt(rows, ([, , S]) => typeof S === 'number' && S >= 1 - ROUNDING);
    const passed = firstAt(rows, (row) => row[5] === false);
    const pressure = axisUnit('pressure', style);
    const x = { index: 0, fromSi: pressure.fromSi };
    const along = (drop: number | undefined, label: string) => (drop === undefined ? [] : [{ x: pressure.fromSi(drop), label }]);
    return withPoints({
      id: `${id}-curve`,
      title: said.title,
      description: said.description,
      x: { label: said.x, unit: pressure.symbol },
      y: { label: said.y, unit: '' },
      series: [
        { label: said.air, points: pointsOf(rows, x, ratio(2)), stroke: 'solid', accent: true },
        { label: said.nothing, points: pointsOf(rows, x, ratio(4)), stroke: 'dotted' },
        { label: said.ions, points: pointsOf(rows, x, ratio(3)), stroke: 'dashed' },
        { label: said.particles, points: pointsOf(rows, x, { index: 0, fromSi: () => 1 }), stroke: 'dashed' },
      ],
      marks: [
        ...along(saturated, MARKS[style.language].saturated),
        ...along(passed, MARKS[style.language].cloudWithoutParticles),
      ],
    });
  },
  formula: ({ ion }) => `\\ln S_{\\mathrm{${ion}}} = \\max_r\\left(\\frac{2\\sigma v}{kT\\,r} - \\frac{v\\,q^2(1 - 1/\\varepsilon)}{32\\pi^2\\varepsilon_0\\,kT\\,r^4}\\right)`,
  sources: ['thomson', 'seinfeldPandis', 'murphyKoop', 'wmo8'],
};
