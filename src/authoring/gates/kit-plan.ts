/** What a kit plans to do, in numbers: the common ground of the gates. */
import { moistAir, stationPressure, type KelvinDifference, type MoistAir, type Pascal, type Second } from '../../physics/index.ts';
import { apparatusOf, particlesOf, roomOf, type Content, type Kit } from '../content.ts';
import { findingAt, type Finding, type Place, type Problem } from '../findings.ts';
import type { PlacedComponent } from '../lesson.ts';
import type { PressureLevel, WrittenQuantity } from '../quantities.ts';
import type { Apparatus } from '../schemas/apparatus.ts';
import type { Particles } from '../schemas/particles.ts';

/** One step of the run sheet. */
export interface PlannedStep {
  readonly place: Place;
  readonly start: Second;
  readonly end: Second;
  readonly action: string | undefined;
  readonly drop: PlannedDrop | undefined;
  readonly particles: string | undefined;
  readonly expect: string | undefined;
}

/** A fall of pressure that the kit plans: below the room by pumping, or down to it by release. */
export interface PlannedDrop {
  readonly size: Pascal;
  /** as written */
  readonly text: string;
  /** puts a problem where the drop is written */
  readonly finding: (problem: Problem) => Finding;
}

export interface KitPlan {
  readonly name: string;
  readonly kit: Kit;
  readonly apparatus: Apparatus;
  readonly particles: readonly Particles[];
  readonly roomPressure: Pascal;
  /** whether the drop goes below the room, or from above down to it */
  readonly way: 'evacuated' | 'pressurised';
  readonly steps: readonly PlannedStep[];
  /** the kit's own drop, then that of every step */
  readonly drops: readonly PlannedDrop[];
  /** puts a problem at a field of kit.yaml */
  readonly inKit: (path: readonly PropertyKey[], problem: Problem, part?: 'key' | 'value') => Finding;
  /** puts a problem at a step of the run sheet */
  readonly atStep: (step: PlannedStep, problem: Problem) => Finding;
}

export function kitPlan(content: Content, name: string, kit: Kit): KitPlan {
  const apparatus = apparatusOf(content, kit);
  const { elevation, stationPressure: measured } = roomOf(content, kit);
  const kitFile = `${content.root}/kits/${name}/kit.yaml`;
  const inKit: KitPlan['inKit'] = (path, problem, part) => findingAt(kitFile, content.locate(kitFile, path, part), problem);
  const steps = kit.run.components
    .filter((component) => component.name === 'Step')
    .map((component) => stepOf(component, kit.run.file));
  const own: PlannedDrop = { size: kit.meta.drop.value, text: kit.meta.drop.text, finding: (problem) => inKit(['drop'], problem) };
  return {
    name,
    kit,
    apparatus,
    particles: particlesOf(content, kit),
    roomPressure: measured?.value ?? stationPressure(elevation?.value ?? 0),
    way: apparatus.source.kind === 'pressurise' || apparatus.source.kind === 'squeeze' ? 'pressurised' : 'evacuated',
    steps,
    drops: [own, ...steps.flatMap(({ drop }) => drop ?? [])],
    inKit,
    atStep: ({ place }, problem) => findingAt(kit.run.file, place, problem),
  };
}

/** The air in the vessel before it expands. */
export function startAir(plan: KitPlan, content: Content, drop: Pascal): MoistAir {
  const { start } = plan.kit.meta;
  return moistAir({
    temperature: start.temperature?.value ?? roomOf(content, plan.kit).temperature.value,
    pressure: plan.way === 'evacuated' ? plan.roomPressure : plan.roomPressure + drop,
    relativeHumidity: start.humidity.value,
  });
}

/** A level against the room's pressure. */
export function againstRoom({ value, reference }: PressureLevel, roomPressure: Pascal): Pascal {
  return reference === 'gauge' ? value : value - roomPressure;
}

/** In kilopascals with one decimal, as a message says it. */
export function kilopascals(pressure: Pascal): string {
  return `${(pressure / 1000)
    .toFixed(1)
    .replace(/^-(?=0\.0$)/, '')
    .replace('-', '−')} kPa`;
}

/** In kelvins with one decimal, as a message says it. */
export function kelvins(difference: KelvinDifference): string {
  return `${difference.toFixed(1)} K`;
}

function stepOf({ attributes, position }: PlacedComponent, file: string): PlannedStep {
  const quantity = (key: string): WrittenQuantity | undefined => {
    const value = attributes[key];
    return typeof value === 'object' && value !== null && 'value' in value && 'text' in value
      ? (value as WrittenQuantity)
      : undefined;
  };
  const word = (key: string): string | undefined => (typeof attributes[key] === 'string' ? attributes[key] : undefined);
  const start = quantity('at')?.value ?? 0;
  const drop = quantity('drop');
  return {
    place: position,
    start,
    end: start + (quantity('for')?.value ?? 0),
    action: word('action'),
    drop:
      drop === undefined
        ? undefined
        : { size: drop.value, text: drop.text, finding: (problem) => findingAt(file, position, problem) },
    particles: word('particles'),
    expect: word('expect'),
  };
}
