/** Particles that a step lets in are among those of the kit. */
import type { Content } from '../content.ts';
import type { Finding } from '../findings.ts';
import { proposeName } from '../names.ts';
import type { KitPlan } from './kit-plan.ts';

export function particlesGate(_: Content, { steps, kit, atStep }: KitPlan): Finding[] {
  const listed = kit.meta.particles;
  return steps.flatMap((step) =>
    step.particles === undefined || listed.includes(step.particles)
      ? []
      : [
          atStep(step, {
            code: 'unknown-reference',
            what: `the step lets in \`${step.particles}\`, which the kit does not list`,
            instead: proposeName(step.particles, listed, 'add it to `particles` in kit.yaml'),
          }),
        ],
  );
}
