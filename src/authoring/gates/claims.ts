/** What a run sheet tells the teacher to expect must be what the air does. */
import { cloudOnset, noParticleLimit, type MoistAir, type Pascal } from '../../physics/index.ts';
import type { Content } from '../content.ts';
import type { Finding, Problem } from '../findings.ts';
import { kilopascals, startAir, type KitPlan, type PlannedStep } from './kit-plan.ts';

export function claimGate(content: Content, plan: KitPlan): Finding[] {
  const findings: Finding[] = [];
  let particles = false;
  let drop: Pascal = 0;
  for (const step of plan.steps) {
    drop = step.drop?.size ?? dropLeftBy(step.action, plan) ?? drop;
    const problem = checkClaim(step, drop, particles, () => startAir(plan, content, drop));
    if (problem !== undefined) findings.push(plan.atStep(step, problem));
    // Particles stay in the vessel when air is let in, so they count for all later steps.
    particles ||= step.action === 'particles' || step.particles !== undefined;
  }
  return findings;
}

/** The drop after an action that names none: a vessel under pressure is at its start once air is pressed in, and falls when it is opened. */
function dropLeftBy(action: string | undefined, { way, kit }: KitPlan): Pascal | undefined {
  if (action === 'vent') return way === 'pressurised' ? kit.meta.drop.value : 0;
  if (action === 'pump') return way === 'pressurised' ? 0 : kit.meta.drop.value;
  return undefined;
}

function checkClaim(step: PlannedStep, drop: Pascal, particles: boolean, air: () => MoistAir): Problem | undefined {
  if (step.expect !== 'clear' && step.expect !== 'cloud') return undefined;
  try {
    if (step.expect === 'cloud') return checkCloud(drop, particles, air());
    return particles ? undefined : checkClear(drop, air());
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return {
      code: 'outside-physics',
      what: `what this step expects cannot be computed (${error.message})`,
      instead: 'check the room, `start` and the drop',
    };
  }
}

function checkCloud(drop: Pascal, particles: boolean, air: MoistAir): Problem | undefined {
  const onset = onsetDrop(air);
  if (onset === undefined)
    return {
      code: 'cloud-denied',
      what: `a cloud is expected, and the air starts too dry for one at any drop`,
      instead: 'start with moister air',
    };
  if (drop < onset) {
    return {
      code: 'cloud-denied',
      what: `a cloud is expected at a drop of ${kilopascals(drop)}, and saturation is reached at ${kilopascals(onset)}`,
      instead: 'plan a larger drop, or start with moister air',
    };
  }
  const limit = noParticleDrop(air);
  if (particles || (limit !== undefined && drop >= limit)) return undefined;
  const needed =
    limit === undefined
      ? 'without particles none forms at any drop'
      : `without particles none forms short of ${kilopascals(limit)}`;
  return {
    code: 'cloud-denied',
    what: `a cloud is expected at a drop of ${kilopascals(drop)} before any particles are let in, and ${needed}`,
    instead: 'add a step with `action="particles"` before this one',
  };
}

function checkClear(drop: Pascal, air: MoistAir): Problem | undefined {
  const limit = noParticleDrop(air);
  if (limit === undefined || drop < limit) return undefined;
  return {
    code: 'clear-denied',
    what: `clear air is expected at a drop of ${kilopascals(drop)}, and without any particles cloud forms from ${kilopascals(limit)} on`,
    instead: 'plan a smaller drop',
  };
}

/** Undefined for air so dry that no drop saturates it. */
function onsetDrop(air: MoistAir): Pascal | undefined {
  try {
    return air.pressure - cloudOnset(air).pressure;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Undefined where the limit is not reached. */
function noParticleDrop(air: MoistAir): Pascal | undefined {
  const { ion, homogeneous } = noParticleLimit(air);
  const pressures = [ion, homogeneous].flatMap((limit) => limit?.pressure ?? []);
  return pressures.length === 0 ? undefined : air.pressure - Math.max(...pressures);
}
