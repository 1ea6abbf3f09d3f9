/** A small content folder with two published editions, the first withdrawn, the second corrected, and a draft of a third. */
import { createHash } from 'node:crypto';
import { appendFileSync, cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runCommand } from './command.ts';
import { ROOT } from './root.ts';

export const KIT = 'first-cloud';

/** What the test content says in words, by where it says it. */
export const WORDS = {
  withdrawn: 'The jar of this edition was rated for less than its drop.',
  corrected: 'The room was taken for another.',
  /** On the student sheet of each state. */
  student: { '1.0.0': 'What will you see?', '1.1.0': 'What do you expect to see first?', draft: 'What do you expect to see at last?' },
  change: 'Plainer words for the prediction.',
} as const;

/** The number of `results.json` that the second edition is given wrong, one that everybody reads and one that is an answer. */
export const WRONG = { open: 'background/pressure-steps/pressureDrop=5000/temperatureClear', answer: 'question/how-cold/answer' } as const;

const QUESTION = `---
kind: numeric
level: 2
objective: cooling
answer: { of: coolingClear, drop: 15 kPa, unit: K }
tolerance: 1 K
---
By how much does the air cool?
`;
const TABLES = `
<WorkedTable kind="pressure-steps" drops="0 kPa, 5 kPa" caption="Two steps"/>

<TeacherOnly>

<WorkedTable kind="starting-humidity" humidities="95 %, 80 %" caption="For teachers"/>

</TeacherOnly>
`;

/** Makes the folder by the commands that a school uses. */
export async function publishedContent(content: string): Promise<void> {
  const file = (path: string): string => join(content, path);
  const replace = (path: string, old: string, now: string): void => writeFileSync(file(path), readFileSync(file(path), 'utf8').replace(old, now));
  const publish = async (...args: readonly string[]): Promise<void> => {
    const { code, stderr } = await runCommand('publish-edition', [KIT, ...args], { env: { LAPSEBOOK_CONTENT: content } });
    if (code !== 0) throw new Error(stderr);
  };
  const student = `kits/${KIT}/student.mdx`;
  cpSync(join(ROOT, 'tests', 'content', 'good', 'minimal'), content, { recursive: true });
  writeFileSync(file(`kits/${KIT}/questions/how-cold.mdx`), QUESTION);
  appendFileSync(file(`kits/${KIT}/background.mdx`), TABLES);
  await publish('1.0.0');
  replace('rooms/workshop.yaml', '20.0 °C', '23.0 °C');
  replace(student, WORDS.student['1.0.0'], WORDS.student['1.1.0']);
  replace(`kits/${KIT}/kit.yaml`, 'changes:', `changes:\n  - { version: 1.1.0, date: 2026-10-01, text: ${WORDS.change} }`);
  await publish('1.1.0');
  await publish('1.0.0', '--withdraw', WORDS.withdrawn, '--replacement', '1.1.0');
  misstate(join(content, 'editions', KIT, '1.1.0'));
  await publish('1.1.0', '--correction', WORDS.corrected);
  replace(student, WORDS.student['1.1.0'], WORDS.student.draft);
}

/** An edition as one with other physics would have published it. */
function misstate(edition: string): void {
  const read = <T>(name: string): T => JSON.parse(readFileSync(join(edition, name), 'utf8')) as T;
  const write = (name: string, data: object): string => {
    const text = JSON.stringify(data);
    writeFileSync(join(edition, name), text);
    return createHash('sha256').update(text).digest('hex');
  };
  const results = read<{ numbers: Record<string, number> }>('results.json');
  for (const key of Object.values(WRONG)) {
    const value = results.numbers[key];
    if (value === undefined) throw new Error(`There is no number ${key}; there are ${Object.keys(results.numbers).join(', ')}.`);
    results.numbers[key] = value * 1.1;
  }
  const manifest = read<{ files: Record<string, string> }>('manifest.json');
  manifest.files['results.json'] = write('results.json', results);
  write('manifest.json', manifest);
}
