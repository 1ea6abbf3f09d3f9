/** Fonts with the characters that a site prints, and no others: a third of their size. */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import katex from 'katex';
import subsetFont from 'subset-font';

const characters = (first: number, last: number): string => Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');
/** Latin text in the languages of the interface, and the signs of quantities. */
const TEXT = `${characters(0x20, 0x7e)}${characters(0xa0, 0x17f)}‐‑–—‘’“”„†•…‰′″−≈≤≥→←·⁻¹²³₀₁₂₃½¼`;
/** The serif is variable, and stands at one weight. */
const ONE_WEIGHT = { wght: 400 };

/** Cuts down every font of a built folder; formula fonts to what its pages' formulas show. */
export async function leanFonts(folder: string, assets: string): Promise<void> {
  const files = (await readdir(join(folder, assets))).filter((name) => name.endsWith('.woff2'));
  const math = await formulaCharacters(folder);
  for (const name of files) {
    const file = join(folder, assets, name);
    const isMath = name.startsWith('KaTeX_');
    await writeFile(file, await subsetFont(await readFile(file), isMath ? math : TEXT, {
      targetFormat: 'woff2',
      ...(name.includes('wght') ? { variationAxes: ONE_WEIGHT } : {}),
    }));
  }
}

/** What the formulas of all pages are made of: each is set again from the TeX that stands in its MathML. */
async function formulaCharacters(folder: string): Promise<string> {
  const formulas = new Set<string>();
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile() || !entry.name.endsWith('.html')) continue;
    const page = await readFile(join(entry.parentPath, entry.name), 'utf8');
    for (const [, tex = ''] of page.matchAll(/<annotation encoding="application\/x-tex">([^<]*)</g)) formulas.add(tex);
  }
  const shown = new Set(' ');
  for (const tex of formulas) {
    for (const character of unescape(katex.renderToString(unescape(tex), { output: 'html', displayMode: true }).replace(/<[^>]*>/g, ''))) shown.add(character);
  }
  return [...shown].sort().join('');
}

const ENTITIES: Record<string, string> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'", '&#x27;': "'" };
const unescape = (text: string): string => text.replace(/&(?:amp|lt|gt|quot|#39|#x27);/g, (entity) => ENTITIES[entity]!);
