/** Everything that a kit uses: its own files, and the shared ones that they name, and those that these name. */
import type { LoadedFile } from './load.ts';
import { usesOf, type Use } from './uses.ts';

/** What a kit cannot be shown without. */
export interface UsedFiles {
  /** in the order of the folder, without `site.yaml`; `sources.yaml` among them if anything is cited */
  readonly files: readonly LoadedFile[];
  /** ids in `sources.yaml` */
  readonly sources: ReadonlySet<string>;
}

/** Follows every name from the files of a kit, save the kit that it translates. */
export function filesUsedBy(kit: string, files: readonly LoadedFile[]): UsedFiles {
  const used = new Set<LoadedFile>();
  const sources = new Set<string>();
  const add = (file: LoadedFile): void => {
    if (used.has(file)) return;
    used.add(file);
    for (const use of usesOf(file)) {
      if (use.to === 'source') sources.add(use.name);
      files.filter((other) => isNamedBy(use, other)).forEach(add);
    }
  };
  files.filter((file) => file.kit === kit).forEach(add);
  return { files: files.filter((file) => used.has(file)), sources };
}

function isNamedBy({ to, name }: Use, file: LoadedFile): boolean {
  switch (to) {
    case 'source':
      return file.kind === 'sources';
    case 'standard':
      return file.kind === 'standards' && file.data?.statements.some(({ code }) => code === name) === true;
    case 'room':
    case 'apparatus':
    case 'particles':
    case 'hazard':
    case 'misconception':
      return file.kind === to && file.name === name;
    // Of the kit itself, so that they are there already; or of another kit.
    case 'question':
    case 'picture':
    case 'objective':
    case 'kit':
      return false;
  }
}
