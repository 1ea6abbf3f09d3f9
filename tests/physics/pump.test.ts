import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compressionStrokes,
  gaugeReading,
  pumpStrokes,
  squeezePressure,
  steadyPumpPressure,
  strokesTo,
  type StrokePump,
} from '../../src/physics/pump.ts';

const PUMP: StrokePump = { startPressure: 1e5, vesselVolume: 5e-3, strokeVolume: 2e-4 };

const ANY_PUMP = fc.record({
  startPressure: fc.double({ min: 2e4, max: 2e5, noNaN: true }),
  vesselVolume: fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
  strokeVolume: fc.double({ min: 1e-5, max: 1e-2, noNaN: true }),
  deadShare: fc.double({ min: 0, max: 1, noNaN: true }),
  ultimateShare: fc.double({ min: 0, max: 1, noNaN: true }),
  strokes: fc.integer({ min: 1, max: 300 }),
}).map(({ deadShare, ultimateShare, ...pump }) => ({
  ...pump,
  deadVolume: deadShare * pump.strokeVolume,
  ultimatePressure: ultimateShare * pump.startPressure,
}));

/** Amounts of gas in vessel and pump, valve by valve, in units of pressure times volume. */
function countMolecules(strokes: number, dead: number): number {
  let vessel = 1e5 * 5e-3;
  let cylinder = 1e5 * dead;
  for (let i = 0; i < strokes; i++) {
    const pressure = (vessel + cylinder) / (5e-3 + 2e-4 + dead);
    vessel = pressure * 5e-3;
    cylinder = 1e5 * dead;
  }
  return vessel / 5e-3;
}

describe('pumpStrokes', () => {
  it.each([0, 1e-5, 5e-5])('keeps count of the gas, dead volume %d m³', (deadVolume) => {
    for (const { stroke, pressure } of pumpStrokes({ ...PUMP, deadVolume, strokes: 40 })) {
      expect(pressure / countMolecules(stroke, deadVolume)).toBeCloseTo(1, 12);
    }
  });

  it('multiplies the pressure by V/(V + V_s) with each stroke of a pump without dead volume', () => {
    const strokes = pumpStrokes({ ...PUMP, strokes: 10 });
    expect(strokes.map(({ stroke }) => stroke)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    strokes.forEach(({ pressure }, i) => expect(pressure).toBeCloseTo(1e5 * (5 / 5.2) ** (i + 1), 6));
  });

  it('ends where the dead volume, expanded, is at the vessel’s pressure', () => {
    // Textbook limit of a piston pump: room pressure times dead volume over the cylinder's whole volume.
    const [last] = pumpStrokes({ ...PUMP, deadVolume: 5e-5, strokes: 5000 }).slice(-1);
    expect(last!.pressure).toBeCloseTo((1e5 * 5e-5) / 2.5e-4, 6);
  });

  it('works against the room’s pressure, also where the vessel starts below it', () => {
    const [first] = pumpStrokes({ ...PUMP, startPressure: 8e4, roomPressure: 1e5, deadVolume: 2e-5, strokes: 1 });
    expect(first!.pressure).toBeCloseTo((8e4 * 5e-3 + 1e5 * 2e-5) / (5e-3 + 2.2e-4), 6);
  });

  it('never undershoots the ultimate pressure, and never rises', () => {
    fc.assert(
      fc.property(ANY_PUMP, (pump) => {
        const pressures = [pump.startPressure, ...pumpStrokes(pump).map(({ pressure }) => pressure)];
        expect(Math.min(...pressures)).toBeGreaterThanOrEqual(pump.ultimatePressure);
        expect(pressures.filter((pressure, i) => i > 0 && pressure > pressures[i - 1]! * (1 + 1e-12))).toEqual([]);
      }),
      { seed: 21, numRuns: 200 },
    );
  });
});

describe('strokesTo', () => {
  it('gives the least number of strokes that reach the pressure', () => {
    fc.assert(
      fc.property(ANY_PUMP, fc.double({ min: 0.05, max: 0.999, noNaN: true }), (pump, share) => {
        const [end] = pumpStrokes({ ...pump, strokes: 200 }).slice(-1);
        const target = pump.startPressure + share * (end!.pressure - pump.startPressure);
        fc.pre(target < pump.startPressure * (1 - 1e-6) && target - end!.pressure > 1e-6 * target);
        const strokes = strokesTo(pump, target);
        const after = pumpStrokes({ ...pump, strokes }).map(({ pressure }) => pressure);
        expect(after[strokes - 1]!).toBeLessThanOrEqual(target * (1 + 1e-9));
        if (strokes > 1) expect(after[strokes - 2]!).toBeGreaterThan(target * (1 - 1e-9));
      }),
      { seed: 22, numRuns: 200 },
    );
  });

  it('counts none for the pressure that is there, and refuses what the pump does not reach', () => {
    expect(strokesTo(PUMP, 1e5)).toBe(0);
    expect(strokesTo(PUMP, 8e4)).toBe(6); // ln 0.8 / ln(5/5.2) = 5.7
    expect(() => strokesTo({ ...PUMP, ultimatePressure: 3e4 }, 2.9e4)).toThrow(/targetPressure is 29000 Pa/);
    expect(() => strokesTo({ ...PUMP, ultimatePressure: 3e4 }, 3e4)).toThrow(/never reaches/);
    expect(() => strokesTo(PUMP, 1.1e5)).toThrow(RangeError);
  });
});

describe('compressionStrokes', () => {
  it('adds a cylinder of room air with each stroke, the dead volume less and less of it', () => {
    const plain = compressionStrokes({ ...PUMP, strokes: 3 }).map(({ pressure }) => pressure);
    plain.forEach((pressure, i) => expect(pressure).toBeCloseTo(1e5 + (i + 1) * 4e3, 6));
    const [last] = compressionStrokes({ ...PUMP, deadVolume: 1e-4, strokes: 5000 }).slice(-1);
    expect(last!.pressure).toBeCloseTo((1e5 * 3e-4) / 1e-4, 3);
    const [first] = compressionStrokes({ ...PUMP, deadVolume: 1e-4, strokes: 1 });
    expect(first!.pressure).toBeCloseTo((1e5 * 5e-3 + 1e5 * 3e-4) / 5.1e-3, 6);
  });

  it('refuses a vessel above what the pump reaches', () => {
    expect(() => compressionStrokes({ ...PUMP, startPressure: 4e5, roomPressure: 1e5, deadVolume: 1e-4, strokes: 1 })).toThrow(RangeError);
  });
});

describe('steadyPumpPressure', () => {
  it('takes (V/S) ln(p₁/p₂) for a fall from p₁ to p₂', () => {
    const time = (5e-3 / 1e-4) * Math.log(1e5 / 2e4);
    expect(steadyPumpPressure({ startPressure: 1e5, vesselVolume: 5e-3, speed: 1e-4, time })).toBeCloseTo(2e4, 6);
  });

  it('is what very many very small strokes do', () => {
    const [last] = pumpStrokes({ ...PUMP, strokeVolume: 1e-7, strokes: 10_000 }).slice(-1);
    const steady = steadyPumpPressure({ startPressure: 1e5, vesselVolume: 5e-3, speed: 1e-4, time: 10 });
    expect(last!.pressure / steady).toBeCloseTo(1, 5);
  });

  it('comes to the ultimate pressure and no lower', () => {
    const at = (time: number): number => steadyPumpPressure({ startPressure: 1e5, vesselVolume: 5e-3, speed: 1e-4, ultimatePressure: 2e4, time });
    expect(at(0)).toBe(1e5);
    expect(at(1e6)).toBe(2e4);
  });
});

describe('squeezePressure and gaugeReading', () => {
  it('follow Boyle’s law and the definition of gauge pressure', () => {
    expect(squeezePressure({ startPressure: 1e5, volume: 2e-3, volumeChange: -1e-3 })).toBe(2e5);
    expect(squeezePressure({ startPressure: 1e5, volume: 2e-3, volumeChange: 2e-3 })).toBe(5e4);
    expect(gaugeReading(8e4, 1e5)).toBe(-2e4);
    expect(gaugeReading(1.5e5, 1e5)).toBe(5e4);
  });
});

describe('arguments outside their range', () => {
  it.each<[string, () => unknown]>([
    ['startPressure', () => pumpStrokes({ ...PUMP, startPressure: 99, strokes: 1 })],
    ['startPressure', () => pumpStrokes({ ...PUMP, startPressure: Number.NaN, strokes: 1 })],
    ['vesselVolume', () => pumpStrokes({ ...PUMP, vesselVolume: 0, strokes: 1 })],
    ['strokeVolume', () => pumpStrokes({ ...PUMP, strokeVolume: 0, strokes: 1 })],
    ['deadVolume', () => pumpStrokes({ ...PUMP, deadVolume: 3e-4, strokes: 1 })],
    ['ultimatePressure', () => pumpStrokes({ ...PUMP, ultimatePressure: 1.1e5, strokes: 1 })],
    ['roomPressure', () => pumpStrokes({ ...PUMP, roomPressure: 0, strokes: 1 })],
    ['strokes', () => pumpStrokes({ ...PUMP, strokes: 1.5 })],
    ['strokes', () => pumpStrokes({ ...PUMP, strokes: -1 })],
    ['speed', () => steadyPumpPressure({ startPressure: 1e5, vesselVolume: 5e-3, speed: -1, time: 1 })],
    ['time', () => steadyPumpPressure({ startPressure: 1e5, vesselVolume: 5e-3, speed: 1e-4, time: -1 })],
    ['volumeChange', () => squeezePressure({ startPressure: 1e5, volume: 1e-3, volumeChange: -1e-3 })],
    ['pressure', () => gaugeReading(-1, 1e5)],
    ['roomPressure', () => gaugeReading(1e5, 0)],
  ])('%s', (name, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(name);
  });
});
