/** What sheets compute for is what the kit has: its particles, and a pump whose strokes can be counted. */
import type { Content } from '../content.ts';
import { findingAt, type Finding, type Problem } from '../findings.ts';
import type { PlacedComponent } from '../lesson.ts';
import { proposeName } from '../names.ts';
import type { KitPlan } from './kit-plan.ts';

/** The table and the value that count strokes of the pump. */
const OF_STROKES = ['strokes', 'strokesToDrop'];
const COMPONENTS = ['WorkedTable', 'Curve', 'Value'];

export function equipmentGate(_: Content, plan: KitPlan): Finding[] {
  const { run, student, background, questions } = plan.kit;
  const lessons = [run, student, background, ...[...questions.values()].map(({ lesson }) => lesson)];
  return lessons.flatMap(({ file, components }) =>
    components
      .filter(({ name }) => COMPONENTS.includes(name))
      .flatMap((component) => [unlisted(component, plan), uncounted(component, plan)].flatMap((problem) => (problem === undefined ? [] : [findingAt(file, component.position, problem)]))),
  );
}

function unlisted({ attributes: { particles } }: PlacedComponent, { kit }: KitPlan): Problem | undefined {
  const listed = kit.meta.particles;
  if (typeof particles !== 'string' || listed.includes(particles)) return undefined;
  return {
    code: 'particles-not-listed',
    what: `this is computed for \`${particles}\`, which the kit does not list`,
    instead: proposeName(particles, listed, 'add it to `particles` in kit.yaml'),
  };
}

function uncounted({ attributes: { kind, of } }: PlacedComponent, { kit, apparatus }: KitPlan): Problem | undefined {
  if (apparatus.source.kind === 'stroke-pump' || !OF_STROKES.some((name) => name === kind || name === of)) return undefined;
  return {
    code: 'strokes-without-pump',
    what: `this counts strokes of a pump, and the source of apparatus \`${kit.meta.apparatus}\` is a ${apparatus.source.kind}`,
    instead: 'leave it out, or use an apparatus whose source is a `stroke-pump`',
  };
}
