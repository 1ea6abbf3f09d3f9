import { describe, expect, it } from 'vitest';
import { chosen, inRange } from '../../src/physics/range.ts';

describe('inRange', () => {
  it.each([[0], [0.5], [1]])('lets %d pass, edges included', (value) => {
    expect(inRange('share', value, 0, 1)).toBe(value);
  });

  it.each([[-1e-300], [1 + Number.EPSILON], [NaN], [Infinity], [-Infinity]])('refuses %d', (value) => {
    expect(() => inRange('share', value, 0, 1)).toThrow(RangeError);
  });

  it('names the argument, its value, the range and the unit', () => {
    expect(() => inRange('pressure', 7, 10, 20, 'Pa')).toThrow('pressure is 7 Pa; the range is 10 to 20 Pa');
  });
});

describe('chosen', () => {
  const MASSES = { pound: 0.45359237, ounce: 0.028349523125 };

  it('gives what stands for the choice', () => {
    expect(chosen('unit', 'ounce', MASSES)).toBe(MASSES.ounce);
  });

  it('names the argument, its value and the choices', () => {
    expect(() => chosen('unit', 'stone' as 'ounce', MASSES)).toThrow(new RangeError('unit is stone; choose pound, ounce'));
  });
});
