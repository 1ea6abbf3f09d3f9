/** An order that looks random and is the same on every machine: it depends on a text alone. */
import { randomSource } from '../physics/index.ts';

/** FNV-1a hash of a text, 32 bits (Fowler, Noll, Vo; RFC 9923). */
export function hashOf(text: string): number {
  let state = 0x811c9dc5;
  for (const character of text) state = Math.imul(state ^ character.codePointAt(0)!, 0x01000193) >>> 0;
  return state;
}

/** The items in an order chosen by `seed` (Fisher and Yates; Durstenfeld 1964, algorithm 235). */
export function shuffled<T>(items: readonly T[], seed: string): readonly T[] {
  const random = randomSource(hashOf(seed));
  const order = [...items];
  for (let last = order.length - 1; last > 0; last--) {
    const chosen = Math.floor(random.uniform() * (last + 1));
    [order[last], order[chosen]] = [order[chosen]!, order[last]!];
  }
  return order;
}
