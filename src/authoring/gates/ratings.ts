/** No plan goes beyond the rating of the vessel, the scale of the gauge, or what the source can reach. */
import type { Pascal } from '../../physics/index.ts';
import type { Content } from '../content.ts';
import type { Finding, Problem } from '../findings.ts';
import { againstRoom, kilopascals, type KitPlan } from './kit-plan.ts';

export function ratingGate(_: Content, plan: KitPlan): Finding[] {
  const check = plan.way === 'evacuated' ? checkEvacuated : checkPressurised;
  return plan.drops.flatMap((drop) => check(plan, drop.size).map((problem) => drop.finding(problem)));
}

function checkEvacuated({ apparatus, roomPressure }: KitPlan, drop: Pascal): Problem[] {
  const { vessel, gauge, source } = apparatus;
  const rated = againstRoom(vessel.lowest, roomPressure);
  const scale = againstRoom(gauge.lowest, roomPressure);
  const problems: Problem[] = [];
  // A gauge read to its resolution lets the true pressure be that much lower.
  const reached = drop + gauge.resolution.value;
  if (drop > 0 && -reached < rated) problems.push(beyondRating(-drop, -reached, gauge.resolution.text, rated, vessel.lowest.text));
  if (-drop < scale) problems.push(beyondGauge(-drop, scale, gauge.lowest.text));
  const lowest = 'ultimatePressure' in source ? source.ultimatePressure : undefined;
  if (lowest !== undefined) {
    const ultimate = againstRoom(lowest, roomPressure);
    if (-drop < ultimate) {
      problems.push({
        code: 'beyond-pump',
        what: `a drop of ${kilopascals(drop)} leaves ${kilopascals(roomPressure - drop)} absolute, and the pump’s ultimate pressure is ${lowest.text}`,
        instead: `plan at most ${kilopascals(Math.max(0, -ultimate))} in this room, or use another pump`,
      });
    }
  }
  return problems;
}

function checkPressurised({ apparatus, roomPressure }: KitPlan, drop: Pascal): Problem[] {
  const { vessel, gauge, source } = apparatus;
  const rated = againstRoom(vessel.highest, roomPressure);
  const scale = againstRoom(gauge.highest, roomPressure);
  const problems: Problem[] = [];
  const reached = drop + gauge.resolution.value;
  if (drop > 0 && reached > rated) problems.push(beyondRating(drop, reached, gauge.resolution.text, rated, vessel.highest.text));
  if (drop > scale) problems.push(beyondGauge(drop, scale, gauge.highest.text));
  // Boyle's law, at the room's temperature: the most that a full squeeze gives.
  const highest =
    source.kind === 'pressurise'
      ? source.highest.value
      : source.kind === 'squeeze'
        ? (roomPressure * source.volumeChange.value) / Math.max(vessel.volume.value - source.volumeChange.value, Number.MIN_VALUE)
        : Infinity;
  if (drop > highest) {
    problems.push({
      code: 'beyond-pump',
      what: `a release of ${kilopascals(drop)} needs that much above the room, and the source reaches ${kilopascals(highest)}`,
      instead: 'plan a smaller release, or use another source',
    });
  }
  return problems;
}

function beyondRating(planned: Pascal, reached: Pascal, margin: string, rated: Pascal, written: string): Problem {
  return {
    code: 'beyond-rating',
    what: `the plan goes to ${kilopascals(planned)} against the room, with the gauge’s ${margin} to ${kilopascals(reached)}, and the vessel is rated to ${kilopascals(rated)} (${written})`,
    instead: 'plan a smaller drop, or use a vessel of a higher rating',
  };
}

function beyondGauge(planned: Pascal, scale: Pascal, written: string): Problem {
  return {
    code: 'beyond-gauge',
    what: `the plan goes to ${kilopascals(planned)} against the room, and the gauge’s scale ends at ${kilopascals(scale)} (${written})`,
    instead: 'plan a smaller drop, or use a gauge of a wider scale',
  };
}
