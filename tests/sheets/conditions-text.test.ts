/** What stands under a table's title is what the table was computed for. */
import { describe, expect, it } from 'vitest';
import { computedFor } from '../../src/sheets/conditions-text.ts';
import { STYLES, type Parameters } from '../../src/tables/index.ts';
import { conditions } from '../tables/conditions.ts';

const OWN = 'Computed for Test room: 20.0 °C, 100.0 kPa, 97 % humidity in the vessel';

describe('what a table says it was computed for', () => {
  it.each<[string, Parameters, string]>([
    ['the kit’s own room', {}, OWN],
    ['another humidity', { humidity: 0.6 }, OWN.replace('97 %', '60 %')],
    // Sea level of the standard atmosphere, ISO 2533: 1013.25 hPa.
    ['another elevation', { elevation: 0 }, OWN.replace('Test room', 'a room at 0 m').replace('100.0', '101.3')],
    ['what the vessel does', { drop: 10_000, number: 5e8, particles: 'salt', cloudEvery: 300 }, `${OWN}, a drop of 10 kPa, particles 500 /cm³, Salt, a cloud every 5 min`],
  ])('%s', (_, at, expected) => {
    expect(computedFor(conditions, STYLES.en, at)).toBe(expected);
  });
});
