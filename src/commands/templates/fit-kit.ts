/** Chooses what a new kit uses: what the content folder has where that builds, else pieces of its own. */
import { kindOfFile, loadFolder, type Content, type ContentFile, type Finding, type Folder } from '../../authoring/index.ts';
import { VOCABULARY } from '../../sheets/index.ts';
import { checkFolder } from '../read-book.ts';
import { apparatusFile, APPARATUS_USES } from './apparatus.ts';
import { foundationFiles } from './foundation.ts';
import { FIRST_SHEETS, sheetFile } from './hazard.ts';
import { kitFiles, type Equipment } from './kit.ts';
import { freeName, type NewFile } from './new-file.ts';
import { particlesFile, SOURCE_OF_KAPPA_ID } from './particles.ts';

/** Falls of pressure to try, the likeliest first. */
const DROPS = ['20 kPa', '15 kPa', '10 kPa', '7 kPa'];
/** Pieces of the content folder to try of each kind: each try checks the whole folder. */
const MOST = 3;
/** Particles whose use needs steps that the kit does not have. */
const NEEDS_STEPS = ['flame', 'ember', 'solvent'];

export type Fitted = { readonly files: readonly NewFile[] } | { readonly findings: readonly Finding[] };

/** One piece of equipment, with the files that it brings along. */
interface Piece {
  readonly name: string;
  readonly uses: readonly string[];
  readonly files: readonly NewFile[];
}

/**
 * The files of a kit that builds in this folder, whatever else they need included.
 * @param today year, month and day
 * @returns the files; or the findings about the folder as it is, with which nothing can be tried
 */
export function fitKit(folder: Folder, name: string, today: string): Fitted {
  const has = (kind: ContentFile['kind']): readonly string[] =>
    folder.files.filter((file) => file.kind === kind).map((file) => file.name);
  const hasSources = has('sources').length > 0;
  const base = (cites: boolean): NewFile[] =>
    foundationFiles({ hasSite: has('site').length > 0, hasSources, rooms: has('room'), cites });
  const { content, findings } = loadFolder(withFiles(folder, base(false)), VOCABULARY);
  if (content === undefined) return { findings };

  const free = (kind: ContentFile['kind'], wanted: string): string => freeName(wanted, (one) => has(kind).includes(one));
  const particlesName = free('particles', 'salt-mist');
  const ownParticles: Piece = {
    name: particlesName,
    uses: [],
    files: [particlesFile(particlesName, !hasSources || content.sources.has(SOURCE_OF_KAPPA_ID))],
  };
  const apparatusName = free('apparatus', 'clear-vessel');
  const ownApparatus: Piece = { name: apparatusName, uses: APPARATUS_USES, files: [apparatusFile(apparatusName)] };

  let last: readonly Finding[] = [];
  for (const apparatus of [...pumpedDown(content), ownApparatus]) {
    for (const particles of [...harmless(content), ownParticles]) {
      const sheets = hazardSheets(content, [...apparatus.uses, ...particles.uses, 'evacuated'], (wanted) => free('hazard', wanted));
      if (sheets === undefined) continue;
      for (const drop of DROPS) {
        const equipment: Equipment = { apparatus: apparatus.name, particles: particles.name, hazards: sheets.names, drop };
        const pieces = [...apparatus.files, ...particles.files, ...sheets.files];
        const files = [
          ...base(particles === ownParticles),
          ...pieces,
          ...kitFiles(name, equipment, today, content.site.language !== 'en'),
        ];
        // What stops other kits is theirs.
        last = checkFolder(withFiles(folder, files), name).findings;
        if (last.length === 0) return { files };
      }
    }
  }
  return { findings: last };
}

function pumpedDown(content: Content): Piece[] {
  return [...content.apparatus]
    .filter(([, { source, uses }]) => source.kind.endsWith('-pump') && !uses.some((tag) => NEEDS_STEPS.includes(tag)))
    .slice(0, MOST)
    .map(([name, { uses, vessel }]) => ({ name, uses: vessel.material === 'glass' ? [...uses, 'glass'] : uses, files: [] }));
}

/** The fewest dangers first. */
function harmless(content: Content): Piece[] {
  const dangers = (uses: readonly string[]): number => uses.filter((tag) => tag !== 'none').length;
  return [...content.particles]
    .filter(([, { uses }]) => !uses.some((tag) => NEEDS_STEPS.includes(tag)))
    .sort(([, a], [, b]) => dangers(a.uses) - dangers(b.uses))
    .slice(0, MOST)
    .map(([name, { uses }]) => ({ name, uses, files: [] }));
}

/** Sheets that cover all tags, those of the folder first; undefined where none does and none can be added. */
function hazardSheets(
  content: Content,
  tags: readonly string[],
  free: (wanted: string) => string,
): { readonly names: readonly string[]; readonly files: readonly NewFile[] } | undefined {
  const names: string[] = [];
  const files: NewFile[] = [];
  const left = new Set(tags.filter((tag) => tag !== 'none'));
  for (const tag of tags) {
    if (!left.has(tag)) continue;
    const there = [...content.hazards].find(([, { meta }]) => meta.covers.some((covered) => covered === tag));
    const own = FIRST_SHEETS.find(({ covers }) => covers.some((covered) => covered === tag));
    if (there !== undefined) names.push(there[0]);
    else if (own !== undefined) {
      const name = free(own.name);
      names.push(name);
      files.push(sheetFile(own, name));
    } else return undefined;
    for (const covered of there?.[1].meta.covers ?? own?.covers ?? []) left.delete(covered);
  }
  return { names, files };
}

/** The folder as it would be with these files too. */
function withFiles(folder: Folder, files: readonly NewFile[]): Folder {
  const added = files.flatMap(({ path, text }): ContentFile[] => {
    const planned = kindOfFile(path.split('/'));
    return planned === undefined ? [] : [{ ...planned, file: `${folder.root}/${path}`, text }];
  });
  return { ...folder, files: [...folder.files, ...added].sort((a, b) => (a.file < b.file ? -1 : 1)) };
}
