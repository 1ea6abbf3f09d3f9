/** Every text of a language by its place in the file; functions told as what they make of marked places. */
type Node = string | ((...given: never[]) => unknown) | { readonly [key: string]: Node };

/** Stands for what goes into a text. */
export const PLACE = /⟦\d⟧/g;
const given = (count: number): string[] => Array.from({ length: count }, (_, i) => `⟦${i}⟧`);

/** What a function says; one that takes a list is given a list. */
function told(say: (...all: never[]) => unknown): string {
  const places = given(say.length);
  try {
    return String(say(...(places as never[])));
  } catch {
    return String(say(...(places.map((place) => [place]) as never[])));
  }
}

/** `run.describe` to its text. */
export function allTexts(groups: object, above = ''): Map<string, string> {
  return new Map(Object.entries(groups as Record<string, Node>).flatMap(([name, node]): [string, string][] => {
    const path = `${above}${name}`;
    if (typeof node === 'string') return [[path, node]];
    if (typeof node === 'function') return [[path, told(node)]];
    return [...allTexts(node, `${path}.`)];
  }));
}
