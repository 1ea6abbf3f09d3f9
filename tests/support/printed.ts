/** Reads a PDF that Chromium printed: its pages, their size and their text. Enough of ISO 32000-1 for that, and no more. */
import { inflateSync } from 'node:zlib';

export interface PrintedPage {
  /** Width and height, mm. */
  readonly size: readonly [number, number];
  /** In the order of drawing; spaces are as drawn. */
  readonly text: string;
}

interface Thing {
  readonly dictionary: string;
  readonly stream: string;
}

/** 1 pt is 1/72 in. */
const MM_PER_POINT = 25.4 / 72;

/** The pages in their order. */
export function pagesOfPdf(bytes: Buffer): PrintedPage[] {
  const things = thingsOf(bytes);
  const root = [...things.values()].find(({ dictionary }) => /\/Type\s*\/Catalog\b/.test(dictionary));
  return leaves(things, reference(root?.dictionary ?? '', 'Pages')).map(({ dictionary }) => {
    const box = (/\/MediaBox\s*\[([^\]]*)\]/.exec(dictionary)?.[1] ?? '').trim().split(/\s+/).map(Number);
    const [left = 0, bottom = 0, right = 0, top = 0] = box;
    const fonts = fontsOf(things, dictionary);
    const content = things.get(reference(dictionary, 'Contents'))?.stream ?? '';
    return { size: [(right - left) * MM_PER_POINT, (top - bottom) * MM_PER_POINT], text: textOf(content, fonts) };
  });
}

/** All numbered objects, streams inflated: 7.3.10 and 7.3.8. */
function thingsOf(bytes: Buffer): Map<number, Thing> {
  const source = bytes.toString('latin1');
  const things = new Map<number, Thing>();
  const start = /(\d+) 0 obj\s/g;
  for (let match = start.exec(source); match !== null; match = start.exec(source)) {
    const end = source.indexOf('endobj', start.lastIndex);
    const streamAt = /\bstream\r?\n/g;
    streamAt.lastIndex = start.lastIndex;
    const opened = streamAt.exec(source);
    const dictionary = source.slice(start.lastIndex, opened && opened.index < end ? opened.index : end);
    let stream = '';
    start.lastIndex = end;
    if (opened && opened.index < end) {
      const length = Number(/\/Length (\d+)/.exec(dictionary)?.[1] ?? 0);
      const data = bytes.subarray(streamAt.lastIndex, streamAt.lastIndex + length);
      stream = (/\/FlateDecode/.test(dictionary) ? inflateSync(data) : data).toString('latin1');
      start.lastIndex = streamAt.lastIndex + length;
    }
    things.set(Number(match[1]), { dictionary, stream });
  }
  return things;
}

const reference = (dictionary: string, key: string): number => Number(new RegExp(`/${key} (\\d+) 0 R`).exec(dictionary)?.[1] ?? -1);

/** The pages below a node of the page tree: 7.7.3. */
function leaves(things: Map<number, Thing>, node: number): Thing[] {
  const thing = things.get(node);
  if (thing === undefined) return [];
  const kids = /\/Kids\s*\[([^\]]*)\]/.exec(thing.dictionary)?.[1];
  return kids === undefined ? [thing] : [...kids.matchAll(/(\d+) 0 R/g)].flatMap(([, kid]) => leaves(things, Number(kid)));
}

/** For each font of a page, the characters of its glyphs: 9.10.3. */
function fontsOf(things: Map<number, Thing>, page: string): Map<string, Map<number, string>> {
  const listed = /\/Font\s*<<([^>]*)>>/.exec(page)?.[1] ?? '';
  return new Map([...listed.matchAll(/\/(\w+) (\d+) 0 R/g)].map(([, name = '', number]) => {
    const font = things.get(Number(number));
    return [name, charactersOf(things.get(reference(font?.dictionary ?? '', 'ToUnicode'))?.stream ?? '')];
  }));
}

function charactersOf(map: string): Map<number, string> {
  const characters = new Map<number, string>();
  for (const [, block = ''] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, glyph = '', text = ''] of block.matchAll(/<(\w+)>\s*<(\w+)>/g)) characters.set(parseInt(glyph, 16), fromUtf16(text));
  }
  for (const [, block = ''] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, first = '', last = '', text = ''] of block.matchAll(/<(\w+)>\s*<(\w+)>\s*<(\w+)>/g)) {
      const [from, to, code] = [first, last, text].map((hex) => parseInt(hex, 16)) as [number, number, number];
      for (let glyph = from; glyph <= to; glyph++) characters.set(glyph, String.fromCodePoint(code + glyph - from));
    }
  }
  return characters;
}

const fromUtf16 = (hex: string): string => String.fromCharCode(...(hex.match(/.{4}/g) ?? []).map((unit) => parseInt(unit, 16)));

/** The text that a content stream shows: 9.4.3. */
function textOf(content: string, fonts: Map<string, Map<number, string>>): string {
  let font: Map<number, string> | undefined;
  let text = '';
  for (const [, name, shown] of content.matchAll(/\/(\w+) [\d.]+ Tf|((?:<[0-9A-Fa-f]+>|\[[^\]]*\])\s*T[jJ])|\bET\b/g)) {
    if (name !== undefined) font = fonts.get(name);
    else if (shown === undefined) text += '\n';
    else for (const glyph of shown.match(/[0-9A-Fa-f]{4}/g) ?? []) text += font?.get(parseInt(glyph, 16)) ?? '';
  }
  return text;
}
