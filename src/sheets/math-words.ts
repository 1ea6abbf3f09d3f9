/** A formula as it is read aloud, made from its MathML. Where something ends is said wherever it could be heard wrongly. */
import { FORMULA_SPEECH, type Language } from '../texts/index.ts';

interface MathNode {
  readonly name: string;
  readonly attributes: string;
  readonly children: MathNode[];
  text: string;
}

type Speech = (typeof FORMULA_SPEECH)[Language];

/** Letters of the formula that stand in it both large and small: of these alone it is said which are large. */
interface Reading {
  readonly said: Speech;
  readonly both: ReadonlySet<string>;
}

const GREEK = 'αβγδεζηθικλμνξοπρστυφχψω';
/** Other forms of the same letters. */
const VARIANTS: Readonly<Record<string, string>> = { ϵ: 'ε', ϑ: 'θ', ϰ: 'κ', ϱ: 'ρ', ς: 'σ', ϕ: 'φ', ϖ: 'π' };
const ENTITIES: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#x27;': "'" };
const TOKENS = /<(\/?)([a-z]+)([^>]*?)(\/?)>|([^<]+)/g;
/** What holds the TeX source, not the formula. */
const SOURCE = /<annotation[^]*?<\/annotation>/;
/** What stands raised, but is no power. */
const MARK = /^[∗′]$/;
const INVISIBLE = /[\u2061-\u2064\u200b]/g;

/** @param mathml one `<math>` element, as KaTeX writes it */
export function formulaInWords(mathml: string, language: Language): string {
  const letters = [...mathml.replace(SOURCE, '').replace(/<[^>]*>/g, ' ')];
  const both = new Set(letters.filter((letter) => letter !== letter.toLowerCase() && letters.includes(letter.toLowerCase())));
  const words = wordsOf(treeOf(mathml.replace(SOURCE, '')), { said: FORMULA_SPEECH[language], both });
  return words.replace(/\s+/g, ' ').replace(/ (?=[,.;])/g, '').replace(/,{2,}/g, ',').replace(/[,.;\s]+$/, '').trim();
}

function treeOf(markup: string): MathNode {
  const root: MathNode = { name: 'mrow', attributes: '', children: [], text: '' };
  const open = [root];
  for (const [, end, name, attributes = '', empty, text] of markup.matchAll(TOKENS)) {
    const last = open.at(-1)!;
    if (text !== undefined) last.text += text.replace(/&[#\w]+;/g, (entity) => ENTITIES[entity] ?? entity);
    else if (end !== '') open.pop();
    else {
      const node: MathNode = { name: name!, attributes, children: [], text: '' };
      last.children.push(node);
      if (empty === '') open.push(node);
    }
  }
  return root;
}

function wordsOf(node: MathNode, reading: Reading): string {
  const { said } = reading;
  const part = (at: number): string => (node.children[at] === undefined ? '' : wordsOf(node.children[at], reading));
  const isLong = (at: number): boolean => node.children[at] !== undefined && lengthOf(node.children[at]) > 1;
  switch (node.name) {
    case 'mi':
    case 'mn':
    case 'mo':
    case 'mtext':
      return leafInWords(node.text, reading);
    case 'mfrac':
      return isLong(0) || isLong(1) ? said.fraction(part(0), part(1)) : said.over(part(0), part(1));
    case 'msub':
      return isLong(1) ? said.longIndex(part(0), part(1)) : said.index(part(0), part(1));
    case 'msup':
      return powerOf(part(0), node.children[1], reading);
    case 'msubsup':
      if (isSum(node)) return said.fromTo(part(0), part(1), part(2));
      return powerOf(said.index(part(0), part(1)), node.children[2], reading);
    case 'msqrt':
      return said.root(node.children.map((child) => wordsOf(child, reading)).join(' '));
    case 'mroot':
      return said.rootOf(part(1), part(0));
    case 'munder':
      return said.overAll(part(0), part(1));
    case 'munderover':
      return said.fromTo(part(0), part(1), part(2));
    case 'mover':
      return said.above(part(0), part(1));
    case 'mtr':
      return `${inRow(node.children, reading)};`;
    default:
      return inRow(node.children, reading);
  }
}

/** Side by side; upright letters next to each other are a word. */
function inRow(children: readonly MathNode[], reading: Reading): string {
  return children.map((child, at) => (isUpright(child) && (isUpright(children[at - 1]) || isUpright(children[at + 1])) ? `${child.text}${isUpright(children[at + 1]) ? '' : ' '}` : `${wordsOf(child, reading)} `)).join('');
}

const isUpright = (node: MathNode | undefined): boolean => node?.name === 'mi' && node.attributes.includes('"normal"') && /^[a-z]$/i.test(node.text);
const isSum = ({ children }: MathNode): boolean => /^[∑∏∫]$/.test(children[0]?.text ?? '');

function powerOf(base: string, exponent: MathNode | undefined, reading: Reading): string {
  const { said } = reading;
  const words = exponent === undefined ? '' : wordsOf(exponent, reading).trim();
  if (words === '2') return said.squared(base);
  if (words === '3') return said.cubed(base);
  if (MARK.test(exponent?.text ?? '')) return `${base} ${words}`;
  return exponent !== undefined && lengthOf(exponent) > 1 ? said.longPower(base, words) : said.power(base, words);
}

/** How many things are heard: a letter with its index is one, so is a word. */
function lengthOf(node: MathNode): number {
  if (node.children.length === 0) return node.text.replace(INVISIBLE, '').trim() === '' ? 0 : 1;
  if (node.name === 'msub') return lengthOf(node.children[1]!) > 1 ? 2 : 1;
  if (node.children.length > 1 && node.children.every(isUpright)) return 1;
  return node.children.reduce((sum, child) => sum + lengthOf(child), node.name.startsWith('mr') || node.name.startsWith('mst') ? 0 : 1);
}

function leafInWords(text: string, { said, both }: Reading): string {
  const sign = text.replace(INVISIBLE, '').trim();
  const small = VARIANTS[sign] ?? sign.toLowerCase();
  const letter = GREEK.includes(small) && small !== '' ? said.greek.split(' ')[[...GREEK].indexOf(small)]! : undefined;
  const name = letter ?? said.functions[sign as keyof Speech['functions']] ?? said.signs[sign as keyof Speech['signs']] ?? sign;
  return both.has(sign) && sign.length === 1 ? said.capital(letter ?? sign) : name;
}
