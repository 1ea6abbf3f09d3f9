/** What is to be read can be read: changes above the resolution, temperatures on the scale. */
import { expandWithoutCondensation, toCelsius } from '../../physics/index.ts';
import { roomOf, type Content } from '../content.ts';
import type { Finding } from '../findings.ts';
import { kelvins, kilopascals, startAir, type KitPlan } from './kit-plan.ts';

export function instrumentGate(content: Content, plan: KitPlan): Finding[] {
  return [...gaugeFindings(plan), ...scaleFindings(content, plan), ...coolingFindings(content, plan)];
}

function gaugeFindings({ drops, apparatus }: KitPlan): Finding[] {
  const { resolution } = apparatus.gauge;
  return drops
    .filter(({ size }) => size > 0 && size < resolution.value)
    .map((drop) =>
      drop.finding({
        code: 'below-resolution',
        what: `the drop is ${kilopascals(drop.size)}, and the gauge shows steps of ${resolution.text}`,
        instead: 'plan a larger drop, or use a finer gauge',
      }),
    );
}

function scaleFindings(content: Content, { kit, apparatus, inKit }: KitPlan): Finding[] {
  const { lowest, highest } = apparatus.thermometer;
  const { temperature } = kit.meta.start;
  const start = temperature ?? roomOf(content, kit).temperature;
  const off =
    lowest !== undefined && start.value < lowest.value
      ? lowest
      : highest !== undefined && start.value > highest.value
        ? highest
        : undefined;
  if (off === undefined) return [];
  return [
    inKit(
      temperature === undefined ? ['start'] : ['start', 'temperature'],
      {
        code: 'below-resolution',
        what: `the air starts at ${toCelsius(start.value).toFixed(1)} °C, and the thermometer’s scale ends at ${off.text}`,
        instead: 'use a thermometer of another scale',
      },
      'key',
    ),
  ];
}

/** The air's own cooling is the most that a thermometer in it can show. */
function coolingFindings(content: Content, plan: KitPlan): Finding[] {
  const { resolution } = plan.apparatus.thermometer;
  const drop = plan.kit.meta.drop.value;
  try {
    const air = startAir(plan, content, drop);
    const cooling = air.temperature - expandWithoutCondensation(air, air.pressure - drop).temperature;
    if (drop === 0 || cooling >= resolution.value) return [];
    return [
      plan.inKit(['drop'], {
        code: 'below-resolution',
        what: `the drop cools the air by ${kelvins(cooling)} at most, and the thermometer shows steps of ${resolution.text}`,
        instead: 'plan a larger drop, or use a finer thermometer',
      }),
    ];
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return [
      plan.inKit(['drop'], {
        code: 'outside-physics',
        what: `the state of the air after the drop cannot be computed (${error.message})`,
        instead: 'check the room, `start` and the drop',
      }),
    ];
  }
}
