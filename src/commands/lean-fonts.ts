/** Fonts with the characters that a site prints, and no others: a quarter of their size. */
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import katex from 'katex';
import subsetFont from 'subset-font';
import { addCopy } from './writing.ts';

const ASCII = Array.from({ length: 0x7e - 0x20 + 1 }, (_, i) => String.fromCodePoint(0x20 + i)).join('');
/** Runs, and not in Unicode mode, which takes eight times as long; a pair of surrogates stays together in its run. */
const BEYOND_ASCII = /[^\0-\x7f]+/g;
/** What a page may show later, drawn again for the reader's room in a language of the interface, and what a reader may type. */
const TEXT = `${ASCII}\u00a0ÁÉÍÓÚÜÑáéíóúüñ¡¿«»‐‑–—‘’“”„…±×÷·°′″‰−≈≤≥→←⁻²³₂½¼µ`;
/** Numbers of one width, and letters that stand well together. */
const FEATURES = ['kern', 'tnum', 'lnum'];
/** The serif is variable, and stands at one weight. */
const ONE_WEIGHT = { wght: 400 };

/** What the pages of a folder show. */
export interface Shown {
  /** Beyond ASCII: characters that follow each other. */
  readonly runs: Set<string>;
  /** Formulas in TeX. */
  readonly formulas: Set<string>;
}

/** Adds what a page shows; the TeX of a formula stands in its MathML. */
export function addPage({ runs, formulas }: Shown, page: string): void {
  for (const run of page.match(BEYOND_ASCII) ?? []) addCopy(runs, run);
  for (const [, tex = ''] of page.matchAll(/<annotation encoding="application\/x-tex">([^<]*)</g)) addCopy(formulas, tex);
}

/** Cuts down every font of a built folder: text fonts to what its pages say, formula fonts to what their formulas show. */
export async function leanFonts(folder: string, assets: string, { runs, formulas }: Shown): Promise<void> {
  const files = (await readdir(join(folder, assets))).filter((name) => name.endsWith('.woff2'));
  const text = sorted(new Set([...TEXT, ...[...runs].join('')]));
  const math = sorted(new Set([' ', ...[...formulas].flatMap(lettersOf)]));
  for (const name of files) {
    const file = join(folder, assets, name);
    await writeFile(file, await (name.startsWith('KaTeX_') ? cutOnce(await readFile(file), math, {}) : cutOnce(await readFile(file), text, { keepFeatures: FEATURES, ...(name.includes('wght') ? { variationAxes: ONE_WEIGHT } : {}) })));
  }
}

const sorted = (characters: ReadonlySet<string>): string => [...characters].sort().join('');

/** Both folders of a site have most fonts in common, and packing one takes longer than a page. */
const cut = new Map<string, Promise<Uint8Array>>();

/** Options of hb-subset that the package hands on and its types leave out. */
type Options = NonNullable<Parameters<typeof subsetFont>[2]> & { readonly keepFeatures?: readonly string[]; readonly noHinting?: boolean };

function cutOnce(font: Uint8Array, characters: string, options: Options): Promise<Uint8Array> {
  const key = createHash('sha256').update(font).update(characters).digest('hex');
  const all: Options = { targetFormat: 'woff2', noHinting: true, ...options };
  const made = cut.get(key) ?? subsetFont(Buffer.from(font), characters, all);
  cut.set(key, made);
  return made;
}

const letters = new Map<string, string[]>();

/** What a formula is made of: it is set again. */
function lettersOf(tex: string): string[] {
  const found = letters.get(tex) ?? [...unescape(katex.renderToString(unescape(tex), { output: 'html', displayMode: true }).replace(/<[^>]*>/g, ''))];
  letters.set(tex, found);
  return found;
}

const ENTITIES: Record<string, string> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'", '&#x27;': "'" };
const unescape = (text: string): string => text.replace(/&(?:amp|lt|gt|quot|#39|#x27);/g, (entity) => ENTITIES[entity]!);
