/** A small kit to start from: clear air first, then a cloud. */
import { schemaLine } from '../../authoring/index.ts';
import { quoted, titleOf, type NewFile } from './new-file.ts';
import { questionFile } from './question.ts';

/** What a kit uses, by the names of the content folder. */
export interface Equipment {
  readonly apparatus: string;
  readonly particles: string;
  readonly hazards: readonly string[];
  /** the planned fall of pressure, as a quantity */
  readonly drop: string;
}

const OBJECTIVE = 'three-needs';
const CHOICE = 'what-is-white';
const NUMBER = 'pressure-left';

/**
 * @param today year, month and day
 * @param isEnglishNamed whether the kit must say that it is in English, since the site is not
 */
export function kitFiles(name: string, equipment: Equipment, today: string, isEnglishNamed: boolean): NewFile[] {
  const file = (path: string, text: string): NewFile => ({ path: `kits/${name}/${path}`, text });
  return [
    file('kit.yaml', kitYaml(name, equipment, today, isEnglishNamed)),
    file('run.mdx', runSheet(equipment)),
    file('student.mdx', studentSheet(equipment)),
    file('background.mdx', background(equipment)),
    file(`questions/${CHOICE}.mdx`, CHOICE_QUESTION),
    questionFile(NUMBER, { kit: name, drop: equipment.drop, objective: OBJECTIVE }),
  ];
}

const kitYaml = (
  name: string,
  { apparatus, particles, hazards, drop }: Equipment,
  today: string,
  isEnglishNamed: boolean,
): string =>
  `${schemaLine('kit', `kits/${name}/kit.yaml`)}
# For whom the lesson is, where, with what, how long.

title: ${quoted(titleOf(name))}
# What happens and what it shows, in two or three sentences.
summary: Moist air is pumped down twice, first clean and then with a trace of particles. It cools both times, and only the second time is there a cloud.
audience: { ages: 11-14, level: Lower secondary }
# From the bell to the end. The steps of run.mdx must fit in.
minutes: 30 min
# The room is the one that site.yaml names. To hold this kit in another: room: and a name of rooms/.
# Names of apparatus/ and particles/.
apparatus: ${apparatus}
particles: [${particles}]
# The air in the vessel before the expansion. temperature: may be added; else it is that of the room.
start:
  humidity: 97 %
# The planned largest fall of pressure. It must stay inside the ratings of the apparatus.
drop: ${quoted(drop)}
# Names of hazards/: everything in uses: of apparatus and particles must be covered.
hazards: [${hazards.join(', ')}]
# Codes of the statements in standards/ that the kit serves.
standards: []
# What students can do afterwards. Questions point at the id.
objectives:
  - id: ${OBJECTIVE}
    text: Name the three things that a cloud needs, and say in which run each was there.
# What to get: size, kind and rating under specification.
materials:
  - { item: Vessel with pump and gauge, specification: "Clear, rated by its maker for vacuum", quantity: 1 }
  - { item: Side light and black card, specification: "Lamp that stays cool, card larger than the vessel", quantity: 1 }
  - { item: Safety glasses, specification: For whoever pumps and for the first row, quantity: as many as needed }
# What to do how long before the lesson: d, h or min.
preparation:
  - { before: 1 d, task: "Look over the vessel, and try the whole lesson in its own room and light." }
  - { before: 2 h, task: "Wet the wall of the vessel and close it, so that the air becomes moist and clean." }
  - { before: 5 min, task: "Place lamp, card and glasses." }
# What was changed, for those who hold an older print.
changes:
  - { version: 0.1.0, date: ${today}, text: First draft. }
${isEnglishNamed ? '# This kit is in English, and the site is not.\nlanguage: en\n' : ''}`;

const runSheet = ({
  particles,
  hazards,
  drop,
}: Equipment): string => `${hazards.map((hazard) => `<Hazard id="${hazard}"/>\n`).join('')}
The room is at <Value of="roomTemperature"/> and <Value of="roomPressure"/>. The air in the vessel starts at a relative humidity of <Value of="startHumidity"/>.

<Step at="0 min" for="5 min" title="Predict" action="predict">

**Say.** “I pump this air down until the gauge shows <Value of="gaugeAtDrop" drop="${drop}"/>. What will you see, and why?”

</Step>

<Step at="5 min" for="1 min" title="Clean air: pump" action="pump" drop="${drop}" expect="clear">

**Do.** Glasses on. Pump evenly and close the valve.

**Look for.** The beam of light stays dark.

</Step>

<Step at="6 min" for="1 min" title="Clean air: let air in" action="vent">

**Do.** Open the valve slowly. Whatever comes in now may hold particles of the room.

</Step>

<Step at="7 min" for="2 min" title="Let particles in" action="particles" particles="${particles}">

**Do.** One stroke of the pump, and close its valve. Open the inlet a little where the particles are, until the needle is back at zero: the low pressure draws them in. Close it.

**Say.** “Only one thing has changed. Which?”

</Step>

<Step at="9 min" for="1 min" title="With particles: pump" action="pump" drop="${drop}" expect="cloud">

**Do.** Pump to the same reading.

**Look for.** White in the beam, from about <Value of="onsetGauge"/> on.

</Step>

<Step at="10 min" for="2 min" title="With particles: let air in" action="vent" expect="clearing">

**Do.** Let air in slowly, and watch the cloud go.

</Step>

<Step at="12 min" for="18 min" title="Explain" action="talk">

**Say.** “What did the second run have that the first had not?”

<Question id="${CHOICE}"/>

</Step>

<TeacherOnly>

**What the air does at each reading of the gauge**

<WorkedTable kind="pressure-steps"/>

**Where to go on.** Change the plan in kit.yaml first, then these steps. Each step needs its time, its length and a title; an action and what the class should see let the check tell you whether air and apparatus can do it. Write every number as a value, so that it follows the room.

</TeacherOnly>
`;

const studentSheet = ({
  drop,
}: Equipment): string => `You will see moist air pumped down twice. Write down what you expect before each run.

The room is at <Value of="roomTemperature"/>, and its air presses with <Value of="roomPressure"/>.

<Predict title="Before the first run" lines="4">

The air is moist and clean. The gauge will go from zero to <Value of="gaugeAtDrop" drop="${drop}"/>. What will you see? Why?

</Predict>

<Observe title="What you saw" lines="4">

Write down what you saw in each run, and what had been changed. Leave the reasons for later.

</Observe>

<Explain title="What a cloud needs" lines="5">

A cloud needs three things. Name them. For each, say in which run it was there.

</Explain>

<Question id="${CHOICE}"/>
<Question id="${NUMBER}"/>

<TeacherOnly>

**Where to go on.** Ask before each run for what the class can then see. Nothing in a block like this one reaches a student.

</TeacherOnly>
`;

const background = ({ drop }: Equipment): string => `## Why the air cools

The air that stays in the vessel expands and pushes against the air that leaves. It does work and so loses energy, although no heat leaves it. When the gauge shows <Value of="gaugeAtDrop" drop="${drop}"/>, air without drops is colder by <Value of="coolingClear" drop="${drop}"/>.

## Why there is a cloud only the second time

Colder air needs less vapor to be saturated. Both times it passes saturation at a reading of <Value of="onsetGauge"/>. Vapor condenses on particles, and the clean air has none, so that nothing forms in it.

When drops form, their latent heat warms the air: it is then colder by only <Value of="coolingCloudy" drop="${drop}"/>.

<TeacherOnly>

**Where to go on.** Say here what a teacher should know beyond the run sheet, and cite where it comes from: put the reference into sources.yaml and its id into the text.

</TeacherOnly>
`;

const CHOICE_QUESTION = `---
# numeric, choice, ordering or text.
kind: choice
# 1 for all, 2 for most, 3 for the quickest.
level: 1
# The objective of kit.yaml that it tests.
objective: ${OBJECTIVE}
# One option with right: true. why: is shown when the answer is marked. misconception: may name an idea of
# misconceptions/ that leads to a wrong option.
options:
  - text: Small drops of liquid water
    right: true
    why: Vapor has condensed on the particles, and the drops scatter the light.
  - text: The particles themselves
    why: They were there before the pumping, and could hardly be seen.
  - text: Water vapor
    why: Vapor is a gas that cannot be seen. The vessel was full of it while it looked empty.
---

In the second run the beam of light turns white. What is the white made of?

<TeacherOnly>

The white comes with the cooling and goes with the warming, while nobody puts anything in.

</TeacherOnly>
`;
