/** Editions as the pages show them: what is noticed of each, and what changed from one to the next. */
import { diffArrays } from 'diff';
import type { Content, Notice } from '../authoring/index.ts';
import { escapeHtml, plainText, type Book, type ChangeView, type HistoryView, type KitView, type NoticeView, type PublishedKit, type WordsView } from '../sheets/index.ts';
import { isWithdrawn, kitOf, type Edition } from './edition.ts';
import { numbersOf, type ComputedNumber } from './numbers.ts';

/** What the book is made of. */
export const publishedKits = (editions: readonly Edition[]): PublishedKit[] =>
  editions.map((edition) => ({
    id: edition.kit,
    version: edition.version,
    published: edition.manifest.published,
    content: edition.content,
    notices: edition.notices.map((notice) => noticeView(notice, edition, editions)),
  }));

/** The edition to use instead of one: where that is withdrawn too, what replaces it; none where none is left. */
function inForce(version: string | undefined, kit: string, editions: readonly Edition[], passed: readonly string[] = []): string | undefined {
  const edition = editions.find((one) => one.kit === kit && one.version === version);
  if (edition === undefined || passed.includes(edition.version)) return undefined;
  if (!isWithdrawn(edition)) return edition.version;
  const next = edition.notices.findLast((notice) => 'withdrawn' in notice);
  return next && 'withdrawn' in next ? inForce(next.withdrawn.replacement, kit, editions, [...passed, edition.version]) : undefined;
}

function noticeView(notice: Notice, { kit, numbers: computed }: Edition, editions: readonly Edition[]): NoticeView {
  const { date } = notice;
  if ('withdrawn' in notice) return { kind: 'withdrawn', date, why: notice.withdrawn.why, replacement: inForce(notice.withdrawn.replacement, kit, editions), numbers: [], unseen: 0 };
  const byKey = new Map(computed.map((number) => [number.key, number]));
  const numbers = (notice.correction.numbers ?? []).flatMap(({ key, old, new: now }) => {
    const number = byKey.get(key);
    return number === undefined ? [] : [{ label: number.label, before: number.print(old), after: number.print(now), forTeachers: number.forTeachers }];
  });
  const seen = numbers.filter(({ before, after }) => before !== after);
  return { kind: 'correction', date, why: notice.correction.why, numbers: seen, unseen: numbers.length - seen.length };
}

/**
 * What changed between neighbors, of every kit with an edition, the newest change first; from the newest edition to the draft where that is shown.
 * @param book with the kits of the editions
 * @param content the working copy, from which drafts are made
 */
export function historiesOf(book: Book, content: Content, editions: readonly Edition[]): HistoryView[] {
  const kits = [...new Set(editions.map(({ kit }) => kit))];
  return kits.map((id) => {
    const states = book.kits.filter((view) => view.id === id).map((view) => {
      const edition = editions.find(({ kit, version }) => kit === id && version === view.version);
      return { view, numbers: edition?.numbers ?? numbersOf(content, kitOf({ content, kit: id })) };
    });
    return { kit: id, changes: states.slice(1).map((state, i) => changeView(states[i]!, state)).reverse() };
  });
}

interface State {
  readonly view: KitView;
  readonly numbers: readonly ComputedNumber[];
}

function changeView(before: State, after: State): ChangeView {
  const old = new Map(before.numbers.map((number) => [number.key, number]));
  const numbers = after.numbers.flatMap(({ key, label, value, print, forTeachers }) => {
    const last = old.get(key);
    const was = last?.print(last.value);
    const is = print(value);
    return was === undefined || was === is ? [] : [{ label, before: was, after: is, forTeachers: forTeachers || last!.forTeachers }];
  });
  const words = Object.keys(TEXTS).flatMap((name): WordsView[] => {
    const text = TEXTS[name as keyof typeof TEXTS];
    const [everybody, teachers] = [false, true].map((forTeachers) => changedWords(text(before.view, forTeachers), text(after.view, forTeachers)));
    return teachers === '' ? [] : [{ sheet: name as keyof typeof TEXTS, everybody: everybody!, teachers: teachers! }];
  });
  return { from: before.view.version, to: after.view.version, words, numbers };
}

/** What there is to read, by the sheet that it stands on. */
const TEXTS = {
  kit: ({ title, summary, objectives, materials, preparation }: KitView) =>
    [title, summary, ...objectives.map(({ text }) => text), ...materials.flatMap(({ item, specification, quantity, note = '' }) => [item, specification, quantity, note]), ...preparation.map(({ before, task }) => `${before}: ${task}`)].join('\n'),
  run: ({ run }: KitView, forTeachers: boolean) => linesOf(forTeachers ? run.teachers : run.everybody),
  student: ({ student }: KitView, forTeachers: boolean) => linesOf(forTeachers ? student.teachers : student.everybody),
  background: ({ background }: KitView, forTeachers: boolean) => linesOf(forTeachers ? background.teachers : background.everybody),
  questions: ({ questions }: KitView, forTeachers: boolean) => questions.map(({ stem, answer, solution }) => linesOf(forTeachers ? `${stem} ${answer} ${solution}` : stem)).join('\n'),
  safety: ({ hazards }: KitView) => hazards.map(({ title, signalWord, who, html }) => `${signalWord}: ${title}\n${who}\n${linesOf(html)}`).join('\n'),
} as const satisfies Record<string, (view: KitView, forTeachers: boolean) => string>;

/** Ends of what stands in a line of its own. */
const BLOCK_END = /<\/(?:p|h[1-6]|li|dd|dt|tr|caption|figcaption|section|summary)>/;

/** Tables are compared number by number. */
const TABLES = /<figure class="worked"[^]*?<\/figure>/g;

/** Citations stand beside a word without a space, set apart by their style. */
const CITATION = '<a class="cite"';

const linesOf = (html: string): string => html.replace(TABLES, '').replaceAll(CITATION, ` ${CITATION}`).split(BLOCK_END).map(plainText).filter((line) => line !== '').join('\n');

/** Words around a change that are shown with it. */
const AROUND = 6;

/** The lines in which something changed, old words struck and new ones marked, as HTML; empty where none did. */
function changedWords(before: string, after: string): string {
  if (before === after) return '';
  const parts = diffArrays(wordsOf(before), wordsOf(after), { comparator: (a, b) => a.trimEnd() === b.trimEnd() });
  const shown = parts.map(({ value: words, added, removed }, i) => {
    const value = words.join('');
    if (added !== true && removed !== true) return escapeHtml(shortened(value, i === 0, i === parts.length - 1));
    const text = value.trimEnd();
    const element = added === true ? 'ins' : 'del';
    return `<${element}>${escapeHtml(text)}</${element}>${value.slice(text.length)}`;
  });
  return shown.join('').split(GAP).map((piece) => piece.trim()).filter((piece) => piece !== '').map((piece) => `<p>${piece.replace(/\s*\n\s*/g, ' ')}</p>`).join('');
}

/** Words with the space after them: a number stays whole. */
const wordsOf = (text: string): string[] => text.split(/(?<=\s)(?=\S)/);

const GAP = '\u0000';

/** Unchanged text: what stands next to a change, and nothing of what lies far from one. */
function shortened(text: string, isFirst: boolean, isLast: boolean): string {
  const words = text.split(/(?<=\s)/);
  const after = isFirst ? [] : words.slice(0, AROUND);
  const before = isLast ? [] : words.slice(-AROUND);
  if (!isFirst && !isLast && words.length <= 2 * AROUND) return text;
  return `${after.join('')}${after.length > 0 && words.length > AROUND ? '…' : ''}${GAP}${before.length > 0 && words.length > AROUND ? '…' : ''}${before.join('')}`;
}
