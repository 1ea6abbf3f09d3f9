/** What is lit is put out, and never near a flammable vapor. */
import type { Content } from '../content.ts';
import type { Finding } from '../findings.ts';
import type { KitPlan, PlannedStep } from './kit-plan.ts';

const BURNS = ['flame', 'ember'] as const;

export function flameGate(_: Content, plan: KitPlan): Finding[] {
  return [...withoutEnd(plan), ...stillGlowing(plan), ...withVapor(plan)];
}

/** Where no step lights it, an ember was lit before the lesson: it glows until the last step that lets its smoke in, and is put out after that. A flame may be blown out for its smoke. */
function stillGlowing({ steps, particles, kit, atStep }: KitPlan): Finding[] {
  if (steps.some(({ action }) => action === 'light')) return [];
  const letIn = ({ action, particles: named }: PlannedStep): string | undefined => (action === 'particles' ? (named ?? kit.meta.particles[0]) : named);
  const isEmber = (name: string | undefined): boolean => kit.meta.particles.some((one, i) => one === name && particles[i]?.uses.includes('ember') === true);
  const last = steps.findLastIndex((step) => isEmber(letIn(step)));
  const isPutOut = (step: PlannedStep): boolean => step.action === 'extinguish';
  // None at all is told where the kit lists the particles.
  if (last < 0 || !steps.some(isPutOut) || steps.slice(last).some(isPutOut)) return [];
  const step = steps[last]!;
  return [
    atStep(step, {
      code: 'flame-not-extinguished',
      what: `the ember of \`${letIn(step) ?? ''}\` glows here, and only steps before this one put it out`,
      instead: 'add a later step with `action="extinguish"`',
    }),
  ];
}

function withoutEnd({ steps, particles, apparatus, kit, atStep, inKit }: KitPlan): Finding[] {
  const lit = steps.filter(({ action }) => action === 'light');
  const problem = (what: string) =>
    ({
      code: 'flame-not-extinguished',
      what,
      instead: 'add a later step with `action="extinguish"`, before the next is lit',
    }) as const;
  const findings = lit
    .filter(
      (step, i) =>
        !steps.some(
          ({ action }, at) =>
            action === 'extinguish' &&
            at > steps.indexOf(step) &&
            at < (lit[i + 1] === undefined ? Infinity : steps.indexOf(lit[i + 1]!)),
        ),
    )
    .map((step) => atStep(step, problem('what is lit here is never put out')));
  const burning = particles.findIndex(({ uses }) => BURNS.some((tag) => uses.includes(tag)));
  if (burning >= 0 && lit.length === 0 && !steps.some(({ action }) => action === 'extinguish')) {
    findings.push(
      inKit(
        ['particles', burning],
        problem(`\`${kit.meta.particles[burning] ?? ''}\` burns, and no step of the run sheet puts it out`),
      ),
    );
  }
  if (BURNS.some((tag) => apparatus.uses.includes(tag)) && lit.length === 0 && !steps.some(({ action }) => action === 'extinguish')) {
    findings.push(inKit(['apparatus'], problem(`apparatus \`${kit.meta.apparatus}\` burns, and no step of the run sheet puts it out`)));
  }
  return findings;
}

function withVapor({ steps, particles, apparatus, kit, atStep, inKit }: KitPlan): Finding[] {
  const solvent = apparatus.uses.includes('solvent')
    ? `apparatus ${kit.meta.apparatus}`
    : kit.meta.particles.find((_, i) => particles[i]?.uses.includes('solvent'));
  if (solvent === undefined) return [];
  const problem = (what: string) =>
    ({
      code: 'flame-with-vapor',
      what: `${what} while a flammable vapor is about (${solvent})`,
      instead: 'use particles without a flame, or no solvent',
    }) as const;
  const burning = [...particles.entries()].filter(([, { uses }]) => BURNS.some((tag) => uses.includes(tag)));
  if (burning.length > 0) return burning.map(([i]) => inKit(['particles', i], problem(`\`${kit.meta.particles[i] ?? ''}\` burns`)));
  const apparatusBurns = BURNS.some((tag) => apparatus.uses.includes(tag));
  if (apparatusBurns) return [inKit(['apparatus'], problem('the apparatus burns'))];
  return steps.filter(({ action }) => action === 'light').map((step) => atStep(step, problem('something is lit')));
}
