/** The reader's room as plain data: fields, the text of an address, and conditions. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conditionsFor } from '../../src/browser/room-conditions.ts';
import { FIELD_NAMES, FIELDS, plainText, readTyped, unitOf, type FieldName } from '../../src/browser/room-fields.ts';
import { isOwnRoom, isSameRoom, NOTHING_SET, readAddress, writeAddress, writeSettings, type RoomSettings } from '../../src/browser/room-settings.ts';
import { STYLES } from '../../src/tables/index.ts';
import { ROOM_FIELD_TEXTS } from '../../src/texts/index.ts';
import { conditions } from '../tables/conditions.ts';

const live = { conditions, moving: [], language: 'en' } as const;
const SEED = 20261125;

describe('an address', () => {
  const cases: readonly (readonly [hash: string, anchor: string, values: Partial<Record<FieldName, number>> | undefined])[] = [
    ['', '', undefined],
    ['#step-3', 'step-3', undefined],
    ['#elevation=1600m', '', { elevation: 1600 }],
    ['#step-3&elevation=1600m&temperature=18C', 'step-3', { elevation: 1600, temperature: 291.15 }],
    // 1 ft = 0.3048 m, exact; 68 °F = 20 °C: NIST SP 811, B.8
    ['#elevation=1000ft&temperature=68F', '', { elevation: 304.8, temperature: 293.15 }],
    ['#humidity=45&moisture=97%25', '', { humidity: 0.45, moisture: 0.97 }],
    ['#volume=3.5L&diameter=140mm', '', { volume: 0.0035, diameter: 0.14 }],
    ['#elevation=1600m&pressure=83.5kPa', '', { pressure: 83_500 }],
    ['#rating=-80kPa', '', { rating: -80_000 }],
  ];
  it.each(cases)('%s', (hash, anchor, values) => {
    const read = readAddress(hash, STYLES.en);
    expect(read.anchor).toBe(anchor);
    expect(read.problems).toEqual([]);
    expect(Object.keys(read.settings?.values ?? {}).sort()).toEqual(Object.keys(values ?? {}).sort());
    for (const [name, value] of Object.entries(values ?? {})) expect(read.settings?.values[name as FieldName]).toBeCloseTo(value, 6);
  });

  it.each(['#elevation=9000m', '#temperature=18K', '#humidity=abc', '#flavor=3', '#elevation=', '#humidity=%E0%A4%A'])('%s is explained and not taken', (hash) => {
    const { settings, problems } = readAddress(hash, STYLES.en);
    expect(problems).toHaveLength(1);
    expect(problems[0]!.length).toBeGreaterThan(20);
    expect(settings?.values).toEqual({});
  });

  it('comes back as it was written, in either kind of unit', () => {
    const some = fc.record(Object.fromEntries(FIELD_NAMES.filter((name) => name !== 'elevation').map((name) => [name, fc.double({ min: FIELDS[name].low, max: FIELDS[name].high, noNaN: true })])), { requiredKeys: [] });
    fc.assert(
      fc.property(some, fc.boolean(), fc.constantFrom(undefined, 'sphere' as const), (raw, customary, shape) => {
        const rounded = Object.fromEntries(Object.entries(raw).flatMap(([name, value]) => {
          const unit = unitOf(name as FieldName, customary);
          const read = readTyped(name as FieldName, plainText(value as number, unit), unit, STYLES.en);
          return 'value' in read ? [[name, read.value]] : [];
        }));
        const settings: RoomSettings = { values: rounded, customary, ...(shape === undefined ? {} : { shape }) };
        const text = writeSettings(settings);
        if (text === '') return;
        const back = readAddress(`#${text}`, STYLES.en);
        expect(back.problems).toEqual([]);
        expect(writeSettings(back.settings!)).toBe(text);
        for (const [name, value] of Object.entries(rounded)) expect(back.settings!.values[name as FieldName]).toBeCloseTo(value, 9);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('keeps an anchor in front', () => {
    expect(writeAddress('step-3', { values: { elevation: 1600 }, customary: false })).toBe('#step-3&elevation=1600m');
    expect(writeAddress('', NOTHING_SET)).toBe('');
    expect(isOwnRoom(NOTHING_SET)).toBe(true);
  });
});

it('a room is the same in other units, and another with one value, one more value or another shape', () => {
  const one: RoomSettings = { values: { elevation: 1600, temperature: 291.15 }, customary: false };
  expect(isSameRoom(one, { ...one, customary: true })).toBe(true);
  for (const values of [{ elevation: 1600 }, { elevation: 1600, temperature: 291.2 }, { ...one.values, humidity: 0.4 }]) expect(isSameRoom(one, { ...one, values })).toBe(false);
  expect(isSameRoom(one, { ...one, shape: 'sphere' })).toBe(false);
});

describe('what is typed', () => {
  it.each(FIELD_NAMES)('%s is taken at both ends of its range, and refused beyond with the range in words', (name) => {
    for (const customary of [false, true]) {
      const unit = unitOf(name, customary);
      const { low, high } = FIELDS[name];
      const label = ROOM_FIELD_TEXTS.en[name];
      const middle = (low + high) / 2;
      expect(readTyped(name, plainText(middle, unit), unit, STYLES.en)).toHaveProperty('value');
      const beyond = readTyped(name, String(Math.ceil(Math.abs(unit.fromSi(high)) * 10 + 10)), unit, STYLES.en);
      expect(beyond).toHaveProperty('problem', expect.stringContaining(label));
      expect(beyond).toHaveProperty('problem', expect.stringMatching(/outside what can be computed, .+ to .+/));
    }
  });

  it('is refused in the page’s language, with its decimal sign', () => {
    const unit = unitOf('temperature', false);
    expect(readTyped('temperature', '99,5', unit, STYLES.es)).toEqual({ problem: 'Temperatura del aula: 99,5 °C queda fuera de lo que se puede calcular, de −20 °C a 50 °C.' });
    expect(readTyped('humidity', 'x', unitOf('humidity', false), STYLES.es)).toEqual({ problem: 'Humedad del aula: «x» no es un número. Escriba uno como 50.' });
    expect(readAddress('#flavor=3', STYLES.es).problems).toEqual(['La dirección dice flavor=3, que aquí no significa nada.']);
    expect(conditionsFor({ ...live, language: 'es' }, { values: { elevation: 1600 }, customary: false }).roomTitle).toBe('su aula');
  });

  it.each(['', 'warm', '1e3', '12,3,4', 'NaN', 'Infinity', '--1'])('“%s” is no number', (text) => {
    expect(readTyped('temperature', text, unitOf('temperature', false), STYLES.en)).toHaveProperty('problem');
  });

  it('may have a decimal comma and a minus sign as printed', () => {
    expect(readTyped('temperature', '−3,5', unitOf('temperature', false), STYLES.en)).toHaveProperty('value', 269.65);
  });
});

describe('conditions', () => {
  it('are the page’s own, the same object, where nothing is set', () => {
    expect(conditionsFor(live, NOTHING_SET)).toBe(conditions);
    expect(conditionsFor(live, { ...NOTHING_SET, customary: true })).toBe(conditions);
  });

  it('have the pressure of the standard atmosphere at an elevation', () => {
    // ISO 2533:1975, table 1: 1,600 m geopotential, 835.2 hPa; a geometric height differs by 0.4 m.
    const { inputs, roomTitle } = conditionsFor(live, { values: { elevation: 1600 }, customary: false });
    expect(Math.abs(inputs.roomPressure.value - 83_524)).toBeLessThan(15);
    expect(roomTitle).toBe('your room');
  });

  it('keep what was not set, and the uncertainty of what was', () => {
    const { inputs, apparatus } = conditionsFor(live, { values: { temperature: 300 }, customary: false });
    expect(inputs.roomTemperature).toEqual({ value: 300, uncertainty: conditions.inputs.roomTemperature.uncertainty });
    expect(inputs.roomPressure).toEqual(conditions.inputs.roomPressure);
    expect(apparatus.vessel.wallTimeConstant).toBe(conditions.apparatus.vessel.wallTimeConstant);
  });

  it('estimate the walls of another vessel', () => {
    expect(conditionsFor(live, { values: { volume: 0.002 }, customary: false }).apparatus.vessel.wallTimeConstant).toBeUndefined();
  });

  it('move a rating that is absolute with the room', () => {
    const moving = conditionsFor({ ...live, moving: ['lowest'] }, { values: { pressure: 90_000 }, customary: false });
    expect(moving.apparatus.vessel.lowestGauge + 90_000).toBeCloseTo(conditions.apparatus.vessel.lowestGauge + conditions.inputs.roomPressure.value, 6);
  });
});
