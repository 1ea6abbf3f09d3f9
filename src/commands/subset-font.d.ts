/** Types of the package `subset-font`, which brings none. */
declare module 'subset-font' {
  /** The font with the glyphs of `text`; at one place of the axes that are named. */
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options?: { readonly targetFormat?: 'sfnt' | 'woff' | 'woff2'; readonly variationAxes?: Readonly<Record<string, number>> },
  ): Promise<Uint8Array>;
}
