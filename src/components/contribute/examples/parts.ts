/** The parts that sheets are made of. */
import type { ExampleGroup } from './example.ts';

export const PARTS: ExampleGroup = {
  id: 'parts',
  title: 'Parts of a sheet',
  about: 'A run sheet is made of steps. A student sheet is made of predictions, observations and explanations. What only teachers may see is marked so.',
  examples: [
    {
      of: 'Step',
      about: 'When it begins, how long it takes, what is done. With a drop, the gauge’s reading stands beside it; with `expect`, what to look for. The check refuses a cloud that cannot form. Where the vessel is under pressure or squeezed, `pump` presses air in and `vent` lets it go: the cloud is expected there.',
      on: 'run',
      source: '<Step at="12 min" for="3 min" title="Pump, with no particles" action="pump" drop="20 kPa" expect="clear">\n\nPump slowly. Let one student call out the gauge.\n\n</Step>',
    },
    {
      of: 'Predict',
      about: 'Before anything happens. Lines to write on come by themselves; `lines="0"` leaves them out.',
      on: 'student',
      source: '<Predict lines="2">\n\nThe air in the jar will expand. Will it get warmer, get colder, or stay as it is?\n\n</Predict>',
    },
    { of: 'Observe', about: 'What was seen and read.', on: 'student', source: '<Observe lines="1">\n\nDraw what you see against the black card.\n\n</Observe>' },
    { of: 'Explain', about: 'Why it was so, in the student’s own words.', on: 'student', source: '<Explain lines="2">\n\nWhy was there no cloud the first time?\n\n</Explain>' },
    {
      of: 'TeacherOnly',
      about: 'It never reaches a page or file for students. Here it is drawn as the teachers’ edition shows it.',
      on: 'student',
      teachers: true,
      source: '<TeacherOnly>\n\nMost of the class will say that the air stays as warm as it was. Do not correct them yet.\n\n</TeacherOnly>',
    },
  ],
};
