/** What every template works with: files to write, names, titles. */

/** A file that is not there yet. */
export interface NewFile {
  /** in the content folder, with `/` */
  readonly path: string;
  readonly text: string;
}

/** `melting-ice` as a title: `Melting ice`. */
export function titleOf(name: string): string {
  const words = name.replaceAll('-', ' ');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

/** Text in YAML that is text whatever it holds, also `true` and `12`. */
export const quoted = (text: string): string => JSON.stringify(text);

/** The first of `name`, `name-2`, `name-3` … that is not taken. */
export function freeName(name: string, isTaken: (name: string) => boolean): string {
  for (let i = 1; ; i++) {
    const proposed = i === 1 ? name : `${name}-${i}`;
    if (!isTaken(proposed)) return proposed;
  }
}
