/** Names given twice, in one file or over several. */
import { findingAt, type Finding } from './findings.ts';
import { filesOf } from './kit-files.ts';
import type { LoadedFile } from './load.ts';

/** Names given twice in one file. */
export function duplicates(file: LoadedFile): Finding[] {
  const twice = (
    code: 'duplicate-name' | 'duplicate-reference',
    names: readonly string[],
    path: (i: number) => PropertyKey[],
  ): Finding[] =>
    names.flatMap((name, i) =>
      names.indexOf(name) === i
        ? []
        : [
            findingAt(file.file, file.locate(path(i)), {
              code,
              what: `\`${name}\` stands here a second time`,
              instead: code === 'duplicate-name' ? 'give one of them another name' : 'remove one of the two',
            }),
          ],
    );
  if (file.data === undefined) return [];
  if (file.kind === 'sources')
    return twice(
      'duplicate-name',
      file.data.map(({ id }) => id),
      (i) => [i, 'id'],
    );
  if (file.kind !== 'kit') return [];
  const kit = file.data;
  const lists = (['particles', 'hazards', 'standards'] as const).flatMap((key) =>
    twice('duplicate-reference', kit[key], (i) => [key, i]),
  );
  return [
    ...lists,
    ...twice(
      'duplicate-name',
      kit.objectives.map(({ id }) => id),
      (i) => ['objectives', i, 'id'],
    ),
  ];
}

/** A kit points at a statement by its code alone, so codes are unique over all frameworks. */
export function duplicateCodes(files: readonly LoadedFile[]): Finding[] {
  const first = new Map<string, string>();
  const findings: Finding[] = [];
  for (const { data, file, locate } of filesOf(files, 'standards')) {
    for (const [i, { code }] of (data?.statements ?? []).entries()) {
      const other = first.get(code);
      if (other === undefined) first.set(code, file);
      else
        findings.push(
          findingAt(file, locate(['statements', i, 'code']), {
            code: 'duplicate-name',
            what: `the code \`${code}\` is also in ${other}`,
            instead: 'write the framework before one of the codes',
          }),
        );
    }
  }
  return findings;
}
