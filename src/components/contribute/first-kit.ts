/**
 * What the first page of the guide tells its reader to do, step by step. The page prints these
 * steps and the tests carry them out, so that the guide cannot tell what does not work.
 */

/** A command to type in the project's folder. */
export interface Command {
  readonly do: 'command';
  readonly text: string;
}

/** A change in a file of the content folder. */
export interface Edit {
  readonly do: 'edit';
  /** Path in the content folder. */
  readonly file: string;
  /** How the line that changes begins. None: the text goes to the end of the file. */
  readonly lineThatBegins?: string;
  readonly by: string;
  /** Findings that the check then reports; none if left out. */
  readonly finds?: readonly string[];
}

export type Deed = Command | Edit;

const STUDENT = 'kits/melting-ice/student.mdx';
const SENTENCE = 'Today the room is at';

export const FIRST_KIT = {
  make: { do: 'command', text: 'npm run new -- kit melting-ice' },
  see: { do: 'command', text: 'npm start' },
  name: { do: 'edit', file: 'kits/melting-ice/kit.yaml', lineThatBegins: 'title:', by: 'title: How ice melts' },
  add: { do: 'edit', file: STUDENT, by: `${SENTENCE} <Value of="roomTemperature"/>.` },
  breakIt: { do: 'edit', file: STUDENT, lineThatBegins: SENTENCE, by: `${SENTENCE} 21 °C.`, finds: ['typed-quantity'] },
  check: { do: 'command', text: 'npm run check' },
  mend: { do: 'edit', file: STUDENT, lineThatBegins: SENTENCE, by: `${SENTENCE} <Value of="roomTemperature"/>.` },
  misspell: { do: 'edit', file: STUDENT, lineThatBegins: SENTENCE, by: `${SENTENCE} <Value of="roomTemprature"/>.`, finds: ['unknown-choice'] },
  mendAgain: { do: 'edit', file: STUDENT, lineThatBegins: SENTENCE, by: `${SENTENCE} <Value of="roomTemperature"/>.` },
} as const satisfies Readonly<Record<string, Deed>>;

export type DeedName = keyof typeof FIRST_KIT;

/** What to do with the text of an edit, with code in backquotes. */
export const toDo = ({ file, lineThatBegins }: Edit): string => {
  const where = lineThatBegins === undefined ? 'add at the end, after an empty line' : `the line that begins \`${lineThatBegins}\` becomes`;
  return `In \`content/${file}\`, ${where}:`;
};

/**
 * A file's text after an edit.
 * @throws RangeError if not exactly one line begins as the edit says
 */
export function edited(text: string, { lineThatBegins, by, file }: Edit): string {
  if (lineThatBegins === undefined) return `${text.trimEnd()}\n\n${by}\n`;
  const lines = text.split('\n');
  const found = lines.filter((line) => line.startsWith(lineThatBegins)).length;
  if (found !== 1) throw new RangeError(`${found} lines of ${file} begin with "${lineThatBegins}"`);
  return lines.map((line) => (line.startsWith(lineThatBegins) ? by : line)).join('\n');
}
