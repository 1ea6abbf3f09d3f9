/** Refuses what a run of condense cannot be made from; each throws RangeError naming the argument. */
import type { PressurePoint } from './droplet-run.ts';
import { refuseLiquid } from './expansion.ts';
import type { MoistAir } from './moist-air.ts';
import { inRange } from './range.ts';
import type { Pascal, Ratio, Second } from './units.ts';

/** Condensation coefficient and thermal accommodation, 1 unless given. */
export function coefficients(given: {
  readonly condensationCoefficient?: Ratio;
  readonly thermalAccommodation?: Ratio;
}): [condensationCoefficient: Ratio, thermalAccommodation: Ratio] {
  return [
    inRange('condensationCoefficient', given.condensationCoefficient ?? 1, 1e-3, 1),
    inRange('thermalAccommodation', given.thermalAccommodation ?? 1, 1e-3, 1),
  ];
}

/** Times that follow each other are at least so far apart, s: enough to count as later. */
const SHORTEST_LEG: Second = 1e-9;
/** A saturation ratio of 1 may be passed by rounding, not by more. */
const ROUNDING = 1e-9;

/** @throws RangeError for air that is supersaturated or carries liquid already */
export function checkStart(start: MoistAir): void {
  inRange('start.saturationRatio', start.saturationRatio, 0, 1 + ROUNDING);
  inRange('start.temperature', start.temperature, 123, 332, 'K');
  refuseLiquid(start);
}

/** @throws RangeError for a history that is too short, out of order or does not begin at the start's pressure */
export function checkHistory(history: readonly PressurePoint[], startPressure: Pascal): void {
  inRange('pressureHistory.length', history.length, 2, Infinity);
  history.forEach(({ time, pressure }, i) => {
    inRange(`pressureHistory[${i}].pressure`, pressure, 5e3, 5e5, 'Pa');
    inRange(`pressureHistory[${i}].time`, time, i === 0 ? -1e5 : history[i - 1]!.time + SHORTEST_LEG, 1e5, 's');
  });
  inRange('pressureHistory[0].pressure', history[0]!.pressure, startPressure * (1 - 1e-6), startPressure * (1 + 1e-6), 'Pa');
}

/** @throws RangeError for times out of order or outside the history */
export function checkedTimes(times: readonly Second[] | undefined, history: readonly PressurePoint[]): readonly Second[] | undefined {
  times?.forEach((time, i) => {
    const earliest = i === 0 ? history[0]!.time : times[i - 1]! + SHORTEST_LEG;
    inRange(`outputTimes[${i}]`, time, earliest, history[history.length - 1]!.time, 's');
  });
  return times;
}
