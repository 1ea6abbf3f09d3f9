/** A content folder, read and checked: plain data, quantities in SI. */
import type { Place } from './findings.ts';
import type { Lesson } from './lesson.ts';
import type { RecordedReading } from './readings.ts';
import type { Apparatus } from './schemas/apparatus.ts';
import type { HazardMeta } from './schemas/hazard.ts';
import type { KitMeta } from './schemas/kit.ts';
import type { MisconceptionMeta } from './schemas/misconception.ts';
import type { Particles } from './schemas/particles.ts';
import type { QuestionMeta } from './schemas/question.ts';
import type { Room } from './schemas/room.ts';
import type { Site } from './schemas/site.ts';
import type { Source } from './schemas/sources.ts';
import type { Standards } from './schemas/standards.ts';

/** A thing whose fields stand above a text of its own. */
export interface WithText<M> {
  readonly meta: M;
  readonly lesson: Lesson;
}

/** One kit, with its sheets. */
export interface Kit {
  readonly meta: KitMeta;
  readonly run: Lesson;
  readonly student: Lesson;
  readonly background: Lesson;
  readonly questions: ReadonlyMap<string, WithText<QuestionMeta>>;
  /** recorded readings by class, each row one time, in SI */
  readonly readings: ReadonlyMap<string, readonly RecordedReading[]>;
  /** names of the picture files beside the sheets */
  readonly pictures: readonly string[];
}

/** Where a field stands in a file: the file as findings name it, then keys and indexes. */
export type Locate = (file: string, path: readonly PropertyKey[], part?: 'key' | 'value') => Place;

/** All of a content folder. Maps run in the order of their names. */
export interface Content {
  /** name of the folder, with which the file names of findings begin */
  readonly root: string;
  readonly site: Site;
  readonly rooms: ReadonlyMap<string, Room>;
  readonly apparatus: ReadonlyMap<string, Apparatus>;
  readonly particles: ReadonlyMap<string, Particles>;
  readonly hazards: ReadonlyMap<string, WithText<HazardMeta>>;
  readonly misconceptions: ReadonlyMap<string, WithText<MisconceptionMeta>>;
  readonly standards: ReadonlyMap<string, Standards>;
  readonly sources: ReadonlyMap<string, Source>;
  readonly kits: ReadonlyMap<string, Kit>;
  readonly locate: Locate;
}

/** The room in which a kit is held: its own, else the site's. */
export function roomOf(content: Content, kit: Kit): Room {
  return found(content.rooms, kit.meta.room ?? content.site.room, 'room');
}

/** The apparatus of a kit. */
export function apparatusOf(content: Content, kit: Kit): Apparatus {
  return found(content.apparatus, kit.meta.apparatus, 'apparatus');
}

/** The particles of a kit, in its order. */
export function particlesOf(content: Content, kit: Kit): readonly Particles[] {
  return kit.meta.particles.map((name) => found(content.particles, name, 'particles'));
}

function found<T>(map: ReadonlyMap<string, T>, name: string, kind: string): T {
  const value = map.get(name);
  if (value === undefined) throw new Error(`there is no ${kind} ${name}: references are checked when content is loaded`);
  return value;
}
