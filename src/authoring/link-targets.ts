/** Where links of lesson text may lead: the pages of the site, and the names of places on them. */
import { posix } from 'node:path';
import { SHEET_TEXTS } from '../texts/index.ts';
import { filesOf, groupByKit } from './kit-files.ts';
import { componentOf, isParent, type LessonNode } from './lesson/nodes.ts';
import type { PlacedLink } from './lesson.ts';
import type { LoadedFile } from './load.ts';
import type { FileKind } from './plan.ts';
import { VERSION } from './schemas/notice.ts';
import type { KitMeta } from './schemas/index.ts';
import type { Vocabulary } from './vocabulary.ts';

/** Pages of a kit beside its own, by the names of their folders. */
export const SHEETS = Object.keys(SHEET_TEXTS.en).filter((name) => name !== 'kit');
/** Pages of the site, in both of its folders, by the names of theirs. */
export const SITE_PAGES = ['', 'room', 'safety', 'search', 'sources'];
/** Stands for the version of the kit in whose text the link is. */
export const THIS = 'this';
/** Names of places on a page; undefined where they are not known. */
type Anchors = ReadonlySet<string> | undefined;

/** What a page is, and what its places are called; undefined where there is no such page. */
export interface Target {
  readonly anchors: Anchors;
}

/** A page on which a text stands, by its path without `index.html`, and the kit that it is of. */
export interface Page {
  readonly path: string;
  readonly kit: string | undefined;
}

/** All that links need to know of a content folder. */
export interface SiteOfLinks {
  readonly kits: ReadonlySet<string>;
  readonly pagesWith: (file: LoadedFile, link: PlacedLink) => readonly Page[];
  readonly targetAt: (path: string, kit: string | undefined, teachers: boolean) => Target | undefined;
  /** path of the sheet of a kit that has a place of that name */
  readonly sheetWith: (fragment: string, kit: string | undefined, teachers: boolean) => string | undefined;
  /** paths of what the writer may have meant, by name */
  readonly namesFrom: (page: Page, file: LoadedFile) => ReadonlyMap<string, string>;
}

const kitFolder = (kit: string): string => `kits/${kit}/${THIS}`;
const sheetPage = (kit: string, sheet: string): Page => ({ path: `${kitFolder(kit)}/${sheet}`, kit });
const SITE_SAFETY: Page = { path: 'safety', kit: undefined };

/** The page to which a text belongs. */
export function ownPage({ kind, kit }: LoadedFile): Page {
  return kit === undefined ? SITE_SAFETY : sheetPage(kit, kind === 'question' ? 'questions' : kind);
}

export function siteOf(files: readonly LoadedFile[], vocabulary: Vocabulary): SiteOfLinks {
  const byKit = groupByKit(files);
  const kits = new Set([...byKit.keys()].filter((kit) => kit !== ''));
  const filesIn = <K extends FileKind>(kit: string, kind: K): LoadedFile<K>[] => filesOf(byKit.get(kit) ?? [], kind);
  const shared = <K extends FileKind>(kind: K): LoadedFile<K>[] => filesIn('', kind);
  const hazards = shared('hazard').map(({ name }) => name);
  const sources = shared('sources').flatMap(({ data }) => data?.map(({ id }) => id) ?? []);
  const draftsShown = shared('site')[0]?.data?.drafts !== false;
  const metaOf = (kit: string): KitMeta | undefined => filesIn(kit, 'kit')[0]?.data;
  const picturesOf = (kit: string): string[] => filesIn(kit, 'picture').map(({ file }) => posix.basename(file));

  /** Sheets of a kit that bring in a thing. */
  const sheetsWith = (kit: string, to: string, name: string): Page[] =>
    (['run', 'student', 'background'] as const).filter((sheet) => filesIn(kit, sheet).some(({ lesson }) => lesson?.references.some((one) => one.to === to && one.name === name))).map((sheet) => sheetPage(kit, sheet));
  const pagesWith: SiteOfLinks['pagesWith'] = (file, { inside }) => {
    const { kind, kit, name } = file;
    if (kit !== undefined) {
      // Predictions and questions are shown to the class, without what is for teachers.
      const onBoard = !inside.includes('TeacherOnly') && (kind === 'question' || inside.includes('Predict'));
      return [ownPage(file), ...(kind === 'question' ? sheetsWith(kit, 'question', name) : []), ...(onBoard ? [sheetPage(kit, 'board')] : [])];
    }
    const used = [...kits].flatMap((one) => [...(kind === 'hazard' && metaOf(one)?.hazards.includes(name) === true ? [sheetPage(one, 'safety')] : []), ...sheetsWith(one, kind, name)]);
    return kind === 'hazard' ? [SITE_SAFETY, ...used] : used;
  };

  const anchorsOf = (kit: string, sheet: string, teachers: boolean): Anchors => {
    const inText = (kind: 'run' | 'student' | 'background'): Anchors => {
      const tree = filesIn(kit, kind)[0]?.lesson?.lesson?.tree;
      return tree === undefined ? undefined : anchorsIn(tree, teachers, vocabulary);
    };
    const and = (anchors: Anchors, ...more: readonly string[]): Anchors => (anchors === undefined ? undefined : new Set([...anchors, ...more]));
    switch (sheet) {
      case 'run':
        return and(inText(sheet), 'preparation');
      case 'student':
        return inText(sheet);
      case 'background':
        return and(inText(sheet), ...sources.map((id) => `source-${id}`));
      case 'questions':
        return new Set(filesIn(kit, 'question').map(({ name }) => `question-${name}`));
      case 'safety':
        return metaOf(kit) && new Set([...metaOf(kit)!.hazards.map((name) => `hazard-${name}`), 'risk-form']);
      case 'board': {
        // One for the title, each step and each question.
        const run = anchors(kit, 'run', teachers);
        return run && new Set(['', ...[...run].filter((name) => name.startsWith('step-')), ...filesIn(kit, 'question')].map((_, i) => `board-${i + 1}`));
      }
      default:
        return undefined;
    }
  };
  const known = new Map<string, Anchors>();
  const anchors = (kit: string, sheet: string, teachers: boolean): Anchors => {
    const key = `${kit} ${sheet} ${teachers}`;
    if (!known.has(key)) known.set(key, anchorsOf(kit, sheet, teachers));
    return known.get(key);
  };

  const targetAt: SiteOfLinks['targetAt'] = (path, own, teachers) => {
    const parts = path.split('/');
    const file = parts.pop() ?? '';
    const [first, kit = '', version = '', sheet] = parts;
    const isPage = file === 'index.html';
    if (first !== 'kits') {
      if (!isPage || parts.length > 1 || !SITE_PAGES.includes(first ?? '')) return undefined;
      return { anchors: first === 'safety' ? new Set(hazards.map((name) => `hazard-${name}`)) : undefined };
    }
    if (!kits.has(kit)) return undefined;
    // Whether a kit has editions is not known here, nor what they hold.
    if (parts.length === 2 || (parts.length === 3 && version === 'changes')) return isPage ? { anchors: undefined } : undefined;
    const isOwn = kit === own && version === THIS;
    if (!isOwn && !VERSION.test(version) && !(version === 'draft' && draftsShown)) return undefined;
    if (parts.length === 3) return isPage || ['tables.json', `${kit}.html`, `${kit}.zip`, ...picturesOf(kit)].includes(file) ? { anchors: undefined } : undefined;
    if (!isPage || parts.length > 4 || !SHEETS.includes(sheet ?? '')) return undefined;
    return { anchors: isOwn ? anchors(kit, sheet ?? '', teachers) : undefined };
  };

  return {
    kits,
    pagesWith,
    targetAt,
    sheetWith: (fragment, kit, teachers) => (kit === undefined ? undefined : SHEETS.filter((sheet) => anchors(kit, sheet, teachers)?.has(fragment)).map((sheet) => `${kitFolder(kit)}/${sheet}/index.html`)[0]),
    namesFrom: ({ kit }, { kind }) => {
      const ofHazards = (names: readonly string[]) => names.map((name): [string, string] => [name, kit === undefined ? `safety/index.html#hazard-${name}` : `${kitFolder(kit)}/safety/index.html#hazard-${name}`]);
      if (kind === 'hazard' || kit === undefined) return new Map(ofHazards(hazards));
      return new Map([
        ...ofHazards(metaOf(kit)?.hazards ?? []),
        ...filesIn(kit, 'question').map(({ name }): [string, string] => [name, `${kitFolder(kit)}/questions/index.html#question-${name}`]),
        ...[...kits].map((name): [string, string] => [name, name === kit ? `${kitFolder(kit)}/index.html` : `kits/${name}/index.html`]),
        ...SHEETS.map((name): [string, string] => [name, `${kitFolder(kit)}/${name}/index.html`]),
      ]);
    },
  };
}

/** Names of the places of a lesson, as its components are numbered when it is drawn. */
function anchorsIn(tree: LessonNode, teachers: boolean, { components }: Vocabulary): ReadonlySet<string> {
  const found = new Set<string>();
  const counts = new Map<string, number>();
  const visit = (node: LessonNode): void => {
    const placed = componentOf(node);
    if (placed?.component === 'TeacherOnly' && !teachers) return;
    if (isParent(node)) node.children.forEach(visit);
    const anchor = placed && components.get(placed.component)?.anchor?.(placed.attributes);
    if (anchor === undefined) return;
    const count = (counts.get(anchor.series) ?? 0) + (anchor.own === undefined ? 1 : 0);
    counts.set(anchor.series, count);
    found.add(anchor.own ?? `${anchor.series}-${count}`);
  };
  visit(tree);
  return found;
}
