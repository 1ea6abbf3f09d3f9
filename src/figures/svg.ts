/** The few means every drawing shares: escaping, rounding, scales, ticks, and the frame with its title and description. */
import type { Style } from '../tables/display.ts';

export type Scale = (value: number) => number;
export type Point = readonly [number, number];

/** Text made safe for HTML and SVG, in elements and in attributes. */
export const escape = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** A coordinate with at most one decimal, so that the same drawing has the same bytes everywhere. */
export const round = (value: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`A drawing was given ${value} as a coordinate.`);
  const rounded = Math.round(value * 10) / 10;
  return String(rounded === 0 ? 0 : rounded);
};

/** A linear scale from a range of data to a range of coordinates. */
export const linear = (domain: readonly [number, number], range: readonly [number, number]): Scale => {
  const width = domain[1] - domain[0] || 1;
  return (value) => range[0] + ((value - domain[0]) / width) * (range[1] - range[0]);
};

/** Lowest and highest of the values. Throws RangeError where there are none. */
export const extent = (values: readonly number[]): readonly [number, number] => {
  if (values.length === 0) throw new RangeError('A drawing was given no data.');
  let low = Infinity;
  let high = -Infinity;
  for (const value of values) {
    if (!Number.isFinite(value)) throw new RangeError(`A drawing was given ${value} among its data.`);
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return [low, high];
};

const tickStep = (span: number, count: number): number => {
  const rough = span / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const factor = [1, 2, 5, 10].find((candidate) => candidate * power >= rough * 0.999) ?? 10;
  return factor * power;
};

/** Round tick values (1, 2 or 5 times a power of ten) inside a range; about `count` of them. */
export const ticks = ([low, high]: readonly [number, number], count: number): number[] => {
  if (high <= low) return [low];
  const step = tickStep(high - low, count);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toPrecision(12)));
};

/** Of a step: what a curve may reach past the last tick, less than its own line is wide. */
const PAST_TICK = 0.02;

/** The range widened to whole ticks, so that no curve leaves the frame unlabelled; a trace of overshoot asks for no further tick. */
export const wholeTicks = ([low, high]: readonly [number, number], count: number): readonly [number, number] => {
  if (high <= low) return [low - 1, high + 1];
  const step = tickStep(high - low, count);
  const clean = (value: number): number => Number((value * step).toPrecision(12));
  return [clean(Math.floor(low / step + PAST_TICK)), clean(Math.ceil(high / step - PAST_TICK))];
};

/** A number as printed at a tick: a true minus, a space in thousands from 10 000, the decimal sign of the page's language. */
export const tickText = (value: number, { decimal }: Style): string => {
  const plain = String(Math.abs(value));
  const [whole = '', decimals] = plain.split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, ' ') : whole;
  return `${value < 0 ? '−' : ''}${grouped}${decimals === undefined ? '' : decimal + decimals}`;
};

/** A value to one decimal: a true minus, none before a zero. */
export const tenths = (value: number, { decimal }: Style): string => {
  const text = Math.abs(value).toFixed(1);
  return `${value < 0 && text !== '0.0' ? '−' : ''}${text.replace('.', decimal)}`;
};

/** Estimated width of a line of the sheet's sans serif, in the units of `size`; errs on the wide side. */
export const textWidth = (text: string, size: number): number => [...text].length * size * 0.56;

/** Points as the data of a path; the gaps of a coarse drawing are not smoothed over. */
export const pathData = (points: readonly Point[]): string =>
  points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');

/**
 * The points a drawing needs: those left out lie within `tolerance` of the line through their neighbors.
 * Source: Douglas and Peucker (1973), Cartographica 10(2), 112–122.
 */
export const simplify = (points: readonly Point[], tolerance = 0.2): Point[] => {
  const kept = new Uint8Array(points.length);
  kept[0] = kept[points.length - 1] = 1;
  const open: [number, number][] = [[0, points.length - 1]];
  for (let part = open.pop(); part; part = open.pop()) {
    const middle = farthest(points, part[0], part[1], tolerance);
    if (middle === undefined) continue;
    kept[middle] = 1;
    open.push([part[0], middle], [middle, part[1]]);
  }
  return points.filter((_, index) => kept[index] === 1);
};

/** Of the points between two the one farthest off the straight line through them; undefined where none is off by more than `tolerance`. */
const farthest = (points: readonly Point[], first: number, last: number, tolerance: number): number | undefined => {
  const start = points[first]!;
  const [sx, sy] = [start[0], start[1]];
  const [dx, dy] = [points[last]![0] - sx, points[last]![1] - sy];
  const length = Math.hypot(dx, dy);
  let found: number | undefined;
  let most = tolerance;
  for (let index = first + 1; index < last; index += 1) {
    const point = points[index]!;
    const px = point[0] - sx;
    const py = point[1] - sy;
    const off = length === 0 ? Math.hypot(px, py) : Math.abs(dy * px - dx * py) / length;
    if (off > most) {
      found = index;
      most = off;
    }
  }
  return found;
};

/** Positions moved apart to keep `gap` between neighbors and to stay within bounds; order is kept. */
export const spread = (wanted: readonly number[], gap: number, [low, high]: readonly [number, number]): number[] => {
  const order = wanted.map((value, index) => ({ value, index })).sort((a, b) => a.value - b.value || a.index - b.index);
  const placed: number[] = [];
  for (const { value } of order) placed.push(Math.max(value, low, (placed.at(-1) ?? -Infinity) + gap));
  let ceiling = high;
  for (let index = placed.length - 1; index >= 0; index -= 1) {
    placed[index] = Math.min(placed[index] ?? ceiling, ceiling);
    ceiling = (placed[index] ?? ceiling) - gap;
  }
  const result = new Array<number>(wanted.length);
  order.forEach(({ index }, rank) => (result[index] = placed[rank] ?? 0));
  return result;
};

export interface Frame {
  /** Unique on the page. */
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly description: string;
  readonly className: string;
  /** A drawing that holds links is a group to readers of the screen; any other is one image. */
  readonly role?: 'img' | 'group';
}

/** A whole drawing: the frame with title and description around its content. */
export const drawing = (frame: Frame, content: string): string =>
  `<svg class="${frame.className}" viewBox="0 0 ${round(frame.width)} ${round(frame.height)}" role="${frame.role ?? 'img'}" aria-labelledby="${frame.id}-title ${frame.id}-desc" font-family="IBM Plex Sans, Helvetica, Arial, sans-serif" font-size="13" fill="currentColor">` +
  `<title id="${frame.id}-title">${escape(frame.title)}</title><desc id="${frame.id}-desc">${escape(frame.description)}</desc>${content}</svg>`;

export interface TextStyle {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly size?: number;
  readonly className?: string;
  readonly bold?: boolean;
}

/** One line of text. */
export const textAt = (x: number, y: number, text: string, style: TextStyle = {}): string => {
  const attributes = [
    `x="${round(x)}" y="${round(y)}"`,
    style.anchor && style.anchor !== 'start' ? `text-anchor="${style.anchor}"` : '',
    style.size ? `font-size="${style.size}"` : '',
    style.bold ? 'font-weight="600"' : '',
    style.className ? `class="${style.className}"` : '',
  ];
  return `<text ${attributes.filter(Boolean).join(' ')}>${escape(text)}</text>`;
};

/** A straight line. Kinds: `axis`, `grid`, `ink`, `lead`; each with a fallback for paper without the stylesheet. */
export const lineAt = (kind: 'axis' | 'grid' | 'ink' | 'lead', x1: number, y1: number, x2: number, y2: number): string => {
  const fallback = { axis: '#5d7268', grid: '#cfdad4', ink: 'currentColor', lead: '#5d7268' }[kind];
  const width = kind === 'ink' ? 1.5 : kind === 'axis' ? 1 : 0.75;
  return `<path class="${kind}" d="M${round(x1)} ${round(y1)}L${round(x2)} ${round(y2)}" fill="none" stroke="${fallback}" stroke-width="${width}"/>`;
};
