/** The practice folder, checked as every content folder is, with one file changed where an example asks for it. */
import { loadFolder, type ContentFile, type Finding, type Loaded } from '../../../authoring/index.ts';
import { VOCABULARY } from '../../../sheets/index.ts';
import { PRACTICE_FILES } from './files.ts';

/** Name of the folder in findings. */
const ROOT = 'content';

/** The kind of a file by its folder or its name: the practice folder has these alone. */
const KINDS: Readonly<Record<string, ContentFile['kind']>> = {
  rooms: 'room', apparatus: 'apparatus', particles: 'particles', hazards: 'hazard', misconceptions: 'misconception', questions: 'question',
  'site.yaml': 'site', 'sources.yaml': 'sources', 'kit.yaml': 'kit', 'run.mdx': 'run', 'student.mdx': 'student', 'background.mdx': 'background',
};

function contentFile(path: string, text: string): ContentFile {
  const parts = path.split('/');
  const last = parts.at(-1) ?? '';
  const kind = KINDS[last] ?? KINDS[parts.at(-2) ?? ''];
  if (kind === undefined) throw new RangeError(`no kind of content file is known for ${path}`);
  return { file: `${ROOT}/${path}`, kind, name: last.slice(0, last.lastIndexOf('.')), kit: parts[0] === 'kits' ? parts[1] : undefined, text };
}

/** Loads the practice folder, with other texts for some of its files. */
export function loadPractice(changed: Readonly<Record<string, string>> = {}): Loaded {
  const files = Object.entries({ ...PRACTICE_FILES, ...changed }).map(([path, text]) => contentFile(path, text));
  return loadFolder({ root: ROOT, files, findings: [] }, VOCABULARY);
}

/** What the check says of the practice kit's student sheet if it held this text. */
export function findingsOfSheet(text: string): readonly Finding[] {
  const path = 'kits/practice/student.mdx';
  return loadPractice({ [path]: `${PRACTICE_FILES[path] ?? ''}\n${text}\n` }).findings;
}
