/** Runs a schema on what a file says, and puts every issue in its place. */
import type { z } from 'zod';
import { findingAt, type Finding, type Place, type Problem } from './findings.ts';
import { listNames, nearestName, proposeName } from './names.ts';
import { withChoices } from './request.ts';
import { show } from './fields.ts';

/** Where a field stands, or its name. */
export type LocateField = (path: readonly PropertyKey[], part?: 'key' | 'value') => Place;

/** Data of the schema's type, or why not. */
export type Checked<T> =
  { readonly data: T; readonly findings: readonly Finding[] } | { readonly data: undefined; readonly findings: readonly Finding[] };

/** Checks `data` against the schema: all findings at once. */
export function checkData<T>(schema: z.ZodType<T>, data: unknown, file: string, locate: LocateField): Checked<T> {
  const result = schema.safeParse(data, { error: withChoices, reportInput: true });
  if (result.success) return { data: result.data, findings: [] };
  const { issues } = result.error;
  const misspelt = new Set(issues.flatMap(meantKeys));
  // A misspelt name is one error, not two.
  const left = issues.filter((issue) => !(isMissing(issue) && misspelt.has(JSON.stringify(issue.path))));
  return { data: undefined, findings: left.flatMap((issue) => explain(issue, file, locate)) };
}

/** Paths of the keys that unknown ones were probably meant to be. */
function meantKeys(issue: z.core.$ZodIssue): string[] {
  if (issue.code !== 'unrecognized_keys') return [];
  const known = issue.message.split('|');
  return issue.keys.flatMap((key) => nearestName(key, known) ?? []).map((key) => JSON.stringify([...issue.path, key]));
}

function isMissing(issue: z.core.$ZodIssue): boolean {
  return issue.input === undefined && issue.code !== 'unrecognized_keys';
}

function explain(issue: z.core.$ZodIssue, file: string, locate: LocateField): Finding[] {
  if (issue.code === 'unrecognized_keys') {
    const known = issue.message.split('|');
    return issue.keys.map((key) => findingAt(file, locate([...issue.path, key], 'key'), unknownKey(key, known)));
  }
  if (issue.code === 'invalid_union' && issue.discriminator === undefined) {
    const deepest = deepestBranch(issue.errors);
    if (deepest !== undefined)
      return deepest.flatMap((inner) => explain({ ...inner, path: [...issue.path, ...inner.path] }, file, locate));
  }
  return [findingAt(file, locate(issue.path), problemOf(issue))];
}

/** The alternative that came furthest: the one probably meant. None if none got past its first step. */
function deepestBranch(branches: readonly z.core.$ZodIssue[][]): z.core.$ZodIssue[] | undefined {
  const inside = branches.filter((issues) => issues.some((issue) => issue.path.length > 0 || issue.code !== 'invalid_type'));
  return inside.sort((a, b) => a.length - b.length)[0];
}

function problemOf(issue: z.core.$ZodIssue): Problem {
  const key = issue.path.at(-1);
  const field = typeof key === 'string' ? `\`${key}\`` : 'this';
  const found = show(issue.input);
  switch (issue.code) {
    case 'custom': {
      const problem = issue.params?.['problem'] as Problem | undefined;
      if (problem === undefined) return { code: 'wrong-form', what: issue.message, instead: 'correct it' };
      return problem.code === 'missing-key' && problem.what === 'is missing'
        ? { ...problem, what: `${field} is missing` }
        : problem;
    }
    case 'invalid_type':
      if (issue.input === undefined)
        return { code: 'missing-key', what: `${field} is missing`, instead: `add it: ${kindInWords(issue.expected)}` };
      return {
        code: 'wrong-type',
        what: `${field} holds ${quote(issue.input, found)}`,
        instead: wantedInstead(issue.expected, issue.input),
      };
    case 'invalid_value': {
      const choices = issue.values.map(String);
      if (issue.input === undefined)
        return { code: 'missing-key', what: `${field} is missing`, instead: `add it: ${oneOf(choices)}` };
      return { code: 'unknown-choice', what: `\`${found}\` is not a choice for ${field}`, instead: proposeChoice(found, choices) };
    }
    case 'invalid_union': {
      const choices = issue.message.split('|');
      const kind = (issue.input as Record<string, unknown> | undefined)?.[issue.discriminator ?? ''] ?? issue.input;
      if (issue.discriminator === undefined)
        return {
          code: 'wrong-type',
          what: `${field} holds ${quote(issue.input, found)}`,
          instead: 'write one of the kinds of value that belong here',
        };
      if (typeof kind !== 'string')
        return { code: 'missing-key', what: `${field} is missing`, instead: `add it: ${oneOf(choices)}` };
      return { code: 'unknown-choice', what: `\`${kind}\` is not a choice for ${field}`, instead: proposeChoice(kind, choices) };
    }
    case 'too_small':
    case 'too_big':
      return sizeProblem(issue, field, found);
    case 'invalid_format':
      return formProblem(issue, field, found);
    default:
      return { code: 'wrong-form', what: `${field} is not as it must be`, instead: 'correct it' };
  }
}

function unknownKey(key: string, known: readonly string[]): Problem {
  const nearest = nearestName(key, known);
  const names = listNames(known);
  const instead =
    nearest !== undefined
      ? `write \`${nearest}\`, the nearest there is`
      : names === '``'
        ? 'remove it'
        : `remove it, or use one of ${names}`;
  return { code: 'unknown-key', what: `\`${key}\` is not a name known here`, instead };
}

function sizeProblem(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig, field: string, found: string): Problem {
  const limit = issue.code === 'too_small' ? `at least ${issue.minimum}` : `at most ${issue.maximum}`;
  if (issue.origin === 'string') {
    if (issue.code === 'too_small') return { code: 'missing-key', what: `${field} is empty`, instead: 'write the text' };
    return { code: 'wrong-form', what: `${field} is longer than ${issue.maximum} characters`, instead: 'shorten it' };
  }
  if (issue.origin === 'array')
    return {
      code: 'wrong-form',
      what: `${field} has too ${issue.code === 'too_small' ? 'few' : 'many'} items`,
      instead: `write ${limit} of them`,
    };
  return { code: 'number-out-of-range', what: `\`${found}\` is outside the range of ${field}`, instead: `write ${limit}` };
}

function formProblem(issue: z.core.$ZodIssueInvalidStringFormat, field: string, found: string): Problem {
  const forms: Readonly<Record<string, string>> = {
    url: 'write an address that begins with `https://`',
    date: 'write the date as year-month-day, as in `2026-09-01`',
  };
  const pattern = issue.pattern ?? '';
  const known = PATTERNS.find(([part]) => pattern.includes(part))?.[1];
  return {
    code: 'wrong-form',
    what: `\`${found}\` is not of the form that ${field} has`,
    instead: forms[issue.format] ?? known ?? `write it so that it matches \`${pattern}\``,
  };
}

/** What the patterns of the schemas mean, by a part that only one of them has. */
const PATTERNS: readonly (readonly [string, string])[] = [
  ['[a-z0-9]+(?:-', 'write lowercase letters, digits and hyphens'],
  ['[EFMPW]', 'write the number of an ISO 7010 sign, as in `W021`'],
  ['[-–]', 'write two ages, as in `11-14`'],
  ['10\\.', 'write the DOI alone, as in `10.1000/182`'],
  ['\\d+\\.\\d+', 'write it in quotes as numbers with points, as in `"1.0"`'],
];

function kindInWords(expected: string): string {
  const words: Readonly<Record<string, string>> = {
    string: 'text',
    number: 'a number',
    boolean: '`true` or `false`',
    array: 'a list',
    object: 'fields, indented below it',
    int: 'a whole number',
  };
  return words[expected] ?? 'a value';
}

function wantedInstead(expected: string, input: unknown): string {
  if (expected === 'string' && (typeof input === 'number' || typeof input === 'boolean'))
    return `write text; put it in quotes: \`"${input}"\``;
  if (expected === 'array') return 'write a list: each item on a line of its own after `- `, or `[]` for none';
  return `write ${kindInWords(expected)}`;
}

const oneOf = (choices: readonly string[]): string => (choices.length === 1 ? `\`${choices[0]}\`` : `one of ${listNames(choices)}`);

function proposeChoice(found: string, choices: readonly string[]): string {
  return choices.length === 1 ? `write \`${choices[0]}\`` : proposeName(found, choices);
}

function quote(input: unknown, found: string): string {
  return typeof input === 'string' || typeof input === 'number' || typeof input === 'boolean' ? `\`${found}\`` : found;
}
