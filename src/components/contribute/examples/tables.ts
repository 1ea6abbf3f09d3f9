/** One table of each kind, and one curve. */
import type { ExampleGroup } from './example.ts';

export const TABLES: ExampleGroup = {
  id: 'tables',
  title: 'Tables and curves',
  about: 'A table names its kind. Everything else has a sensible default: rows, columns, caption. Name columns to show fewer of them.',
  examples: [
    { of: 'WorkedTable', about: 'With chosen rows, chosen columns and a caption of your own.', on: 'background', source: '<WorkedTable kind="pressure-steps" drops="5 kPa, 10 kPa" columns="pressureDrop, gauge, temperatureClear" caption="What the gauge says, and how cold it gets"/>' },
    { of: 'Curve', about: 'A figure drawn from the same rows as the table of that kind.', on: 'background', source: '<Curve kind="pressure-steps"/>' },
    { of: 'pressure-steps', about: 'The heart of a pumping lesson: drop by drop.', on: 'background', source: '<WorkedTable kind="pressure-steps"/>' },
    { of: 'strokes', about: 'Stroke by stroke of the pump, walls and thermometer included.', on: 'run', source: '<WorkedTable kind="strokes" strokes="0, 2, 4, 6"/>' },
    { of: 'elevations', about: 'For a school higher up.', on: 'background', source: '<WorkedTable kind="elevations" elevations="0 m, 1000 m, 2000 m"/>' },
    { of: 'starting-humidity', about: 'How dry the vessel may be.', on: 'background', source: '<WorkedTable kind="starting-humidity" humidities="50 %, 70 %, 90 %"/>' },
    { of: 'particle-sizes', about: 'Which particles take part.', on: 'background', source: '<WorkedTable kind="particle-sizes"/>' },
    { of: 'droplets', about: 'How many drops, how large, and whether anybody sees them.', on: 'background', source: '<WorkedTable kind="droplets" numbers="100 /cm³, 10000 /cm³" drop="10 kPa"/>' },
    { of: 'particle-lifetime', about: 'How long the particles last.', on: 'background', source: '<WorkedTable kind="particle-lifetime" times="0 min, 10 min, 60 min"/>' },
    { of: 'rising-parcel', about: 'The same air, rising outdoors.', on: 'background', source: '<WorkedTable kind="rising-parcel" heights="0 m, 500 m, 1000 m"/>' },
    { of: 'no-particle-limit', about: 'How far the run without particles may go.', on: 'background', source: '<WorkedTable kind="no-particle-limit" drops="10 kPa, 20 kPa, 30 kPa"/>' },
    { of: 'gauge-readings', about: 'One reading in every unit that a gauge is sold with.', on: 'student', source: '<WorkedTable kind="gauge-readings" readings="0 kPa gauge, -10 kPa gauge, -20 kPa gauge"/>' },
    { of: 'wall-forces', about: 'What the vessel has to bear.', on: 'background', source: '<WorkedTable kind="wall-forces"/>' },
  ],
};
