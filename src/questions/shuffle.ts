/** An order that looks random and is the same on every machine: it depends on a text alone. */

/** FNV-1a hash of a text, 32 bits (Fowler, Noll, Vo; RFC 9923). */
function hash(text: string): number {
  let state = 0x811c9dc5;
  for (const character of text) state = Math.imul(state ^ character.codePointAt(0)!, 0x01000193) >>> 0;
  return state;
}

/** The items in an order chosen by `seed`: by the hash of the seed with each one's index. */
export function shuffled<T>(items: readonly T[], seed: string): readonly T[] {
  return items
    .map((item, i) => ({ item, key: hash(`${i}:${seed}`) }))
    .sort((a, b) => a.key - b.key)
    .map(({ item }) => item);
}
