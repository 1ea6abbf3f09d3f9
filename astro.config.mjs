import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';

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

export default defineConfig({
  output: 'static',
  trailingSlash: 'always',
  compressHTML: true,
  build: { format: 'directory', inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  // The guide's own prose. Highlighting would put styles into its pages.
  integrations: [mdx({ syntaxHighlight: false })],
  vite: {
    plugins: [leanMathFonts],
    build: { assetsInlineLimit: 0, cssMinify: 'esbuild' },
  },
});
