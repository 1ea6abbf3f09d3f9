/** Names that are nearly right: what the writer probably meant. */

/** The form of every name that a contributor gives: a file's, a folder's, an objective's. */
export const NAME = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/** Names that Windows keeps for devices: no file can be called that there. */
export const RESERVED = /^(?:con|prn|aux|nul|com[1-9]|lpt[1-9])$/;

/** Letters that a shortened name must have in common with the whole to count as near. */
const SHORTEST_BEGINNING = 4;

/**
 * The choice that needs the fewest changed letters, if few enough are changed that it is likely meant; else one
 * that the writer shortened or lengthened.
 * Source: Damerau 1964 (insertion, deletion, substitution, transposition of neighbors).
 */
export function nearestName(written: string, choices: readonly string[] | ReadonlySet<string>): string | undefined {
  const given = written.toLowerCase();
  let best: string | undefined;
  // A third of the letters; none of one or two, which would be near to anything.
  let fewest = Math.floor(Math.min(written.length, 64) / 3) + 1;
  for (const choice of choices) {
    const changes = distance(given.slice(0, 64), choice.toLowerCase().slice(0, 64));
    if (changes < fewest) [best, fewest] = [choice, changes];
  }
  if (best !== undefined || given.length < SHORTEST_BEGINNING) return best;
  const begun = [...choices].filter(
    (choice) =>
      choice.toLowerCase().startsWith(given) || (choice.length >= SHORTEST_BEGINNING && given.startsWith(choice.toLowerCase())),
  );
  return begun.length === 1 ? begun[0] : undefined;
}

/** `did you mean X?` where a near name exists, else the list of those that do. */
export function proposeName(written: string, choices: Iterable<string>, none = 'there is none to choose from'): string {
  const all = [...choices].sort();
  const nearest = nearestName(written, all);
  if (nearest !== undefined) return `write \`${nearest}\`, the nearest there is`;
  return all.length === 0 ? none : `choose one of ${listNames(all)}`;
}

/** Names in backquotes, at most twelve of them. */
export function listNames(names: readonly string[]): string {
  const shown = names
    .slice(0, 12)
    .map((name) => `\`${name}\``)
    .join(', ');
  return names.length > 12 ? `${shown} and ${names.length - 12} more` : shown;
}

function distance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, (beforeLast[j - 2] ?? 0) + 1);
      row[j] = least;
    }
    [beforeLast, last] = [last, row];
  }
  return last[b.length] ?? 0;
}
