/** The table of fields says what the schemas take: units, ranges, choices, what may be left out. */
import { describe, expect, it } from 'vitest';
import { KINDS_OF_FILE } from '../../src/components/contribute/content-files.ts';
import { fieldsOf } from '../../src/components/contribute/fields.ts';
import { marked } from '../../src/components/contribute/marked.ts';

const fields = new Map(KINDS_OF_FILE.map(({ id, schema }) => [id, fieldsOf(schema)]));
const field = (file: string, path: string, only?: string) => fields.get(file)?.find((one) => one.path === path && one.only === only);

/** What authoring's contract says of these fields. */
it.each([
  ['kit', 'minutes', undefined, true, 'a time: `3 min`, 5 min to 8 h'],
  ['kit', 'room', undefined, false, 'the name of a room'],
  ['kit', 'objectives[].id', undefined, true, 'a name: lowercase letters, digits, hyphens'],
  ['kit', 'audience.ages', undefined, true, 'two ages: `11-14`'],
  ['room', 'temperature', undefined, true, 'a temperature: `21 °C`, -30 °C to 55 °C'],
  ['apparatus', 'vessel.lowest', undefined, true, 'a pressure: `-70 kPa gauge`'],
  ['apparatus', 'vessel.shape', undefined, true, 'one of `cylinder`, `sphere`'],
  ['apparatus', 'source.kind', undefined, true, '`stroke-pump`, `steady-pump`, `squeeze`, `pressurise`'],
  ['apparatus', 'source.strokeVolume', 'stroke-pump', true, 'a volume: `5 L`, 1 mL to 5 L'],
  ['apparatus', 'thermometer.wallShare', undefined, true, 'a number, 0 to 1'],
  ['particles', 'kappa', undefined, true, 'a number, 0 to 1.5'],
  ['hazard', 'signal', undefined, true, 'one of `DANGER`, `WARNING`, `CAUTION`, `NOTICE`'],
  ['site', 'drafts', undefined, false, '`true` or `false`; `true` where it is left out'],
  ['question', 'level', undefined, true, '`1` or `2` or `3`'],
  ['question', 'items', 'ordering', true, 'a list of: text'],
] as const)('%s: %s', (file, path, only, needed, write) => {
  expect(field(file, path, only)).toMatchObject({ needed, write });
});

describe.each(KINDS_OF_FILE)('$path', ({ schema }) => {
  it('has fields, and says of each what it means and what to write', () => {
    const own = fieldsOf(schema);
    expect(own.length).toBeGreaterThan(1);
    for (const { path, write, description } of own) for (const said of [write, description]) expect(said, path).toMatch(/\S/);
  });
});

it('escapes all but code', () => expect(marked('a <b> `c & <d>`')).toBe('a &lt;b&gt; <code>c &amp; &lt;d&gt;</code>'));
