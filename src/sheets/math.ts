/** Formulas: TeX to HTML for the eye with MathML for readers, and no style attribute, which a strict policy would block. */
import katex from 'katex';
import type { Language } from '../texts/index.ts';
import { html, raw, type Raw } from './html/text.ts';
import { formulaInWords } from './math-words.ts';

/** Inline styles of formulas, gathered into classes of one stylesheet. */
export class MathStyles {
  readonly #names = new Map<string, string>();
  readonly #drawn = new Map<string, string>();

  /** A formula as HTML. The lesson check has refused what KaTeX cannot set. */
  render(tex: string, display: boolean): string {
    const key = `${display ? 'd' : 'i'}${tex}`;
    const known = this.#drawn.get(key);
    if (known !== undefined) return known;
    const markup = katex.renderToString(tex, { displayMode: display, output: 'htmlAndMathml', strict: 'error', throwOnError: true, trust: false });
    const drawn = this.#withClasses(markup);
    this.#drawn.set(key, drawn);
    return drawn;
  }

  /** The stylesheet of all formulas drawn so far; doubled class names, to come before KaTeX's own rules. */
  get css(): string {
    return [...this.#names].map(([style, name]) => `.katex .${name}.${name}{${style}}`).sort().join('\n');
  }

  #withClasses(markup: string): string {
    return markup.replace(/<([a-z]+)((?: [a-zA-Z:-]+="[^"]*")*)>/g, (tag, element: string, attributes: string) => {
      const style = / style="([^"]*)"/.exec(attributes)?.[1];
      if (style === undefined) return tag;
      const name = this.#nameOf(style);
      const rest = attributes.replace(/ style="[^"]*"/, '');
      const classed = / class="/.test(rest) ? rest.replace(/ class="/, ` class="${name} `) : `${rest} class="${name}"`;
      return `<${element}${classed}>`;
    });
  }

  /** A name made from the style itself, so that it is the same in every build. */
  #nameOf(style: string): string {
    const known = this.#names.get(style);
    if (known !== undefined) return known;
    const name = `k-${style.replace(/;$/, '').replace(/[^a-z0-9.-]+/gi, '-').replace(/\./g, '_')}`;
    this.#names.set(style, name);
    return name;
  }
}

/** A formula on a line of its own, with how it is read aloud; it scrolls where the page is narrow. */
export function displayFormula(math: MathStyles, tex: string, language: Language): Raw {
  const markup = math.render(tex, true);
  return html`<div class="formula" tabindex="0" role="group" aria-label="${formulaInWords(/<math[^]*<\/math>/.exec(markup)![0], language)}">${raw(markup)}</div>`;
}
