/** What every content folder needs besides the thing that is made: the site's file, the sources, a room. */
import { schemaLine } from '../../authoring/index.ts';
import type { NewFile } from './new-file.ts';
import { roomFile } from './room.ts';
import { SOURCE_OF_KAPPA } from './particles.ts';

/** The room that is written where there is none. */
const FIRST_ROOM = 'our-room';

export interface Foundation {
  readonly hasSite: boolean;
  readonly hasSources: boolean;
  /** of those that are there or are being made */
  readonly rooms: readonly string[];
  /** whether what is being made cites the source on particles */
  readonly cites: boolean;
}

/** The files that are missing, none in a folder that has them. */
export function foundationFiles({ hasSite, hasSources, rooms, cites }: Foundation): NewFile[] {
  const room = rooms[0] ?? FIRST_ROOM;
  return [
    ...(hasSite ? [] : [siteFile(room), ...(rooms.length > 0 ? [] : [roomFile(FIRST_ROOM)])]),
    ...(hasSources ? [] : [sourcesFile(cites)]),
  ];
}

const siteFile = (room: string): NewFile => ({
  path: 'site.yaml',
  text: `${schemaLine('site', 'site.yaml')}
# The school and its site. Change each line to your own.

# The name of the school, as every page shows it.
school: Our school
# Where the site will stand, with its folder.
address: https://school.example/lessons/
# en or es.
language: en
# The room of every kit that names none: a file in rooms/.
room: ${room}
# The license under which others may use your lessons.
license: CC-BY-4.0
# teacher-pack keeps the answers off the public site; public puts them there.
answers: teacher-pack
# true shows kits that are not yet published, marked as drafts.
drafts: true
# How readers reach you: take the # away and write your own.
# contact: mailto:science@school.example
`,
});

const sourcesFile = (cites: boolean): NewFile => ({
  path: 'sources.yaml',
  text: `${schemaLine('sources', 'sources.yaml')}
# Where facts and figures come from, in the fields of CSL-JSON.
# Text cites a source by its id: <Source id="petters-kreidenweis-2007"/>. One that nothing cites is a finding.
${cites ? SOURCE_OF_KAPPA : `# An item looks like this; when you write the first, take the line \`[]\` away:\n#\n${commented(SOURCE_OF_KAPPA)}[]\n`}`,
});

const commented = (text: string): string => text.replace(/^/gm, '# ').replace(/# $/, '');
