/** What is written once and brought in by its name. */
import type { ExampleGroup } from './example.ts';

export const BROUGHT_IN: ExampleGroup = {
  id: 'brought-in',
  title: 'Things with a name',
  about: 'Hazards, misconceptions, questions and sources have files of their own. A sheet brings them in by name. A name that does not exist stops the build.',
  examples: [
    { of: 'Hazard', about: 'At the step where it matters. The sheet shows what prevents it; the whole stands on the safety page.', on: 'run', source: '<Hazard id="vessel-under-vacuum"/>' },
    { of: 'Misconception', about: 'What students think, and what is so.', on: 'background', source: '<Misconception id="cloud-is-steam"/>' },
    { of: 'Question', about: 'The question where it belongs, with a link to its place among all questions.', on: 'student', source: '<Question id="what-is-white"/>' },
    { of: 'Source', about: 'A citation. It points at the list of sources.', on: 'background', source: 'A cloud drop hardly falls <Source id="bohren-albrecht-1998"/>.' },
  ],
};
