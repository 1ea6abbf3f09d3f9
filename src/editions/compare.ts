/** What differs between two states of a kit, and how large a step of the version each difference asks for. */
import type { Apparatus, HazardMeta, KitMeta, Lesson, Particles, QuestionMeta } from '../authoring/index.ts';
import { stepsOf } from '../sheets/index.ts';
import { kitOf, type Edition } from './edition.ts';
import { differences } from './results.ts';
import type { Step } from './version.ts';

/** One difference. */
export interface Change {
  readonly step: Step;
  /** `the apparatus`, `a step of the run sheet` */
  readonly what: string;
}

type State = Pick<Edition, 'kit' | 'content' | 'manifest' | 'results' | 'numbers'>;

/** All differences, the largest first. Empty where a reader would find none. */
export function changesBetween(before: State, after: State): Change[] {
  const [old, now] = [kitOf(before), kitOf(after)];
  const found = [
    ...fieldsOf(old.meta, now.meta),
    ...apparatusOf(before, after),
    ...hazardsOf(before, after),
    ...planOf(old.run, now.run),
    ...(['run', 'student', 'background'] as const).flatMap((sheet) => partsOf(sheet, old[sheet], now[sheet])),
    ...questionsOf(old.questions, now.questions),
    ...listed('minor', 'the readings', [...old.readings.keys()], [...now.readings.keys()]),
    ...listed('major', 'a hazard', [...before.content.hazards.keys()], [...after.content.hazards.keys()]),
    ...listed('minor', 'a picture', old.pictures, now.pictures),
    ...listed('minor', 'a misconception', [...before.content.misconceptions.keys()], [...after.content.misconceptions.keys()]),
    ...listed('minor', 'a source', [...before.content.sources.keys()], [...after.content.sources.keys()]),
    ...filesOf(before.manifest.files, after.manifest.files),
    ...(differences(before.results, after.numbers).length > 0 ? [{ step: 'patch', what: 'computed numbers' } as const] : []),
  ];
  const size: Record<Step, number> = { major: 0, minor: 1, patch: 2 };
  return [...new Map(found.map((change) => [change.what, change])).values()].sort((a, b) => size[a.step] - size[b.step]);
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
const differing = (step: Step, what: string, a: unknown, b: unknown): Change[] => (same(a, b) ? [] : [{ step, what }]);

/** Names that were added or taken away; their order says nothing. */
const listed = (step: Step, what: string, before: readonly string[], after: readonly string[]): Change[] =>
  differing(step, `${what}: ${oneSided(before, after).join(', ')}`, [...before].sort(), [...after].sort());
const oneSided = (a: readonly string[], b: readonly string[]): string[] => [...a.filter((name) => !b.includes(name)), ...b.filter((name) => !a.includes(name))];

/** What a change of each field of kit.yaml asks of a teacher. The list of changes itself is none. */
const FIELDS: Readonly<Record<Exclude<keyof KitMeta, 'changes' | 'objectives'>, readonly [Step, string]>> = {
  minutes: ['major', 'the length of the lesson'],
  apparatus: ['major', 'the apparatus'],
  particles: ['major', 'the particles'],
  start: ['major', 'the air at the start'],
  drop: ['major', 'the planned drop'],
  hazards: ['major', 'the list of hazards'],
  materials: ['major', 'the materials'],
  preparation: ['major', 'the preparation'],
  language: ['major', 'the language'],
  audience: ['minor', 'for whom it is'],
  room: ['minor', 'the room'],
  standards: ['minor', 'the curriculum statements'],
  title: ['patch', 'the title'],
  summary: ['patch', 'the summary'],
  translationOf: ['patch', 'the kit that it translates'],
};

function fieldsOf(before: KitMeta, after: KitMeta): Change[] {
  const fields = Object.entries(FIELDS).flatMap(([field, [step, what]]) => differing(step, what, before[field as keyof KitMeta], after[field as keyof KitMeta]));
  const ids = ({ objectives }: KitMeta): string[] => objectives.map(({ id }) => id);
  return [...fields, ...listed('minor', 'an objective', ids(before), ids(after)), ...differing('patch', 'the words of the objectives', before.objectives, after.objectives)];
}

/** An edition holds the apparatus, the particles and the room that it uses, and no other. */
function apparatusOf({ content: before }: State, { content: after }: State): Change[] {
  const plain = <T>(things: ReadonlyMap<string, T>): [string, T][] => [...things];
  const untitled = (things: ReadonlyMap<string, Apparatus | Particles>): unknown[] => [...things.values()].map(({ title: _, ...rest }) => rest);
  return [
    ...differing('major', 'the apparatus', untitled(before.apparatus), untitled(after.apparatus)),
    ...differing('major', 'the particles', untitled(before.particles), untitled(after.particles)),
    ...differing('minor', 'the room', plain(before.rooms), plain(after.rooms)),
  ];
}

/** Fields of a hazard sheet say how dangerous what is to whom; its words may be mended. */
function hazardsOf({ content: before }: State, { content: after }: State): Change[] {
  return [...after.hazards].flatMap(([name, { meta, lesson }]) => {
    const old = before.hazards.get(name);
    if (old === undefined) return [];
    const rated = ({ title: _, ...rest }: HazardMeta): unknown => rest;
    return [...differing('major', `the hazard ${name}`, rated(old.meta), rated(meta)), ...differing('minor', `what is said of the hazard ${name}`, wordsOf(old.lesson), wordsOf(lesson))];
  });
}

/** What is done when; titles may be mended. */
function planOf(before: Lesson, after: Lesson): Change[] {
  const plan = (run: Lesson): unknown[] => stepsOf(run).map(({ title: _, ...rest }) => rest);
  return differing('major', 'the steps of the run sheet', plan(before), plan(after));
}

/** Components that make a part of a sheet of their own, where others stand inside a sentence. */
const PARTS = new Set(['WorkedTable', 'Curve', 'Predict', 'Observe', 'Explain', 'Hazard', 'Misconception', 'Question', 'TeacherOnly']);

/** Parts and headings of a sheet: added or taken away they change what there is, whatever they say. */
function partsOf(sheet: string, before: Lesson, after: Lesson): Change[] {
  const parts = ({ components, headings }: Lesson): string[] => [...components.flatMap(({ name, attributes }) => (PARTS.has(name) ? [[name, attributes['kind'] ?? attributes['id']].join(' ')] : [])), ...headings.map(({ depth }) => `heading ${depth}`)].sort();
  return differing('minor', `the parts of the ${sheet} sheet`, parts(before), parts(after));
}

type Questions = ReadonlyMap<string, { readonly meta: QuestionMeta }>;

function questionsOf(before: Questions, after: Questions): Change[] {
  const asked = [...after].flatMap(([name, { meta }]) => {
    const old = before.get(name);
    return old === undefined ? [] : differing('minor', `what the question ${name} asks`, askedBy(old.meta), askedBy(meta));
  });
  return [...listed('minor', 'a question', [...before.keys()], [...after.keys()]), ...asked];
}

/** What is asked and what is right, without the words. */
function askedBy(question: QuestionMeta): unknown {
  const { kind, level } = question;
  if (question.kind === 'numeric') return [kind, level, question.answer, question.tolerance];
  if (question.kind === 'choice') return [kind, level, question.options.map(({ value, right }) => [value, right])];
  if (question.kind === 'ordering') return [kind, level, question.items.length];
  return [kind, level, question.rubric.map(({ points }) => points)];
}

/** Files whose words differ: whatever no other rule asks more for is mended wording. What is made of the others, and the school's own file, are none. */
function filesOf(before: Readonly<Record<string, string>>, after: Readonly<Record<string, string>>): Change[] {
  return Object.keys({ ...before, ...after })
    .filter((path) => path !== 'results.json' && path !== 'site.yaml' && !path.endsWith('/kit.yaml') && before[path] !== after[path])
    .map((path) => ({ step: 'patch', what: `the file ${path}` }));
}

/** The text of a lesson, without where it stands. */
const wordsOf = ({ tree }: Lesson): string => JSON.stringify(tree, (key, value: unknown) => (key === 'position' ? undefined : value));
