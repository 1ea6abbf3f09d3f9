/** Which kits suit what a teacher has. Pure. */

/** What was chosen; an empty text leaves all. */
export interface Choice {
  readonly age: string;
  /** Longest lesson, min. */
  readonly time: string;
  readonly apparatus: string;
  /** Tags of what must not be there. */
  readonly without: readonly string[];
}

/** What the shelf says of a kit: ages `12–15`, minutes, the title of its apparatus, tags with spaces between. */
export interface OnShelf {
  readonly ages?: string | undefined;
  readonly minutes?: string | undefined;
  readonly apparatus?: string | undefined;
  readonly uses?: string | undefined;
}

/** Whether a kit is for what was chosen. */
export function suits({ ages = '', minutes = '', apparatus = '', uses = '' }: OnShelf, wanted: Choice): boolean {
  const [youngest = 0, oldest = Infinity] = ages.split('–').map(Number);
  const used = uses.split(' ');
  return (
    (wanted.age === '' || (Number(wanted.age) >= youngest && Number(wanted.age) <= oldest)) &&
    (wanted.time === '' || Number(minutes) <= Number(wanted.time)) &&
    (wanted.apparatus === '' || wanted.apparatus === apparatus) &&
    !wanted.without.some((tag) => used.includes(tag))
  );
}
