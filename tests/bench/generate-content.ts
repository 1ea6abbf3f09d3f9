/**
 * Content folders of any size for the benchmark: kits of three sheets, each of about 6 kB with three computed tables and
 * five formulas, in rooms and with apparatus that differ. The same seed gives the same files.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { randomSource, type RandomSource } from '../../src/physics/random.ts';
import { FORMULAS, ownFormula, SENTENCES } from './generated-text.ts';
import { sharedFiles, APPARATUS, ROOMS, WITH_STROKES, type TextFile } from './generated-surroundings.ts';

/** Sheets of a kit: run, student, background. */
export const SHEETS_PER_KIT = 3;
/** Bytes of a sheet's text. */
export const SHEET_SIZE = 6000;
/** Simulated kinds, which take longest: one in each kit, in turn. */
const SIMULATED = ['strokes', 'droplets', 'no-particle-limit', 'particle-sizes', 'particle-lifetime'] as const;

/**
 * Writes a content folder that passes every gate.
 * @param sheets number of sheets, rounded up to whole kits
 * @returns number of sheets written
 */
export async function generateContent(folder: string, sheets: number, seed = 1): Promise<number> {
  const kits = Math.ceil(sheets / SHEETS_PER_KIT);
  const files = [...sharedFiles(), ...Array.from({ length: kits }, (_, i) => kitFiles(i + 1, randomSource(seed, `kit ${i + 1}`))).flat()];
  await writeFiles(folder, files);
  return kits * SHEETS_PER_KIT;
}

/** Writes plain Markdown pages of the same words and size, without tables and formulas. */
export async function generateMarkdown(folder: string, pages: number, seed = 1): Promise<void> {
  const page = (number: number): TextFile => {
    const random = randomSource(seed, `page ${number}`);
    return { path: `page-${number}.md`, text: `---\ntitle: Page ${number}\n---\n\n${filled(random, [])}` };
  };
  await writeFiles(folder, Array.from({ length: pages }, (_, i) => page(i + 1)));
}

async function writeFiles(folder: string, files: readonly TextFile[]): Promise<void> {
  for (const { path, text } of files) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  }
}

const pick = <T>(random: RandomSource, list: readonly T[]): T => list[Math.floor(random.uniform() * list.length)]!;

/** Paragraphs, lists and headings, block by block without end. */
function* blocks(random: RandomSource): Generator<string, never> {
  for (;;) {
    yield `## ${pick(random, ['What happens', 'What it means', 'What to look for', 'At the bench', 'In the sky'])}`;
    for (let paragraph = 0; paragraph < 3; paragraph++) {
      yield Array.from({ length: 3 }, () => pick(random, SENTENCES)).join(' ');
      yield Array.from({ length: 2 }, () => `- ${pick(random, SENTENCES)}`).join('\n');
    }
  }
}

/** Parts with words between them, evenly, so that the whole has its size. */
function filled(random: RandomSource, parts: readonly string[]): string {
  const words = SHEET_SIZE - parts.join('\n\n').length;
  const source = blocks(random);
  let spent = 0;
  const upTo = (share: number): string[] => {
    const taken: string[] = [];
    while (spent < share * words) {
      const block = source.next().value;
      taken.push(block);
      spent += block.length + 2;
    }
    return taken;
  };
  return `${[...parts.flatMap((part, i) => [...upTo((i + 1) / (parts.length + 1)), part]), ...upTo(1)].join('\n\n')}\n`;
}

/** Five formulas, one of them of this kit alone. */
const formulas = (random: RandomSource, number: number): string[] =>
  [...Array.from({ length: 4 }, () => pick(random, FORMULAS)), ownFormula(number)].map((tex) => `$$\n${tex}\n$$`);

function kitFiles(number: number, random: RandomSource): TextFile[] {
  const folder = `kits/kit-${String(number).padStart(4, '0')}`;
  const drop = 12 + Math.floor(random.uniform() * 5);
  const humidity = (95 + random.uniform() * 3).toFixed(1);
  const drops = [0, 3, 6, 9, drop].map((value) => `${value} kPa`).join(', ');
  const readings = [0, 5, 10, drop].map((value) => `${value === 0 ? '' : '-'}${value} kPa gauge`).join(', ');
  const file = (path: string, text: string): TextFile => ({ path: `${folder}/${path}`, text });
  const room = pick(random, ROOMS);
  const apparatus = pick(random, APPARATUS);
  const simulated = SIMULATED.filter((kind) => kind !== 'strokes' || WITH_STROKES.includes(apparatus));
  return [
    file('kit.yaml', kitYaml(number, room, apparatus, drop, humidity)),
    file('run.mdx', filled(random, [
      '<Hazard id="vacuum"/>\n\n<Hazard id="side-lamp"/>',
      `<WorkedTable kind="gauge-readings" readings="${readings}"/>`,
      `<TeacherOnly>\n\n<WorkedTable kind="pressure-steps" drops="${drops}"/>\n\n</TeacherOnly>`,
      ...formulas(random, number),
      `<WorkedTable kind="wall-forces" readings="${readings}"/>`,
      steps(random, drop),
    ])),
    file('student.mdx', filled(random, [
      `The gauge will go to <Value of="gaugeAtDrop" drop="${drop} kPa"/>, from a room at <Value of="roomPressure"/> and <Value of="roomTemperature"/>.`,
      `<Predict lines="4">\n\n${pick(random, SENTENCES)}\n\n</Predict>`,
      `<WorkedTable kind="pressure-steps" drops="0 kPa, 5 kPa, ${drop} kPa"/>`,
      `<Observe lines="4">\n\n${pick(random, SENTENCES)}\n\n</Observe>`,
      ...formulas(random, number),
      '<WorkedTable kind="starting-humidity" humidities="100 %, 90 %, 80 %, 70 %"/>',
      `<Explain lines="6">\n\n${pick(random, SENTENCES)}\n\n</Explain>`,
      `<WorkedTable kind="gauge-readings" readings="0 kPa gauge, -${drop} kPa gauge"/>`,
      '<Question id="pressure-left"/>',
    ])),
    file('background.mdx', filled(random, [
      `Without drops the air cools by <Value of="coolingClear" drop="${drop} kPa"/>, with drops by <Value of="coolingCloudy" drop="${drop} kPa"/>.`,
      `<WorkedTable kind="${simulated[number % simulated.length]!}"/>`,
      ...formulas(random, number),
      '<WorkedTable kind="rising-parcel" air="room"/>',
      '<Misconception id="cloud-is-vapor"/>',
      `<WorkedTable kind="elevations" drop="${drop} kPa" elevations="0 m, 800 m, 1600 m"/>`,
      'Salt takes up water readily <Source id="petters-kreidenweis-2007"/>.',
    ])),
    ...questions(random, drop).map(({ path, text }) => file(`questions/${path}`, text)),
  ];
}

const kitYaml = (number: number, room: string, apparatus: string, drop: number, humidity: string): string => `title: Cloud in a vessel, lesson ${number}
summary: Moist air is pumped down twice, first clean and then with a trace of salt.
audience: { ages: 12-15, level: Lower secondary }
minutes: 40 min
room: ${room}
apparatus: ${apparatus}
particles: [salt-haze]
start:
  humidity: ${humidity} % ± 1 %
drop: ${drop} kPa
hazards: [vacuum, side-lamp]
standards: [V-1]
objectives:
  - { id: cooling, text: Say why air cools when it expands. }
materials:
  - { item: Clear vessel, specification: Rated for vacuum by its maker, quantity: "1" }
  - { item: Salt haze, specification: "Nebulizer, weak salt water, clean bag", quantity: 1 set }
preparation:
  - { before: 1 d, task: Leak test and trial in the room's own light. }
  - { before: 3 h, task: Wet the wall and close the vessel. }
changes:
  - { version: 0.1.0, date: "2026-11-25", text: First draft. }
`;

/** The steps of a lesson: clean run, air let in, salt, cloud, air let in. */
function steps(random: RandomSource, drop: number): string {
  const say = (): string => `**Do.** ${pick(random, SENTENCES)}`;
  const step = (attributes: string, text = say()): string => `<Step ${attributes}>\n\n${text}\n\n</Step>`;
  return [
    '## The lesson',
    step('at="0 min" for="8 min" title="Predict" action="predict"', `**Say.** I pump to <Value of="gaugeAtDrop" drop="${drop} kPa"/>.`),
    step(`at="8 min" for="1 min" title="Clean air: pump" action="pump" drop="${drop} kPa" expect="clear"`),
    step('at="9 min" for="1 min" title="Clean air: let air in" action="vent"'),
    step('at="10 min" for="5 min" title="Wait" action="wait"'),
    step('at="15 min" for="1 min" title="Salt" action="particles" particles="salt-haze"'),
    step(`at="16 min" for="1 min" title="With salt: pump" action="pump" drop="${drop} kPa" expect="cloud"`),
    step('at="17 min" for="1 min" title="With salt: let air in" action="vent" expect="clearing"'),
    step('at="18 min" for="20 min" title="Explain" action="talk"'),
  ].join('\n\n');
}

function questions(random: RandomSource, drop: number): TextFile[] {
  const solution = `<TeacherOnly>\n\n${pick(random, SENTENCES)}\n\n</TeacherOnly>`;
  return [
    {
      path: 'pressure-left.mdx',
      text: `---
kind: numeric
level: 2
objective: cooling
answer: { of: absolutePressure, drop: ${drop} kPa, unit: kPa }
tolerance: 0.5 kPa
---
The room is at <Value of="roomPressure"/>, and the gauge reads <Value of="gaugeAtDrop" drop="${drop} kPa"/>. What is the absolute pressure in the vessel, in kilopascals?

${solution}
`,
    },
    {
      path: 'how-cold.mdx',
      text: `---
kind: choice
level: 2
objective: cooling
options:
  - value: { of: coolingClear, drop: ${drop} kPa, unit: K }
    right: true
    why: The temperature in kelvin goes with a power of the ratio of the absolute pressures.
  - value: { of: coolingCloudy, drop: ${drop} kPa, unit: K }
    why: This is the cooling with drops, and there were none.
  - text: Not at all, because no heat leaves the vessel
    misconception: cloud-is-vapor
    why: Work takes energy out of the air just as heat would.
---
No drops form. By how much does the air cool before the wall warms it?

${solution}
`,
    },
    {
      path: 'in-order.mdx',
      text: `---
kind: ordering
level: 1
objective: cooling
items:
  - The pump takes some of the air away.
  - The air that stays expands and does work.
  - The air cools.
  - Vapor condenses on particles.
---
Put what happens in the second run in the right order.

${solution}
`,
    },
  ];
}
