import { defineConfig } from 'astro/config';
import { withoutTables } from './src/layouts/lean-font.ts';

/** Families of the formula fonts that lessons can use; the others are left out of the site. */
const MATH_FAMILIES = /KaTeX_(Main-(Regular|Bold|Italic)|Math-Italic|Size[1-4]-Regular|AMS-Regular)\.woff2/;

/** The formula stylesheet with one modern file for each family that is needed. */
const leanMathFonts = {
  name: 'lean-math-fonts',
  enforce: 'pre',
  transform(/** @type {string} */ code, /** @type {string} */ id) {
    if (!/katex\.css($|\?)/.test(id)) return undefined;
    return code
      .replace(/@font-face\s*\{[^}]*\}/g, (face) => (MATH_FAMILIES.test(face) ? face : ''))
      .replace(/,\s*url\([^)]*\.(woff|ttf)\)\s*format\("[a-z]+"\)/g, '');
  },
};

/** What the two typefaces can do without: the serif stands at one weight, the labels need no kerning. */
const UNUSED_TABLES = [
  { file: /source-serif/, tables: ['fvar', 'gvar', 'avar', 'HVAR', 'STAT', 'BASE'] },
  { file: /ibm-plex/, tables: ['GPOS', 'GSUB', 'GDEF', 'STAT'] },
];

/** Text fonts without the tables that no page uses: half their size. */
const leanTextFonts = {
  name: 'lean-text-fonts',
  generateBundle(/** @type {unknown} */ _, /** @type {Record<string, { type: string, source?: string | Uint8Array }>} */ bundle) {
    for (const [name, file] of Object.entries(bundle)) {
      const lean = name.endsWith('.woff2') ? UNUSED_TABLES.find((entry) => entry.file.test(name)) : undefined;
      if (lean && file.source instanceof Uint8Array) file.source = withoutTables(file.source, lean.tables);
    }
  },
};

export default defineConfig({
  output: 'static',
  trailingSlash: 'always',
  compressHTML: true,
  build: { format: 'directory', inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  vite: {
    plugins: [leanMathFonts, leanTextFonts],
    build: { assetsInlineLimit: 0, cssMinify: 'esbuild' },
  },
});
