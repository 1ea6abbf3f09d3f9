/** A real parcel of air on its way up: clear below its cloud base, cloudy above; drawn beside the vessel's air. */
import { cloudBase, cloudOnset, type CloudOnset } from '../../physics/index.ts';
import { CURVE_TEXTS, MARKS } from '../../texts/index.ts';
import { clear, cloudy, onset, parcelsAt, risingAir, stateAt } from '../air.ts';
import { answered } from '../answered.ts';
import type { State } from '../conditions.ts';
import { axisUnit } from '../display.ts';
import { columnOf, pointsOf, rowsOfQuantities, withPoints, type TableKind } from '../table-kind.ts';

const columns = [
  columnOf('height', 'parcelHeight', { given: true }),
  columnOf('pressure', 'parcelPressure'),
  columnOf('temperature', 'parcelTemperature'),
  columnOf('relativeHumidity', 'parcelHumidity'),
  columnOf('cloudWater', 'parcelCloudWater'),
] as const;

const STEPS = 10;

/** Drops along the vessel's way to the planned one, with the drop at which cloud begins: there the way has its bend. */
function dropsOf(state: State): number[] {
  const even = Array.from({ length: STEPS + 1 }, (_, i) => (state.plannedDrop * i) / STEPS);
  const bend = answered(() => state.startPressure - state.gaugeError - onset(state).pressure);
  return bend !== null && bend > 0 && bend < state.plannedDrop ? [...even, bend].sort((a, b) => a - b) : even;
}

type Point = readonly [temperature: number, pressure: number];

/** The end state; none where the physics has no answer. */
function endOf(compute: () => CloudOnset): CloudOnset[] {
  let found: CloudOnset | undefined;
  answered(() => (found = compute()).temperature);
  return found === undefined ? [] : [found];
}

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
  curve: (rows, id, style, kitState, at) => {
    const { language } = style;
    const said = CURVE_TEXTS[language].risingParcel;
    const [across, down] = [axisUnit('temperature', style), axisUnit('pressure', style)];
    const pointsAt = (compute: () => CloudOnset): Point[] => endOf(compute).map(({ temperature, pressure }) => [across.fromSi(temperature), down.fromSi(pressure)]);
    const state = stateAt(kitState, at);
    const drops = dropsOf(state);
    const parcel = pointsOf(rows, { index: 2, fromSi: across.fromSi }, { index: 1, fromSi: down.fromSi });
    const vessel = drops.flatMap((drop) => pointsAt(() => cloudy(state, drop)));
    const within = (point: Point, way: readonly Point[]): boolean => way.some(([, p]) => p <= point[1]);
    const marked = (label: string, points: readonly Point[], way: readonly Point[], above = false) =>
      points.filter((point) => within(point, way)).map(([x, y]) => ({ x, y, label, above }));
    const risesFrom = at.air ?? 'room';
    const [from = NaN, to = NaN, parcelFrom = NaN] = [vessel[0], vessel.at(-1), parcel[0]].map((point) => point?.[1]);
    const passesOver = parcelFrom < (from + to) / 2; // the vessel’s air is let go, and ends where the parcel begins
    return withPoints({
      id: `${id}-curve`,
      title: said.title,
      description: said.description,
      x: { label: said.x, unit: across.symbol },
      y: { label: said.y, unit: down.symbol, falls: true },
      series: [
        { label: said.clear, points: drops.flatMap((drop) => pointsAt(() => clear(state, drop))), stroke: 'dashed', named: 'left' },
        { label: said.cloudy, points: vessel, stroke: 'solid', accent: true, named: passesOver ? 'over' : 'right' },
        { label: said[risesFrom], points: parcel, stroke: 'beads', named: 'above' },
      ],
      marks: [
        ...marked(MARKS[language].saturated, pointsAt(() => onset(state)), vessel),
        ...marked(MARKS[language].cloudBase, pointsAt(() => cloudOnset(risingAir(state, at.air))), parcel, passesOver),
      ],
    });
  },
  formula: () => '\\mathrm{d}z = -\\frac{R\\,T}{g}\\,\\frac{\\mathrm{d}p}{p}',
  sources: ['murphyKoop', 'wmo8', 'emanuel', 'hypsometric'],
};
