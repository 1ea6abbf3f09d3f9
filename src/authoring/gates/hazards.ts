/** Whatever can hurt has a hazard sheet in the kit. */
import type { Content } from '../content.ts';
import type { Finding } from '../findings.ts';
import { listNames } from '../names.ts';
import type { HazardTag } from '../schemas/tags.ts';
import type { KitPlan } from './kit-plan.ts';

export function hazardGate(content: Content, plan: KitPlan): Finding[] {
  const { kit, inKit } = plan;
  const covered = new Set(kit.meta.hazards.flatMap((name) => content.hazards.get(name)?.meta.covers ?? []));
  return [...hazardsOf(plan)]
    .filter(([tag]) => !covered.has(tag))
    .map(([tag, origin]) => {
      const sheets = [...content.hazards].filter(([, { meta }]) => meta.covers.includes(tag)).map(([name]) => name);
      const instead =
        sheets.length > 0
          ? `add ${listNames(sheets)} to them`
          : `write a sheet in hazards/ that covers \`${tag}\`, and list it here`;
      return inKit(
        ['hazards'],
        { code: 'hazard-missing', what: `\`${tag}\` (${origin}) is covered by none of the hazard sheets listed`, instead },
        'key',
      );
    });
}

/** Every tag that the kit brings in, and where it comes from. */
function hazardsOf({ kit, apparatus, particles, steps, drops, way }: KitPlan): Map<HazardTag, string> {
  const found = new Map<HazardTag, string>();
  const add = (tag: HazardTag | 'none', origin: string): void => {
    if (tag !== 'none' && !found.has(tag)) found.set(tag, origin);
  };
  for (const tag of apparatus.uses) add(tag, `apparatus ${kit.meta.apparatus}`);
  if (apparatus.vessel.material === 'glass') add('glass', 'the vessel’s material');
  for (const [i, { uses }] of particles.entries()) for (const tag of uses) add(tag, `particles ${kit.meta.particles[i] ?? ''}`);
  if (steps.some(({ action }) => action === 'light')) add('flame', 'a step lights something');
  if (drops.some(({ size }) => size > 0))
    add(way, way === 'evacuated' ? 'the pump takes air out' : 'the vessel is under pressure before release');
  return found;
}
