/** Questions: the same order everywhere, a tolerance with a reason, and what must not be asked. */
import { describe, expect, it } from 'vitest';
import type { Content, Kit, QuestionMeta } from '../../src/authoring/index.ts';
import { checkQuestions, hashOf, itemOf, shuffled, toleranceIn, toleranceText, type Answer } from '../../src/questions/index.ts';
import { computeValue, printValue, STYLES } from '../../src/tables/index.ts';
import { questionView } from '../../src/sheets/question-view.ts';
import { raw } from '../../src/sheets/html/text.ts';
import { KEY_TEXTS } from '../../src/texts/index.ts';
import { certain, conditions } from '../tables/conditions.ts';

const option = (of: string, extra: object = {}) => ({ value: { of, unit: undefined, ...extra }, why: `${of} ${JSON.stringify(extra)}` });
const choice = (...options: object[]): QuestionMeta => ({ kind: 'choice', level: 1, options }) as unknown as QuestionMeta;
const numeric = (of: string, extra: object = {}): QuestionMeta => ({ kind: 'numeric', level: 1, answer: { of, ...extra } }) as unknown as QuestionMeta;
const drop = (pascals: number) => ({ drop: { value: pascals } });

const content = { locate: (_: string, path: readonly PropertyKey[]) => ({ line: 1 + Number(path[1] ?? 0), column: path.length }) } as unknown as Content;
const kitWith = (meta: QuestionMeta): Kit => ({ questions: new Map([['one', { meta, lesson: { file: 'questions/one.mdx' } }]]) }) as unknown as Kit;
const codes = (meta: QuestionMeta) => checkQuestions(content, kitWith(meta), conditions).map(({ code }) => code);

describe('the order of options', () => {
  const items = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];
  it('holds all of them, and is the same each time', () => {
    expect([...shuffled(items, 'why')].sort()).toEqual(items);
    expect(shuffled(items, 'why')).toEqual(shuffled([...items], 'why'));
  });
  it('hashes by FNV-1a of 32 bits (RFC 9923: the empty text, "a" and "foobar")', () => {
    expect(['', 'a', 'foobar'].map(hashOf)).toEqual([0x811c9dc5, 0xe40c292c, 0xbf9cf968]);
  });
  it('puts each one in every place about equally often (chi-squared below its 0.999 quantile of 24.3 for 7 degrees of freedom: Abramowitz & Stegun, table 26.8)', () => {
    const seeds = Array.from({ length: 800 }, (_, i) => `question-${i}`);
    for (const item of items) {
      const counts = items.map((_, place) => seeds.filter((seed) => shuffled(items, seed)[place] === item).length);
      expect(counts.reduce((sum, count) => sum + (count - 100) ** 2 / 100, 0)).toBeLessThan(24.3);
    }
  });
  it('is never the right one where order is the answer', () => {
    const meta = { kind: 'ordering', level: 1, items: ['one', 'two', 'three'] } as QuestionMeta;
    for (let i = 0; i < 60; i++) {
      const item = itemOf(`order-${i}`, meta, conditions, STYLES.en);
      if (item.kind !== 'ordering') throw new Error('not an ordering');
      expect(item.items).not.toEqual(item.rightOrder);
      expect([...item.items].sort()).toEqual([...item.rightOrder].sort());
    }
  });
});

describe('the tolerance', () => {
  const answerOf = (meta: QuestionMeta, of = conditions): Answer => {
    const item = itemOf('one', meta, of, STYLES.en);
    if (item.kind !== 'numeric') throw new Error('not numeric');
    return item.answer;
  };
  it('is told in words', () => {
    expect(KEY_TEXTS.en.rule).toContain('twice the standard uncertainty');
    expect(KEY_TEXTS.es.rule).toContain('dos incertidumbres típicas');
  });
  it('is said to be computed only where it is', () => {
    const keyTo = (meta: QuestionMeta): string =>
      questionView('one', 1, meta, { conditions, style: STYLES.en }, { stem: raw(''), solution: raw('') }).answer;
    const authors = { ...numeric('coolingClear'), tolerance: { value: 0.7 } } as unknown as QuestionMeta;
    expect(keyTo(numeric('coolingClear'))).toContain(KEY_TEXTS.en.rule);
    expect(keyTo(authors)).toContain(KEY_TEXTS.en.authorsRule);
    expect(keyTo(authors)).not.toContain(KEY_TEXTS.en.rule);
  });
  it('of a temperature is twice the uncertainty with 0.2 K, added in squares', () => {
    const { uncertainty } = computeValue(conditions, 'temperatureClear', { drop: 20_000 });
    expect(answerOf(numeric('temperatureClear', drop(20_000))).tolerance).toBeCloseTo(2 * Math.hypot(uncertainty, 0.2), 9);
    expect(answerOf(numeric('temperatureClear', drop(20_000)), certain).tolerance).toBeCloseTo(0.4, 9);
  });
  it('of anything else takes half a percent of it', () => {
    const answer = answerOf(numeric('coolingClear', drop(20_000)), certain);
    expect(answer.tolerance).toBeCloseTo(0.01 * answer.value!, 9);
  });
  it('is the author’s where one is given', () => {
    expect(answerOf({ ...numeric('coolingClear'), tolerance: { value: 0.7 } } as unknown as QuestionMeta).tolerance).toBe(0.7);
  });
  it('of a share is told in percentage points, since it is no share of the answer', () => {
    const share = answerOf({ ...numeric('saturationRatioClear', { ...drop(20_000), unit: '%' }), tolerance: { value: 0.05 } } as unknown as QuestionMeta);
    expect(toleranceText(share, STYLES.en)).toBe(', right within ±5.0 percentage points');
    expect(toleranceText(share, STYLES.es)).toBe(', correcto dentro de ±5,0 puntos porcentuales');
  });
  it('is scaled with the unit of the answer, not shifted', () => {
    const answer = answerOf(numeric('temperatureClear', { ...drop(20_000), unit: '°F' }), certain);
    expect(answer.unit).toBe('°F');
    expect(toleranceIn(answer)).toBeCloseTo(0.72, 9);
  });
});

describe('what must not be asked', () => {
  it('an answer that physics does not have', () => {
    expect(codes(numeric('temperatureCloudy', drop(80_000)))).toEqual(['question-without-answer']);
    expect(codes(numeric('temperatureCloudy', drop(20_000)))).toEqual([]);
  });
  it('an option that physics does not have', () => {
    expect(codes(choice({ ...option('temperatureClear', drop(20_000)), right: true }, option('temperatureCloudy', drop(80_000))))).toContain('question-without-answer');
  });
  it('two options that read alike, as text or as numbers', () => {
    expect(codes(choice({ text: 'drops', why: 'a', right: true }, { text: 'vapor', why: 'b' }, { text: 'vapor', why: 'c' }))).toEqual(['options-alike', 'options-alike']);
    expect(codes(choice({ ...option('coolingClear', drop(20_000)), right: true }, option('coolingClear', { ...drop(20_000), humidity: { value: 0.97 } })))).toEqual(['options-alike', 'options-alike']);
  });
  it('a wrong option that is right within its tolerance', () => {
    const near = choice({ ...option('temperatureClear', drop(20_000)), right: true }, option('temperatureClear', drop(20_250)), option('temperatureClear', drop(10_000)));
    const findings = checkQuestions(content, kitWith(near), conditions);
    expect(findings.map(({ code }) => code)).toEqual(['option-within-tolerance']);
    expect(findings[0]).toMatchObject({ file: 'questions/one.mdx', line: 2 });
    const printed = printValue('temperatureClear', computeValue(conditions, 'temperatureClear', { drop: 20_250 }), undefined, STYLES.en).text;
    expect(findings[0]!.what).toContain(printed);
  });
  it('and what may be', () => {
    expect(codes(choice({ ...option('temperatureClear', drop(20_000)), right: true }, option('temperatureCloudy', drop(20_000)), option('roomTemperature')))).toEqual([]);
    expect(codes({ kind: 'text', level: 2, rubric: [{ points: 2, text: 'drops' }] } as QuestionMeta)).toEqual([]);
  });
});
