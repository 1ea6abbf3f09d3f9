/** Every table kind: columns by name, rows without being asked for any, the same digits each time. */
import { describe, expect, it } from 'vitest';
import { renderCurve } from '../../src/figures/index.ts';
import { computeTable, printTable, stateOf, STYLES, TABLE_KIND_NAMES, TABLE_KINDS, tableKind, type Conditions } from '../../src/tables/index.ts';
import { LANGUAGES, METHOD_TEXTS, REFERENCE_TEXTS } from '../../src/texts/index.ts';
import { conditions, withSource } from './conditions.ts';

/** The keys that programs outside read. */
const KEYS: Record<string, readonly string[]> = {
  'pressure-steps': [
    'pressureDrop', 'gauge', 'absolutePressure', 'temperatureClear', 'saturationRatioClear', 'temperatureCloudy', 'cloudWater',
    'altitudeSamePressure', 'parcelHeightSamePressure', 'parcelRiseSameCooling',
  ],
  'rising-parcel': ['height', 'pressure', 'temperature', 'relativeHumidity', 'cloudWater'],
  'starting-humidity': ['relativeHumidity', 'onsetPressureDrop', 'onsetTemperature', 'cloudBaseHeight'],
  strokes: ['stroke', 'time', 'absolutePressure', 'gasTemperature', 'thermometerReading', 'saturationRatio', 'cloudWater', 'cloud'],
  'particle-sizes': ['dryDiameter', 'criticalSupersaturation', 'active'],
  elevations: ['elevation', 'stationPressure', 'gaugeSameCooling', 'onsetPressureDrop'],
  'gauge-readings': ['gauge', 'absolutePressure'],
  droplets: ['number', 'peakSaturationRatio', 'dropletDiameter', 'cloudWater', 'opticalDepth', 'fallSpeed', 'coronaRadius', 'seen'],
  'particle-lifetime': ['waitingTime', 'number', 'lostToSettling', 'lostToCoagulation', 'lostToWalls', 'lostToClouds', 'cloud'],
  'no-particle-limit': ['pressureDrop', 'temperatureClear', 'saturationRatioClear', 'ionLimit', 'homogeneousLimit', 'clear'],
  'wall-forces': ['pressureDifference', 'lidForce', 'wallStress', 'storedEnergy', 'ratingUsed', 'ratingMargin'],
};

const copy = (): Conditions => structuredClone(conditions) as Conditions;

it('there are eleven kinds, each named once', () => {
  expect([...TABLE_KIND_NAMES].sort()).toEqual(Object.keys(KEYS).sort());
  expect(tableKind('no-such-kind')).toBeUndefined();
});

describe.each(TABLE_KINDS.map((kind) => [kind.kind, kind] as const))('%s', (name, kind) => {
  it('has its columns by name', () => expect(kind.columns.map(({ key }) => key)).toEqual(KEYS[name]));

  it('has rows without being asked for any, whole ones', () => {
    const { rows, uncertainties } = computeTable(kind, conditions, { at: {} });
    expect(rows.length).toBeGreaterThan(3);
    for (const row of rows) {
      expect(row).toHaveLength(kind.columns.length);
      for (const cell of row) expect(cell === null || typeof cell === 'boolean' || Number.isFinite(cell)).toBe(true);
    }
    for (const u of uncertainties.flat()) expect(u).toBeGreaterThanOrEqual(0);
  });

  it('gives the same digits twice', () => {
    const [first, second] = [copy(), copy()].map((one) => computeTable(kind, one, { at: {} }));
    expect(second!.rows).toEqual(first!.rows);
    expect(printTable(second!, STYLES.en)).toEqual(printTable(first!, STYLES.en));
  });

  it('shows the columns asked for, in its own order', () => {
    const [first, second] = kind.columns.map(({ key }) => key);
    const { columns, rows } = computeTable(kind, conditions, { at: {}, columns: [second!, first!] });
    expect(columns.map(({ key }) => key)).toEqual([first, second]);
    expect(rows[0]).toHaveLength(2);
  });

  it('prints one cell a column, and nothing that is no number or word', () => {
    const { columns, rows } = printTable(computeTable(kind, conditions, { at: {} }), STYLES.en);
    for (const { cells } of rows) {
      expect(cells).toHaveLength(columns.length);
      for (const { text } of cells) expect(text).toMatch(/^(–|−?[\d,]+(\.\d+)?|[a-z ]+)$/);
    }
  });

  it('tells its method and where it comes from', () => {
    for (const language of LANGUAGES) expect(METHOD_TEXTS[language][kind.kind].length).toBeGreaterThan(50);
    expect(kind.sources.length).toBeGreaterThan(0);
    for (const source of kind.sources) expect(REFERENCE_TEXTS.en[source]).toBeTruthy();
  });

  it.runIf(kind.curve !== undefined)('draws its curve', () => {
    const svg = renderCurve(kind.curve!(computeTable(kind, conditions, { at: {} }).rows, 'one', STYLES.en, stateOf(conditions), {})!, STYLES.en);
    expect(svg).toContain('<svg');
    expect(svg).not.toContain('NaN');
  });
});

describe('a kit that lets air out of a bottle under pressure', () => {
  const bottle: Conditions = { ...withSource({ kind: 'pressurise', highestGauge: 200_000, releaseTime: 1 }), plannedDrop: 100_000 };
  it.each(['gauge-readings', 'wall-forces'])('%s goes up to its pressure', (name) => {
    const { rows } = computeTable(tableKind(name)!, bottle, { at: {} });
    expect(Math.max(...rows.map(([first]) => first as number))).toBeGreaterThanOrEqual(100_000);
  });
});

describe('what does not apply', () => {
  const cells = (name: string, at: object, list: readonly number[], of: Conditions = conditions) => computeTable(tableKind(name)!, of, { at, list });
  it('strokes of a pump that has none are told as nothing', () => {
    const { rows } = cells('strokes', {}, [0, 1], withSource({ kind: 'steady-pump', speed: 1e-4, ultimatePressure: 10_000 }));
    for (const row of rows) expect(row.slice(1)).toEqual(Array(7).fill(null));
  });
  it('droplets colder than −38 °C have no temperature', () => {
    const { rows } = cells('pressure-steps', {}, [80_000]);
    expect(rows[0]![5]).toBeNull();
    expect(rows[0]![3]).not.toBeNull();
  });
  it('particles that the kit does not list make no cloud', () => {
    const { rows } = cells('droplets', { particles: 'pollen' }, [1e9]);
    expect(rows[0]!.slice(1, -1)).toEqual(Array(6).fill(null));
  });
  it('a dry vessel at a small drop has no drops, no rings, and nothing is seen', () => {
    const row = cells('droplets', { humidity: 0.5, drop: 5000 }, [1e10]).rows[0]!;
    expect(row[1]).toBeLessThan(1);
    expect([row[2], row[5], row[6], row[7]]).toEqual([null, null, null, false]);
  });
  it('has no curve where no row has an answer', () => {
    const { rows } = cells('strokes', {}, [0, 1], withSource({ kind: 'steady-pump', speed: 1e-4, ultimatePressure: 10_000 }));
    expect(tableKind('strokes')!.curve!(rows, 'one', STYLES.en, stateOf(conditions), {})).toBeUndefined();
  });
  it('is printed as a dash', () => {
    const printed = printTable(cells('pressure-steps', {}, [80_000]), STYLES.en);
    expect(printed.rows[0]!.cells[5]!.text).toBe('–');
  });
});

describe('rooms at the edges of what a school can be', () => {
  const { inputs } = conditions;
  const room = (roomTemperature: number, startHumidity: number, roomPressure: number): Conditions => ({
    ...conditions,
    inputs: {
      ...inputs,
      roomTemperature: { value: roomTemperature, uncertainty: 0.5 },
      startHumidity: { value: startHumidity, uncertainty: 0.02 },
      roomPressure: { value: roomPressure, uncertainty: 300 },
    },
  });
  it.each<[string, Conditions]>([
    ['a cold hall', room(248.15, 0.9, 101_000)],
    ['a hot, dry yard', room(323.15, 0.03, 100_000)],
    ['a high plateau', room(283.15, 0.95, 62_000)],
    ['no particles listed', { ...conditions, particles: [] }],
    ['a sphere', { ...conditions, apparatus: { ...conditions.apparatus, vessel: { ...conditions.apparatus.vessel, shape: 'sphere', diameter: 0.21 } } }],
    ['a steady pump', withSource({ kind: 'steady-pump', speed: 1e-4, ultimatePressure: 12_000 })],
    ['a squeezed bottle', withSource({ kind: 'squeeze', volumeChange: 5e-4 })],
    ['a bottle under pressure', withSource({ kind: 'pressurise', highestGauge: 100_000, releaseTime: 1 })],
    ['a drop beyond what the pump reaches', { ...conditions, plannedDrop: 95_000 }],
  ])('%s: each table has its rows, and nothing but numbers, words and nothing', (_, of) => {
    for (const kind of TABLE_KINDS) {
      const table = computeTable(kind, of, { at: {} });
      expect(table.rows.length, kind.kind).toBeGreaterThan(0);
      const curve = kind.curve?.(table.rows, 'one', STYLES.en, stateOf(of), {});
      if (curve !== undefined) expect(renderCurve(curve, STYLES.en), kind.kind).not.toContain('NaN');
      for (const { cells } of printTable(table, STYLES.en).rows) for (const { text } of cells) expect(text, kind.kind).toMatch(/^(–|−?[\d,]+(\.\d+)?|[a-z ]+)$/);
    }
  });
});
