/** A figure of curves over one axis, labelled at the curves themselves. */
import type { Curve, Series } from './curve.ts';
import type { Style } from '../tables/display.ts';
import { drawing, extent, linear, lineAt, pathData, round, spread, textAt, textWidth, ticks, tickText, wholeTicks } from './svg.ts';

const WIDTH = 470;
const HEIGHT = 290;
const TOP = 34;
const BOTTOM = 46;
const LABEL = 13;
const LINE = 16;

const DASHES: Record<Series['stroke'], string> = { solid: '', dashed: ' stroke-dasharray="7 4"', dotted: ' stroke-dasharray="1.5 4" stroke-linecap="round"' };

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

/**
 * A figure as SVG text.
 * @param curve - series in the units of its axes; at least one point in each series
 * @returns an `<svg>` with title and description, axes with units, curves told apart by dashes as well as by color
 * @throws RangeError where a series is empty or holds a value that is not finite
 */
export const renderCurve = (curve: Curve, style: Style): string => {
  for (const { label, points: own } of curve.series) if (own.length === 0) throw new RangeError(`The curve "${label}" has no points.`);
  const points = curve.series.flatMap((series) => series.points);
  const xDomain = curve.x.range ?? extent(points.map(([x]) => x));
  const yDomain = curve.y.range ?? wholeTicks(extent(points.map(([, y]) => y)), 5);
  const labels = curve.series.map((series) => broken(series.label));
  const gutter = Math.max(...labels.flat().map((line) => textWidth(line, LABEL))) + 16;
  const yTicks = ticks(yDomain, 5);
  const left = Math.max(...yTicks.map((tick) => textWidth(tickText(tick, style), LABEL))) + 14;
  const right = WIDTH - gutter;
  const x = linear(xDomain, [left, right]);
  const y = linear(yDomain, [HEIGHT - BOTTOM, TOP]);

  const yAxis = yTicks.map((tick) => lineAt('grid', left, y(tick), right, y(tick)) + textAt(left - 8, y(tick) + 4.5, tickText(tick, style), { anchor: 'end' })).join('');
  const xAxis = ticks(xDomain, 7)
    .map((tick) => lineAt('axis', x(tick), HEIGHT - BOTTOM, x(tick), HEIGHT - BOTTOM + 5) + textAt(x(tick), HEIGHT - BOTTOM + 19, tickText(tick, style), { anchor: 'middle' }))
    .join('');
  const names =
    textAt(0, 14, withUnit(curve.y.label, curve.y.unit), { bold: true }) +
    textAt(right, HEIGHT - 6, withUnit(curve.x.label, curve.x.unit), { anchor: 'end', bold: true }) +
    lineAt('axis', left, HEIGHT - BOTTOM, right, HEIGHT - BOTTOM);

  const marks = (curve.marks ?? []).map((mark, index) => {
    const at = x(mark.x);
    const onLeft = at + textWidth(mark.label, 12) + 6 > right;
    return (
      `<path class="mark" d="M${round(at)} ${TOP - 6}V${HEIGHT - BOTTOM}" fill="none" stroke="currentColor" stroke-dasharray="2 3"/>` +
      textAt(at + (onLeft ? -5 : 5), TOP + 4 + index * 15, mark.label, { size: 12, anchor: onLeft ? 'end' : 'start', className: 'halo' })
    );
  });

  const drawn = curve.series.map((series) => {
    const data = pathData(series.points.map(([px, py]) => [x(px), y(py)] as const));
    return `<path class="curve-line${series.accent ? ' accent' : ''}" d="${data}" fill="none" stroke="${series.accent ? '#5b2188' : 'currentColor'}" stroke-width="${series.accent ? 2.4 : 1.7}" stroke-linejoin="round"${DASHES[series.stroke]}/>`;
  });

  const rightmost = curve.series.map((series) => series.points.reduce((best, point) => (point[0] > best[0] ? point : best)));
  const ends = rightmost.map(([, value]) => y(value));
  const gap = Math.max(...labels.map((lines) => lines.length)) * LINE;
  const places = spread(ends, gap, [TOP, HEIGHT - BOTTOM - gap + LINE]);
  const direct = curve.series.map((series, index) => {
    const place = places[index] ?? 0;
    const end = rightmost[index];
    const lead = end && Math.abs(place - y(end[1])) > 5 ? lineAt('lead', x(end[0]) + 2, y(end[1]), right + 9, place) : '';
    const lines = labels[index] ?? [];
    return lead + lines.map((line, row) => textAt(right + 12, place + 4.5 + row * LINE, line, { className: series.accent ? 'accent-text' : 'ink-text' })).join('');
  });

  return drawing(
    { id: curve.id, width: WIDTH, height: HEIGHT, title: curve.title, description: curve.description, className: 'plot' },
    yAxis + xAxis + names + marks.join('') + drawn.join('') + direct.join(''),
  );
};
