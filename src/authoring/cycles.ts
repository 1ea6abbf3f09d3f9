/** Texts that bring in each other: they would expand without end. */
import type { ReferenceKind } from './fields.ts';
import { findingAt, type Finding } from './findings.ts';
import type { LoadedFile } from './load.ts';

/** Where a text brings in one that brings it in. */
export function cycles(files: readonly LoadedFile[], root: string): Finding[] {
  const texts = new Map(
    files
      .filter(({ kind }) => kind === 'hazard' || kind === 'misconception' || kind === 'question')
      .map((file) => [file.file, file]),
  );
  const target = (to: ReferenceKind, name: string, kit: string | undefined): string =>
    to === 'question' ? `${root}/kits/${kit}/questions/${name}.mdx` : `${root}/${to}s/${name}.mdx`;
  const findings: Finding[] = [];
  const done = new Set<string>();
  const follow = (at: string, above: readonly string[]): void => {
    for (const { to, name, position } of texts.get(at)?.lesson?.references ?? []) {
      const next = target(to, name, texts.get(at)?.kit);
      if (above.includes(next))
        findings.push(
          findingAt(at, position, {
            code: 'cycle',
            what: `this brings in \`${name}\`, which brings in this text`,
            instead: 'name it in words instead',
          }),
        );
      else if (texts.has(next) && !done.has(next)) follow(next, [...above, next]);
    }
    done.add(at);
  };
  for (const at of texts.keys()) if (!done.has(at)) follow(at, [at]);
  return findings;
}
