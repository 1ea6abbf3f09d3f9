/** First-order propagation against cases with an exact answer: JCGM 100:2008, 5.1.2 and 5.1.6. */
import { describe, expect, it } from 'vitest';
import { stateAt } from '../../src/tables/air.ts';
import { noting } from '../../src/tables/asked.ts';
import { stateOf } from '../../src/tables/index.ts';
import { remembered } from '../../src/tables/remembered.ts';
import { spreadOver, uncertaintiesOf } from '../../src/tables/spread.ts';
import { certain, conditions } from './conditions.ts';

const { roomTemperature: T, roomPressure: p, gaugeError: g } = conditions.inputs;

describe('the spread of what is computed', () => {
  it('of a sum is the root of the summed squares (eq. 11a)', () => {
    const { rows, uncertainties } = spreadOver(conditions, (s) => [[2 * s.roomPressure + 3 * s.gaugeError]]);
    expect(rows[0]![0]).toBe(2 * p.value);
    expect(uncertainties[0]![0]).toBeCloseTo(Math.hypot(2 * p.uncertainty, 3 * g.uncertainty), 6);
  });

  it('of a product of powers adds relative uncertainties (eq. 12)', () => {
    const { rows, uncertainties } = spreadOver(conditions, (s) => [[s.roomPressure ** 2 / s.roomTemperature]]);
    const relative = Math.hypot((2 * p.uncertainty) / p.value, T.uncertainty / T.value);
    expect(uncertainties[0]![0]! / (rows[0]![0] as number)).toBeCloseTo(relative, 8);
  });

  it('counts one input once, wherever it enters: room and start are as warm as each other', () => {
    const { uncertainties } = spreadOver(conditions, (s) => [[s.startTemperature - s.roomTemperature, s.startTemperature + s.roomTemperature]]);
    expect(uncertainties[0]).toEqual([0, expect.closeTo(2 * T.uncertainty, 9)]);
  });

  it('is nothing without an uncertain input, and for yes, no and no answer', () => {
    expect(spreadOver(certain, (s) => [[s.roomPressure]]).uncertainties).toEqual([[0]]);
    expect(spreadOver(conditions, (s) => [[s.roomPressure > 0, null]]).uncertainties).toEqual([[0, 0]]);
  });

  it('takes one side where the other has no answer', () => {
    const { uncertainties } = spreadOver(conditions, (s) => [[s.roomPressure > p.value ? null : s.roomPressure]]);
    expect(uncertainties[0]![0]).toBeCloseTo(p.uncertainty, 9);
  });

  it('is the same to first order when moved to one side alone, and takes the other where that has no answer', () => {
    const product = (s: ReturnType<typeof stateOf>): readonly (number | null)[][] => [[s.roomPressure ** 2 / s.roomTemperature, s.roomPressure < p.value ? null : s.roomPressure]];
    const both = spreadOver(conditions, product).uncertainties[0]!;
    const { result, asked } = noting(() => product(stateOf(conditions)));
    const one = uncertaintiesOf(result, asked, conditions, product, undefined, 'one')[0]!;
    // (1 − u)² − 1 = −2u(1 − u/2): off by half of the relative uncertainty
    expect(Math.abs(one[0]! / both[0]! - 1)).toBeLessThan((0.6 * p.uncertainty) / p.value);
    expect(one[1]).toBeCloseTo(p.uncertainty, 9);
  });

  it('moves only the inputs named, and computes again only for those asked for', () => {
    let runs = 0;
    const compute = (s: ReturnType<typeof stateOf>): readonly number[][] => {
      runs++;
      return [[s.startHumidity + s.roomTemperature]];
    };
    const { uncertainties } = spreadOver(conditions, compute, ['startHumidity', 'weather']);
    expect(uncertainties[0]![0]).toBeCloseTo(conditions.inputs.startHumidity.uncertainty, 9);
    expect(runs).toBe(3);
  });

  it('is not lost where an answer is remembered, which is computed once for each state', () => {
    let runs = 0;
    const half = remembered((s, part: number) => {
      runs++;
      return s.roomPressure / part;
    });
    const moves = spreadOver(conditions, (s) => [[half(s, 2)]], ['roomPressure']).uncertainties[0]![0]!;
    expect(moves).toBeCloseTo(p.uncertainty / 2, 6);
    expect(spreadOver(conditions, (s) => [[half(s, 2) + s.roomTemperature]], ['roomPressure']).uncertainties[0]![0]).toBeCloseTo(moves, 6);
    expect(runs).toBe(3);
  });

  it('of the pressure at another elevation is that of the weather alone', () => {
    const { uncertainties } = spreadOver(conditions, (s) => [[stateAt(s, { elevation: 1600 }).roomPressure]]);
    expect(uncertainties[0]![0]).toBeCloseTo(conditions.inputs.weather.uncertainty, 6);
  });

  it('keeps a humidity at 100 % at most', () => {
    const moist = { ...conditions, inputs: { ...conditions.inputs, startHumidity: { value: 0.995, uncertainty: 0.01 } } };
    expect(stateOf(moist, 'startHumidity', 0.01).startHumidity).toBe(1);
  });
});
