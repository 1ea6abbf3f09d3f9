/** The interface texts: the same in each language but for the words. */
import { describe, expect, it } from 'vitest';
import * as en from '../../src/texts/en.ts';
import * as es from '../../src/texts/es.ts';
import { LANGUAGES, scriptName } from '../../src/texts/index.ts';
import * as index from '../../src/texts/index.ts';
import { allTexts, PLACE } from './all-texts.ts';

const [english, spanish] = [allTexts(en), allTexts(es)];

/** Texts that both languages write alike: words that they share, symbols, and what only puts its parts together. */
const ALIKE = new Set([
  'cells.no', 'formulaWords.ion', 'setup.materials.PET', 'verdict.no', 'verdict.fails', 'frame.kits', 'sheets.kit.name', 'kit.zip', 'board.kit', 'boardKeys.kit',
  'search.groups.kit', 'found.kinds.kit', 'notHere.kits', 'files.short',
]);

describe('the Spanish texts', () => {
  it('stand for each of the English ones', () => expect([...spanish.keys()].sort()).toEqual([...english.keys()].sort()));

  it.each([...english])('%s has the same places', (path, text) => {
    const places = (said: string): string[] => [...new Set(said.match(PLACE) ?? [])].sort();
    expect(places(spanish.get(path)!)).toEqual(places(text));
  });

  it('differ from the English ones, save those that are written alike', () => {
    const same = [...english].filter(([path, text]) => text === spanish.get(path)).map(([path]) => path);
    expect(same.sort()).toEqual([...ALIKE].sort());
  });

  it('write decimals with a comma', () => {
    // Numbers of documents and of their sections keep their points.
    for (const [path, text] of spanish) if (!path.startsWith('references.')) expect(text, path).not.toMatch(/\d\.\d/);
  });
});

describe.each([['English', english], ['Spanish', spanish]] as const)('%s', (_, texts) => {
  it('has no empty text, none with loose spaces, and closes what it opens', () => {
    for (const [path, text] of texts) {
      expect(text.trim(), path).toBe(text);
      expect(text, path).not.toMatch(/^$| {2}|undefined|\[object|<|&/);
      for (const [open, close] of [['«', '»'], ['“', '”'], ['(', ')'], ['¿', '?']] as const) {
        if (open === '¿' && !text.includes('¿')) continue;
        expect(text.split(open).length, `${path}: ${open}`).toBe(text.split(close).length);
      }
    }
  });
});

describe('the list of texts', () => {
  it('offers every group in every language', () => {
    const offered = Object.values(index).filter((one) => typeof one === 'object' && !Array.isArray(one)) as { readonly en: object; readonly es: object }[];
    expect(offered).toHaveLength(Object.keys(en).length);
    for (const group of offered) expect(Object.keys(group)).toEqual([...LANGUAGES]);
    expect(new Set(offered.map((group) => group.en))).toEqual(new Set(Object.values(en)));
    expect(new Set(offered.map((group) => group.es))).toEqual(new Set(Object.values(es)));
  });

  it('tells one from several', () => {
    expect([1, 2].map((count) => en.ownReadings.wrong(count))).toEqual(['One thing is wrong.', '2 things are wrong.']);
    expect([1, 2].map((count) => es.found.count(count))).toEqual(['1 resultado', '2 resultados']);
    expect([1, 11].map((strokes) => es.verdict.strokes(String(strokes), strokes))).toEqual(['La bomba necesita 1 embolada.', 'La bomba necesita 11 emboladas.']);
    expect(es.fit.undetermined(['la fuga', 'el error'])).toContain('la fuga y el error');
  });
});

it('a script has its own file for each language', () => expect(LANGUAGES.map((language) => scriptName('reader', language))).toEqual(['reader.js', 'reader-es.js']));
