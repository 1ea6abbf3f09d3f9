/** Things of one file each, and questions: what to write, and what to do with it then. */
import { readYaml, kitSchema, type Folder } from '../../authoring/index.ts';
import { apparatusFile } from './apparatus.ts';
import { hazardFile } from './hazard.ts';
import { misconceptionFile } from './misconception.ts';
import type { NewFile } from './new-file.ts';
import { particlesFile, SOURCE_OF_KAPPA_ID } from './particles.ts';
import { questionFile } from './question.ts';
import { roomFile } from './room.ts';

export interface Thing {
  readonly file: (name: string, folder: Folder) => NewFile;
  readonly next: (name: string) => string;
}

export const THINGS: Readonly<Record<string, Thing>> = {
  hazard: {
    file: (name) => hazardFile(name),
    next: (name) =>
      `Fill it in, then list ${name} under hazards: in kit.yaml and put <Hazard id="${name}"/> at the top of run.mdx.`,
  },
  room: { file: (name) => roomFile(name), next: (name) => `Fill it in, then write room: ${name} in kit.yaml or site.yaml.` },
  apparatus: { file: (name) => apparatusFile(name), next: (name) => `Fill it in, then write apparatus: ${name} in kit.yaml.` },
  particles: {
    file: (name, folder) => particlesFile(name, isListed(folder, SOURCE_OF_KAPPA_ID)),
    next: (name) => `Fill it in, then list ${name} under particles: in kit.yaml.`,
  },
  misconception: {
    file: (name) => misconceptionFile(name),
    next: (name) =>
      `Fill it in, then put <Misconception id="${name}"/> where it belongs, or name it at a wrong option of a question.`,
  },
};

/** A question of a kit; undefined where kit.yaml does not say what the question needs. */
export function questionOf(kit: string, name: string, folder: Folder): NewFile | undefined {
  const file = folder.files.find((one) => one.kind === 'kit' && one.kit === kit);
  const read = kitSchema.safeParse(readYaml(file?.text ?? '', file?.file ?? '').data);
  const objective = read.data?.objectives[0]?.id;
  return read.data === undefined || objective === undefined
    ? undefined
    : questionFile(name, { kit, drop: read.data.drop.text, objective });
}

function isListed(folder: Folder, source: string): boolean {
  const file = folder.files.find(({ kind }) => kind === 'sources');
  // Without a list, one that holds the source is written beside.
  if (file === undefined) return true;
  const { data } = readYaml(file.text ?? '', file.file);
  return (
    Array.isArray(data) &&
    data.some((item: unknown) => typeof item === 'object' && item !== null && 'id' in item && item.id === source)
  );
}
