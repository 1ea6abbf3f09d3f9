/**
 * Times of `condense`: 100 size classes over 60 s of pumping, holding and letting air back in, with particles and
 * walls at random (seeded). Run with Node alone; prints milliseconds of processor time on one core.
 */
import { condense, type Condensation } from '../../src/physics/droplets.ts';
import { moistAir } from '../../src/physics/moist-air.ts';
import { randomSource } from '../../src/physics/random.ts';

const RUNS = 200;
const random = randomSource(20261125, 'bench');
const between = (low: number, high: number): number => low + (high - low) * random.uniform();
const decades = (low: number, high: number): number => 10 ** between(Math.log10(low), Math.log10(high));

function vesselRun(): Condensation {
  const temperature = between(283, 296);
  const pressure = between(8e4, 1.03e5);
  const pumped = between(1, 40);
  const lowest = pressure - between(3e3, 2.5e4);
  const released = between(pumped + 5, 55);
  const walls = random.uniform();
  return {
    start: moistAir({ temperature, pressure, relativeHumidity: between(0.5, 1) }),
    modes: [
      {
        medianDryDiameter: decades(3e-8, 5e-7),
        geometricStandardDeviation: between(1.2, 2.2),
        kappa: decades(0.02, 1.28),
        number: decades(1e6, 3e12),
      },
    ],
    pressureHistory: [
      { time: 0, pressure },
      { time: pumped, pressure: lowest },
      { time: released, pressure: lowest },
      { time: released + 2, pressure },
      { time: 60, pressure },
    ],
    classes: 100,
    ...(walls < 1 / 3 ? {} : { wall: { timeConstant: between(3, 10), temperature, wet: walls < 2 / 3 } }),
  };
}

function processorTime(input: Condensation): number {
  const before = process.cpuUsage();
  condense(input);
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

for (let i = 0; i < 20; i++) condense(vesselRun());
const inputs = Array.from({ length: RUNS }, vesselRun);
const times = inputs.map(processorTime).sort((a, b) => a - b);
const at = (share: number): string => times[Math.min(RUNS - 1, Math.floor(share * RUNS))]!.toFixed(1);
console.log(`condense, 100 classes, 60 s, ${RUNS} runs: median ${at(0.5)} ms, nine in ten below ${at(0.9)} ms, worst ${at(1)} ms`);
