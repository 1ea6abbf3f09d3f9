/** A small content folder, as text: the room, the vessel and the things that the guide's live examples are drawn with. */

/** Path in the folder to text. */
export const PRACTICE_FILES: Readonly<Record<string, string>> = {
  'site.yaml': `school: Practice School
address: https://practice.example/lessons/
language: en
room: practice-room
license: CC BY 4.0
`,
  'sources.yaml': `- id: bohren-albrecht-1998
  type: book
  title: Atmospheric Thermodynamics
  author:
    - { family: Bohren, given: Craig F. }
    - { family: Albrecht, given: Bruce A. }
  issued: { date-parts: [[1998]] }
  publisher: Oxford University Press
`,
  'rooms/practice-room.yaml': `title: Practice room
stationPressure: 1000 hPa ± 1 hPa
temperature: 21.0 °C ± 0.3 K
humidity: 50 % ± 3 %
`,
  'apparatus/jar.yaml': `title: Clear jar with a hand pump
vessel:
  shape: cylinder
  volume: 4 L
  diameter: 15 cm
  wallThickness: 5 mm
  material: polycarbonate
  lowest: -70 kPa gauge
  highest: 10 kPa gauge
  ratingSource: Maker's plate on the lid
source:
  kind: stroke-pump
  strokeVolume: 200 mL
  deadVolume: 5 mL
  strokeTime: 2 s
  ultimatePressure: 20 kPa absolute
gauge:
  kind: dial
  lowest: -100 kPa gauge
  highest: 0 kPa gauge
  resolution: 1 kPa
  unit: kPa
thermometer:
  kind: digital
  resolution: 0.1 K
  timeConstant: 10 s
  wallShare: 0.1
  position: In the middle of the jar
light: { kind: Cool lamp, from: side }
backing: Black card
valve: Two valves in the lid
uses: [plastic, evacuated]
`,
  'particles/salt-mist.yaml': `title: Dried salt mist
dryDiameter: 0.2 µm
spread: 1.8
kappa: 1.2
number: 5000 /cm³
how: Spray salt water into a bag, let the drops dry, let the air in.
uses: [none]
`,
  'hazards/vessel-under-vacuum.mdx': `---
title: Vessel under vacuum
signal: WARNING
signs: [M004]
covers: [evacuated, plastic]
who: Everybody within reach of the pieces
---

## What can happen

A scratched or crazed wall gives way, and its pieces fly.

## What prevents it

- Use only a vessel that its maker rates for vacuum.
- Look at the wall against a lamp before each lesson.
- Wear eye protection, first row included.

## What to do if it happens

Let everybody stand back. Look for cuts. Sweep up; do not use hands.
`,
  'misconceptions/cloud-is-steam.mdx': `---
title: A cloud is made of steam.
source: [bohren-albrecht-1998]
---

Steam is a gas that nobody can see. A cloud is liquid water, in drops so small that they hardly fall.
`,
  'kits/practice/kit.yaml': `title: Practice kit
summary: Clear first, then cloudy.
audience: { ages: 11-14, level: Lower secondary }
minutes: 30 min
apparatus: jar
particles: [salt-mist]
start:
  humidity: 97 % ± 1 %
drop: 20 kPa
hazards: [vessel-under-vacuum]
standards: []
objectives:
  - id: drops
    text: Say what a cloud is made of.
materials:
  - { item: Jar, specification: Rated for vacuum by its maker, quantity: 1 }
preparation:
  - { before: 1 h, task: Wet the inside of the jar. }
changes:
  - { version: "1.0", date: 2026-09-01, text: First version. }
`,
  'kits/practice/run.mdx': `<Step at="0 min" for="3 min" title="Pump with no particles" action="pump" drop="20 kPa" expect="clear">

Watch the gauge.

</Step>
`,
  'kits/practice/student.mdx': `<Question id="what-is-white"/>
`,
  'kits/practice/background.mdx': `<Misconception id="cloud-is-steam"/>
`,
  'kits/practice/questions/what-is-white.mdx': `---
kind: choice
level: 1
objective: drops
options:
  - { text: Drops of water, right: true, why: Drops scatter light to all sides. }
  - { text: Steam, misconception: cloud-is-steam, why: "Steam is a gas, and it cannot be seen." }
  - { text: Smoke, why: Smoke would stay when air is let in. }
---

What is the white in the jar made of?
`,
  'kits/practice/questions/how-cold.mdx': `---
kind: numeric
level: 2
answer: { of: coolingClear, drop: 10 kPa }
tolerance: 0.5 K
---

The air expands by <Value of="pressureDrop" drop="10 kPa"/>, and no droplets form. By how much does it cool?
`,
};
