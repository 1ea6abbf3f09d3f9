/** A bottle that is pumped up and let go: where it starts, what its lesson does, where it ends. */
import { describe, expect, it } from 'vitest';
import { computeValue, lessonRun, stateOf, verdictOn, type Conditions, type PlannedStep } from '../../src/tables/index.ts';
import { conditions, withSource } from './conditions.ts';

const ofPump = withSource({ kind: 'pressurise', highestGauge: 60_000, releaseTime: 0.5 });
const { vessel, gauge } = ofPump.apparatus;
const bottle: Conditions = {
  ...ofPump,
  apparatus: { ...ofPump.apparatus, vessel: { ...vessel, lowestGauge: -5000, highestGauge: 40_000 }, gauge: { ...gauge, lowestGauge: 0, highestGauge: 100_000 } },
};
const planned = (plannedDrop: number): Conditions => ({ ...bottle, plannedDrop });
const ROOM = bottle.inputs.roomPressure.value;
const WARM = bottle.inputs.roomTemperature.value;

describe('a bottle that is let go', () => {
  it('starts above the room by what it is to fall, whatever its pump could reach', () => {
    expect(stateOf(bottle).startPressure).toBe(ROOM + 20_000);
  });

  it.each<[string, number, readonly string[]]>([
    ['within all limits', 20_000, []],
    ['beyond the rating', 45_000, ['rating']],
    ['beyond the pump too', 65_000, ['rating', 'pump']],
  ])('%s', (_, drop, obstacles) => {
    const { obstacles: found, ratingMargin } = verdictOn(planned(drop));
    expect(found).toEqual(obstacles);
    expect(ratingMargin).toBe(40_000 - drop);
  });

  describe('in a lesson', () => {
    const steps: readonly PlannedStep[] = [
      { at: 60, duration: 30, action: 'pump', drop: 0 },
      { at: 90, duration: 180, action: 'wait' },
      { at: 270, duration: 30, action: 'pump', drop: 0 },
      { at: 300, duration: 90, action: 'wait' },
      { at: 390, duration: 30, action: 'vent', drop: 20_000 },
    ];
    const { series } = lessonRun(bottle, steps);
    const during = (from: number, to: number) => series.filter(({ time }) => time >= from && time <= to);
    const warmest = (from: number, to: number): number => Math.max(...during(from, to).map(({ gasTemperature }) => gasTemperature));
    const coldest = (from: number, to: number): number => Math.min(...during(from, to).map(({ gasTemperature }) => gasTemperature));

    // Wet walls bring the air from 97 % to saturation: 3 % of 2339 Pa, the saturation pressure at 20 °C (CRC Handbook, from memory), and a fiftieth of that for air beside vapor.
    it('stands at the pressure of the room, but for the vapor of its wet walls, until air is pressed in', () => {
      for (const { pressure } of during(0, 59)) expect(Math.abs(pressure - ROOM)).toBeLessThan(0.03 * 2339 * 1.02);
    });
    it('warms while it is pressed in, and no more than Poisson’s law for dry air', () => {
      expect(warmest(60, 90)).toBeGreaterThan(WARM + 2);
      expect(warmest(60, 90)).toBeLessThan(WARM * 1.2 ** (2 / 7));
    });
    it('presses less once it has cooled, and is brought back to the mark', () => {
      expect(during(250, 269).at(-1)!.pressure).toBeLessThan(ROOM + 19_500);
      expect(Math.max(...during(270, 300).map(({ pressure }) => pressure))).toBeCloseTo(ROOM + 20_000, 0);
    });
    it('is cold when it is let go, and no colder than Poisson’s law for dry air', () => {
      expect(coldest(390, 420)).toBeLessThan(WARM - 8);
      expect(coldest(390, 420)).toBeGreaterThan(WARM * (1 / 1.2) ** (2 / 7));
      expect(series.at(-1)!.pressure).toBeCloseTo(ROOM, 0);
    });
  });

  it.each([
    [0, 101_325],
    [2000, 79_501],
  ])('needs the same share of the pressure at %d m, before it is let go', (elevation, room) => {
    // Equal cooling is an equal ratio of pressures (Poisson); station pressures of the US Standard Atmosphere 1976, table I.
    expect(computeValue(bottle, 'gaugeSameCooling', { elevation }).value! / (room * (0.2 * 1e5 / ROOM))).toBeCloseTo(1, 2);
  });
});

describe('what the wall of a bottle bears', () => {
  it('is told of the time before it is let go, where no drop is named', () => {
    // Pressure times area.
    expect(computeValue(bottle, 'lidForce', {}).value).toBeCloseTo(20_000 * (Math.PI / 4) * vessel.diameter ** 2, 6);
    expect(computeValue(bottle, 'ratingMargin', {}).value).toBeCloseTo(20_000, 6);
    expect(computeValue(bottle, 'lidForce', { drop: 20_000 }).value).toBeCloseTo(0, 6);
  });
});

describe('a bottle that is squeezed and let go', () => {
  const squeezed: Conditions = {
    ...withSource({ kind: 'squeeze', volumeChange: 5e-4 }),
    apparatus: { ...withSource({ kind: 'squeeze', volumeChange: 5e-4 }).apparatus, vessel: { ...vessel, volume: 0.005, lowestGauge: -2000, highestGauge: 30_000 }, gauge: { ...gauge, lowestGauge: 0, highestGauge: 100_000 } },
    plannedDrop: 10_000,
  };

  it('starts above the room, and is judged by its upper rating', () => {
    expect(stateOf(squeezed).startPressure).toBe(ROOM + 10_000);
    expect(verdictOn(squeezed)).toMatchObject({ obstacles: [], ratingMargin: 20_000, gauge: 10_000 });
  });

  // Boyle's law: half a liter out of five leaves 1/0.9 of the pressure.
  it.each([
    [(ROOM / 0.9 - ROOM) * 0.999, []],
    [(ROOM / 0.9 - ROOM) * 1.001, ['pump']],
  ])('reaches what Boyle’s law gives: %d Pa', (plannedDrop, obstacles) => {
    expect(verdictOn({ ...squeezed, plannedDrop }).obstacles).toEqual(obstacles);
  });
});

describe('a vessel under low pressure', () => {
  const pumped = conditions;
  const steps: PlannedStep[] = [
    { at: 60, duration: 30, action: 'pump', drop: 3000 },
    { at: 90, duration: 30, action: 'particles' },
    { at: 120, duration: 60, action: 'wait' },
  ];

  // Equal pressures end the flow: an opened vessel ends at that of the room, and once closed again moves by what its air still gives off or takes up.
  it('draws particles in with air of the room until both press alike', () => {
    const { series } = lessonRun(pumped, steps);
    const before = series.findLast(({ time }) => time < 90)!;
    expect(before.pressure).toBeLessThan(ROOM - 1500);
    for (const { time, pressure } of series) if (time >= 96) expect(Math.abs(pressure - ROOM)).toBeLessThan(600);
  });
});

describe('a lesson whose vessel did not keep the pressure it was brought to', () => {
  const last = (of: Conditions, steps: readonly PlannedStep[]): number => lessonRun(of, steps).series.at(-1)!.pressure;

  it('presses air in and lets it go where its steps name no drop', () => {
    const pressedIn: PlannedStep = { at: 60, duration: 5, action: 'pump' };
    expect(last(bottle, [pressedIn])).toBeGreaterThan(ROOM + 15_000);
    expect(last(bottle, [pressedIn, { at: 65, duration: 30, action: 'vent' }])).toBeCloseTo(ROOM, 0);
  });
  it('lets out what vapor of wet walls brought above the room', () => {
    expect(last(bottle, [{ at: 120, duration: 0.5, action: 'pump', drop: 20_000 }])).toBeCloseTo(ROOM, -1);
  });
  it('is pumped again where it warmed past the next mark', () => {
    const steps: readonly PlannedStep[] = [{ at: 0, duration: 300, action: 'pump', drop: 20_000 }, { at: 300, duration: 1.5, action: 'pump', drop: 19_500 }];
    expect(last(conditions, steps)).toBeCloseTo(ROOM - 19_500, 0);
  });
  it('is filled where it cooled past the next mark', () => {
    const warm: Conditions = { ...conditions, inputs: { ...conditions.inputs, startTemperatureDifference: { value: 20, uncertainty: 0 } } };
    expect(last(warm, [{ at: 300, duration: 0.01, action: 'pump', drop: 500 }])).toBeCloseTo(ROOM - 500, 0);
  });
});
