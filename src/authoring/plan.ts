/** The plan of a content folder: which files stand where. */
import { listNames, nearestName } from './names.ts';

export type FileKind =
  | 'site'
  | 'sources'
  | 'room'
  | 'apparatus'
  | 'particles'
  | 'hazard'
  | 'misconception'
  | 'standards'
  | 'kit'
  | 'run'
  | 'student'
  | 'background'
  | 'question'
  | 'readings'
  | 'picture';

/** What a path holds; `name` is that of the thing, undefined where the plan fixes the file's name. */
interface Line {
  readonly kind: FileKind;
  /** segments; `*` stands for a name, before an extension too */
  readonly path: readonly string[];
}

const line = (kind: FileKind, ...path: string[]): Line => ({ kind, path });

/** Every kind of file, one a line. */
const PLAN: readonly Line[] = [
  line('site', 'site.yaml'),
  line('sources', 'sources.yaml'),
  line('room', 'rooms', '*.yaml'),
  line('apparatus', 'apparatus', '*.yaml'),
  line('particles', 'particles', '*.yaml'),
  line('hazard', 'hazards', '*.mdx'),
  line('misconception', 'misconceptions', '*.mdx'),
  line('standards', 'standards', '*.yaml'),
  line('kit', 'kits', '*', 'kit.yaml'),
  line('run', 'kits', '*', 'run.mdx'),
  line('student', 'kits', '*', 'student.mdx'),
  line('background', 'kits', '*', 'background.mdx'),
  line('question', 'kits', '*', 'questions', '*.mdx'),
  line('readings', 'kits', '*', 'readings', '*.csv'),
  line('picture', 'kits', '*', '*.png'),
  line('picture', 'kits', '*', '*.jpg'),
  line('picture', 'kits', '*', '*.webp'),
];

/** Files that must be there: of the folder, and of every kit. */
export const REQUIRED: readonly string[] = ['site.yaml', 'sources.yaml'];
export const REQUIRED_IN_KIT: readonly string[] = ['kit.yaml', 'run.mdx', 'student.mdx', 'background.mdx'];

/** What a file is by its path, undefined if the plan has no place for it. */
export function kindOfFile(
  path: readonly string[],
): { readonly kind: FileKind; readonly name: string; readonly kit: string | undefined } | undefined {
  for (const { kind, path: planned } of PLAN) {
    if (planned.length !== path.length) continue;
    if (!planned.every((part, i) => matches(part, path[i] ?? ''))) continue;
    const last = path.at(-1) ?? '';
    return { kind, name: last.slice(0, last.lastIndexOf('.')), kit: path[0] === 'kits' ? path[1] : undefined };
  }
  return undefined;
}

/** What to do with a file that the plan has no place for. */
export function propose(path: readonly string[]): string {
  const last = path.at(-1) ?? '';
  if (last.endsWith('.yml')) return `rename it to \`${last.slice(0, -4)}.yaml\``;
  if (last.endsWith('.md')) return `rename it to \`${last.slice(0, -3)}.mdx\``;
  const here = PLAN.filter(
    (one) => one.path.length === path.length && one.path.slice(0, -1).every((part, i) => matches(part, path[i] ?? '')),
  );
  const names = here.map((one) => one.path.at(-1) ?? '');
  const nearest = nearestName(
    last,
    names.filter((name) => !name.includes('*')),
  );
  if (nearest !== undefined) return `rename it to \`${nearest}\``;
  const folders = [...new Set(PLAN.filter((one) => one.path.length > 1).map((one) => one.path[0] ?? ''))];
  const folder = path.length > 1 ? nearestName(path[0] ?? '', folders) : undefined;
  if (folder !== undefined && folder !== path[0]) return `rename the folder to \`${folder}\``;
  return names.length > 0 ? `remove it; here belong ${listNames(names)}` : `remove it; the folders are ${listNames(folders)}`;
}

function matches(planned: string, written: string): boolean {
  if (!planned.includes('*')) return planned === written;
  const extension = planned.slice(1);
  return written.endsWith(extension) && written.length > extension.length;
}
