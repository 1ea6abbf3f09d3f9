/** What the files of one kit say, also while others are wrong. */
import type { LoadedFile } from './load.ts';
import type { Apparatus, KitMeta, Room, Site } from './schemas/index.ts';

/** The fields of a kit, undefined if they could not be read. */
export function kitData(files: readonly LoadedFile[], kit: string | undefined): KitMeta | undefined {
  return kit === undefined ? undefined : dataOf<KitMeta>(files, (file) => file.kind === 'kit' && file.kit === kit);
}

/** The room of a kit, else the site's. */
export function roomData(files: readonly LoadedFile[], kit: KitMeta | undefined): Room | undefined {
  const name = kit?.room ?? dataOf<Site>(files, ({ kind }) => kind === 'site')?.room;
  return kit === undefined ? undefined : dataOf<Room>(files, (file) => file.kind === 'room' && file.name === name);
}

/** The apparatus of a kit. */
export function apparatusData(files: readonly LoadedFile[], kit: KitMeta | undefined): Apparatus | undefined {
  return dataOf<Apparatus>(files, (file) => file.kind === 'apparatus' && file.name === kit?.apparatus);
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

function dataOf<T>(files: readonly LoadedFile[], which: (file: LoadedFile) => boolean): T | undefined {
  return files.find(which)?.data as T | undefined;
}
