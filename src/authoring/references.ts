/** Names that files use of each other: each must exist, and once. */
import type { ReferenceKind } from './fields.ts';
import { cycles } from './cycles.ts';
import { duplicateCodes, duplicates } from './duplicates.ts';
import { findingAt, type Finding } from './findings.ts';
import type { Folder } from './folder.ts';
import { filesOf, groupByKit } from './kit-files.ts';
import type { LoadedFile } from './load.ts';
import { proposeName } from './names.ts';
import type { FileKind } from './plan.ts';
import { translations } from './translations.ts';
import type { QuestionMeta } from './schemas/index.ts';
import { typedProblem, typedQuantities } from './lesson/typed-quantities.ts';
import { usesOf, type Use } from './uses.ts';

/**
 * Follows every reference of the files.
 * @param complete whether everything was readable: only then is it known what nothing refers to
 */
export function checkReferences({ root, isEdition = false }: Pick<Folder, 'root' | 'isEdition'>, files: readonly LoadedFile[], complete: boolean): Finding[] {
  const names = namesOf(files, isEdition);
  const uses = files.flatMap(usesOf);
  const unknown = uses.flatMap((use) => {
    const choices = names(use.to, use.kit);
    if (choices === undefined || choices.has(use.name)) return [];
    return [
      findingAt(use.file, use.place(), {
        code: 'unknown-reference',
        what: `there is no ${IN_WORDS[use.to]} \`${use.name}\``,
        instead: proposeName(use.name, choices, `add it: ${WHERE[use.to]}`),
      }),
    ];
  });
  const findings = [
    ...unknown,
    ...files.flatMap(duplicates),
    ...duplicateCodes(files),
    ...files.flatMap(typedInQuestion),
    // What was published so is read as it was.
    ...(isEdition ? [] : files.flatMap(componentInField)),
    ...cycles(files, root),
    ...translations(files),
  ];
  return complete && findings.length === 0 ? neverCited(files, uses) : findings;
}

type Names = (to: ReferenceKind, kit: string | undefined) => ReadonlySet<string> | undefined;

/** Names that exist; undefined where that is not known: the file that lists them is wrong itself, or they are other kits' beside an edition. */
function namesOf(files: readonly LoadedFile[], isEdition: boolean): Names {
  const byKit = groupByKit(files);
  const of = <K extends FileKind>(kind: K, kit?: string): LoadedFile<K>[] => filesOf(kit === undefined ? files : (byKit.get(kit) ?? []), kind);
  const ofFiles = (kind: FileKind, kit?: string): Set<string> => new Set(of(kind, kit).map((file) => file.name));
  const listed = <K extends FileKind>(kind: K, list: (data: NonNullable<LoadedFile<K>['data']>) => readonly string[], kit?: string): Set<string> | undefined => {
    const lists = of(kind, kit);
    const readable = lists.length > 0 || kind === 'standards';
    return readable && lists.every((file) => file.data !== undefined) ? new Set(lists.flatMap((file) => list(file.data!))) : undefined;
  };
  const sources = listed('sources', (all) => all.map(({ id }) => id));
  const codes = listed('standards', ({ statements }) => statements.map(({ code }) => code));
  const namesIn = (to: ReferenceKind, kit: string): ReadonlySet<string> | undefined => {
    switch (to) {
      case 'source':
        return sources;
      case 'standard':
        return codes;
      case 'question':
        return ofFiles('question', kit);
      case 'picture':
        return new Set(
          of('picture', kit).map(({ file }) => file.slice(file.lastIndexOf('/') + 1)),
        );
      case 'objective':
        return listed('kit', ({ objectives }) => objectives.map(({ id }) => id), kit);
      case 'kit':
        return isEdition ? undefined : new Set(files.flatMap((file) => (file.kind === 'kit' && file.kit !== undefined ? [file.kit] : [])));
      default:
        return ofFiles(to);
    }
  };
  // A folder of a thousand kits asks ten thousand times.
  const known = new Map<string, ReadonlySet<string> | undefined>();
  return (to, kit = '') => {
    const key = `${to} ${OF_KITS.includes(to) ? kit : ''}`;
    if (!known.has(key)) known.set(key, namesIn(to, kit));
    return known.get(key);
  };
}

/** Things that belong to one kit. */
const OF_KITS: readonly ReferenceKind[] = ['question', 'picture', 'objective'];

/** Numbers with units in the fields of a question, where they would be neither computed nor stated. */
function typedInQuestion(file: LoadedFile): Finding[] {
  if (file.kind !== 'question' || file.data === undefined) return [];
  return textsOf(file.data).flatMap(({ text, path }) =>
    typedQuantities(text).map((typed) =>
      findingAt(
        file.file,
        file.locate(path),
        typedProblem(typed.text, 'write it as `value:` with the name of what is computed, or say it without the number'),
      ),
    ),
  );
}

/** Fields are shown as they are written, tags and all: components belong into the text. */
function componentInField(file: LoadedFile): Finding[] {
  if (file.kind !== 'question' || file.data === undefined) return [];
  const question = file.data;
  const rubric = question.kind === 'text' ? question.rubric.map(({ text }, i) => ({ text, path: ['rubric', i, 'text'] as const })) : [];
  return [...textsOf(question), ...rubric].flatMap(({ text, path }) => {
    const tag = /<\/?[A-Z]\w*(?=[\s/>])/.exec(text)?.[0];
    if (tag === undefined) return [];
    return findingAt(file.file, file.locate(path), {
      code: 'component-placement',
      what: `\`${tag}>\` stands in a field, which would show it as it is written`,
      instead: 'say it without a component, or put it into the text below the fields; an option may have `value:` with the name of what is computed',
    });
  });
}

/** What students read of a question, save its own text. */
function textsOf(question: QuestionMeta): { readonly text: string; readonly path: readonly PropertyKey[] }[] {
  if (question.kind === 'ordering') return question.items.map((text, i) => ({ text, path: ['items', i] }));
  if (question.kind !== 'choice') return [];
  return question.options.flatMap(({ text = '', why }, i) => [
    { text, path: ['options', i, 'text'] },
    { text: why, path: ['options', i, 'why'] },
  ]);
}

function neverCited(files: readonly LoadedFile[], uses: readonly Use[]): Finding[] {
  const cited = new Set(uses.filter(({ to }) => to === 'source').map(({ name }) => name));
  return filesOf(files, 'sources')
    .flatMap(({ file, data = [], locate }) =>
      data.flatMap(({ id }, i) =>
        cited.has(id)
          ? []
          : [
              findingAt(file, locate([i, 'id']), {
                code: 'source-never-cited',
                what: `nothing cites \`${id}\``,
                instead: `cite it with \`<Source id="${id}"/>\` or remove it`,
              }),
            ],
      ),
    );
}

const IN_WORDS: Readonly<Record<ReferenceKind, string>> = {
  kit: 'kit',
  room: 'room',
  apparatus: 'apparatus',
  particles: 'particles file',
  hazard: 'hazard sheet',
  misconception: 'misconception',
  source: 'source',
  standard: 'statement with the code',
  question: 'question',
  objective: 'objective',
  picture: 'picture',
};
const WHERE: Readonly<Record<ReferenceKind, string>> = {
  kit: 'a folder in kits/',
  room: 'a file in rooms/',
  apparatus: 'a file in apparatus/',
  particles: 'a file in particles/',
  hazard: 'a file in hazards/',
  misconception: 'a file in misconceptions/',
  source: 'an item of sources.yaml',
  standard: 'a statement in a file of standards/',
  question: 'a file in questions/ of this kit',
  objective: 'an item of `objectives` in kit.yaml',
  picture: 'a file beside the sheets of this kit',
};
