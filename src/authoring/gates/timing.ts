/** The steps of a run sheet follow each other, and end within the lesson. */
import type { Second } from '../../physics/index.ts';
import type { Content } from '../content.ts';
import type { Finding } from '../findings.ts';
import type { KitPlan } from './kit-plan.ts';

/** Times written in minutes differ from their sum by rounding only. */
const ROUNDING: Second = 1e-6;

export function timingGate(_: Content, { steps, kit, atStep }: KitPlan): Finding[] {
  const findings: Finding[] = [];
  let end: Second = 0;
  for (const step of steps) {
    if (step.start < end - ROUNDING) {
      findings.push(
        atStep(step, {
          code: 'step-order',
          what: `the step begins at ${minutes(step.start)}, and the ones above it end at ${minutes(end)}`,
          instead: 'begin it later, or shorten the one above',
        }),
      );
    }
    if (step.end > kit.meta.minutes.value + ROUNDING) {
      findings.push(
        atStep(step, {
          code: 'beyond-lesson',
          what: `the step ends at ${minutes(step.end)}, and the lesson has ${kit.meta.minutes.text}`,
          instead: 'shorten the plan, or correct `minutes` in kit.yaml',
        }),
      );
    }
    end = Math.max(end, step.end);
  }
  return findings;
}

function minutes(time: Second): string {
  return `${Number((time / 60).toFixed(2))} min`;
}
