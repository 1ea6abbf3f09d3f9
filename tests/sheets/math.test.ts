/** Formulas without a style attribute, which a policy without 'unsafe-inline' would drop (CSP 3, 4.2.3). */
import { describe, expect, it } from 'vitest';
import { MathStyles } from '../../src/sheets/math.ts';
import { TABLE_KINDS } from '../../src/tables/index.ts';
import { FORMULA_WORDS, LANGUAGES } from '../../src/texts/index.ts';
import { formulaInWords } from '../../src/sheets/math-words.ts';
import { draw, loadMinimal, placeIn } from './place.ts';

/** WCAG 2.2, 1.1.1 and 1.3.1; words as in L. A. Chang 1983, Handbook for Spoken Mathematics (from memory): sub, over, squared, to the power, the fraction … end of fraction, open parenthesis. */
describe('a formula in words', () => {
  const say = (tex: string, language: 'en' | 'es' = 'en'): string => formulaInWords(/<math[^]*<\/math>/.exec(new MathStyles().render(tex, true))![0], language);

  it.each([
    ['p = p_{\\mathrm{room}} + p_1', 'p equals p sub room plus p sub 1'],
    ['\\frac{T_2}{T_1} = \\left(\\frac{p_2}{p_1}\\right)^{0.286}', 'T sub 2 over T sub 1 equals open parenthesis p sub 2 over p sub 1 close parenthesis to the power 0.286'],
    ['c_p\\,\\mathrm{d}T = \\frac{R\\,T}{p}\\,\\mathrm{d}p .', 'c sub p d T equals the fraction R T over p, end of fraction, d p'],
    ['x^{R/c}, \\quad y^2', 'x to the power R divided by c, end of power, y squared'],
    ['S(D) = D^3 - d^3', 'S open parenthesis capital D close parenthesis equals capital D cubed minus d cubed'],
    ['\\sum_{j} K_{ij} n_j', 'the sum over all j of K sub i j, end of index, n sub j'],
    ['\\ln S = \\sqrt{2\\pi}', 'the natural logarithm of S equals the square root of 2 pi, end of root'],
    ['R^{*} < \\int_0^1 x_i^2', 'R star is less than the integral from 0 to 1 of x sub i squared'],
  ])('%s', (tex, words) => expect(say(tex)).toBe(words));

  it('is said in the language of the page', () => expect(say('\\rho = \\frac{m}{V}', 'es')).toBe('ro igual a m sobre V'));

  it.each(TABLE_KINDS.flatMap(({ kind, formula }) => LANGUAGES.map((language) => [kind, language, formula(FORMULA_WORDS[language])] as const)))('says all of %s in %s: no sign is left that a voice passes over', (_, language, tex) => {
    expect(say(tex, language)).toMatch(/^[\p{Script=Latin}\d,;.() ]+$/u);
  });

  it('stands beside the formula', async () => {
    const place = placeIn(await loadMinimal());
    expect(draw(place, '$$\n\\frac{a}{b}<c\n$$')).toContain('<div class="formula" tabindex="0" role="group" aria-label="a over b is less than c">');
  });
});

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
