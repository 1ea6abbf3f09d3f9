/** Building blocks of schemas: what they read, and what they say of the rest. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import {
  checkData,
  count,
  level,
  list,
  quantity,
  readYaml,
  absolutePressure,
  anyQuantity,
  type FindingCode,
} from '../../src/authoring/index.ts';

/** Findings of a schema on YAML, as `code line:column instead`. */
function findings(schema: z.ZodType, text: string): string[] {
  const yaml = readYaml(text, 'a.yaml');
  const all = yaml.findings.length > 0 ? yaml.findings : checkData(schema, yaml.data, 'a.yaml', yaml.locate).findings;
  return all.map(({ code, line, column, instead }) => `${code} ${line}:${column} ${instead}`);
}

describe('list', () => {
  const pressures = list(quantity('pressure'));
  it.each([
    ['5 kPa, 10 kPa', [5000, 10_000]],
    ['0, 5 kPa', [0, 5000]],
    ['5 kPa; 10 kPa', [5000, 10_000]],
    ['1,000 Pa, 2,000 Pa', [1000, 2000]],
    ['5 kPa', [5000]],
  ])('reads "%s"', (text, values) => {
    expect(pressures.parse(text).map(({ value }) => value)).toEqual(values);
  });

  it.each([
    [list(quantity('temperature')), '0, 5 °C'],
    [list(level()), '0, 5 kPa gauge'],
    [pressures, '0, 5'],
    [pressures, '0'],
  ])('asks for the unit of a bare zero where zero depends on it', (schema, text) => {
    expect(schema.safeParse(text).success).toBe(false);
  });

  it('reads a YAML list, and says which item is wrong', () => {
    expect(findings(z.strictObject({ drops: pressures }), 'drops:\n  - 5 kPa\n  - 10 L\n')).toEqual([
      'wrong-dimension 3:5 use one of Pa, hPa, kPa, MPa, mbar, bar, inHg, mmHg, psi, atm',
    ]);
  });
});

describe('numbers and quantities', () => {
  it.each([
    [quantity('length', ['0 m', '10 m']), '11 m', 'quantity-out-of-range'],
    [quantity('length', ['0 m', '10 m']), '-1 m', 'quantity-out-of-range'],
    [absolutePressure(), '985 hPa gauge', 'reference-not-wanted'],
    [level('absolute'), '-5 kPa gauge', 'contradiction'],
    [level(), '-5 kPa absolute', 'quantity-out-of-range'],
    [count(1, 5), '6', 'number-out-of-range'],
    [count(1, 5), '1.5', 'wrong-type'],
  ] as const satisfies readonly (readonly [z.ZodType, string, FindingCode])[])('refuses %#: %s as %s', (schema, text, code) => {
    const { findings } = checkData<unknown>(schema, text, 'a.yaml', () => ({ line: 1, column: 1 }));
    expect(findings.map((finding) => finding.code)).toEqual([code]);
  });

  it.each([
    [quantity('length', ['0 m', '10 m']), '10 m', 10],
    [absolutePressure(), '985 hPa absolute', 98_500],
    [absolutePressure(), '985 hPa', 98_500],
    [anyQuantity(true), '2 °C', 2],
    [anyQuantity(), '2 °C', 275.15],
    [anyQuantity(true), '5 %', 0.05],
  ])('accepts %#: %s', (schema, text, value) => {
    expect((schema as z.ZodType<{ value: number }>).parse(text).value).toBeCloseTo(value, 12);
  });
});

describe('checkData', () => {
  const schema = z.strictObject({
    title: z.string(),
    on: z.boolean().optional(),
    part: z
      .discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('a'), x: z.number() }),
        z.strictObject({ kind: z.literal('b') }),
      ])
      .optional(),
    items: z.array(z.strictObject({ id: z.string() })).optional(),
  });
  it.each([
    ['titel: A\n', ['unknown-key 1:1 write `title`, the nearest there is']],
    ['zzz: A\n', ['missing-key 1:1 add it: text', 'unknown-key 1:1 remove it, or use one of `title`, `on`, `part`, `items`']],
    ['title: 5\n', ['wrong-type 1:8 write text; put it in quotes: `"5"`']],
    ['title:\n', ['wrong-type 1:1 write text']],
    ['title: [a]\n', ['wrong-type 1:8 write text']],
    ['title: A\non: yes\n', ['wrong-type 2:5 write `true` or `false`']],
    ['title: A\npart: { kind: c }\n', ['unknown-choice 2:15 choose one of `a`, `b`']],
    ['title: A\npart: { x: 1 }\n', ['missing-key 2:1 add it: one of `a`, `b`']],
    ['title: A\npart: { kind: a }\n', ['missing-key 2:1 add it: a number']],
    ['title: A\nitems:\n  - id: a\n  - idd: b\n', ['unknown-key 4:5 write `id`, the nearest there is']],
    ['title: A\nitems: a\n', ['wrong-type 2:8 write a list: each item on a line of its own after `- `, or `[]` for none']],
    ['- a\n', ['wrong-type 1:1 write fields, indented below it']],
    ['', ['yaml-syntax 1:1 write the fields of this kind of file']],
    ['__proto__: { a: 1 }\ntitle: A\n', ['unknown-key 1:1 remove it, or use one of `title`, `on`, `part`, `items`']],
  ])('of %j', (text, expected) => {
    expect(findings(schema, text).sort()).toEqual([...expected].sort());
  });
});

describe('readYaml', () => {
  it.each([
    ['a: &x 1\nb: *x\n', ['yaml-anchor', 'yaml-anchor']],
    ['a: 1\n<<: { b: 2 }\n', ['yaml-anchor']],
    ['a: !!js/function "x"\n', ['yaml-tag']],
    ['a: !thing {}\n', ['yaml-tag']],
    ['a: 1\n---\nb: 1\n', ['yaml-documents']],
    ['a: 1\na: 2\n', ['yaml-duplicate-key']],
    ['? [a]\n: 1\n', ['yaml-syntax']],
    ['a: "b\n', ['yaml-syntax']],
    [`a: ${'['.repeat(20_000)}\n`, ['yaml-syntax']],
  ])('refuses %j', (text, codes) => {
    expect(readYaml(text, 'a.yaml').findings.map(({ code }) => code)).toEqual(codes);
  });

  it('reads words as words: YAML 1.2, core schema', () => {
    expect(readYaml('a: yes\nb: 2026-09-01\nc: 1_000\nd: 0o17\n', 'a.yaml').data).toEqual({
      a: 'yes',
      b: '2026-09-01',
      c: '1_000',
      d: 15,
    });
  });
});
