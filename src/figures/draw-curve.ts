/** A figure of curves over one axis, labelled at the curves themselves. */
import type { Curve, Series } from '../tables/curve.ts';
import type { Style } from '../tables/display.ts';
import { drawing, extent, linear, lineAt, pathData, round, spread, textAt, textWidth, ticks, tickText, wholeTicks, type Scale } from './svg.ts';

const WIDTH = 470;
const HEIGHT = 290;
const TOP = 34;
const BOTTOM = 46;
const LABEL = 13;
const MARK = 12;
const LINE = 16;

const DASHES: Record<Series['stroke'], string> = {
  solid: '',
  dashed: ' stroke-dasharray="7 4"',
  dotted: ' stroke-dasharray="1.5 4" stroke-linecap="round"',
  beads: ' stroke-dasharray="0 8" stroke-linecap="round"', // wide enough to be seen on another curve
};

const withUnit = (label: string, unit: string): string => (unit === '' ? label : `${label}, ${unit}`);

const LONGEST_LINE = 22;

/** A label broken into lines of at most 22 characters at its spaces. */
const broken = (label: string): string[] => {
  const lines: string[] = [];
  for (const word of label.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < LONGEST_LINE) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
};

interface Labelled {
  readonly series: Series;
  readonly lines: readonly string[];
}

const widest = (labels: readonly Labelled[]): number => Math.max(0, ...labels.flatMap(({ lines }) => lines.map((line) => textWidth(line, LABEL))));
const inkOf = ({ accent }: Series): string => (accent ? 'accent-text' : 'ink-text');

/**
 * A figure as SVG text.
 * @param curve - series in the units of its axes; at least one point in each series
 * @returns an `<svg>` with title and description, axes with units, curves told apart by dashes as well as by color
 * @throws RangeError where a series is empty or holds a value that is not finite
 */
export const renderCurve = (curve: Curve, style: Style): string => {
  for (const { label, points: own } of curve.series) if (own.length === 0) throw new RangeError(`The curve "${label}" has no points.`);
  const points = curve.series.flatMap((series) => series.points);
  const labels = curve.series.map((series): Labelled => ({ series, lines: broken(series.label) }));
  const above = Math.max(0, ...labels.map(({ series, lines }) => (series.named === 'above' ? lines.length : 0))) * LINE;
  const top = TOP + above;
  const floor = HEIGHT - BOTTOM + above;
  const xDomain = curve.x.range ?? extent(points.map(([x]) => x));
  const yDomain = curve.y.range ?? wholeTicks(extent(points.map(([, y]) => y)), 5);
  const named = (place: Series['named']): Labelled[] => labels.filter(({ series }) => series.named === place);
  const gutter = Math.max(widest(named(undefined)), ...(curve.marks ?? []).map(({ y, label }) => (y === undefined ? 0 : textWidth(label, MARK)))) + 16;
  const yTicks = ticks(yDomain, 5);
  const left = Math.max(...yTicks.map((tick) => textWidth(tickText(tick, style), LABEL))) + 14;
  const right = WIDTH - gutter;
  const x = linear(xDomain, [left + widest(named('left')), right]);
  const y = linear(yDomain, curve.y.falls ? [top, floor] : [floor, top]);

  const yAxis = yTicks.map((tick) => lineAt('grid', left, y(tick), right, y(tick)) + textAt(left - 8, y(tick) + 4.5, tickText(tick, style), { anchor: 'end' })).join('');
  const xAxis = ticks(xDomain, 7)
    .map((tick) => lineAt('axis', x(tick), floor, x(tick), floor + 5) + textAt(x(tick), floor + 19, tickText(tick, style), { anchor: 'middle' }))
    .join('');
  const names =
    textAt(0, 14, withUnit(curve.y.label, curve.y.unit), { bold: true }) +
    textAt(right, floor + BOTTOM - 6, withUnit(curve.x.label, curve.x.unit), { anchor: 'end', bold: true }) +
    lineAt('axis', left, floor, right, floor);

  const lines = (curve.marks ?? []).flatMap((mark) => (mark.y === undefined ? [mark] : [])).map((mark, index) => {
    const at = x(mark.x);
    const turned = at + textWidth(mark.label, MARK) + 6 > right;
    return (
      `<path class="mark" d="M${round(at)} ${top - 6}V${floor}" fill="none" stroke="currentColor" stroke-dasharray="2 3"/>` +
      textAt(at + (turned ? -5 : 5), top + 4 + index * 15, mark.label, { size: MARK, anchor: turned ? 'end' : 'start', className: 'halo' })
    );
  });

  const drawn = curve.series.map((series) => {
    const data = pathData(series.points.map(([px, py]) => [x(px), y(py)] as const));
    const width = series.stroke === 'beads' ? 4 : series.accent ? 2.4 : 1.7;
    return `<path class="curve-line${series.accent ? ' accent' : ''}" d="${data}" fill="none" stroke="${series.accent ? '#5b2188' : 'currentColor'}" stroke-width="${width}" stroke-linejoin="round"${DASHES[series.stroke]}/>`;
  });

  return drawing(
    { id: curve.id, width: WIDTH, height: HEIGHT + above, title: curve.title, description: curve.description, className: 'plot' },
    yAxis + xAxis + names + lines.join('') + drawn.join('') + pointsMarked(curve, x, y, [top, floor]) +
      beyondPlot(named(undefined), x, y, right, [top, floor]) + atLastPoints(labels, x, y),
  );
};

/** Marked points of curves, each with its word to the right, above where its curve comes from below on that side, else a little below, clear of a label at the curve's end; moved apart where they are close. */
function pointsMarked({ marks = [], series }: Curve, x: Scale, y: Scale, bounds: readonly [number, number]): string {
  const namedAbove = series.flatMap(({ named, points }) => (named === 'above' ? [y(points.at(-1)![1])] : []));
  const points = marks.flatMap((mark) => {
    if (mark.y === undefined) return [];
    const down = y(mark.y);
    return [{ label: mark.label, at: [x(mark.x), down] as const, rise: mark.above === true && namedAbove.every((end) => down - end > LINE) ? -4 : 8 }];
  });
  const places = spread(points.map(({ at, rise }) => at[1] + rise), LINE, bounds);
  return points
    .map(({ label, at, rise }, index) => `<circle class="mark-point" cx="${round(at[0])}" cy="${round(at[1])}" r="4" fill="none" stroke="currentColor" stroke-width="1.5"/>` +
      textAt(at[0] + 10 + Math.min(rise, 0), places[index] ?? at[1] + rise, label, { size: MARK, className: 'halo' }))
    .join('');
}

/** Labels beyond the plot, at the right ends of their curves, moved apart where they are close. */
function beyondPlot(labels: readonly Labelled[], x: Scale, y: Scale, right: number, [top, floor]: readonly [number, number]): string {
  const ends = labels.map(({ series }) => series.points.reduce((best, point) => (point[0] > best[0] ? point : best)));
  const gap = Math.max(...labels.map(({ lines }) => lines.length)) * LINE;
  const places = spread(ends.map(([, value]) => y(value)), gap, [top, floor - gap + LINE]);
  return labels
    .map(({ series, lines }, index) => {
      const place = places[index] ?? 0;
      const end = ends[index];
      const lead = end && Math.abs(place - y(end[1])) > 5 ? lineAt('lead', x(end[0]) + 2, y(end[1]), right + 9, place) : '';
      return lead + lines.map((line, row) => textAt(right + 12, place + 4.5 + row * LINE, line, { className: inkOf(series) })).join('');
    })
    .join('');
}

/** Labels at the last points of curves that run up and to the left: those on the left hang below, the others stand above, one `over` its end with its own end there; none leaves the frame. */
function atLastPoints(labels: readonly Labelled[], x: Scale, y: Scale): string {
  return labels
    .flatMap(({ series, lines }) => {
      const { named } = series;
      const end = series.points.at(-1);
      if (named === undefined || end === undefined) return [];
      const [across, down] = [x(end[0]), y(end[1])];
      const ends = named === 'left' || named === 'over';
      const from = ends ? across + (named === 'left' ? -7 : 2) : Math.min(across + { right: 9, above: -4 }[named], WIDTH - 2 - widest([{ series, lines }]));
      const first = named === 'left' ? down + 13 : down - (named === 'right' && from > across ? 3 : named === 'over' ? 6 : 9) - (lines.length - 1) * LINE;
      return lines.map((line, row) => textAt(from, first + row * LINE, line, { anchor: ends ? 'end' : 'start', className: `halo ${inkOf(series)}` }));
    })
    .join('');
}
