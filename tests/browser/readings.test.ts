/** Readings of a class, without a browser: the text they are entered as, and what the model says of them. */
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadContent, readReadings } from '../../src/authoring/index.ts';
import { asFile, columnsOf, tableFormat, withRow } from '../../src/browser/readings-text.ts';
import { conditionsOf, VOCABULARY } from '../../src/sheets/index.ts';
import { notesOf, renderComparison } from '../../src/sheets/html/readings.ts';
import { compareWithModel, expectedReadings, valveClosed, type ClassReading } from '../../src/sheets/readings.ts';
import { STYLES, type Conditions } from '../../src/tables/index.ts';
import { classRun, CLOSED, TRUTH } from '../support/class-run.ts';
import { ROOT } from '../support/root.ts';

let conditions: Conditions;
beforeAll(async () => {
  const { content } = await loadContent(join(ROOT, 'content'), VOCABULARY);
  conditions = conditionsOf(content!, content!.kits.get('cloud-by-pumping-down')!);
});

const recorded = (seed: number): readonly ClassReading[] => readReadings(classRun(conditions, seed), '').readings!;

const [ENGLISH, SPANISH] = [tableFormat('en'), tableFormat('es')];

describe('the text of a table', () => {
  it('begins with the columns that are needed', () => {
    expect(withRow('', ['0', ' 0 ', '21.0'], ENGLISH)).toBe(`${ENGLISH.header}\n0,0,21.0\n`);
    expect(columnsOf('', ENGLISH)).toEqual(['time (s)', 'gauge (kPa)', 'thermometer (°C)']);
  });

  it('keeps its own columns', () => {
    expect(columnsOf('\n"gauge (inHg)", time (min) ,thermometer (°F)\r\n0,0,68', ENGLISH)).toEqual(['gauge (inHg)', 'time (min)', 'thermometer (°F)']);
    expect(withRow('a (s),b (kPa)\n1,2\n\n', ['3', '4'], ENGLISH)).toBe('a (s),b (kPa)\n1,2\n3,4\n');
  });

  it('is saved as it was entered', () => expect(asFile(`${ENGLISH.header}\n0,0,21.0\n5,-4,−3.5\n`, ENGLISH)).toBe(`${ENGLISH.header}\r\n0,0,21.0\r\n5,-4,−3.5\r\n`));

  it('in Spanish parts columns by semicolons and numbers by commas, and is understood so', () => {
    const text = withRow(withRow('', ['0', '0', '21,0'], SPANISH), ['5', '−4', '20,5'], SPANISH);
    expect(text).toBe('tiempo (s);manómetro (kPa);termómetro (°C)\n0;0;21,0\n5;−4;20,5\n');
    expect(columnsOf(text, SPANISH)).toEqual(['tiempo (s)', 'manómetro (kPa)', 'termómetro (°C)']);
    const { readings, findings } = readReadings(text, '', 'es');
    expect(findings).toEqual([]);
    expect(readings?.map(({ gauge }) => gauge)).toEqual([0, -4000]);
    expect(readings?.[1]?.thermometer).toBeCloseTo(293.65, 9);
    // A file with commas, as other programs and lessons write it, is understood as well, and keeps its form.
    const other = withRow('time (s),gauge (kPa),thermometer (°C)\n0,0,21.0', ['5', '-4', '20.5'], SPANISH);
    expect(readReadings(other, '', 'es').readings?.[1]?.thermometer).toBeCloseTo(293.65, 9);
    expect(asFile('a;b\n1,5;=1', SPANISH)).toBe('a;b\r\n1,5;"\'=1"\r\n');
  });

  it.each([
    ['tiempo (s);manómetro (kPa)\n0;0\n5;1', 'falta la columna'],
    ['tiempo (s);manómetro (kPa);termómetro (°C)\n0;0;x\n5;1;20', 'no es un número'],
    ['tiempo (s);presion (kPa);termómetro (°C)\n0;0;20\n5;1;20', 'no hay ninguna columna'],
    ['tiempo (s);manómetro (kPa);termómetro (kg)\n0;0;20\n5;1;20', 'no es una unidad'],
    ['tiempo (s);manómetro (kPa);termómetro (°C)\n5;0;20\n5;1;20', 'no viene después'],
  ])('says in Spanish what is wrong in %j', (text, what) => expect(readReadings(text, '', 'es').findings[0]?.what).toContain(what));

  // Openers of formulas: OWASP, CSV Injection.
  it.each(['=1+1', '+A1', '-A1', '@SUM(A1)', '"=1+1"', ' =1+1', '=HYPERLINK("a")'])('is saved so that no spreadsheet runs %s', (cell) => {
    const [, row = ''] = asFile(`time (s)\n${cell}`, ENGLISH).split('\r\n');
    expect(row).toMatch(/^"'/);
  });
});

describe('when the valve was closed', () => {
  it('is seen by the gauge', () => {
    for (let seed = 1; seed <= 20; seed += 1) expect(valveClosed(recorded(seed))).toEqual(CLOSED);
  });

  it('ends where air is let in', () => {
    const readings = [[0, 0], [5, -10], [10, -20], [15, -19], [20, -18.5], [25, -18.4], [30, -8], [35, 0], [40, 0]];
    expect(valveClosed(readings.map(([time = 0, gauge = 0]) => ({ time, gauge: gauge * 1000, thermometer: 294 })))).toEqual({ from: 10, to: 25 });
  });

  it('is nowhere in a vessel that was never pumped', () => {
    expect(valveClosed([0, 5, 10, 15, 20].map((time) => ({ time, gauge: 0, thermometer: 294 })))).toBeUndefined();
  });
});

describe('a comparison', () => {
  it('finds the constants of simulated runs, nine times in ten inside its 95-percent interval', () => {
    const fits = Array.from({ length: 10 }, (_, seed) => compareWithModel(recorded(seed), conditions).fit!);
    const inside = fits.flatMap(({ wallTimeConstant, thermometerTimeConstant, leak, offset }) =>
      ([[wallTimeConstant, TRUTH.walls], [thermometerTimeConstant, TRUTH.thermometer], [leak!, TRUTH.leak], [offset, TRUTH.offset]] as const).map(([{ low, high }, truth]) => low <= truth && truth <= high));
    expect(inside.filter(Boolean).length).toBeGreaterThanOrEqual(36);
  }, 120_000);

  it('gives reading, model and what is left for each time', () => {
    const { lines } = compareWithModel(recorded(1), conditions);
    for (const { thermometer, model, residual } of lines) expect(model! + residual!).toBeCloseTo(thermometer, 9);
  }, 60_000);

  it('says what is wrong where there is nothing to fit', () => {
    const few = compareWithModel(recorded(1).slice(0, 5), conditions);
    expect(few.fit).toBeUndefined();
    expect(notesOf(few, STYLES.en).join()).toContain('There are 5 readings');
    const late = compareWithModel(recorded(1).slice(4), conditions);
    expect(notesOf(late, STYLES.en).join()).toContain('far from where the vessel starts');
    expect(renderComparison(few, { id: 'a', title: 'T', style: STYLES.en }).html).toContain('<svg');
  }, 60_000);

  it('expects the planned drop, and a thermometer that lags', () => {
    const expected = expectedReadings(conditions);
    expect(Math.min(...expected.map(({ gauge }) => gauge))).toBeCloseTo(-20_000, -3);
    const coldest = expected.reduce((low, one) => (one.thermometer < low.thermometer ? one : low));
    const deepest = expected.reduce((low, one) => (one.gauge < low.gauge ? one : low));
    expect(coldest.time).toBeGreaterThan(deepest.time);
  });
});
