/** A small vocabulary for tests of lesson text: one component of every sort. */
import { z } from 'zod';
import {
  count,
  list,
  quantity,
  reference,
  SHEET_KINDS,
  text,
  vocabularyOf,
  type RawAttributes,
  type UnknownChoice,
} from '../../src/authoring/index.ts';

const VALUES: Readonly<Record<string, z.ZodObject>> = {
  roomPressure: z.strictObject({ of: z.string() }),
  gaugeAtDrop: z.strictObject({ of: z.string(), drop: quantity('pressure'), unit: text().optional() }),
};

function valueAttributes(raw: RawAttributes): z.ZodObject | UnknownChoice {
  return VALUES[raw['of'] ?? ''] ?? { attribute: 'of', unknown: raw['of'], choices: Object.keys(VALUES) };
}

const step = z.strictObject({
  at: quantity('time'),
  for: quantity('time').optional(),
  title: text().optional(),
  action: z
    .enum(['talk', 'prepare', 'pump', 'hold', 'vent', 'particles', 'wait', 'light', 'extinguish', 'predict', 'record'])
    .optional(),
  drop: quantity('pressure').optional(),
  particles: reference('particles').optional(),
  expect: z.enum(['clear', 'cloud', 'clearing']).optional(),
});

/** Names stand for themselves: the components of lessons, fewer values and one table. */
export const vocabulary = vocabularyOf([
  { name: 'Step', placement: 'block', children: 'block', allowedIn: ['run'], attributes: step },
  {
    name: 'Predict',
    placement: 'block',
    children: 'block',
    allowedIn: ['student'],
    attributes: z.strictObject({ lines: count(1, 20).optional() }),
  },
  { name: 'TeacherOnly', placement: 'block', children: 'block', allowedIn: SHEET_KINDS, attributes: z.strictObject({}) },
  {
    name: 'Explain',
    placement: 'block',
    children: 'block',
    parents: ['Predict'],
    allowedIn: ['student'],
    attributes: z.strictObject({}),
  },
  {
    name: 'Hazard',
    placement: 'block',
    children: 'none',
    allowedIn: SHEET_KINDS,
    attributes: z.strictObject({ id: reference('hazard') }),
  },
  {
    name: 'Misconception',
    placement: 'block',
    children: 'none',
    allowedIn: SHEET_KINDS,
    attributes: z.strictObject({ id: reference('misconception') }),
  },
  {
    name: 'Question',
    placement: 'block',
    children: 'none',
    allowedIn: ['student', 'run', 'background'],
    attributes: z.strictObject({ id: reference('question') }),
  },
  {
    name: 'Source',
    placement: 'inline',
    children: 'none',
    allowedIn: SHEET_KINDS,
    attributes: z.strictObject({ id: reference('source') }),
  },
  {
    name: 'Given',
    placement: 'inline',
    children: 'inline',
    allowedIn: SHEET_KINDS,
    attributes: z.strictObject({ source: reference('source').optional() }),
  },
  { name: 'Value', placement: 'inline', children: 'none', allowedIn: SHEET_KINDS, attributes: valueAttributes },
  {
    name: 'WorkedTable',
    placement: 'block',
    children: 'none',
    allowedIn: SHEET_KINDS,
    attributes: z.strictObject({ kind: z.literal('pressure-steps'), drops: list(quantity('pressure')).optional() }),
  },
]);
