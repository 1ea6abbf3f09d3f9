/** Clear air without particles, and the drop at which it is clear no longer. */
import { homogeneousOnset, ionLimit, toKilopascal } from '../../physics/index.ts';
import { clear, limitWithoutParticles, onset, stateAt } from '../air.ts';
import { answered } from '../answered.ts';
import { UNITS_OF } from '../display.ts';
import { share } from '../quantity-kind.ts';
import type { Cell } from '../spread.ts';
import { columnOf, columnOfWords, pointsOf, roundSteps, withPoints, type Along, type Column, type RowAt, type TableKind } from '../table-kind.ts';

/** Theory and measured onsets differ by up to this share (Wölk and Strey 2001; Wilson 1897). */
const THEORY = 0.07;

const limit = (key: string, label: string): Column => ({ key, label, dimension: 'ratio', units: UNITS_OF.ratio, model: share(THEORY) });

const columns: readonly Column[] = [
  columnOf('pressureDrop', 'pressureDrop', { given: true }),
  columnOf('temperatureClear', 'temperatureClear'),
  columnOf('saturationRatioClear', 'saturationRatioClear', { spans: true }),
  limit('ionLimit', 'drops on ions from'),
  limit('homogeneousLimit', 'drops on nothing from'),
  columnOfWords('clear', 'without particles', ['clear', 'cloud']),
];

const x: Along = { index: 0, fromSi: toKilopascal };
const ratio = (index: number): Along => ({ index, fromSi: (value) => value });

/** Where a number in a column first comes up to a bound: marked rows stand exactly there. */
function firstAt(rows: readonly (readonly Cell[])[], holds: (row: readonly Cell[]) => boolean): number | undefined {
  const row = rows.find(holds);
  return typeof row?.[0] === 'number' ? toKilopascal(row[0]) : undefined;
}

const ROUNDING = 1e-6;
/** Beyond the limit, so that it can be seen to be passed. */
const BEYOND = 1.15;

export const noParticleLimitTable: TableKind = {
  kind: 'no-particle-limit',
  title: 'How far clean air stays clear',
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
    return reached === undefined ? [saturated] : [saturated, { at: state.startPressure - reached.pressure, mark: 'cloud without particles' }];
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
  curve: (rows, id) => {
    const saturated = firstAt(rows, ([, , S]) => typeof S === 'number' && S >= 1 - ROUNDING);
    const passed = firstAt(rows, (row) => row[5] === false);
    return withPoints({
      id: `${id}-curve`,
      title: 'Saturation of clear air, and what ends it',
      description:
        'Saturation ratio of air without droplets against the fall in pressure. At 1 drops form on particles. Without particles it rises on, to the limits at which drops form on ions or on nothing at all.',
      x: { label: 'pressure drop', unit: 'kPa' },
      y: { label: 'saturation ratio', unit: '' },
      series: [
        { label: 'air without particles', points: pointsOf(rows, x, ratio(2)), stroke: 'solid', accent: true },
        { label: 'drops on nothing', points: pointsOf(rows, x, ratio(4)), stroke: 'dotted' },
        { label: 'drops on ions', points: pointsOf(rows, x, ratio(3)), stroke: 'dashed' },
        { label: 'drops on particles', points: pointsOf(rows, x, { index: 0, fromSi: () => 1 }), stroke: 'dashed' },
      ],
      marks: [
        ...(saturated === undefined ? [] : [{ x: saturated, label: 'saturated' }]),
        ...(passed === undefined ? [] : [{ x: passed, label: 'cloud without particles' }]),
      ],
    });
  },
  method: {
    formula: '\\ln S_{\\mathrm{ion}} = \\max_r\\left(\\frac{2\\sigma v}{kT\\,r} - \\frac{v\\,q^2(1 - 1/\\varepsilon)}{32\\pi^2\\varepsilon_0\\,kT\\,r^4}\\right)',
    words:
      'Air that expands without droplets, beside the saturation ratio at which drops grow on small ions, of which air always has some, and that at which one drop ' +
      'per cubic centimeter and second forms on nothing at all (classical theory). Whichever it meets first ends the clear air: beyond, “no particles, no cloud” is not true. ' +
      'Theory and experiment agree within about 7 % of the saturation ratio.',
  },
  sources: ['thomson', 'seinfeldPandis', 'murphyKoop', 'wmo8'],
};
