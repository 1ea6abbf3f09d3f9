/** How large a step each change of a kit asks for: editions.md, "MAJOR when a teacher must prepare differently, MINOR when material is added, PATCH when wording or a figure is mended". */
import { describe, expect, it } from 'vitest';
import { PUBLISHED } from '../authoring/folders.ts';
import { withWorkingCopy, type Working } from './published.ts';

const RUN = 'kits/first-cloud/run.mdx';
const KIT = 'kits/first-cloud/kit.yaml';
const JAR = 'apparatus/jar.yaml';
const WHY = 'kits/first-cloud/questions/why.mdx';
const HEAD = '## Why it cools';

type Edit = (working: Working) => Promise<unknown>;

const CASES: readonly (readonly [name: string, least: string, edit: Edit])[] = [
  ['another vessel', '2.0.0', ({ edit }) => edit(JAR, 'volume: 4 L', 'volume: 3 L')],
  ['a finer gauge', '2.0.0', ({ edit }) => edit(JAR, 'resolution: 1 kPa', 'resolution: 0.5 kPa')],
  ['a step later', '2.0.0', ({ edit }) => edit(RUN, 'at="3 min" for="2 min"', 'at="4 min" for="1 min"')],
  ['a longer lesson', '2.0.0', ({ edit }) => edit(KIT, 'minutes: 30 min', 'minutes: 40 min')],
  ['other particles', '2.0.0', ({ edit, read }) => read('particles/salt-haze.yaml').then((text) => edit('particles/salt-haze.yaml', /^kappa: .*$/m.exec(text)![0], 'kappa: 0.9'))],
  ['another thing to buy', '2.0.0', ({ edit }) => edit(KIT, 'materials:', 'materials:\n  - { item: Towel, specification: Dry, quantity: 1 }')],
  ['another thing to do before', '2.0.0', ({ edit }) => edit(KIT, 'before: 1 h', 'before: 2 h')],
  ['a hazard that is worse', '2.0.0', ({ edit }) => edit('hazards/vacuum.mdx', 'signal: WARNING', 'signal: DANGER')],
  ['a hazard sheet that says more', '1.1.0', ({ edit }) => edit('hazards/vacuum.mdx', 'Goggles, and', 'Goggles, a screen, and')],
  ['a hazard that the text alone brings in', '2.0.0', async ({ edit, read, write }) => {
    await write('hazards/wet-floor.mdx', (await read('hazards/vacuum.mdx')).replace('Vessel under vacuum', 'Wet floor'));
    await edit(RUN, '<Hazard id="vacuum"/>', '<Hazard id="wet-floor"/>');
  }],
  ['another question', '1.1.0', ({ read, write }) => read(WHY).then((text) => write('kits/first-cloud/questions/again.mdx', text))],
  ['a question that counts for more', '1.1.0', ({ edit }) => edit(WHY, 'level: 1', 'level: 2')],
  ['a table', '1.1.0', ({ edit }) => edit('kits/first-cloud/background.mdx', HEAD, `<WorkedTable kind="pressure-steps"/>\n\n${HEAD}`)],
  ['a section', '1.1.0', ({ edit }) => edit('kits/first-cloud/background.mdx', HEAD, `## First\n\nLook.\n\n${HEAD}`)],
  ['another room', '1.1.0', ({ edit }) => edit('rooms/workshop.yaml', 'temperature: 20.0 °C', 'temperature: 24.0 °C')],
  ['another objective', '1.1.0', ({ edit }) => edit(KIT, 'objectives:', 'objectives:\n  - { id: drops, text: Say what a cloud is. }')],
  ['a class’s readings', '1.1.0', ({ read, write }) => read('kits/first-cloud/readings/7b.csv').then((text) => write('kits/first-cloud/readings/7c.csv', text))],
  ['one word', '1.0.2', ({ edit }) => edit(RUN, 'Slowly.', 'Very slowly.')],
  ['the title of a step', '1.0.2', ({ edit }) => edit(RUN, 'title="Control run"', 'title="First run"')],
  ['the title of the kit', '1.0.2', ({ edit }) => edit(KIT, 'title: First cloud', 'title: The first cloud')],
  ['the words of an option', '1.0.2', ({ edit }) => edit(WHY, 'Drops of water', 'Small drops of water')],
  ['a misconception put better', '1.0.2', ({ edit }) => edit('misconceptions/cloud-is-vapor.mdx', 'Vapor cannot be seen.', 'Nobody can see vapor.')],
  ['a comment in a file', '1.0.2', ({ edit }) => edit(JAR, 'title:', '# bought this year\ntitle:')],
];

/** The steps after the newest edition of the folder. */
const NEWEST = '1.0.1';
const NEXT = ['1.0.2', '1.1.0', '2.0.0'];

describe(`after ${NEWEST}`, () => {
  it.each(CASES.map(([name, least, edit]) => ({ name, least, edit })))('$name asks for $least', ({ least, edit }) =>
    withWorkingCopy(PUBLISHED, async (working) => {
      await edit(working);
      const smaller = NEXT[NEXT.indexOf(least) - 1];
      if (smaller !== undefined) {
        const { isDone, text } = await working.publish(smaller);
        expect(text).toContain(`${smaller} is too small a step from ${NEWEST}`);
        expect(text).toContain(`Publish it as ${least} or later.`);
        expect(isDone).toBe(false);
      }
      expect(await working.publish(least)).toMatchObject({ isDone: true });
    }));

  it('a table of another kind in the place of one is no mended wording', () =>
    withWorkingCopy(PUBLISHED, async ({ edit, publish }) => {
      await edit('kits/first-cloud/background.mdx', HEAD, `<WorkedTable kind="pressure-steps"/>\n\n${HEAD}`);
      await publish('1.1.0');
      await edit('kits/first-cloud/background.mdx', 'pressure-steps', 'gauge-readings');
      expect((await publish('1.1.1')).text).toContain('Publish it as 1.2.0 or later.');
    }));

  it.each<[string, Edit]>([
    ['nothing', () => Promise.resolve()],
    ['the list of changes alone', ({ edit }) => edit(KIT, 'changes:', 'changes:\n  - { version: 1.1.0, date: 2026-11-28, text: A better one. }')],
    ['the school’s own file', ({ edit }) => edit('site.yaml', 'school: ', 'school: The new ')],
    ['a room that the kit does not use', ({ read, write }) => read('rooms/workshop.yaml').then((text) => write('rooms/attic.yaml', text))],
  ])('%s asks for no edition', (_, edit) =>
    withWorkingCopy(PUBLISHED, async (working) => {
      await edit(working);
      expect(await working.publish('2.0.0')).toEqual({ isDone: false, text: 'Nothing has changed since edition 1.0.1: there is nothing to publish.' });
    }));
});
