/** Packed data is the same data. */
import { expect, it } from 'vitest';
import { packed } from '../../src/sheets/packed.ts';

const LONG_TEXT = `<p>−20.0 kPa · ½ “${'cloud '.repeat(1000)}”</p>`;

it('reads as it did, in lists and fields, more than once', () => {
  const data = { short: 'a', long: LONG_TEXT, number: 1, none: undefined, nothing: null, list: [{ text: LONG_TEXT }, LONG_TEXT, 'b'], inside: { yes: true } };
  const copy = packed(data);
  for (let time = 0; time < 2; time++) {
    expect(copy).toEqual(data);
    expect(copy.long).toBe(LONG_TEXT);
    expect(JSON.stringify(copy)).toBe(JSON.stringify(data));
  }
  expect(copy.list).toHaveLength(3);
  expect(Object.getOwnPropertyDescriptor(copy, 'long')?.get).toBeDefined();
  expect(Object.getOwnPropertyDescriptor(copy, 'short')?.get).toBeUndefined();
});
