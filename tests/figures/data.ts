/** Data and readings of SVG text shared by the drawings' tests. */
import type { RunChart, Setup } from '../../src/figures/index.ts';
import type { Curve } from '../../src/tables/curve.ts';
import { STYLES } from '../../src/tables/display.ts';

export const curve: Curve = {
  id: 'steps',
  title: 'Temperature against drop of pressure',
  description: 'Both fall; with droplets by less.',
  x: { label: 'Drop below the room', unit: 'kPa' },
  y: { label: 'Temperature', unit: '°C' },
  series: [
    { label: 'without droplets', stroke: 'dashed', points: [[0, 21], [5, 16.7], [10, 12.3], [20, 2.9]] },
    { label: 'with droplets, as it happens where there are particles', stroke: 'solid', accent: true, points: [[0, 21], [5, 18.9], [20, 12.5]] },
    { label: 'what the thermometer shows', stroke: 'dotted', points: [[0, 21], [20, 20.9]] },
    { label: 'the room', stroke: 'solid', points: [[0, 21], [20, 21]] },
  ],
  marks: [{ x: 0.5, label: 'cloud may form' }, { x: 20, label: 'planned drop' }],
};

const time = Array.from({ length: 1801 }, (_, index) => index);
const low = (t: number): boolean => t >= 600 && t < 700;

export const run: RunChart = {
  id: 'kit-run',
  minutes: 30,
  linkSteps: true,
  teachers: false,
  style: STYLES.en,
  units: { gauge: 'kPa', temperature: '°C' },
  series: {
    time,
    gauge: time.map((t) => (low(t) ? -20 : 0)),
    thermometer: time.map((t) => (low(t) ? 19.4 : 21)),
    gas: time.map((t) => (low(t) ? 12.5 : 21)),
  },
  steps: [
    { at: 0, duration: 300, title: 'Hook & ideas', action: 'talk', anchor: 'step-1' },
    { at: 300, duration: 290, title: 'Predict what the gauge will show', action: 'predict', anchor: 'step-2' },
    { at: 600, duration: 30, title: 'Pump', action: 'pump', anchor: 'step-3' },
    { at: 630, duration: 60, title: 'Hold and look', action: 'hold', anchor: 'step-4' },
    { at: 690, duration: 10, title: 'Let the air in', action: 'vent', anchor: 'step-5' },
    { at: 1500, duration: 300, title: 'Explain what was seen', action: 'talk', anchor: 'step-6' },
  ],
};

export const setup: Setup = {
  language: 'en',
  title: 'The set-up',
  shape: 'cylinder',
  vessel: 'polycarbonate cylinder, 5.0 L, rated from −85 kPa to +20 kPa',
  source: 'stroke-pump',
  sourceLabel: 'hand pump, 75 mL a stroke',
  gauge: 'dial',
  gaugeLabel: 'dial gauge in kPa, read to 1 kPa',
  thermometer: 'stem',
  thermometerLabel: 'stem thermometer, bulb at half height',
  valveLabel: 'ball valve',
  light: 'LED torch',
  lightFrom: 'side',
  backing: 'black card',
};

/** The drawings in a text, whole. */
export const drawings = (html: string): string[] => html.match(/<svg[\s\S]*?<\/svg>/g) ?? [];

/** Width and height of a drawing. */
export const box = (svg: string): readonly [number, number] => {
  const found = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg);
  if (!found) throw new Error('a drawing without viewBox');
  return [Number(found[1]), Number(found[2])];
};

export interface Label {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly anchor: string;
  readonly text: string;
}

/** Every line of text of a drawing, with where it stands. */
export const labels = (svg: string): Label[] =>
  [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, attributes = '', text = '']) => {
    const read = (name: string): string | undefined => new RegExp(`${name}="([^"]*)"`).exec(attributes)?.[1];
    return { x: Number(read('x')), y: Number(read('y')), size: Number(read('font-size') ?? 13), anchor: read('text-anchor') ?? 'start', text };
  });

/** Left and right end of a line of text; a sans serif's characters are on average about half as wide as its size. */
export const span = (label: Label): readonly [number, number] => {
  const width = [...label.text.replace(/&[a-z]+;/g, '&')].length * label.size * 0.5;
  const left = label.anchor === 'end' ? label.x - width : label.anchor === 'middle' ? label.x - width / 2 : label.x;
  return [left, left + width];
};

/** Pairs of lines of text that lie on each other. */
export const collisions = (svg: string): string[] => {
  const all = labels(svg);
  return all.flatMap((one, index) =>
    all.slice(index + 1).flatMap((other) => {
      const [left, right] = span(one);
      const [otherLeft, otherRight] = span(other);
      const clear = right <= otherLeft || otherRight <= left || Math.abs(one.y - other.y) >= Math.min(one.size, other.size) * 0.85;
      return clear ? [] : [`${one.text} / ${other.text}`];
    }),
  );
};
