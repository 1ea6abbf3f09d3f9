/** Figures in the units that a reader meets first. Conversions: NIST SP 811 (2008), appendix B.8. */
import { describe, expect, it } from 'vitest';
import { renderCurve } from '../../src/figures/index.ts';
import { renderLiveRun } from '../../src/sheets/html/live.ts';
import { renderLiveSetup } from '../../src/sheets/html/setup.ts';
import { curveOf } from '../../src/sheets/html/table.ts';
import { STYLES, TABLE_KINDS, type Curve, type Style } from '../../src/tables/index.ts';
import { LANGUAGES } from '../../src/texts/index.ts';
import { certain } from '../tables/conditions.ts';
import { box, collisions, drawings, labels, span } from './data.ts';

/** From the metric unit to the customary one. */
const CUSTOMARY: Readonly<Record<string, readonly [unit: string, convert: (value: number) => number]>> = {
  '°C': ['°F', (t) => 1.8 * t + 32],
  kPa: ['inHg', (p) => p / 3.386389],
  m: ['ft', (z) => z / 0.3048],
};
const unchanged = (unit: string): readonly [string, (value: number) => number] => [unit, (value) => value];
const customary = (style: Style): Style => ({ ...style, customary: true });
const close = (value: number): unknown => expect.closeTo(value, 4);

const curves = TABLE_KINDS.flatMap((kind) => {
  const drawn = (style: Style): Curve | undefined => curveOf(kind, { at: {} }, certain, 'one', style);
  return drawn(STYLES.en) === undefined ? [] : [{ name: kind.kind, drawn: (style: Style) => drawn(style)! }];
});

it('there are figures whose axes have a customary unit', () => {
  const units = curves.flatMap(({ drawn }) => [drawn(STYLES.en).x.unit, drawn(STYLES.en).y.unit]);
  for (const unit of Object.keys(CUSTOMARY)) expect(units).toContain(unit);
});

describe.each(curves)('$name', ({ drawn }) => {
  it('has the reader’s units on its axes, and its points and marks in them', () => {
    const [metric, other] = [drawn(STYLES.en), drawn(customary(STYLES.en))];
    const [x, y] = [metric.x.unit, metric.y.unit].map((unit) => CUSTOMARY[unit] ?? unchanged(unit)) as [readonly [string, (value: number) => number], readonly [string, (value: number) => number]];
    expect([other.x.unit, other.y.unit]).toEqual([x[0], y[0]]);
    for (const [i, { points }] of metric.series.entries()) expect(other.series[i]!.points).toEqual(points.map(([a, b]) => [close(x[1](a)), close(y[1](b))]));
    expect((other.marks ?? []).map((mark) => mark.x)).toEqual((metric.marks ?? []).map((mark) => close(x[1](mark.x))));
  });

  it.each(LANGUAGES)('keeps its text in its frame and apart in them: %s', (language) => {
    const style = customary(STYLES[language]);
    const svg = renderCurve(drawn(style), style);
    const [width] = box(svg);
    for (const label of labels(svg)) {
      const [left, right] = span(label);
      expect(left, label.text).toBeGreaterThanOrEqual(-1);
      expect(right, label.text).toBeLessThanOrEqual(width + 1);
      expect(label.text).not.toMatch(/°C|kPa/);
    }
    expect(collisions(svg)).toEqual([]);
  });
});

describe('the run chart', () => {
  const steps = [
    { at: 0, duration: 60, title: 'Look', action: 'talk', anchor: 'step-1' },
    { at: 60, duration: 60, title: 'Pump', action: 'pump', anchor: 'step-2', drop: 20_000 },
    { at: 120, duration: 60, title: 'Open', action: 'vent', anchor: 'step-3' },
  ];
  const html = (style: Style): string => renderLiveRun({ id: 'r', minutes: 3, teachers: true, steps }, certain, style);
  const cells = (text: string): number[] => [...text.matchAll(/<td>(−?[\d.]+)<\/td>/g)].map(([, number = '']) => Number(number.replace('−', '-')));

  it('has gauge and thermometer in the reader’s units, in drawings, table and description', () => {
    const metric = html(STYLES.en);
    const other = html(customary(STYLES.en));
    expect(metric).toMatch(/Gauge, kPa against the room.*Thermometer, °C/s);
    expect(other).toMatch(/Gauge, inHg against the room.*Thermometer, °F/s);
    expect(other).not.toMatch(/kPa|°C/);
    const [kilopascal, celsius, gas] = cells(metric).slice(3, 6);
    const [inches, fahrenheit, gasFahrenheit] = cells(other).slice(3, 6);
    expect(kilopascal).toBeLessThan(-15);
    expect(inches).toBeCloseTo(kilopascal! / 3.386389, 0);
    expect(Math.abs(fahrenheit! - (1.8 * celsius! + 32))).toBeLessThan(0.15);
    expect(Math.abs(gasFahrenheit! - (1.8 * gas! + 32))).toBeLessThan(0.15);
  });

  it.each(LANGUAGES)('lays no text on other text in them: %s', (language) => {
    for (const svg of drawings(html(customary(STYLES[language])))) expect(collisions(svg)).toEqual([]);
  });
});

describe('the set-up drawing', () => {
  it('has the rating in the reader’s units', () => {
    expect(renderLiveSetup('s', certain, STYLES.en)).toMatch(/rated from −?[\d.]+\skPa/);
    expect(renderLiveSetup('s', certain, customary(STYLES.en))).toMatch(/rated from −?[\d.]+\sinHg/);
  });

  it('breaks no line between a number and its unit', () => {
    const parts = renderLiveSetup('s', certain, STYLES.en).match(/<ol class="parts">.*<\/ol>/)![0];
    expect(parts).toMatch(/\d\u00a0kPa/);
    expect(parts).not.toMatch(/\d (?:kPa|L|mL)\b/);
  });

  it('says how fine the gauge is in the unit that stands on it', () => {
    expect(renderLiveSetup('s', certain, customary(STYLES.en))).toMatch(/gauge in kPa, read to [\d.]+\skPa/);
  });

  it('is that of the vessel in the conditions', () => {
    const { vessel } = certain.apparatus;
    const sphere = renderLiveSetup('s', { ...certain, apparatus: { ...certain.apparatus, vessel: { ...vessel, shape: 'sphere', volume: 0.003 } } }, STYLES.en);
    expect(sphere).toContain('A closed sphere (1)');
    expect(sphere).toMatch(/ sphere, 3\sL, /);
    expect(renderLiveSetup('s', certain, STYLES.en)).toContain(`A closed ${vessel.shape} (1)`);
  });
});
