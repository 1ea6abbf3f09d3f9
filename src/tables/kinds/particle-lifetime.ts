/** How long particles last in the closed vessel, and what takes them. */
import { equilibriumDiameter, particleHistory, toPerCubicCentimeter, type ParticleState } from '../../physics/index.ts';
import { CURVE_TEXTS, type LabelName } from '../../texts/index.ts';
import { cloudy, stateAt } from '../air.ts';
import { answered } from '../answered.ts';
import { cloudAt, isSeen, particlesOf } from '../cloud.ts';
import type { State } from '../conditions.ts';
import { UNITS_OF } from '../display.ts';
import type { Parameters } from '../parameters.ts';
import { share } from '../quantity-kind.ts';
import type { Cell } from '../spread.ts';
import { columnOfWords, pointsOf, withPoints, type Column, type TableKind } from '../table-kind.ts';

/** Rates of loss in a vessel whose air moves by itself are known within a fifth. */
const RATES = 0.2;
/** Of a number that falls as an exponential whose rate is known within that share. */
const ofWhatIsLeft: Column['model'] = (left, _, [, atFirst]) => (left > 0 && typeof atFirst === 'number' ? RATES * left * Math.max(0, Math.log(atFirst / left)) : 0);

const column = (key: string, label: LabelName, model: Column['model']): Column =>
  ({ key, label, dimension: 'numberDensity', units: UNITS_OF.numberDensity, spans: true, model });

const columns: readonly Column[] = [
  { key: 'waitingTime', label: 'waitingTime', dimension: 'time', units: ['min', 'h'], given: true, spans: true },
  column('number', 'particlesLeft', ofWhatIsLeft),
  column('lostToSettling', 'lostToSettling', share(RATES)),
  column('lostToCoagulation', 'lostToCoagulation', share(RATES)),
  column('lostToWalls', 'lostToWalls', share(RATES)),
  column('lostToClouds', 'lostToClouds', share(RATES)),
  columnOfWords('cloud', 'cloudAtPlannedDrop', ['seen', 'notSeen']),
];

/** A cloud is held this long before air is let in, s. */
const CLOUD_LASTS = 30;

function history(state: State, at: Parameters, times: readonly number[]): readonly ParticleState[] {
  const { dryDiameter, spread, kappa, number } = particlesOf(state, at.particles);
  const { startTemperature: temperature, startPressure: pressure, startHumidity: saturationRatio, apparatus } = state;
  const ordered = [...times].sort((a, b) => a - b);
  const count = at.cloudEvery === undefined ? 0 : Math.floor(ordered.at(-1)! / at.cloudEvery);
  const water = count === 0 ? 0 : cloudy(state, at.drop ?? state.plannedDrop).liquidWaterContent;
  const states = particleHistory({
    number: at.number ?? number,
    medianDiameter: equilibriumDiameter({ dryDiameter, kappa, temperature, saturationRatio: Math.min(saturationRatio, 1) }),
    geometricStandardDeviation: spread,
    vessel: apparatus.vessel,
    temperature,
    pressure,
    times: ordered,
    cloudCycles: Array.from({ length: count }, (_, i) => ({ time: (i + 1) * at.cloudEvery! - CLOUD_LASTS, duration: CLOUD_LASTS, liquidWaterContent: water })),
    classesPerDoubling: 1,
  });
  return times.map((time) => states.find((one) => one.time === time)!);
}

/** Fewer than the model of a cloud takes make none that is seen. */
const FEWEST = 1;

const isCloudSeen = (state: State, at: Parameters, number: number): boolean | null =>
  answered(() => number >= FEWEST && isSeen(state, cloudAt(state, at.drop ?? state.plannedDrop, number, at.particles)));

function rows(kitState: State, at: Parameters, list: readonly number[]): readonly (readonly Cell[])[] {
  const state = stateAt(kitState, at);
  try {
    return history(state, at, list).map(({ time, number, lostToSettling, lostToCoagulation, lostToWalls, lostToClouds }) =>
      [time, number, lostToSettling, lostToCoagulation, lostToWalls, lostToClouds, isCloudSeen(state, at, number)]);
  } catch (error) {
    if (error instanceof RangeError) return list.map((time) => [time, ...columns.slice(1).map(() => null)]);
    throw error;
  }
}

const MINUTE = 60;
const HOUR = 3600;

export const particleLifetime: TableKind = {
  kind: 'particle-lifetime',
  over: 'wait',
  listAttribute: 'times',
  takes: ['particles', 'number', 'cloudEvery', 'drop', 'humidity', 'temperature', 'elevation'],
  columns,
  defaultList: (_, { cloudEvery }) =>
    cloudEvery === undefined ? [0, 10 * MINUTE, HOUR, 4 * HOUR, 12 * HOUR, 24 * HOUR, 48 * HOUR] : [0, 1, 2, 3, 4, 6].map((clouds) => clouds * cloudEvery),
  rows,
  varies: [],
  curve: (rows, id, style) => {
    const said = CURVE_TEXTS[style.language].particleLifetime;
    return withPoints({
      id: `${id}-curve`,
      title: said.title,
      description: said.description,
      x: { label: said.x, unit: 'h' },
      y: { label: said.y, unit: '/cm³' },
      series: [{ label: said.inAir, points: pointsOf(rows, { index: 0, fromSi: (seconds) => seconds / HOUR }, { index: 1, fromSi: toPerCubicCentimeter }), stroke: 'solid', accent: true }],
    });
  },
  formula: () => '\\frac{\\mathrm{d}n_i}{\\mathrm{d}t} = \\tfrac12\\sum_{j+k=i} K_{jk}\\,n_j n_k - n_i\\sum_j K_{ij}\\,n_j - (\\beta_i + v_i A/V)\\,n_i',
  sources: ['seinfeldPandis', 'cornerPendlebury', 'hinds', 'pettersKreidenweis'],
};
