/** Citations: names and years as author–date styles have them (Chicago Manual of Style, 17th ed., ch. 15). */
import { describe, expect, it } from 'vitest';
import type { Source } from '../../src/authoring/index.ts';
import { fullReference, shortCitation, sourceView } from '../../src/sheets/reference.ts';

const person = (family: string, given?: string) => ({ family, given });
const source = (fields: Partial<Source>): Source => ({ id: 'one', type: 'article-journal', title: 'Title', ...fields }) as Source;
const issued = { 'date-parts': [[2005]] };

describe('a short citation', () => {
  it.each<[Partial<Source>, string]>([
    [{ author: [person('Murphy')], issued }, 'Murphy 2005'],
    [{ author: [person('Murphy'), person('Koop')], issued }, 'Murphy and Koop 2005'],
    [{ author: [person('Crouch'), person('Fagen'), person('Callan')], issued }, 'Crouch et al. 2005'],
    [{ author: [{ literal: 'World Meteorological Organization' }], issued }, 'World Meteorological Organization 2005'],
    [{ editor: [person('Lide')], issued }, 'Lide 2005'],
    [{ number: 'ISO 2533', issued: { 'date-parts': [[1975]] } }, 'ISO 2533 1975'],
    [{ number: 'ISO 2533:1975', issued: { 'date-parts': [[1975]] } }, 'ISO 2533:1975'],
    [{ author: [person('Espy')] }, 'Espy no date'],
  ])('%j', (fields, expected) => expect(shortCitation(source(fields), 'en')).toBe(expected));
});

describe('a full reference', () => {
  it('of a paper', () => {
    const paper = source({
      author: [person('Murphy', 'Daniel M.'), person('Koop', 'T.')], issued, 'container-title': 'Quarterly Journal', volume: '131', issue: '608', page: '1539-1565', DOI: '10.1256/qj.04.94',
    });
    expect(fullReference(paper, 'en').html).toBe(
      'D. M. Murphy and T. Koop (2005). Title. <cite>Quarterly Journal</cite> 131 (608), 1539–1565. <a href="https://doi.org/10.1256/qj.04.94" rel="external">doi:10.1256/qj.04.94</a>',
    );
  });
  it('of a paper whose title ends in a mark of its own', () => {
    expect(fullReference(source({ title: 'Learning or show?', author: [person('A', 'B.')], issued, 'container-title': 'Journal' }), 'en').html).toBe('B. A (2005). Learning or show? <cite>Journal</cite>.');
  });
  it('of a book, and of three authors', () => {
    const book = source({ type: 'book', author: [person('A', 'B.'), person('C', 'D.'), person('E', 'F.')], issued, publisher: 'Press' });
    expect(fullReference(book, 'en').html).toBe('B. A, D. C and F. E (2005). <cite>Title</cite>. Press.');
  });
  it('of a title that asks, with hyphenated given names (Chicago Manual of Style, 17th ed., 14.96 and 10.12; from memory)', () => {
    const asks = source({ title: 'Learning tools or entertainment?', author: [person('Séré', 'Marie-Geneviève'), person('Cheng', 'Yung-Sung')], issued, 'container-title': 'Journal' });
    expect(fullReference(asks, 'en').html).toBe('M.-G. Séré and Y.-S. Cheng (2005). Learning tools or entertainment? <cite>Journal</cite>.');
  });
  it('of a standard without authors', () => {
    const standard = source({ type: 'standard', title: 'Standard Atmosphere', number: 'ISO 2533', issued: { 'date-parts': [[1975]] }, URL: 'https://www.iso.org/standard/7472.html' });
    expect(fullReference(standard, 'en').html).toContain('<cite>Standard Atmosphere</cite>, ISO 2533, 1975. <a href="https://www.iso.org/standard/7472.html"');
  });
  it('escapes what it is given', () => {
    expect(sourceView(source({ title: '<script>', author: [person('"><x')] }), 'en').html).not.toMatch(/<script|<x/);
  });
});
