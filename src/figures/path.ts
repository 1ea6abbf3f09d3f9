/** A kit's own way through pressure and temperature: its picture on the shelf. */
import type { Style } from '../tables/display.ts';
import { PATH_TEXTS } from '../texts/index.ts';
import { drawing, extent, linear, lineAt, pathData, round, textAt, tickText } from './svg.ts';

export interface PathPicture {
  readonly id: string;
  readonly title: string;
  /** hPa absolute, in the order the run passes them */
  readonly pressure: readonly number[];
  /** °C, without droplets; one per pressure */
  readonly temperatureClear: readonly number[];
  /** °C, with droplets; one per pressure */
  readonly temperatureCloudy: readonly number[];
}

const WIDTH = 300;
const HEIGHT = 190;
const LEFT = 46;
const RIGHT = 12;
const TOP = 24;
const BOTTOM = 40;

/**
 * A small pressure–temperature picture; pressure falls upward, as it does in the sky.
 * @returns an `<svg>` with title and description
 * @throws RangeError where the arrays are empty, unequal in length, or hold a value that is not finite
 */
export const renderPath = (picture: PathPicture, style: Style): string => {
  const said = PATH_TEXTS[style.language];
  const whole = (value: number): string => tickText(Math.round(value), style);
  const { pressure, temperatureClear, temperatureCloudy } = picture;
  if (temperatureClear.length !== pressure.length || temperatureCloudy.length !== pressure.length) {
    throw new RangeError('The picture of a path needs one temperature, clear and cloudy, for each pressure.');
  }
  const [lowest, highest] = extent(pressure);
  const [coldest, warmest] = extent([...temperatureClear, ...temperatureCloudy]);
  const x = linear([coldest, warmest], [LEFT + 6, WIDTH - RIGHT - 6]);
  const y = linear([highest, lowest], [HEIGHT - BOTTOM - 6, TOP + 10]);
  const way = (temperatures: readonly number[]): string => pathData(temperatures.map((t, index) => [x(t), y(pressure[index] ?? highest)] as const));
  const topClear = temperatureClear.at(-1) ?? coldest;
  const topCloudy = temperatureCloudy.at(-1) ?? coldest;
  const top = y(pressure.at(-1) ?? lowest);
  const floor = HEIGHT - BOTTOM;

  const content =
    lineAt('axis', LEFT, TOP, LEFT, floor) +
    lineAt('axis', LEFT, floor, WIDTH - RIGHT, floor) +
    [highest, lowest].map((p) => lineAt('axis', LEFT - 4, y(p), LEFT, y(p)) + textAt(LEFT - 7, y(p) + 4, whole(p), { anchor: 'end', size: 12 })).join('') +
    [coldest, warmest].map((t) => lineAt('axis', x(t), floor, x(t), floor + 4) + textAt(x(t), floor + 17, whole(t), { anchor: 'middle', size: 12 })).join('') +
    textAt(0, 12, said.pressure, { size: 12 }) +
    textAt(WIDTH - RIGHT, HEIGHT - 4, said.temperature, { anchor: 'end', size: 12 }) +
    `<path class="curve-line" d="${way(temperatureClear)}" fill="none" stroke="currentColor" stroke-width="1.6" stroke-dasharray="6 4"/>` +
    `<path class="curve-line accent" d="${way(temperatureCloudy)}" fill="none" stroke="#5b2188" stroke-width="2.4"/>` +
    `<circle cx="${round(x(warmest))}" cy="${round(y(highest))}" r="3"/>` +
    textAt(Math.max(x(topClear), LEFT + 6), top - 6, said.clear, { size: 12 }) +
    textAt(Math.min(x(topCloudy), WIDTH - RIGHT), top - 6, said.cloudy, { size: 12, anchor: 'end', className: 'accent-text' });

  return drawing(
    {
      id: picture.id,
      width: WIDTH,
      height: HEIGHT,
      title: picture.title,
      description: said.describe(whole(highest), whole(lowest), whole(warmest), whole(topClear), whole(topCloudy)),
      className: 'path-picture',
    },
    content,
  );
};
