/** Events put into action: each becomes stretches of time with one rule for pressure or flow. */
import { log } from './elementary.ts';
import { strokeLaw } from './pump.ts';
import { inRange, wholeInRange } from './range.ts';
import type { RunEvent, StrokePumping } from './run-events.ts';
import type { RunInput } from './run-input.ts';
import type { RunRecorder } from './run-recorder.ts';
import type { CubicMeter, Pascal, Second } from './units.ts';

const MOST_STROKES = 10_000;

/**
 * A function that performs one event after another on a run; it remembers valve and volume.
 * @throws RangeError where an event asks for what it cannot do at that moment
 */
export function performer(input: RunInput, run: RunRecorder): (event: RunEvent) => void {
  const roomPressure: Pascal = input.room?.pressure ?? input.start.pressure;
  let isOpen = false;
  let volume = input.vessel?.volume;

  // Refuses undefined as well.
  const knownVolume = (): CubicMeter => inRange('vessel.volume', volume!, 1e-9, 10, 'm³');

  const ramp = (to: Pascal, duration: Second, open: boolean): void => {
    if (duration === 0) return run.jumpTo(to);
    const rate = (to - run.pressure()) / duration;
    run.advance(run.time() + duration, { pressureRate: () => rate, open });
  };

  const rest = (duration: Second): void => {
    run.advance(run.time() + duration, isOpen ? { pressureRate: () => 0, open: true } : {});
  };

  return (event) => {
    switch (event.kind) {
      case 'pump':
        isOpen = false;
        return ramp(inRange('pump.to', event.to, 5e3, run.pressure(), 'Pa'), event.duration, false);
      case 'pressurize':
        isOpen = false;
        return ramp(inRange('pressurize.to', event.to, run.pressure(), 5e5, 'Pa'), event.duration, true);
      case 'bring':
        isOpen = false;
        return ramp(event.to, event.duration, event.to > run.pressure());
      case 'stroke-pump':
        isOpen = false;
        return pumpByStrokes(event, knownVolume(), roomPressure, run);
      case 'steady-pump': {
        isOpen = false;
        const limit = inRange('steady-pump.ultimatePressure', event.ultimatePressure ?? 0, 0, 5e5, 'Pa');
        return run.advance(run.time() + event.duration, { pump: { rate: event.speed / knownVolume(), limit } });
      }
      case 'squeeze': {
        isOpen = false;
        const before = knownVolume();
        const change = inRange('squeeze.volumeChange', event.volumeChange, -0.99 * before, 10, 'm³');
        const from = run.time();
        const rate = change / event.duration;
        run.advance(from + event.duration, { volumeRate: (time) => rate / (before + rate * (time - from)) });
        volume = before + change;
        return;
      }
      case 'vent': {
        isOpen = true;
        const from = run.time();
        const { duration } = event;
        // Flow through a small opening goes with the root of the difference, so the difference falls as a square.
        const firstRate = (2 * (roomPressure - run.pressure())) / duration;
        return run.advance(from + duration, { pressureRate: (time) => firstRate * (1 - (time - from) / duration), open: true });
      }
      case 'hold':
        isOpen = false;
        return rest(event.duration);
      case 'wait':
        return rest(event.duration);
      case 'particles':
        return run.addParticles(event.number);
    }
  };
}

function pumpByStrokes(event: StrokePumping, vesselVolume: CubicMeter, roomPressure: Pascal, run: RunRecorder): void {
  const { strokes, to, strokeTime } = event;
  if ((strokes === undefined) === (to === undefined)) {
    throw new RangeError('a stroke-pump needs either strokes or to');
  }
  const startPressure = run.pressure();
  const { limit, ratio } = strokeLaw({ ...event, vesselVolume, startPressure, roomPressure });
  const most = wholeInRange('strokes', strokes ?? MOST_STROKES, 0, MOST_STROKES);
  if (to !== undefined) inRange('stroke-pump.to', to, Math.max(limit, 5e3) + 1, startPressure, 'Pa');
  // Drawing takes half of the stroke, and moves as much gas at constant temperature as the law of strokes says.
  const drawTime = strokeTime / 2;
  const draw = { pump: { rate: -log(ratio) / drawTime, limit } };
  for (let stroke = 0; stroke < most; stroke++) {
    if (to !== undefined && run.pressure() <= to) return;
    run.advance(run.time() + drawTime, draw);
    run.advance(run.time() + strokeTime - drawTime, {});
  }
  if (to !== undefined) throw new RangeError(`pressure is ${run.pressure()} Pa after ${most} strokes; ${to} Pa is not reached`);
}
