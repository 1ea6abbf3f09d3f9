/** Building blocks of schemas, for files' fields and components' attributes alike. */
import { z } from 'zod';
import type { FindingCode } from './catalogue.ts';
import { dimensionInWords } from './find-unit.ts';
import type { Problem } from './findings.ts';
import { NAME } from './names.ts';
import {
  exampleOf,
  parseDifference,
  parseLevel,
  parseQuantity,
  type PressureLevel,
  type Reading,
  type WrittenQuantity,
} from './quantities.ts';
import { DIMENSIONS, type Dimension } from './unit-table.ts';

/** Lowest and highest allowed, each written as a quantity. */
export type Range = readonly [low: string, high: string];

/** What a name may refer to. */
export type ReferenceKind =
  'kit' | 'room' | 'apparatus' | 'particles' | 'hazard' | 'misconception' | 'source' | 'standard' | 'question' | 'objective' | 'picture';

/** Which fields are references, so that the loader can follow them. */
export const REFERENCES = z.registry<{ to: ReferenceKind }>();

/**
 * A quantity of one dimension; of pressures, a difference without `gauge` or `absolute`.
 * @param dimension that the unit must have
 * @param range lowest and highest allowed, for example `['-30 °C', '55 °C']`
 */
export function quantity<D extends Dimension>(dimension: D, range?: Range): z.ZodType<WrittenQuantity<D>> {
  const read = dimension === 'pressure' ? parseDifference : (text: string) => parseQuantity(text, dimension);
  return written(
    within(read as (text: string) => Reading<WrittenQuantity<D>>, range, (text) => parseQuantity(text, dimension)),
    dimension,
  ).meta(quantityForm(dimension, range));
}

/** An absolute pressure whose name says so: the word `absolute` may be left out. */
export function absolutePressure(range?: Range): z.ZodType<WrittenQuantity<'pressure'>> {
  const read = (text: string): Reading<WrittenQuantity<'pressure'>> => {
    const reading = parseQuantity(text, 'pressure');
    if ('problem' in reading || reading.quantity.reference !== 'gauge') return reading;
    return {
      problem: {
        code: 'reference-not-wanted',
        what: `\`${text}\` is a gauge reading, and an absolute pressure belongs here`,
        instead: 'write the absolute pressure, as in `835 hPa`',
      },
    };
  };
  return written(
    within(read, range, (text) => parseQuantity(text, 'pressure')),
    'pressure',
  ).meta({ ...quantityForm('pressure', range), form: `An absolute pressure with its unit${limits(range)}.` });
}

/** A pressure that must say `gauge` or `absolute`; one of them alone if `only` names it. */
export function level(only?: PressureLevel['reference']): z.ZodType<PressureLevel> {
  const example = only === 'absolute' ? '150 hPa absolute' : only === 'gauge' ? '40 kPa gauge' : '-70 kPa gauge';
  const read = (text: string): Reading<PressureLevel> => {
    const reading = parseLevel(text);
    if ('problem' in reading) return reading;
    const { reference, value } = reading.quantity;
    if (only !== undefined && reference !== only) {
      return {
        problem: {
          code: 'contradiction',
          what: `\`${text}\` is ${reference}, and ${only} belongs here`,
          instead: `write it as ${only}, as in \`${example}\``,
        },
      };
    }
    if (reference === 'absolute' && value < 0) {
      return {
        problem: {
          code: 'quantity-out-of-range',
          what: `\`${text}\` is below vacuum`,
          instead: 'write an absolute pressure of 0 or more, or say `gauge`',
        },
      };
    }
    return reading;
  };
  return written(read, 'pressure', example).meta({
    type: 'string',
    form: `A pressure with its unit and the word ${only ?? 'gauge or absolute'}${only === 'absolute' ? '' : '; gauge readings below the room are negative'}.`,
    examples: [example],
  });
}

/** A quantity of any dimension; a shared symbol such as `K` means a difference if `difference`. */
export function anyQuantity(difference = false): z.ZodType<WrittenQuantity> {
  const rest = DIMENSIONS.filter((dimension) => dimension !== 'temperature' && dimension !== 'temperatureDifference');
  const first: Dimension[] = difference ? ['temperatureDifference'] : ['temperature', 'temperatureDifference'];
  return written((text) => parseQuantity<Dimension>(text, ...first, ...rest), first[0] ?? 'temperature').meta({
    type: 'string',
    form: 'A number with its unit.',
    examples: [exampleOf(first[0] ?? 'temperature')],
  });
}

/**
 * Several of the same, as a YAML list or in one text with commas: `5 kPa, 10 kPa, 15 kPa`.
 * A bare `0` is understood beside items with a unit, where zero is zero in every unit.
 */
export function list<T>(
  item: z.ZodType<T>,
  limits: { readonly least?: number; readonly most?: number } = {},
): z.ZodType<readonly T[]> {
  const { least = 1, most = 50 } = limits;
  return z.unknown().transform((input, context) => {
    if (input === undefined) return missing(context, 'a list');
    const items: readonly unknown[] = typeof input === 'string' ? splitList(input) : Array.isArray(input) ? input : [input];
    if (items.length < least || items.length > most) {
      report(context, input, {
        code: 'wrong-form',
        what: `the list has ${items.length} items`,
        instead: `write ${least} to ${most} of them, with commas between`,
      });
      return z.NEVER;
    }
    return items.map((one, i) => {
      const result = item.safeParse(one);
      if (result.success) return result.data;
      const path = Array.isArray(input) ? [i] : [];
      for (const issue of result.error.issues)
        context.issues.push({ ...issue, path: [...path, ...issue.path], input: one } as z.core.$ZodRawIssue);
      return z.NEVER;
    });
  }) as z.ZodType<readonly T[]>;
}

/** A whole number, as a YAML number or in digits. */
export function count(low: number, high: number): z.ZodType<number> {
  return z.unknown().transform((input, context) => {
    if (input === undefined) return missing(context, 'a whole number');
    const value = typeof input === 'string' && /^\d{1,9}$/.test(input.trim()) ? Number(input) : input;
    if (typeof value === 'number' && Number.isInteger(value) && value >= low && value <= high) return value;
    const code = typeof value === 'number' ? 'number-out-of-range' : 'wrong-type';
    report(context, input, {
      code,
      what: `\`${show(input)}\` is not a whole number from ${low} to ${high}`,
      instead: 'write such a number, without a unit',
    });
    return z.NEVER;
  }).meta({
    type: ['integer', 'string'],
    minimum: low,
    maximum: high,
    form: `A whole number from ${low} to ${high}, without a unit.`,
  }) as z.ZodType<number>;
}

/** A pure number of a YAML file. */
export function number(low: number, high: number): z.ZodType<number> {
  return z.unknown().transform((input, context) => {
    if (input === undefined) return missing(context, 'a number');
    if (typeof input === 'number' && input >= low && input <= high) return input;
    const code = typeof input === 'number' ? 'number-out-of-range' : 'wrong-type';
    report(context, input, {
      code,
      what: `\`${show(input)}\` is not a number from ${low} to ${high}`,
      instead: 'write such a number, without a unit',
    });
    return z.NEVER;
  }).meta({ type: 'number', minimum: low, maximum: high, form: `A number from ${low} to ${high}, without a unit.` }) as z.ZodType<number>;
}

/** Text that says something, within a length. */
export const text = (most = 2000): z.ZodString => z.string().trim().min(1).max(most);

/** A name of this file's own making: lowercase letters, digits, hyphens. */
export const name = (): z.ZodString => z.string().regex(NAME).max(64);

/** The name of something defined elsewhere. */
export function reference(to: ReferenceKind): z.ZodString {
  return z.string().trim().min(1).max(100).meta({ form: REFERENCE_FORMS[to] }).register(REFERENCES, { to });
}

/** How each kind of reference is written, for editors. */
const REFERENCE_FORMS: Readonly<Record<ReferenceKind, string>> = {
  kit: 'The name of a folder in kits/.',
  room: 'The name of a file in rooms/, without its ending.',
  apparatus: 'The name of a file in apparatus/, without its ending.',
  particles: 'The name of a file in particles/, without its ending.',
  hazard: 'The name of a file in hazards/, without its ending.',
  misconception: 'The name of a file in misconceptions/, without its ending.',
  source: 'The id of an item in sources.yaml.',
  standard: 'The code of a statement in a file of standards/.',
  question: 'The name of a file in questions/ of this kit, without its ending.',
  objective: 'The id of an objective in kit.yaml.',
  picture: 'The name of a picture beside the sheets of this kit.',
};

/** How a quantity is written, for editors: the `form` follows what the field says of itself. */
function quantityForm(dimension: Dimension, range?: Range): z.core.GlobalMeta & { form: string } {
  const words = dimensionInWords(dimension);
  const form = `${words.charAt(0).toUpperCase()}${words.slice(1)} with its unit${limits(range)}.`;
  const usual = exampleOf(dimension);
  const fits = 'quantity' in within((text) => parseQuantity(text, dimension), range, (text) => parseQuantity(text, dimension))(usual);
  return { type: 'string', form, examples: [fits ? usual : (range?.[1] ?? usual)] };
}

const limits = (range: Range | undefined): string => (range === undefined ? '' : `, from ${range[0]} to ${range[1]}`);

/** Gives a refinement's issue its own code and cure. */
export function report(
  context: { issues: z.core.$ZodRawIssue[] },
  input: unknown,
  problem: Problem,
  path: readonly PropertyKey[] = [],
): void {
  context.issues.push({ code: 'custom', input, message: problem.what, params: { problem }, path: [...path] });
}

/** What kind of thing was written, for a message. */
export function show(input: unknown): string {
  if (input === null || input === undefined) return 'nothing';
  if (Array.isArray(input)) return 'a list';
  if (typeof input === 'object') return 'fields';
  const plain = String(input);
  return plain.length > 60 ? `${plain.slice(0, 57)}…` : plain;
}

function written<Q extends WrittenQuantity>(
  read: (text: string) => Reading<Q>,
  dimension: Dimension,
  example = exampleOf(dimension),
): z.ZodType<Q> {
  return z.unknown().transform((input, context) => {
    if (input === undefined) return missing(context, `${dimensionInWords(dimension)}, such as \`${example}\``);
    const reading = typeof input === 'string' ? read(input) : { problem: notText(input, dimension, example) };
    if ('quantity' in reading) return reading.quantity;
    report(context, input, reading.problem);
    return z.NEVER;
  }) as z.ZodType<Q>;
}

function within<Q extends WrittenQuantity>(
  read: (text: string) => Reading<Q>,
  range: Range | undefined,
  bound: (text: string) => Reading<WrittenQuantity>,
): (text: string) => Reading<Q> {
  if (range === undefined) return read;
  const [low, high] = range.map((text) => valueOf(bound(text), text));
  return (text) => {
    const reading = read(text);
    if ('problem' in reading) return reading;
    const { value, dimension } = reading.quantity;
    if (low !== undefined && high !== undefined && value >= low && value <= high) return reading;
    return {
      problem: {
        code: 'quantity-out-of-range',
        what: `\`${text}\` is outside the range of ${range[0]} to ${range[1]}`,
        instead: `write ${dimensionInWords(dimension)} within it`,
      },
    };
  };
}

function valueOf(reading: Reading<WrittenQuantity>, text: string): number {
  if ('quantity' in reading) return reading.quantity.value;
  throw new RangeError(`the bound ${text} of a schema is not a quantity: ${reading.problem.what}`);
}

function notText(input: unknown, dimension: Dimension, example: string): Problem {
  const code: FindingCode = typeof input === 'number' ? 'quantity-without-unit' : 'wrong-type';
  const what =
    typeof input === 'number' ? `\`${input}\` has no unit` : `${show(input)} stands where ${dimensionInWords(dimension)} belongs`;
  return { code, what, instead: `write a number and its unit, as in \`${example}\`` };
}

function missing(context: { issues: z.core.$ZodRawIssue[] }, wanted: string): never {
  report(context, undefined, { code: 'missing-key', what: 'is missing', instead: `add it: ${wanted}` });
  return z.NEVER;
}

function splitList(text: string): string[] {
  const items = text.split(/\s*,\s+|\s*;\s*|(?<=[^\d\s]),/u).map((item) => item.trim());
  const unit = items
    .map((item) => /^[+\-−]?[\d.,]+\s*(?<unit>[^\d\s].*)$/u.exec(item)?.groups?.['unit'])
    .find((found) => found !== undefined);
  const zeroIsZero = unit !== undefined && !/°|gauge|absolute/u.test(unit);
  return items.map((item) => (item === '0' && zeroIsZero ? `0 ${unit}` : item));
}
