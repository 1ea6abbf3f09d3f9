/** A computed quantity asked for outside lesson text: the same attributes as `<Value>`, written as fields. */
import { z } from 'zod';
import { report, show } from './fields.ts';
import type { Problem } from './findings.ts';
import { proposeName } from './names.ts';
import { isUnknownChoice, type RawAttributes, type UnknownChoice, type Vocabulary } from './vocabulary.ts';

/** A computed quantity as asked for: `of` names it, the rest are its parameters as `<Value>` reads them. */
export type ValueRequest = { readonly of: string } & Readonly<Record<string, unknown>>;

/** The schema of requests in this vocabulary. */
export function requestSchema(vocabulary: Vocabulary): z.ZodType<ValueRequest> {
  const spec = vocabulary.components.get('Value');
  return z.unknown().transform((input, context) => {
    const raw = asAttributes(input, context);
    if (raw === undefined) return z.NEVER;
    const schema =
      spec === undefined
        ? z.looseObject({ of: z.string() })
        : typeof spec.attributes === 'function'
          ? spec.attributes(raw)
          : spec.attributes;
    if (isUnknownChoice(schema)) {
      report(context, input, unknownChoice(schema), schema.unknown === undefined ? [] : [schema.attribute]);
      return z.NEVER;
    }
    const result = schema.safeParse(raw, { error: withChoices });
    if (result.success) return result.data as ValueRequest;
    for (const issue of result.error.issues) context.issues.push({ ...issue, input } as z.core.$ZodRawIssue);
    return z.NEVER;
  }) as z.ZodType<ValueRequest>;
}

/** The problem of an attribute that names nothing there is. */
export function unknownChoice({ attribute, unknown, choices }: UnknownChoice): Problem {
  if (unknown === undefined) {
    return { code: 'missing-key', what: `\`${attribute}\` is missing`, instead: `add it: ${proposeName('', choices)}` };
  }
  return {
    code: 'unknown-choice',
    what: `\`${unknown}\` is not a choice for \`${attribute}\``,
    instead: proposeName(unknown, choices),
  };
}

/** Notes in an issue's message what could have been written: issues themselves do not say. */
export function withChoices(issue: z.core.$ZodRawIssue): string | undefined {
  const inside = issue.inst?._zod as { def?: { shape?: object }; propValues?: Record<string, Set<unknown>> } | undefined;
  if (issue.code === 'unrecognized_keys') return Object.keys(inside?.def?.shape ?? {}).join('|');
  if (issue.code === 'invalid_union' && typeof issue['discriminator'] === 'string') {
    return [...(inside?.propValues?.[issue['discriminator']] ?? [])].join('|');
  }
  return undefined;
}

function asAttributes(input: unknown, context: { issues: z.core.$ZodRawIssue[] }): RawAttributes | undefined {
  if (input === null || typeof input !== 'object' || Array.isArray(input)) {
    const code = input === undefined ? 'missing-key' : 'wrong-type';
    report(context, input, {
      code,
      what: input === undefined ? 'is missing' : `${show(input)} stands where fields belong`,
      instead: 'write `of:` and the name of a computed quantity below it',
    });
    return undefined;
  }
  const entries = Object.entries(input);
  const wrong = entries.filter(([, value]) => typeof value !== 'string');
  for (const [key, value] of wrong) {
    const code = typeof value === 'number' ? 'quantity-without-unit' : 'wrong-type';
    report(context, value, { code, what: `\`${show(value)}\` is not a quantity`, instead: 'write a number and its unit' }, [key]);
  }
  return wrong.length > 0 ? undefined : (Object.fromEntries(entries) as RawAttributes);
}
