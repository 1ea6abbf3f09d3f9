/** What the files of one kit say, also while others are wrong. */
import type { LoadedFile } from './load.ts';
import type { FileKind } from './plan.ts';
import type { Apparatus, KitMeta, Room } from './schemas/index.ts';

/** The fields of a kit, undefined if they could not be read. */
export function kitData(files: readonly LoadedFile[], kit: string | undefined): KitMeta | undefined {
  return kit === undefined ? undefined : filesOf(files, 'kit').find((file) => file.kit === kit)?.data;
}

/** The room of a kit, else the site's. */
export function roomData(files: readonly LoadedFile[], kit: KitMeta | undefined): Room | undefined {
  const name = kit?.room ?? filesOf(files, 'site')[0]?.data?.room;
  return kit === undefined ? undefined : filesOf(files, 'room').find((file) => file.name === name)?.data;
}

/** The apparatus of a kit. */
export function apparatusData(files: readonly LoadedFile[], kit: KitMeta | undefined): Apparatus | undefined {
  return filesOf(files, 'apparatus').find((file) => file.name === kit?.apparatus)?.data;
}

/** The files of a kind. */
export function filesOf<K extends FileKind>(files: readonly LoadedFile[], kind: K): LoadedFile<K>[] {
  return files.filter((file) => file.kind === kind) as LoadedFile<K>[];
}

/** Files by the kit that they belong to, those of none under the empty name. */
export function groupByKit(files: readonly LoadedFile[]): ReadonlyMap<string, LoadedFile[]> {
  const groups = new Map<string, LoadedFile[]>();
  for (const file of files) {
    const kit = file.kit ?? '';
    const group = groups.get(kit);
    if (group === undefined) groups.set(kit, [file]);
    else group.push(file);
  }
  return groups;
}
