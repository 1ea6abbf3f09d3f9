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
let bottle: Conditions;
beforeAll(async () => {
  const { content } = await loadContent(join(ROOT, 'content'), VOCABULARY);
  conditions = conditionsOf(content!, content!.kits.get('cloud-by-pumping-down')!);
  bottle = conditionsOf(content!, content!.kits.get('cloud-by-letting-go')!);
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

describe('a table as a reader pastes it', () => {
  const HEAD = 'time (s),gauge (kPa),thermometer (°C)';
  const THREE = [[0, 0, 294.65], [5, -2500, 294.15], [65, -4000, 293.65]];

  // SI Brochure (9th ed. 2019): kPa, min, °C; NIST SP 811 (2008), B.8: inHg (conventional, 32 °F) is 3386.389 Pa, °F; exact: 1 hPa = 1 mbar = 100 Pa.
  it.each([
    ['cells of a spreadsheet, parted by tabs', 'time (s)\tgauge (kPa)\tthermometer (°C)\n0\t0\t21.5\n5\t-2.5\t21\n65\t-4\t20.5'],
    ['tabs and decimal commas', 'time (s)\tgauge (kPa)\tthermometer (°C)\r\n0\t0\t21,5\r\n5\t-2,5\t21\r\n65\t-4\t20,5'],
    ['semicolons and decimal commas', 'time (s);gauge (kPa);thermometer (°C)\n0;0;21,5\n5;-2,5;21,0\n65;-4,0;20,5'],
    ['decimal commas between quotation marks', `${HEAD}\n0,0,"21,5"\n5,"-2,5",21\n65,-4,"20,5"`],
    ['times as min:s', 'time (min:s),gauge (kPa),thermometer (°C)\n0:00,0,21.5\n0:05,-2.5,21\n1:05,-4,20.5'],
    ['some times as min:s in seconds', `${HEAD}\n0,0,21.5\n5,-2.5,21\n1:05,-4,20.5`],
    ['times with hours, as spreadsheets fill them up', 'time (h:mm:ss),gauge (kPa),thermometer (°C)\n0:00:00,0,21.5\n0:00:05,-2.5,21\n0:01:05,-4,20.5'],
    ['hPa and °F', 'time (s),gauge (hPa),thermometer (°F)\n0,0,70.7\n5,-25,69.8\n65,-40,68.9'],
    ['mbar, and columns in another order', 'thermometer (°C),time (s),gauge (mbar)\n21.5,0,0\n21,5,-25\n20.5,65,-40'],
    ['inHg', 'time (s),gauge (inHg),thermometer (°C)\n0,0,21.5\n5,-0.738249,21\n65,-1.181199,20.5'],
    ['square brackets, a dash for a minus sign', 'Time [s],Gauge [kPa],Thermometer [°C]\n0,0,21.5\n5,–2.5,21\n65,–4,20.5'],
    ['empty lines, and empty cells at the ends of lines', `\n\n${HEAD},,\n0,0,21.5,,\n,,,,\n5,-2.5,21,,\n\n65,-4,20.5,,\n`],
  ])('is understood with %s', (_, text) => {
    const { readings, findings } = readReadings(text, '', 'en');
    expect(findings).toEqual([]);
    expect(readings?.map(({ time, gauge, thermometer }) => [time, Math.round(gauge * 10) / 10, Math.round(thermometer * 1e6) / 1e6])).toEqual(THREE);
  });

  it.each([
    ['no table at all', 'Dear class,\nhere they are', ['1 write `time (s),gauge (kPa),thermometer (°C)` as the first line']],
    ['nothing', '', ['1 write `time (s),gauge (kPa),thermometer (°C)` as the first line']],
    ['no header', '0,0,21\n5,-2,21', ['1 write `time (s),gauge (kPa),thermometer (°C)` as the first line']],
    ['a column too many', `number,${HEAD}\n1,0,0,21\n2,5,-2,21`, ['1:1 write `time (s),gauge (kPa),thermometer (°C)`, or leave the column out']],
    ['a missing value', `${HEAD}\n0,0,21\n5,,21\n10,-4,21`, ['3:2 write a number in kPa, or leave the row out']],
    ['a missing value at the end of a row', `${HEAD}\n0,0,21\n5,-2,\n10,-4,21`, ['3:3 write a number in every column, or leave the row out']],
    ['decimal commas among commas', `${HEAD}\n0,0,21,5\n5,-2,21`, ['2:4 write decimal points, and commas between columns only']],
    ['words', `${HEAD}\n0,0,21\n5,-2,about 20`, ['3:3 write a number in °C without the unit, as in `12.5`']],
    ['a number where times have colons', 'time (min:s),gauge (kPa),thermometer (°C)\n0:00,0,21\n5,-2,21', ['3:1 write it as in `0:05`']],
    ['seconds beyond sixty', 'time (min:s),gauge (kPa),thermometer (°C)\n0:00,0,21\n0:75,-2,21', ['3:1 write it as in `0:05`']],
    ['a unit of something else', 'time (s),gauge (°C),thermometer (°C)\n0,0,21\n5,-2,21', ['1:2 use one of Pa, hPa, kPa, MPa, mbar, bar, inHg, mmHg, psi, atm']],
    ['a unit without its sign', 'time (s),gauge (kPa),thermometer (F)\n0,0,70\n5,-2,69', ['1:3 write `°F`']],
    ['times that go back', `${HEAD}\n0,0,21\n5,-2,21\n4,-3,21`, ['4:1 put the rows in the order of their times']],
  ])('says line, column and what to write for %s', (_, text, expected) => {
    const { readings, findings } = readReadings(text, '', 'en');
    expect(readings).toBeUndefined();
    expect(findings.map(({ line, cell, instead }) => `${line}${cell === undefined ? '' : `:${cell}`} ${instead}`)).toEqual(expected);
  });

  it('keeps its form when a row is added, and is saved as CSV', () => {
    const tabs = withRow('time (s)\tgauge (kPa)\tthermometer (°C)\n0\t0\t21,5', ['5', '-2,5', '21'], ENGLISH);
    expect(tabs).toBe('time (s)\tgauge (kPa)\tthermometer (°C)\n0\t0\t21,5\n5\t-2,5\t21\n');
    expect(asFile(tabs, ENGLISH)).toBe('time (s);gauge (kPa);thermometer (°C)\r\n0;0;21,5\r\n5;-2,5;21\r\n');
    expect(withRow('', ['0', '0', '21,5'], ENGLISH)).toBe(`${HEAD}\n0,0,"21,5"\n`);
  });

  it('of a contributor is still to have commas and decimal points', () => {
    expect(readReadings('time (s);gauge (kPa);thermometer (°C)\n0;0;21\n5;-2;21', '').readings).toBeUndefined();
    expect(readReadings(`${HEAD}\n0:00,0,21\n0:05,-2,"20,5"`, '').findings.map(({ line }) => line)).toEqual([2, 3, 3]);
  });

  it('begins in the units of the reader', () => expect(tableFormat('en', true).header).toBe('time (s),gauge (inHg),thermometer (°F)'));
});

describe('when the valve was closed', () => {
  it('is seen by the gauge', () => {
    for (let seed = 1; seed <= 20; seed += 1) expect(valveClosed(recorded(seed))).toEqual(CLOSED);
  });

  it('ends where air is let in', () => {
    const readings = [[0, 0], [5, -10], [10, -20], [15, -19], [20, -18.5], [25, -18.4], [30, -8], [35, 0], [40, 0]];
    expect(valveClosed(readings.map(([time = 0, gauge = 0]) => ({ time, gauge: gauge * 1000, thermometer: 294 })))).toEqual({ from: 10, to: 25 });
  });

  it('is before a bottle is let go, wherever it scatters farthest', () => {
    const readings = [[0, 19.9], [1, 20], [2, 19.8], [3, 20.1], [4, 19.9], [5, 0.1], [6, 0], [7, 0]];
    expect(valveClosed(readings.map(([time = 0, gauge = 0]) => ({ time, gauge: gauge * 1000, thermometer: 294 })))).toEqual({ from: 0, to: 4 });
  });

  it('is nowhere in a vessel that was never pumped', () => {
    expect(valveClosed([0, 5, 10, 15, 20].map((time) => ({ time, gauge: 0, thermometer: 294 })))).toBeUndefined();
  });
});

describe('a comparison', () => {
  const isInside = (text: string, of: Conditions): boolean[] => {
    const { wallTimeConstant, thermometerTimeConstant, leak, offset } = compareWithModel(readReadings(text, '').readings!, of).fit!;
    return ([[wallTimeConstant, TRUTH.walls], [thermometerTimeConstant, TRUTH.thermometer], [leak!, TRUTH.leak], [offset, TRUTH.offset]] as const).map(([{ low, high }, truth]) => low <= truth && truth <= high);
  };
  const SEEDS = Array.from({ length: 10 }, (_, seed) => seed);

  it('finds the constants of simulated runs, nine times in ten inside its 95-percent interval', () => {
    expect(SEEDS.flatMap((seed) => isInside(classRun(conditions, seed), conditions)).filter(Boolean).length).toBeGreaterThanOrEqual(36);
  }, 120_000);

  it('finds them of a bottle that is let go, read every second', () => {
    expect(SEEDS.flatMap((seed) => isInside(classRun(bottle, seed, { duration: 1, interval: 1 }), bottle)).filter(Boolean).length).toBeGreaterThanOrEqual(36);
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

  it('is written in the units of the reader, both in the table', () => {
    const comparison = compareWithModel(recorded(1), conditions);
    const [metric, customary] = [STYLES.en, { ...STYLES.en, customary: true }].map((style) => renderComparison(comparison, { id: 'a', title: 'T', style }).html) as [string, string];
    const axes = (html: string): string[] => ['Gauge, kPa', 'Gauge, inHg', 'Thermometer, °C', 'Thermometer, °F', 'reading less model, K', 'reading less model, °F'].filter((name) => html.includes(name));
    expect(axes(metric)).toEqual(['Gauge, kPa', 'Thermometer, °C', 'reading less model, K']);
    expect(axes(customary)).toEqual(['Gauge, inHg', 'Thermometer, °F', 'reading less model, °F']);
    // A row of 20 kPa below the room: 5.91 inHg (NIST SP 811 (2008), B.8).
    const row = { ...comparison, lines: [{ ...comparison.lines[0]!, gauge: -20_000, thermometer: 293.15 }] };
    expect(renderComparison(row, { id: 'a', title: 'T', style: { ...STYLES.en, customary: true } }).html).toContain('<td>−5.91<span class="also">−20.0</span></td><td>68.00<span class="also">20.00</span></td>');
    expect(renderComparison(row, { id: 'a', title: 'T', style: STYLES.en }).html).toContain('<td>−20.0<span class="also">−5.91</span></td><td>20.00<span class="also">68.00</span></td>');
  }, 60_000);

  it('says each constant with its standard error, and what is left over', () => {
    const { html } = renderComparison(compareWithModel(recorded(1), conditions), { id: 'a', title: 'T', style: STYLES.en });
    expect(html).toMatch(/Explained\.<\/strong>[^<]*time constant of the walls [\d.]+ ± [\d.]+ s, the time constant of the thermometer [\d.]+ ± [\d.]+ s, the leak [\d.]+ ± [\d.]+ % a minute, the offset of the thermometer [−\d.]+ ± [\d.]+ K\./);
    expect(html).toMatch(/Not explained\.<\/strong> Readings scatter about the model by [\d.]+ K/);
  }, 60_000);

  it('sees absolute pressures, and a room of another temperature', () => {
    const notes = (change: (reading: ClassReading) => Partial<ClassReading>): string =>
      notesOf(compareWithModel(recorded(1).map((one) => ({ ...one, ...change(one) })), conditions), STYLES.en).join();
    expect(notes(({ gauge }) => ({ gauge: gauge + 100_300 }))).toContain('look like absolute pressures');
    expect(notes(({ thermometer }) => ({ thermometer: thermometer + 4 }))).toContain('far from the temperature of the room');
    expect(notes(() => ({}))).toBe('');
  }, 60_000);

  it('expects the planned drop, and a thermometer that lags', () => {
    const expected = expectedReadings(conditions);
    expect(Math.min(...expected.map(({ gauge }) => gauge))).toBeCloseTo(-20_000, -3);
    const coldest = expected.reduce((low, one) => (one.thermometer < low.thermometer ? one : low));
    const deepest = expected.reduce((low, one) => (one.gauge < low.gauge ? one : low));
    expect(coldest.time).toBeGreaterThan(deepest.time);
  });
});
