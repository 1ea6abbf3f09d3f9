/** The vessel's way and the rising parcel's on one chart of pressure and temperature. */
import { describe, expect, it } from 'vitest';
import { renderCurve } from '../../src/figures/index.ts';
import { curveOf } from '../../src/sheets/html/table.ts';
import { stateOf, STYLES, tableKind, valueIn, type Conditions, type Curve, type Series, type Style, type TableRequest } from '../../src/tables/index.ts';
import { CURVE_TEXTS, LANGUAGES, MARKS } from '../../src/texts/index.ts';
import { certain } from '../tables/conditions.ts';
import { box, collisions, labels, span } from './data.ts';

const chart = (request: TableRequest = { at: {} }, conditions: Conditions = certain, style: Style = STYLES.en): Curve =>
  curveOf(tableKind('rising-parcel')!, request, conditions, 'one', style)!;
const [CLEAR, CLOUDY, PARCEL] = [0, 1, 2];
const points = (curve: Curve, index: number): Series['points'] => curve.series[index]!.points;
const withDrop = (plannedDrop: number): Conditions => ({ ...certain, plannedDrop });

/** Over water, hPa: Bolton 1980, Mon. Weather Rev. 108, 1046, eq. 10; 0.3 % from −35 to 35 °C. */
const saturation = (celsius: number): number => 6.112 * Math.exp((17.67 * celsius) / (celsius + 243.5));
/** J/kg: Bolton 1980, eq. 2. */
const latentHeat = (celsius: number): number => (2.501 - 0.00237 * celsius) * 1e6;
/** Temperature of saturation, °C, of air at t °C and a relative humidity in percent: Bolton 1980, eq. 22; within 0.1 K. */
const saturatedAt = (t: number, percent: number): number => 1 / (1 / (t + 273.15 - 55) - Math.log(percent / 100) / 2840) + 55 - 273.15;

const [R, CP_DRY, CP_VAPOR, C_WATER, RATIO] = [287.04, 1005.7, 1870, 4190, 0.622];

/**
 * Temperature, °C, after a rise in small steps: below saturation that of a mixture of gases, above by the reversible
 * saturated lapse rate (Emanuel 1994, Atmospheric Convection, eq. 4.7.3, from memory) with the hydrostatic equation.
 * It differs from what is tested in all: it goes step by step, and takes Bolton's vapor pressure and latent heat.
 */
function risen(t: number, humidity: number, from: number, to: number): number {
  const mixed = (e: number, p: number): number => (RATIO * e) / (p - e);
  const water = mixed(humidity * saturation(t), from);
  const steps = 2000;
  let kelvin = t + 273.15;
  for (let i = 0; i < steps; i++) {
    const p = from * (to / from) ** ((i + 0.5) / steps);
    const vapor = Math.min(water, mixed(saturation(kelvin - 273.15), p));
    const liquid = water - vapor;
    const L = liquid > 0 ? latentHeat(kelvin - 273.15) : 0;
    const perLogPressure =
      (R * kelvin * (1 + vapor / RATIO) * (1 + (L * vapor) / (R * kelvin))) / (CP_DRY + vapor * CP_VAPOR + liquid * C_WATER + (L * L * vapor * (RATIO + vapor)) / (R * kelvin * kelvin));
    kelvin += (perLogPressure * Math.log(to / from)) / steps;
  }
  return kelvin - 273.15;
}

describe('what the chart shows', () => {
  it('the vessel’s line with droplets is that of a rising parcel of its own air, at each pressure', () => {
    const state = stateOf(certain);
    const heights = points(chart(), CLOUDY).map(([, kilopascal]) => valueIn(state, 'parcelHeightSamePressure', { drop: state.startPressure - kilopascal * 1000 }) as number);
    const curve = chart({ at: { air: 'vessel' }, list: heights });
    expect(heights.length).toBeGreaterThan(10);
    for (const [t, p] of points(curve, CLOUDY)) {
      const same = points(curve, PARCEL).find(([, pressure]) => Math.abs(pressure - p) < 1e-6);
      expect(same?.[0], `${p} kPa`).toBeCloseTo(t, 6);
    }
  });

  it('lies within 0.1 K of lapse rates integrated upward: the vessel’s line, and the parcel’s of the room’s air', () => {
    for (const [t, p] of points(chart({ at: {} }, withDrop(35_000)), CLOUDY)) expect(Math.abs(t - risen(20, 0.97, 1000, p * 10)), `vessel, ${p} kPa`).toBeLessThan(0.1);
    for (const [t, p] of points(chart(), PARCEL)) expect(Math.abs(t - risen(20, 0.5, 1000, p * 10)), `parcel, ${p} kPa`).toBeLessThan(0.1);
  });

  it('marks where each is saturated, within 0.15 K of Bolton’s formula', () => {
    const [onset, base] = chart().marks!;
    expect([onset!.label, base!.label]).toEqual([MARKS.en.saturated, MARKS.en.cloudBase]);
    expect(Math.abs(onset!.x - saturatedAt(20, 97))).toBeLessThan(0.15);
    expect(Math.abs(base!.x - saturatedAt(20, 50))).toBeLessThan(0.15);
    for (const { x, y } of chart().marks!) expect([...points(chart(), CLOUDY), ...points(chart(), PARCEL)].some(([t, p]) => Math.abs(t - x) < 1e-6 && Math.abs(p - y!) < 1e-6)).toBe(true);
  });

  it('starts vessel and parcel at the same point, and cools the clear air furthest', () => {
    const curve = chart();
    for (const { points: [first] } of curve.series) [20, 100].forEach((value, i) => expect(first![i]).toBeCloseTo(value, 9));
    expect(points(curve, CLEAR).at(-1)![0]).toBeLessThan(points(curve, CLOUDY).at(-1)![0] - 5);
  });

  it('marks no saturation that is not reached', () => {
    expect(chart({ at: { humidity: 0.4 } }, withDrop(2000)).marks!.map(({ label }) => label)).toEqual([MARKS.en.cloudBase]);
  });

  it('leaves out what physics has no answer for: droplets colder than −38 °C', () => {
    const curve = chart({ at: {} }, withDrop(85_000));
    expect(Math.min(...points(curve, CLOUDY).map(([t]) => t))).toBeGreaterThan(-38);
    expect(points(curve, CLEAR).length).toBeGreaterThan(points(curve, CLOUDY).length);
  });
});

/** Air pressed in, and let go to the pressure of the room. */
const pressedIn = (plannedDrop: number): Conditions => ({
  ...certain,
  plannedDrop,
  apparatus: { ...certain.apparatus, vessel: { ...certain.apparatus.vessel, highestGauge: 120_000 }, source: { kind: 'pressurise', highestGauge: 60_000, releaseTime: 0.5 } },
});

const cases: readonly (readonly [string, TableRequest, Conditions])[] = [
  ['the room’s air', { at: {} }, certain],
  ['the vessel’s air', { at: { air: 'vessel' } }, certain],
  ['a small drop', { at: {} }, withDrop(5000)],
  ['a deep one, and a parcel that rises little', { at: {}, list: [0, 500, 1000] }, withDrop(35_000)],
  ['dry air at 1600 m', { at: { humidity: 0.3, elevation: 1600 } }, certain],
  ['air let go', { at: {} }, pressedIn(20_000)],
  ['air let go by more', { at: {} }, pressedIn(40_000)],
];

describe.each(cases)('drawn for %s', (_, request, conditions) => {
  describe.each(LANGUAGES)('in %s', (language) => {
    const style = STYLES[language];
    const svg = renderCurve(chart(request, conditions, style), style);

    it('names each line at the line, the axes and their units', () => {
      const said = CURVE_TEXTS[language].risingParcel;
      const text = labels(svg).map((label) => label.text).join(' ');
      for (const name of [said.clear, said.cloudy, said[request.at.air ?? 'room'], `${said.x}, °C`, `${said.y}, kPa`]) expect(text).toContain(name);
    });

    it('tells the lines apart without color', () => {
      const dashes = [...svg.matchAll(/<path class="curve-line[^>]*>/g)].map(([path]) => /stroke-dasharray="([^"]*)"/.exec(path)?.[1] ?? 'none');
      expect(dashes).toHaveLength(3);
      expect(new Set(dashes).size).toBe(3);
    });

    it('has pressure falling upward', () => {
      const heights = labels(svg).filter(({ text, anchor, x }) => anchor === 'end' && /^\d+$/.test(text) && x < 60).map(({ y, text }) => [Number(text), y] as const);
      expect(heights.length).toBeGreaterThan(2);
      for (const [i, [p, y]] of heights.entries()) if (i > 0) expect(Math.sign(p - heights[i - 1]![0])).toBe(Math.sign(y - heights[i - 1]![1]));
    });

    it('keeps its text in its frame and apart', () => {
      const [width, height] = box(svg);
      for (const label of labels(svg)) {
        const [left, right] = span(label);
        expect(left, label.text).toBeGreaterThanOrEqual(-1);
        expect(right, label.text).toBeLessThanOrEqual(width + 1);
        expect(label.y, label.text).toBeGreaterThan(8);
        expect(label.y, label.text).toBeLessThanOrEqual(height);
      }
      expect(collisions(svg)).toEqual([]);
    });
  });
});

it('the description says that both follow one adiabat', () => {
  expect(chart().description).toContain('The remaining gas follows the same adiabat as a rising parcel');
  expect(chart({ at: {} }, certain, STYLES.es).description).toContain('la misma adiabática que una parcela ascendente');
});
