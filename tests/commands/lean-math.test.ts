/** Styles of formulas on the pages that have formulas, and nowhere else. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { addClasses, leanMath, rulesOf, withFormulaStyles } from '../../src/commands/lean-math.ts';
import { newFolder, removeFolder } from '../support/folders.ts';

const LINK = '<link rel="stylesheet" href="../../math.css">';

describe('a page', () => {
  it('asks for the styles of formulas where it has one', () => expect(withFormulaStyles(`${LINK}<p><span class="katex">x</span></p>`)).toContain(LINK));
  it('does not where it has none', () => expect(withFormulaStyles(`${LINK}<p>x</p>`)).toBe('<p>x</p>'));
});

it('rules are told apart as CSS Syntax Module Level 3, section 5, has them: at-rules with and without a block, nested blocks', () => {
  const rules = ['@import url(a.css);', 'a{b:c}', '@media print{a{b:c}d{e:f}}', '@font-face{font-family:X;src:url(x)}', '.g,.h{i:j;k:l}'];
  expect(rulesOf(rules.join(''))).toEqual(rules);
});

describe('a finished folder', () => {
  const folder = newFolder();
  afterAll(() => removeFolder(folder));

  it('has the rules of its formulas in one file, without those of classes that no page has', async () => {
    mkdirSync(join(folder, 'assets'));
    writeFileSync(join(folder, 'math.css'), '.katex .k-1.k-1{height:1em}');
    writeFileSync(join(folder, 'assets', 'a.css'), '@font-face{font-family:KaTeX_Main;src:url(../assets/m.woff2)}.katex{font:x}.katex .base,.katex .strut{a:b}.katex .accent{c:d}p{e:f}@media print{.katex{g:h}}');
    const used = new Set<string>();
    addClasses(used, '<p class="other">no formula here</p>');
    addClasses(used, '<span class="katex"><span class="base">x</span></span>');
    await leanMath(folder, 'assets', used);
    expect(readFileSync(join(folder, 'assets', 'a.css'), 'utf8')).toBe('p{e:f}@media print{.katex{g:h}}');
    expect(readFileSync(join(folder, 'math.css'), 'utf8').replaceAll('\n', '')).toBe('.katex .k-1.k-1{height:1em}@font-face{font-family:KaTeX_Main;src:url(./assets/m.woff2)}.katex{font:x}.katex .base,.katex .strut{a:b}');
    expect([...used].sort()).toEqual(['base', 'katex']);
  });
});
