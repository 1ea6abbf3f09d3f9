/** The gates that a kit must pass before it is built, one a line. */
import type { Content } from '../content.ts';
import { sortFindings, type Finding } from '../findings.ts';
import { claimGate } from './claims.ts';
import { equipmentGate } from './equipment.ts';
import { flameGate } from './flames.ts';
import { hazardGate } from './hazards.ts';
import { instrumentGate } from './instruments.ts';
import { kitPlan, type KitPlan } from './kit-plan.ts';
import { particlesGate } from './particles.ts';
import { ratingGate } from './ratings.ts';
import { timingGate } from './timing.ts';

const GATES: readonly ((content: Content, plan: KitPlan) => Finding[])[] = [
  hazardGate,
  ratingGate,
  flameGate,
  particlesGate,
  equipmentGate,
  claimGate,
  timingGate,
  instrumentGate,
];

/** All that the gates find in a content folder that was loaded without findings. */
export function checkGates(content: Content): Finding[] {
  const plans = [...content.kits].map(([name, kit]) => kitPlan(content, name, kit));
  return sortFindings(plans.flatMap((plan) => GATES.flatMap((gate) => gate(content, plan))));
}
