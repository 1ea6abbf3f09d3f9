/** Hazard sheets: an outline to fill in, and finished ones for the apparatus that a first kit starts with. */
import { HAZARD_TAGS, type HazardTag } from '../../authoring/index.ts';
import { quoted, titleOf, type NewFile } from './new-file.ts';

/** An outline; the author says what it covers. */
export const hazardFile = (name: string): NewFile => ({
  path: `hazards/${name}.mdx`,
  text: `---
# The thing that can hurt.
title: ${quoted(titleOf(name))}
# DANGER will kill or seriously injure, WARNING could, CAUTION could injure lightly, NOTICE harms things only.
signal: WARNING
# Safety signs of ISO 7010 by their numbers, such as M004 for eye protection; [] for none.
signs: []
# What in a kit makes this sheet necessary, one or more of
# ${HAZARD_TAGS.join(', ')}.
covers: [${coveredBy(name)}]
# Who can be hurt.
who: Everybody in the room
# Where the advice comes from: ids of sources.yaml.
# source: [petters-kreidenweis-2007]
---

## What can happen

Say what can go wrong, how it hurts, and whom. One sentence for each way.

## What prevents it

- Begin with doing without: what takes its place?
- Then what you look at before every lesson, and what makes you stop.
- Then what is worn, and where everybody stands.

## What to do if it happens

1. Say what comes first for the people.
2. Then what is shut, put out or let alone.
3. Then who is told.
`,
});

/** The tag that the name holds, else one that every lesson with a light has. */
function coveredBy(name: string): HazardTag {
  return HAZARD_TAGS.find((tag) => `-${name}-`.includes(`-${tag}-`)) ?? 'lamp';
}

export interface Sheet {
  readonly name: string;
  /** as its text says */
  readonly covers: readonly HazardTag[];
  readonly text: string;
}

/** The sheets that a first kit brings along. */
export const FIRST_SHEETS: readonly Sheet[] = [
  {
    name: 'vessel-under-vacuum',
    covers: ['evacuated', 'plastic'],
    text: `---
title: Vessel under vacuum
# Signal word, and the ISO 7010 sign for eye protection.
signal: WARNING
signs: [M004]
# What in a kit makes this sheet necessary.
covers: [evacuated, plastic]
who: The person who pumps, and everybody in front of the bench
---

## What can happen

The air of the room presses on the whole wall. A wall that is cracked, scratched or weakened by a solvent can burst inward, and pieces fly on to the other side. They can cut skin and hurt eyes.

## What prevents it

- Only a round vessel that its maker rates for vacuum is used, and only inside that rating.
- Look over wall and lid against a lamp before every lesson. A vessel with a crack or a deep scratch is thrown away.
- Clean plastic with water and a soft cloth. Alcohol and other solvents make it brittle.
- Whoever pumps wears safety glasses, and so does the first row.
- Never carry or knock the vessel while the pressure in it is low, and never leave it alone.

## What to do if it happens

1. Keep everybody back, and look after people before anything else.
2. Nobody rubs an eye or picks up pieces by hand.
3. Tell the person who answers for safety in your school.
`,
  },
  {
    name: 'lamp-beside-the-vessel',
    covers: ['lamp'],
    text: `---
title: Lamp beside the vessel
# Signal word; no sign of ISO 7010 is needed for a lamp that stays cool.
signal: CAUTION
signs: []
# What in a kit makes this sheet necessary.
covers: [lamp]
who: Whoever looks into the lamp, and anybody who is troubled by flicker
---

## What can happen

A bright lamp dazzles. A flickering one can bring on a headache or a seizure. A hot one burns, and it warms the vessel. A cable across the floor makes people fall.

## What prevents it

- Use an LED lamp that stays cool and does not flicker.
- Aim it across the vessel, away from the class, and put a card with a slit in front of it.
- Lead the cable along the wall.

## What to do if it happens

1. Switch the lamp off.
2. Cool a burn under running water, and call the first-aider.
`,
  },
];

export const sheetFile = (sheet: Sheet, name: string): NewFile => ({ path: `hazards/${name}.mdx`, text: sheet.text });
