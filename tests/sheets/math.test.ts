/** Formulas without a style attribute, which a policy without 'unsafe-inline' would drop (CSP 3, 4.2.3). */
import { describe, expect, it } from 'vitest';
import { MathStyles } from '../../src/sheets/math.ts';
import { TABLE_KINDS } from '../../src/tables/index.ts';
import { FORMULA_WORDS, LANGUAGES } from '../../src/texts/index.ts';
import { draw, loadMinimal, placeIn } from './place.ts';

describe('a formula', () => {
  it.each<readonly [string, string]>([...TABLE_KINDS.flatMap(({ kind, formula }) => LANGUAGES.map((language) => [`${kind}, ${language}`, formula(FORMULA_WORDS[language])] as const)), ['fraction', '\\frac{a}{b}'], ['root', '\\sqrt{x^2}']])('of %s is set, without a style attribute', (_, tex) => {
    const math = new MathStyles();
    const markup = math.render(tex!, true);
    expect(markup).toContain('<math');
    expect(markup).not.toMatch(/ style=/);
    const names = [...markup.matchAll(/ class="(k-[^" ]+)/g)].map(([, name]) => name!);
    for (const name of names) expect(math.css).toContain(`.${name}.`);
  });

  it('has the same names in every build, whatever was drawn before', () => {
    const [one, other] = [new MathStyles(), new MathStyles()];
    one.render('\\sqrt{y}', false);
    expect(other.render('\\frac{a}{b}', true)).toBe(one.render('\\frac{a}{b}', true));
  });

  it('names its rules so that no two collide and each can be a class', () => {
    const math = new MathStyles();
    for (const { formula } of TABLE_KINDS) math.render(formula(FORMULA_WORDS.en), true);
    const rules = math.css.split('\n').map((rule) => /^\.katex \.(k-[\w-]+)\.\1\{(.+)\}$/.exec(rule));
    expect(rules.every((rule) => rule !== null)).toBe(true);
    expect(new Set(rules.map((rule) => rule![1])).size).toBe(rules.length);
  });

  it('is drawn in lesson text, in a line and on its own', async () => {
    const place = placeIn(await loadMinimal());
    const markup = draw(place, 'Here $e = mc^2$ stands.\n\n$$\n\\frac{p_2}{p_1}\n$$');
    expect(markup).toContain('class="katex"');
    expect(markup).toContain('<div class="formula"');
    expect(markup).not.toMatch(/ style=/);
  });
});
