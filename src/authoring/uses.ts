/** Which names a file uses of others. */
import type { ReferenceKind } from './fields.ts';
import type { Place } from './findings.ts';
import type { LoadedFile } from './load.ts';

/** A name as used in a file. */
export interface Use {
  readonly to: ReferenceKind;
  readonly name: string;
  readonly file: string;
  readonly kit: string | undefined;
  readonly place: () => Place;
}

/** Every name that a file uses, in its fields and in its text. */
export function usesOf(file: LoadedFile): Use[] {
  const use = (to: ReferenceKind, name: string, place: () => Place): Use => ({ to, name, place, file: file.file, kit: file.kit });
  const field = (to: ReferenceKind, name: string | undefined, ...path: PropertyKey[]): Use[] =>
    name === undefined ? [] : [use(to, name, () => file.locate(path))];
  const fields = (to: ReferenceKind, all: readonly string[] | undefined, key: string): Use[] =>
    (all ?? []).flatMap((name, i) => field(to, name, key, i));
  const inText = (file.lesson?.references ?? []).map(({ to, name, position }) => use(to, name, () => position));
  if (file.data === undefined) return inText;
  switch (file.kind) {
    case 'site':
      return field('room', file.data.room, 'room');
    case 'particles':
      return fields('source', file.data.source, 'source');
    case 'hazard':
      return [...inText, ...fields('source', file.data.source, 'source')];
    case 'misconception':
      return [...inText, ...fields('source', file.data.source, 'source')];
    case 'kit': {
      const { room, apparatus, particles, hazards, standards, translationOf } = file.data;
      return [
        ...field('kit', translationOf, 'translationOf'),
        ...field('room', room, 'room'),
        ...field('apparatus', apparatus, 'apparatus'),
        ...fields('particles', particles, 'particles'),
        ...fields('hazard', hazards, 'hazards'),
        ...fields('standard', standards, 'standards'),
      ];
    }
    case 'question': {
      const question = file.data;
      const options = question.kind === 'choice' ? question.options : [];
      return [
        ...inText,
        ...field('objective', question.objective, 'objective'),
        ...options.flatMap(({ misconception }, i) => field('misconception', misconception, 'options', i, 'misconception')),
      ];
    }
    default:
      return inText;
  }
}
