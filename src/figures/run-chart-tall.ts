/** The run chart down the page, for narrow screens: time downward, gauge and thermometer as two narrow strips, steps beside them. */
import type { Style } from '../tables/display.ts';
import { RUN_TEXTS } from '../texts/index.ts';
import { linked, movesAir, type PreparedRun } from './run.ts';
import { drawing, extent, linear, lineAt, pathData, round, simplify, spread, textAt, textWidth, ticks, tickText, wholeTicks, type Scale } from './svg.ts';

const WIDTH = 328;
const TOP = 44;
const MINUTES = 28;
const STRIP = 62;
const GAP = 16;
const SIZE = 13;
/** Distance of the steps' labels: a finger's target. */
const PITCH = 26;

const strip = (left: number, domain: readonly [number, number], name: string, unit: string, floor: number, style: Style): { readonly x: Scale; readonly frame: string } => {
  const x = linear(domain, [left, left + STRIP]);
  const frame =
    domain.map((tick, index) => lineAt('grid', x(tick), TOP, x(tick), floor) + textAt(x(tick), TOP - 6, tickText(tick, style), { size: 11.5, anchor: index === 0 ? 'start' : 'end' })).join('') +
    textAt(left, TOP - 32, name, { size: 11.5, bold: true }) +
    textAt(left, TOP - 20, unit, { size: 11.5 });
  return { x, frame };
};

const trace = (time: readonly number[], values: readonly number[], x: Scale, y: Scale, accent: boolean, dashes = ''): string =>
  `<path class="curve-line${accent ? ' accent' : ''}" d="${pathData(simplify(time.map((t, index) => [x(values[index] ?? 0), y(t)] as const)))}" fill="none" stroke="${accent ? '#5b2188' : 'currentColor'}" stroke-width="${accent ? 2 : 1.6}" stroke-linejoin="round"${dashes}/>`;

/** A title cut to two lines that fit the width; the second ends in an ellipsis where words are left over. */
const twoLines = (title: string, width: number): string[] => {
  const lines = [''];
  for (const word of title.split(' ')) {
    const last = lines.at(-1) ?? '';
    const longer = last === '' ? word : `${last} ${word}`;
    if (textWidth(longer, SIZE) <= width || last === '') lines[lines.length - 1] = longer;
    else if (lines.length < 2) lines.push(word);
    else return [lines[0] ?? '', `${last}…`];
  }
  return lines;
};

/** The drawing for narrow screens. */
export const tallRunChart = (run: PreparedRun): string => {
  const { time, gauge, thermometer } = run.series;
  const { style } = run;
  const said = RUN_TEXTS[style.language];
  const end = run.minutes * 60;
  const stepsLeft = MINUTES + 2 * (STRIP + GAP) + 6;
  const textLeft = stepsLeft + 20;
  const titles = run.steps.map((step, index) => twoLines(`${index + 1} ${step.title}`, WIDTH - textLeft));
  const pitch = titles.some((lines) => lines.length > 1) ? PITCH + 10 : PITCH;
  const length = Math.max(run.minutes * 13, (run.steps.length + 1) * pitch);
  const floor = TOP + length;
  const y = linear([0, end], [TOP, floor]);
  const gaugeStrip = strip(MINUTES, wholeTicks(extent([...gauge, 0]), 2), said.gauge, run.units.gauge, floor, style);
  const warmStrip = strip(MINUTES + STRIP + GAP, wholeTicks(extent(run.gas ? [...thermometer, ...run.gas] : thermometer), 2), said.thermometer, run.units.temperature, floor, style);
  const places = spread(run.steps.map((step) => y(step.at) + 8), pitch, [TOP + 8, floor]);

  const minutes = ticks([0, run.minutes], 10)
    .map((tick) => lineAt('grid', MINUTES - 5, y(tick * 60), stepsLeft, y(tick * 60)) + textAt(MINUTES - 8, y(tick * 60) + 4.5, tickText(tick, style), { anchor: 'end', size: 11.5 }))
    .join('');
  const steps = run.steps.map((step, index) => {
    const place = places[index] ?? 0;
    const [y0, y1] = [y(step.at), y(Math.min(step.at + step.duration, end))];
    const bar = `<rect class="${movesAir(step) ? 'bar-full' : 'bar'}" x="${stepsLeft - 4}" y="${round(y0)}" width="8" height="${round(Math.max(y1 - y0 - 1, 1.5))}" fill="${movesAir(step) ? 'currentColor' : 'none'}" stroke="currentColor" stroke-width="0.75"/>`;
    const target = `<rect class="target" x="${textLeft - 4}" y="${round(place - 13)}" width="${WIDTH - textLeft + 4}" height="${pitch}" fill="none"/>`;
    const words = (titles[index] ?? []).map((line, row) => textAt(textLeft, place + 4 + row * 14, line, { size: SIZE })).join('');
    return linked(run, step, index + 1, target + bar + lineAt('lead', stepsLeft + 4, y0, textLeft - 4, place) + words);
  });

  const content =
    minutes +
    textAt(0, TOP - 20, 'min', { size: 11.5 }) +
    gaugeStrip.frame +
    warmStrip.frame +
    lineAt('axis', MINUTES, TOP, MINUTES, floor) +
    trace(time, gauge, gaugeStrip.x, y, false) +
    (run.gas ? trace(time, run.gas, warmStrip.x, y, false, ' stroke-dasharray="1.5 3" stroke-linecap="round"') : '') +
    trace(time, thermometer, warmStrip.x, y, true) +
    steps.join('');
  return drawing({ id: `${run.id}-tall`, width: WIDTH, height: floor + 30, title: said.titleDownward, description: run.description, className: 'run-tall', role: run.linkSteps ? 'group' : 'img' }, content);
};
