/** Plain Markdown: what needs no component. */
import type { ExampleGroup } from './example.ts';

export const MARKDOWN: ExampleGroup = {
  id: 'markdown',
  title: 'Plain text',
  about: 'Most of a sheet is plain Markdown. A paragraph ends with an empty line. Headings begin at two number signs, because the title is the page’s own.',
  examples: [
    {
      of: 'Words and links',
      about: 'One star for stress, two for what must not be missed. Addresses elsewhere begin with `https:`, or with `mailto:`. Another page of the site has its address as seen from the sheet: `../student/index.html`, a step `../run/index.html#step-2`, another kit `../../../other-kit/index.html`; a table or figure is named by its `id`. The check follows each of them.',
      on: 'background',
      source: 'Air that expands does *work*. It **cools**. See the [gas laws](https://www.nist.gov/pml).',
    },
    {
      of: 'Lists',
      about: 'Hyphens where the order does not matter, numbers where it does. An empty line stands above the list.',
      on: 'background',
      source: 'A cloud needs three things:\n\n- water vapor,\n- cooling,\n- particles.\n\nIn that order:\n\n1. Wet the wall.\n2. Wait.\n3. Pump.',
    },
    {
      of: 'Tables',
      about: 'Your own table, for words. Tables of numbers are computed: see below.',
      on: 'background',
      source: '| Seen | Likely cause |\n|---|---|\n| No cloud | Too few particles |\n| Fog on the wall | The water was too warm |',
    },
    {
      of: 'Formulas',
      about: 'TeX between dollar signs: one on each side in a sentence, two on lines of their own.',
      on: 'background',
      source: 'The air at pressure $p_1$ has the temperature $T_1$. After the expansion it has\n\n$$\nT_2 = T_1\\left(\\frac{p_2}{p_1}\\right)^{R/c_p}\n$$',
    },
  ],
};
