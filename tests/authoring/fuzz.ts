/** Good content gone wrong in small ways, the same ways in every run. */
import type { ContentFile, Folder } from '../../src/authoring/index.ts';

/** Numbers from 0 up to but not including 1. Source: mulberry32, T. Ettinger 2017, public domain. */
export function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

type Random = () => number;
const below = (random: Random, n: number): number => Math.floor(random() * n);
const pick = <T>(random: Random, from: readonly T[]): T => {
  const one = from[below(random, from.length)];
  if (one === undefined) throw new RangeError('nothing to pick from');
  return one;
};

const CHARACTERS = [...'<>{}[]()"\'`$\\|#*_~-+=&;:!?/.,%@0159 \n\t°µé😀', '\r\n', '\u00a0', '\u0301', '\u202e', '\u0000', '\ud800'];
const TOKENS = [
  '<script>alert(1)</script>', '<Value of="roomPressure"/>', '<TeacherOnly>', '</TeacherOnly>', '<Given>', '</Given>', '<b onclick="x">', '<!--', '-->',
  ' style="color:red"', ' onLoad="x"', ' {...x}', '{process.exit(0)}', '](javascript:alert(1))', '[a](data:text/html,x)', '![a](b.png)', '[^1]', '[1]: http://a',
  'http://example.org', 'https://example.org', '&lt;', '&#60;', '&colon;', '$', '$$', '\\frac{', '\\href{x}{y}', '\\\\', '```', '~~', '**', '> ', '- ', '1. ', '## ', '|---|',
  '---\n', '+++\n', '\n\n', 'import a from "b"\n', '&a ', '*a', '!!js/function ', '<<: ', '__proto__: 1\n', ': ', '- ', '# ', '5 kPa', '-5', '1e999', '.nan', 'null', '=1+1', '",', 'x'.repeat(300),
];

/** One small change at the level of characters, tokens or lines; `other` lends lines. */
export function change(text: string, other: string, random: Random): string {
  const at = below(random, text.length + 1);
  const lines = text.split('\n');
  const line = below(random, lines.length);
  switch (below(random, 9)) {
    case 0:
      return text.slice(0, at) + text.slice(at + 1 + below(random, 4));
    case 1:
      return text.slice(0, at) + pick(random, CHARACTERS) + text.slice(at);
    case 2:
      return text.slice(0, at) + pick(random, CHARACTERS) + text.slice(at + 1);
    case 3:
      return text.slice(0, at) + pick(random, TOKENS) + text.slice(at);
    case 4: {
      // The word at this place, by another token.
      const word = /^[^\s]+/.exec(text.slice(at))?.[0] ?? '';
      return text.slice(0, at) + pick(random, TOKENS) + text.slice(at + word.length);
    }
    case 5:
      return lines.toSpliced(line, 1 + below(random, 3)).join('\n');
    case 6:
      return lines.toSpliced(line, 0, pick(random, lines)).join('\n');
    case 7:
      return lines.toSpliced(line, 0, pick(random, other.split('\n'))).join('\n');
    default: {
      const end = at + below(random, 60);
      return text.slice(0, end) + text.slice(at, end) + text.slice(end);
    }
  }
}

/** A folder with one of its files changed, one to three times. */
export function mutate(folder: Folder, random: Random): { readonly folder: Folder; readonly file: ContentFile & { readonly text: string } } {
  const texts = folder.files.filter((file): file is ContentFile & { text: string } => file.text !== undefined);
  const chosen = pick(random, texts);
  let { text } = chosen;
  for (let i = below(random, 3); i >= 0; i--) text = change(text, pick(random, texts).text, random);
  const file = { ...chosen, text };
  return { folder: { ...folder, files: folder.files.map((one) => (one === chosen ? file : one)) }, file };
}
