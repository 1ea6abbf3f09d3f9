import { describe, expect, test } from 'vitest';
import { renderCurve, renderPath, renderRunChart, renderSetup, renderSign, SIGNS, type Setup } from '../../src/figures/index.ts';
import { STYLES } from '../../src/tables/display.ts';
import { SIGN_TEXTS, type SignNumber } from '../../src/texts/index.ts';
import { box, collisions, curve, drawings, labels, run, setup, span } from './data.ts';

const path = renderPath({ id: 'p', title: 'Path', pressure: [1003, 953, 803], temperatureClear: [21, 16.7, 2.9], temperatureCloudy: [21, 18.9, 12.5] }, STYLES.en);
const [wide = '', tall = ''] = drawings(renderRunChart(run));
const [wideTaught = ''] = drawings(renderRunChart({ ...run, teachers: true }));

const setups: Partial<Setup>[] = [
  {},
  { shape: 'sphere', source: 'pressurise', gauge: 'digital', thermometer: 'thermocouple', lightFrom: 'back' },
  { source: 'squeeze', thermometer: 'digital', lightFrom: 'front' },
  { shape: 'sphere', source: 'steady-pump' },
];

const every: readonly (readonly [string, string])[] = [
  ['curve', renderCurve(curve, STYLES.en)],
  ['path', path],
  ['run chart along', wide],
  ['run chart downward', tall],
  ['run chart for teachers', wideTaught],
  ...setups.flatMap((change, index) => drawings(renderSetup({ ...setup, ...change })).map((svg, view) => [`set-up ${index + 1}, view ${view + 1}`, svg] as const)),
];

describe.each(every)('%s', (_, svg) => {
  test('has a name and a description that it points to', () => {
    const [, title, desc] = /aria-labelledby="(\S+) (\S+)"/.exec(svg) ?? [];
    expect(svg).toMatch(new RegExp(`<title id="${title}">[^<]+</title>`));
    expect(svg).toMatch(new RegExp(`<desc id="${desc}">[^<]{20,}</desc>`));
  });

  test('holds no style, script or broken number', () => {
    expect(svg).not.toMatch(/ style=|<style|<script|NaN|undefined|Infinity/);
  });

  test('keeps its text inside its frame', () => {
    const [width, height] = box(svg);
    for (const label of labels(svg)) {
      const [left, right] = span(label);
      expect(left, label.text).toBeGreaterThanOrEqual(-1);
      expect(right, label.text).toBeLessThanOrEqual(width + 1);
      expect(label.y, label.text).toBeGreaterThanOrEqual(label.size * 0.7);
      expect(label.y, label.text).toBeLessThanOrEqual(height);
    }
  });

  test('lays no text on other text', () => {
    expect(collisions(svg)).toEqual([]);
  });
});

describe('curve', () => {
  const svg = renderCurve(curve, STYLES.en);

  test('draws one line for each series, with all of its points', () => {
    const counts = [...svg.matchAll(/class="curve-line[^"]*" d="([^"]*)"/g)].map(([, d = '']) => d.split(/[ML]/).length - 1);
    expect(counts).toEqual(curve.series.map((series) => series.points.length));
  });

  test('tells series apart without color', () => {
    const dashes = [...svg.matchAll(/class="curve-line[^>]*?(?:stroke-dasharray="([^"]*)"[^>]*)?\/>/g)].map(([, dash]) => dash ?? '');
    expect(new Set(dashes.slice(0, 3)).size).toBe(3);
  });

  test('puts the unit on each axis', () => {
    const texts = labels(svg).map(({ text }) => text);
    expect(texts).toContain('Temperature, °C');
    expect(texts).toContain('Drop below the room, kPa');
  });

  test('names a curve at its right end, also where its points run leftward', () => {
    const series = [{ label: 'late', stroke: 'solid', points: [[0, 0], [10, 10]] }, { label: 'early', stroke: 'solid', points: [[10, 0], [0, 10]] }] as const;
    const texts = labels(renderCurve({ ...curve, series, marks: [] }, STYLES.en));
    const height = (text: string): number => texts.find((label) => label.text === text)?.y ?? Number.NaN;
    expect(height('early') - height('late')).toBeGreaterThan(200);
  });

  test('stays small', () => {
    expect(svg.length).toBeLessThan(6000);
  });

  test.each([
    ['no points', { ...curve, series: [{ label: 'a', stroke: 'solid', points: [] }] }],
    ['a point that is no number', { ...curve, series: [{ label: 'a', stroke: 'solid', points: [[0, Number.NaN]] }] }],
  ] as const)('refuses %s', (_, broken) => {
    expect(() => renderCurve(broken, STYLES.en)).toThrow(RangeError);
  });
});

describe('in Spanish', () => {
  const style = STYLES.es;
  const spanish: readonly (readonly [string, string])[] = [
    ['curve', renderCurve({ ...curve, series: curve.series.map((series) => ({ ...series, points: series.points.map(([x, y]) => [x / 40, y / 40] as const) })), marks: [] }, style)],
    ['path', renderPath({ id: 'p', title: 'Camino', pressure: [1003, 953, 803], temperatureClear: [21, 16.7, 2.9], temperatureCloudy: [21, 18.9, 12.5] }, style)],
    ...drawings(renderRunChart({ ...run, style, teachers: true })).map((svg, i) => [`run chart ${i + 1}`, svg] as const),
    ...setups.flatMap((change, i) => drawings(renderSetup({ ...setup, language: 'es', ...change })).map((svg, view) => [`set-up ${i + 1}, view ${view + 1}`, svg] as const)),
  ];

  test.each(spanish)('%s keeps its text in its frame and apart', (_, svg) => {
    const [width] = box(svg);
    for (const label of labels(svg)) {
      const [left, right] = span(label);
      expect(left, label.text).toBeGreaterThanOrEqual(-1);
      expect(right, label.text).toBeLessThanOrEqual(width + 1);
      expect(label.text).not.toMatch(/\d\.\d/);
    }
    expect(collisions(svg)).toEqual([]);
  });

  test('reads its numbers with a comma', () => {
    expect(renderRunChart({ ...run, style })).toContain('<td>−20,0</td><td>19,4</td>');
    expect(renderRunChart({ ...run, style })).toContain('El manómetro va de −20,0 a 0,0 kPa');
  });
});

describe('run chart', () => {
  test('links every step to its anchor, in both drawings', () => {
    for (const svg of [wide, tall]) {
      expect([...svg.matchAll(/<a class="step-link" href="#([^"]+)"/g)].map(([, anchor]) => anchor)).toEqual(run.steps.map(({ anchor }) => anchor));
    }
  });

  test('holds no links where none are asked for', () => {
    expect(renderRunChart({ ...run, linkSteps: false })).not.toContain('<a ');
  });

  test('puts every step at its minute on the axis of the readings', () => {
    const starts = [...wide.matchAll(/<rect class="bar(?:-full)?" x="([\d.]+)"/g)].map(([, x]) => Number(x));
    const tick = (minute: string): number => labels(wide).find(({ text, anchor }) => text === minute && anchor === 'middle')?.x ?? Number.NaN;
    const perMinute = (tick('30') - tick('0')) / 30;
    run.steps.forEach((step, index) => expect(starts[index]).toBeCloseTo(tick('0') + (step.at / 60) * perMinute, 0));
  });

  test('shows the temperature of the air itself to teachers only', () => {
    expect(renderRunChart(run)).not.toMatch(/air itself|Air at its end|>12\.5</);
    expect(renderRunChart({ ...run, teachers: true })).toMatch(/air itself/);
  });

  test('gives the same run as a table, read at the end of each step', () => {
    const rows = [...renderRunChart(run).matchAll(/<tr><th scope="row">(.*?)<\/tr>/g)].map(([, row = '']) => row);
    expect(rows).toHaveLength(run.steps.length);
    expect(rows[2]).toBe('3 Pump</th><td>10 min</td><td>−20.0</td><td>19.4</td>');
    expect(rows[5]).toBe('6 Explain what was seen</th><td>25 min</td><td>0.0</td><td>21.0</td>');
  });

  test('escapes what authors write', () => {
    expect(wide).toContain('1 Hook &amp; ideas');
  });

  test('keeps the corners of a long run and leaves out what lies on a line', () => {
    const [, gauge = ''] = /class="curve-line" d="([^"]*)"/.exec(wide) ?? [];
    expect(gauge.split(/[ML]/).slice(1)).toHaveLength(6);
    expect(wide.length).toBeLessThan(9000);
  });

  test('has a further tick for a gauge above the room, but not for a trace of it', () => {
    const words = (above: number): string[][] => {
      const gauge = run.series.gauge.map((value, index) => (index === 900 ? above : value));
      return drawings(renderRunChart({ ...run, series: { ...run.series, gauge } })).map((svg) => labels(svg).map(({ text }) => text));
    };
    expect(words(0.05)).toEqual(words(0));
    for (const [index, texts] of words(4).entries()) expect(texts).not.toEqual(words(0)[index]);
  });

  test('refuses series of unequal length', () => {
    expect(() => renderRunChart({ ...run, series: { ...run.series, gauge: [0] } })).toThrow(RangeError);
  });
});

describe('path', () => {
  test('names both quantities with their units and both ways', () => {
    expect(labels(path).map(({ text }) => text)).toEqual(expect.arrayContaining(['Pressure, hPa', 'Temperature, °C', 'clear', 'cloudy', '1003', '803', '3', '21']));
  });

  test('refuses a temperature without a pressure', () => {
    expect(() => renderPath({ id: 'p', title: 'Path', pressure: [1003], temperatureClear: [21, 3], temperatureCloudy: [21] }, STYLES.en)).toThrow(RangeError);
  });
});

describe('set-up', () => {
  test.each(setups)('numbers its parts as the list beside it does: %o', (change) => {
    const given = { ...setup, ...change };
    const html = renderSetup(given);
    const listed = [...html.matchAll(/<li>(.*?)<\/li>/g)].map(([, text]) => text);
    expect(listed).toEqual([given.vessel, given.thermometerLabel, given.gaugeLabel, given.valveLabel, given.sourceLabel, `${given.light}, from the ${given.lightFrom}`, given.backing]);
    const numbers = drawings(html).map((svg) => labels(svg).map(({ text }) => text).filter((text) => /^\d$/.test(text)).map(Number).sort());
    expect(numbers).toEqual([[1, 2, 3, 4, 5], [1, 6, 7]]);
    expect(html).toContain(`The light (6) comes from the ${given.lightFrom}`);
  });

  test('draws each kind of part differently', () => {
    const side = (change: Partial<Setup>): string => (drawings(renderSetup({ ...setup, ...change }))[0] ?? '').replace(/<desc.*?<\/desc>/, '');
    const changes: Partial<Setup>[] = [{}, { shape: 'sphere' }, { gauge: 'digital' }, { thermometer: 'thermocouple' }, { thermometer: 'digital' }, { source: 'steady-pump' }, { source: 'squeeze' }, { source: 'pressurise' }];
    expect(new Set(changes.map(side)).size).toBe(changes.length);
  });
});

/** Shapes and colors by category: ISO 3864-1:2011, table 1 (from memory). */
const SHAPES = {
  W: ['warning', /<path d="M50 7 96 89H4z" fill="#f9a800" stroke="#000"/],
  P: ['prohibition', /<circle cx="50" cy="50" r="43" fill="#fff" stroke="#9b2423"/],
  M: ['mandatory', /<circle cx="50" cy="50" r="48" fill="#005387"\/>/],
  E: ['safe-condition', /<rect x="3" y="3" width="94" height="94" fill="#237f52"\/>/],
  F: ['fire-equipment', /<rect x="3" y="3" width="94" height="94" fill="#9b2423"\/>/],
} as const;

describe('signs', () => {
  /** Numbers and referents: ISO 7010:2019 (from memory, our wording; P003, M004, M013 and W021 also as cited in Italian D.lgs. 81/2008 practice). */
  test.each([
    ['W001', /^Warning$/], ['W011', /slippery/i], ['W012', /electricity/i], ['W017', /hot surface/i], ['W021', /flammable/i], ['W027', /optical radiation/i], ['W029', /pressurized/i],
    ['P002', /smoking/i], ['P003', /open flame/i], ['M002', /instructions/i], ['M003', /ear protection/i], ['M004', /eye protection/i], ['M009', /gloves/i], ['M013', /face shield/i],
    ['E003', /first aid/i], ['E011', /eyewash/i], ['F001', /extinguisher/i],
  ] as const)('%s means what the standard says', (number, meaning) => {
    expect(SIGN_TEXTS.en[number]).toMatch(meaning);
  });

  test.each(Object.keys(SIGNS) as SignNumber[])('%s has the shape and colors of its category', (number) => {
    const svg = renderSign(number, 'en');
    const [kind, ground] = SHAPES[number[0] as keyof typeof SHAPES];
    expect(SIGNS[number].kind).toBe(kind);
    expect(svg).toMatch(ground);
    expect(svg).toContain(`(ISO 7010 ${number})</title>`);
    expect(svg).not.toMatch(/ style=|<style|NaN/);
  });

  test('a prohibition is struck through above its symbol', () => {
    expect(renderSign('P003', 'en')).toMatch(/<path d="M20 20 80 80" stroke="#9b2423"[^>]*\/><\/svg>$/);
  });

  test('refuses a number that is not drawn, naming those that are', () => {
    expect(() => renderSign('X999', 'en')).toThrow(/W001/);
  });
});
