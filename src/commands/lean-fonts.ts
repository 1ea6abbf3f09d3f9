/** Fonts with the characters that a site prints, and no others: a third of their size. */
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import katex from 'katex';
import subsetFont from 'subset-font';

const characters = (first: number, last: number): string => Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');
/** Latin text in the languages of the interface, and the signs of quantities. */
const TEXT = `${characters(0x20, 0x7e)}${characters(0xa0, 0x17f)}‐‑–—‘’“”„†•…‰′″−≈≤≥→←·⁻¹²³₀₁₂₃½¼`;
/** The serif is variable, and stands at one weight. */
const ONE_WEIGHT = { wght: 400 };

/**
 * Cuts down every font of a built folder; formula fonts to what its pages' formulas show.
 * @param formulas TeX, as {@link formulasOf} finds it in the pages
 */
export async function leanFonts(folder: string, assets: string, formulas: Iterable<string>): Promise<void> {
  const files = (await readdir(join(folder, assets))).filter((name) => name.endsWith('.woff2'));
  const math = charactersOf(formulas);
  for (const name of files) {
    const file = join(folder, assets, name);
    await writeFile(file, await subset(await readFile(file), name.startsWith('KaTeX_') ? math : TEXT, name.includes('wght')));
  }
}

/** Both folders of a site have most fonts in common, and packing one takes longer than a page. */
const cut = new Map<string, Promise<Uint8Array>>();

function subset(font: Uint8Array, characters: string, isVariable: boolean): Promise<Uint8Array> {
  const key = createHash('sha256').update(font).update(characters).digest('hex');
  const made = cut.get(key) ?? subsetFont(Buffer.from(font), characters, { targetFormat: 'woff2', ...(isVariable ? { variationAxes: ONE_WEIGHT } : {}) });
  cut.set(key, made);
  return made;
}

/** The formulas of a page: their TeX stands in their MathML. */
export const formulasOf = (page: string): string[] => [...page.matchAll(/<annotation encoding="application\/x-tex">([^<]*)</g)].map(([, tex = '']) => tex);

/** What formulas are made of: each is set again. */
function charactersOf(formulas: Iterable<string>): string {
  const shown = new Set(' ');
  for (const tex of formulas) for (const character of lettersOf(tex)) shown.add(character);
  return [...shown].sort().join('');
}

const letters = new Map<string, string>();

function lettersOf(tex: string): string {
  const found = letters.get(tex) ?? unescape(katex.renderToString(unescape(tex), { output: 'html', displayMode: true }).replace(/<[^>]*>/g, ''));
  letters.set(tex, found);
  return found;
}

const ENTITIES: Record<string, string> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'", '&#x27;': "'" };
const unescape = (text: string): string => text.replace(/&(?:amp|lt|gt|quot|#39|#x27);/g, (entity) => ENTITIES[entity]!);
