/** What the kits of the benchmark share: the school, rooms, apparatus, particles, hazards, a misconception, sources. */

export interface TextFile {
  /** Below the content folder, with `/`. */
  readonly path: string;
  readonly text: string;
}

const ROOM_LIST = Array.from({ length: 12 }, (_, i) => ({
  name: `room-${i + 1}`,
  text: `title: Room ${i + 1}\nelevation: ${(i * 137) % 1500} m\ntemperature: ${(18 + (i % 7) * 1.2).toFixed(1)} °C ± 0.3 K\nhumidity: ${35 + ((i * 11) % 30)} % ± 3 %\n`,
}));

/** Names of the rooms. */
export const ROOMS: readonly string[] = ROOM_LIST.map(({ name }) => name);

const STROKE_PUMP = 'source: { kind: stroke-pump, strokeVolume: 200 mL, deadVolume: 8 mL, strokeTime: 1.5 s, ultimatePressure: 150 hPa absolute }';
const STEADY_PUMP = 'source: { kind: steady-pump, speed: 6 L/min, ultimatePressure: 120 hPa absolute }';
const DIAL = 'gauge: { kind: dial, lowest: -100 kPa gauge, highest: 0 kPa gauge, resolution: 1 kPa, unit: kPa }';
const DIGITAL = 'gauge: { kind: digital, lowest: -100 kPa gauge, highest: 100 kPa gauge, resolution: 0.1 kPa, unit: hPa }';

const apparatus = (title: string, volume: string, diameter: string, source: string, gauge: string): string => `title: ${title}
vessel:
  shape: cylinder
  volume: ${volume}
  diameter: ${diameter}
  wallThickness: 5 mm
  material: polycarbonate
  lowest: -90 kPa gauge
  highest: 10 kPa gauge
  ratingSource: Maker's plate
${source}
${gauge}
thermometer: { kind: digital, resolution: 0.1 K, timeConstant: 12 s, wallShare: 0.1, position: In the middle of the vessel }
light: { kind: LED lamp that stays cool, from: side }
backing: Black card
valve: Two valves in the lid
uses: [plastic, evacuated, lamp]
`;

const APPARATUS_LIST = [
  { name: 'large-dial', text: apparatus('Large cylinder with a hand pump', '5 L', '16 cm', STROKE_PUMP, DIAL) },
  { name: 'small-dial', text: apparatus('Small cylinder with a hand pump', '3 L', '14 cm', STROKE_PUMP, DIAL) },
  { name: 'large-digital', text: apparatus('Large cylinder with a hand pump and a digital gauge', '4 L', '15 cm', STROKE_PUMP, DIGITAL) },
  { name: 'small-digital', text: apparatus('Small cylinder with a steady pump', '2 L', '11 cm', STEADY_PUMP, DIGITAL) },
];

/** Names of the apparatus. */
export const APPARATUS: readonly string[] = APPARATUS_LIST.map(({ name }) => name);
/** Those whose pump has strokes to count. */
export const WITH_STROKES: readonly string[] = APPARATUS_LIST.filter(({ text }) => text.includes(STROKE_PUMP)).map(({ name }) => name);

const hazard = (title: string, covers: string, sign: string, text: string): string => `---
title: ${title}
signal: WARNING
signs: [${sign}]
covers: [${covers}]
who: Whoever pumps, and the front row
source: [iso-7010]
---
${text}

## What can happen

A vessel gives way, or somebody is dazzled.

## What prevents it

- Look over the wall before each lesson.
- Keep to the planned reading and wear glasses.

## What to do if it happens

Keep everybody back and call the first-aider.
`;

/** Everything of the content folder save its kits. */
export const sharedFiles = (): TextFile[] => [
  { path: 'site.yaml', text: 'school: School of the benchmark\naddress: https://school.example/lessons/\nlanguage: en\nroom: room-1\nlicense: CC BY 4.0\n' },
  ...ROOM_LIST.map(({ name, text }) => ({ path: `rooms/${name}.yaml`, text })),
  ...APPARATUS_LIST.map(({ name, text }) => ({ path: `apparatus/${name}.yaml`, text })),
  {
    path: 'particles/salt-haze.yaml',
    text: 'title: Dried salt spray\ndryDiameter: 0.2 µm\nspread: 1.8\nkappa: 1.2\nnumber: 5000 /cm³\nhow: Spray salt water, let the drops dry, let the air in.\nuses: [none]\nsource: [petters-kreidenweis-2007]\n',
  },
  { path: 'hazards/vacuum.mdx', text: hazard('Vessel under vacuum', 'evacuated, plastic', 'M004', 'Use only a vessel that is rated for vacuum.') },
  { path: 'hazards/side-lamp.mdx', text: hazard('Lamp at the side', 'lamp', 'M002', 'A bright beam dazzles.') },
  {
    path: 'misconceptions/cloud-is-vapor.mdx',
    text: '---\ntitle: A cloud is made of vapor.\n---\n\nVapor cannot be seen. A cloud is made of drops <Source id="bohren-albrecht-1998"/>.\n',
  },
  {
    path: 'standards/valley.yaml',
    text: `title: Valley curriculum
link: https://school.example/curriculum
statements:
  - code: V-1
    paraphrase: Air cools when it expands.
    level: Years 7 and 8
    link: https://school.example/curriculum#v1
    objectives:
      - { objective: Say why the air cools., relation: teaches }
`,
  },
  {
    path: 'sources.yaml',
    text: `- id: bohren-albrecht-1998
  type: book
  title: Atmospheric Thermodynamics
  author:
    - { family: Bohren, given: Craig F. }
    - { family: Albrecht, given: Bruce A. }
  issued: { date-parts: [[1998]] }
  publisher: Oxford University Press
- id: iso-7010
  type: standard
  title: Graphical symbols — Registered safety signs
  number: ISO 7010:2019
  publisher: International Organization for Standardization
  issued: { date-parts: [[2019]] }
- id: petters-kreidenweis-2007
  type: article-journal
  title: A single parameter representation of hygroscopic growth and cloud condensation nucleus activity
  author:
    - { family: Petters, given: M. D. }
    - { family: Kreidenweis, given: S. M. }
  issued: { date-parts: [[2007]] }
  DOI: 10.5194/acp-7-1961-2007
`,
  },
];
