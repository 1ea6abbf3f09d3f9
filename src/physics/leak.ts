/** Leak of a vessel from a hold test: the pressure read again and again while nothing is done. */
import { inRange } from './range.ts';
import type { CubicMeter, Pascal, Second } from './units.ts';

/** A reading of a hold test. */
export interface HoldReading {
  /** s */
  readonly time: Second;
  /** Absolute or against the room, Pa: only its change counts */
  readonly pressure: Pascal;
}

/** What a hold test says of a vessel. */
export interface Leak {
  /** Rise of the pressure, Pa/s; negative where it falls */
  readonly pressureRate: number;
  /** Pa/s */
  readonly pressureRateStandardError: number;
  /** Volume times rise of the pressure, Pa·m³/s */
  readonly leakRate: number;
  /** Pa·m³/s */
  readonly leakRateStandardError: number;
  /** Scatter of the readings about the straight line, Pa */
  readonly residualStandardDeviation: Pascal;
  /**
   * Time in which the leak would equalize the vessel at this rate, s: difference from the room in the middle of the test
   * over the rate. Infinite where the pressure does not move toward the room's; undefined without a room pressure
   */
  readonly timeConstant: Second | undefined;
}

/**
 * Leak rate from a hold test, by a straight line through the readings. Begin reading when the gas has come back to the
 * walls' temperature (five of its time constants): before, the pressure rises without any leak.
 * @param test.readings 3 or more, not all at one time
 * @param test.volume of the gas, m³, 10⁻⁹ to 10
 * @param test.roomPressure in the same sense as the readings (0 for a gauge), Pa; for the time constant
 * @returns see {@link Leak}
 * @throws RangeError outside a range, or with all readings at one time
 * Source: pV-throughput of the pressure-rise method, ISO 20485 and EN 1779; line by least squares, e.g. NIST/SEMATECH
 *   e-Handbook of Statistical Methods, sect. 4.1.4.
 */
export function leakRate(test: {
  readonly readings: readonly HoldReading[];
  readonly volume: CubicMeter;
  readonly roomPressure?: Pascal;
}): Leak {
  const { readings } = test;
  const volume = inRange('volume', test.volume, 1e-9, 10, 'm³');
  const n = inRange('number of readings', readings.length, 3, 1e6);
  readings.forEach(({ time, pressure }, i) => {
    inRange(`readings[${i}].time`, time, -1e9, 1e9, 's');
    inRange(`readings[${i}].pressure`, pressure, -1e7, 1e7, 'Pa');
  });
  const sum = (of: (reading: HoldReading) => number): number => readings.reduce((total, reading) => total + of(reading), 0);
  const meanTime = sum(({ time }) => time) / n;
  const meanPressure = sum(({ pressure }) => pressure) / n;
  const timeSquares = sum(({ time }) => (time - meanTime) ** 2);
  if (timeSquares === 0) throw new RangeError('readings are all at one time');
  const rate = sum(({ time, pressure }) => (time - meanTime) * (pressure - meanPressure)) / timeSquares;
  const squares = sum(({ time, pressure }) => (pressure - meanPressure - rate * (time - meanTime)) ** 2);
  const scatter = Math.sqrt(squares / (n - 2));
  const error = scatter / Math.sqrt(timeSquares);
  return {
    pressureRate: rate,
    pressureRateStandardError: error,
    leakRate: volume * rate,
    leakRateStandardError: volume * error,
    residualStandardDeviation: scatter,
    timeConstant: test.roomPressure === undefined ? undefined : timeConstantOf(test.roomPressure - meanPressure, rate),
  };
}

function timeConstantOf(difference: Pascal, rate: number): Second {
  return difference * rate > 0 ? difference / rate : Infinity;
}
