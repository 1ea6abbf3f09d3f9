/** What tables.json promises to programs outside, and what its numbers must be for a school in the mountains. */
import { describe, expect, inject, it } from 'vitest';
import { sharedBuild } from '../support/builds.ts';
import { columnOf, tableOf, tablesOf } from '../support/tables-file.ts';

const bay = tablesOf(await sharedBuild(inject('builds'), 'own'), 'cloud-by-pumping-down');
const mountain = tablesOf(await sharedBuild(inject('builds'), 'highland'), 'highland-cloud');

/** Keys and their SI units as the contributors' guide promises them. */
const PROMISED: Record<string, Record<string, string>> = {
  'pressure-steps': {
    pressureDrop: 'Pa', gauge: 'Pa', absolutePressure: 'Pa', temperatureClear: 'K', saturationRatioClear: '1', temperatureCloudy: 'K',
    cloudWater: 'kg/m3', altitudeSamePressure: 'm', parcelHeightSamePressure: 'm', parcelRiseSameCooling: 'm',
  },
  'rising-parcel': { height: 'm', pressure: 'Pa', temperature: 'K', relativeHumidity: '1', cloudWater: 'kg/m3' },
  'starting-humidity': { relativeHumidity: '1', onsetPressureDrop: 'Pa', onsetTemperature: 'K', cloudBaseHeight: 'm' },
};

/**
 * Pressure of the standard atmosphere below 11 km, Pa: US Standard Atmosphere 1976, equations 18
 * and 33a, constants of its tables 2 and 4; the same in ISO 2533:1975.
 * @param z - geometric height, m
 */
function standardPressure(z: number): number {
  const geopotential = (6_356_766 * z) / (6_356_766 + z);
  return 101_325 * (288.15 / (288.15 - 0.0065 * geopotential)) ** ((9.806_65 * 28.9644) / (8314.32 * -0.0065));
}

describe('the fields', () => {
  it.each([bay, mountain])('of $kit name kit, edition and the room in SI', (file) => {
    expect(file.edition).toBe('draft');
    expect(file.room.pressure).toBeGreaterThan(50_000);
    expect(file.room.temperature).toBeGreaterThan(273.15);
  });

  it.each(Object.entries(PROMISED))('of %s are the promised ones in the promised units', (kind, columns) => {
    const found = Object.fromEntries(tableOf(bay, kind).columns.map(({ key, unit }) => [key, unit]));
    expect(found).toMatchObject(columns);
  });

  it.each([bay, mountain])('of $kit: rows as long as columns, keys once, numbers finite', ({ tables }) => {
    for (const { id, columns, rows } of tables) {
      expect(new Set(columns.map(({ key }) => key)).size, id).toBe(columns.length);
      expect(rows.length, id).toBeGreaterThan(0);
      for (const row of rows) expect(row, id).toHaveLength(columns.length);
      expect(rows.flat().every((cell) => typeof cell !== 'number' || Number.isFinite(cell)), id).toBe(true);
    }
  });

  it.each([bay, mountain])('of $kit: no two tables of a sheet share an id', ({ tables }) => {
    const places = tables.map(({ sheet, id }) => `${sheet}#${id}`);
    expect(places.filter((place, at) => places.indexOf(place) !== at)).toEqual([]);
  });
});

describe('a drop of nothing', () => {
  it.each([bay, mountain])('leaves the start of $kit as it is', (file) => {
    const table = tableOf(file, 'pressure-steps');
    expect(columnOf(table, 'pressureDrop')[0]).toBe(0);
    const first = (key: string): number | undefined => columnOf(table, key)[0];
    expect(first('gauge')).toBe(0);
    expect(first('absolutePressure')).toBe(file.room.pressure);
    expect(first('temperatureClear')).toBeCloseTo(file.room.temperature, 9);
    expect(first('temperatureCloudy')).toBeCloseTo(file.room.temperature, 9);
    expect(first('saturationRatioClear')).toBeCloseTo(file === bay ? 0.97 : 0.96, 9);
    for (const key of ['cloudWater', 'altitudeSamePressure', 'parcelHeightSamePressure', 'parcelRiseSameCooling']) expect(first(key), key).toBeCloseTo(0, 9);
  });
});

describe('a school at 1,600 m', () => {
  it('has the station pressure of the standard atmosphere there', () => {
    expect(mountain.room.elevation).toBe(1600);
    expect(mountain.room.pressure).toBeCloseTo(standardPressure(1600), 0);
    // US Standard Atmosphere 1976, table 1, 1,600 m: 835.2 to 835.3 hPa for geopotential and geometric height (from memory).
    expect(mountain.room.pressure / 100).toBeGreaterThan(835.2);
    expect(mountain.room.pressure / 100).toBeLessThan(835.3);
  });

  it.each([bay, mountain])('needs less drop for the same cooling: $kit', (file) => {
    const table = tableOf(file, 'elevations');
    const elevation = columnOf(table, 'elevation');
    const station = columnOf(table, 'stationPressure');
    const gauge = columnOf(table, 'gaugeSameCooling');
    expect(elevation.length).toBeGreaterThan(2);
    elevation.forEach((z, at) => expect(station[at]).toBeCloseTo(standardPressure(z), 0));
    // Equal cooling needs an equal ratio of pressures (Poisson, 1823), so the reading goes with the station
    // pressure; the vapor, which is a larger share of thinner air, shifts that by less than a hundredth.
    const perPressure = gauge.map((reading, at) => reading / (station[at] ?? NaN));
    for (const ratio of perPressure) expect(Math.abs(ratio / (perPressure[0] ?? NaN) - 1)).toBeLessThan(0.01);
    expect([...gauge].sort((a, b) => a - b)).toEqual(gauge);
  });

  it.each([bay, mountain])('reaches saturation after a smaller drop: $kit', (file) => {
    const onset = columnOf(tableOf(file, 'elevations'), 'onsetPressureDrop');
    expect([...onset].sort((a, b) => b - a)).toEqual(onset);
    expect(onset.at(-1)).toBeLessThan(onset[0] ?? NaN);
  });

  it('cools further than the sea-level school by the same drop', () => {
    const cooling = (file: typeof bay): number => {
      const table = tableOf(file, 'pressure-steps');
      const at = columnOf(table, 'pressureDrop').indexOf(15_000);
      expect(at).toBeGreaterThan(0);
      return file.room.temperature - (columnOf(table, 'temperatureClear')[at] ?? NaN);
    };
    expect(cooling(mountain)).toBeGreaterThan(cooling(bay) + 2);
  });
});
