/** Reads a content folder: every file checked, every reference followed, all findings at once. */
import type { z } from 'zod';
import type { Content, Kit, WithText } from './content.ts';
import { findingAt, sortFindings, START, type Finding } from './findings.ts';
import { readFolder, type ContentFile, type Folder } from './folder.ts';
import { hiddenCharacters } from './hidden.ts';
import { filesOf, groupByKit } from './kit-files.ts';
import { parseLesson, readFrontMatter, type Lesson, type LessonResult } from './lesson.ts';
import { deadLinks } from './links.ts';
import { proposeValues } from './propose.ts';
import { readReadings, type RecordedReading } from './readings.ts';
import { REQUIRED, REQUIRED_IN_KIT, type FileKind } from './plan.ts';
import { checkReferences } from './references.ts';
import { checkData, type LocateField } from './schema.ts';
import {
  schemasOf, type Apparatus, type HazardMeta, type KitMeta, type MisconceptionMeta, type Particles, type QuestionMeta, type Room, type Site, type Source, type Standards,
} from './schemas/index.ts';
import { SHEET_KINDS, type SheetKind, type Vocabulary } from './vocabulary.ts';
import { readYaml, type YamlSource } from './yaml.ts';

/** A content folder as loaded. */
export interface Loaded {
  /** undefined if there is any finding */
  readonly content: Content | undefined;
  readonly findings: readonly Finding[];
  readonly files: readonly LoadedFile[];
}

/** What the fields of each kind of file say. */
interface DataOf {
  readonly site: Site;
  readonly sources: readonly Source[];
  readonly room: Room;
  readonly apparatus: Apparatus;
  readonly particles: Particles;
  readonly hazard: HazardMeta;
  readonly misconception: MisconceptionMeta;
  readonly standards: Standards;
  readonly kit: KitMeta;
  readonly question: QuestionMeta;
  readonly readings: readonly RecordedReading[];
  readonly run: undefined;
  readonly student: undefined;
  readonly background: undefined;
  readonly picture: undefined;
}

/** What one file says, read and checked by itself. */
interface ReadFile {
  /** of the kind's schema; undefined if wrong or of a kind without fields */
  readonly data: unknown;
  readonly lesson: Omit<LessonResult, 'frontMatter'> | undefined;
  readonly findings: readonly Finding[];
}

/** One file, and what it says. */
export type LoadedFile<K extends FileKind = FileKind> = {
  readonly [One in K]: ContentFile & ReadFile & { readonly kind: One; readonly data: DataOf[One] | undefined; /** where a field stands */ readonly locate: LocateField };
}[K];

/**
 * Loads a content folder.
 * @param directory of the folder; findings name files by its last part
 * @param vocabulary of lesson text and of questions' values
 */
export async function loadContent(directory: string, vocabulary: Vocabulary): Promise<Loaded> {
  return loadFolder(await readFolder(directory), vocabulary);
}

/** Checks a folder that was read, and assembles it: pure. */
export function loadFolder(folder: Folder, vocabulary: Vocabulary): Loaded {
  const schemaOf: Schemas = schemasOf(vocabulary);
  // The schema of a kind has checked that its data is of that kind.
  const files = folder.files.map((file) => ({ ...file, ...readOne(file, vocabulary, schemaOf[file.kind]), locate: placesIn(file) }) as LoadedFile);
  const findings = [...folder.findings, ...files.flatMap(({ file, text }) => hiddenCharacters(file, text ?? '')), ...files.flatMap((file) => file.findings)];
  findings.push(...missingFiles(folder.root, files));
  // What was published so is read as it was.
  if (folder.isEdition !== true) findings.push(...deadLinks(files, vocabulary));
  findings.push(...checkReferences(folder, files, findings.length === 0));
  const content = findings.length === 0 ? assemble(folder.root, files) : undefined;
  return { content, findings: sortFindings(proposeValues(findings, files, vocabulary)), files };
}

type Schemas = Readonly<Partial<Record<ContentFile['kind'], z.ZodType>>>;

const NOTHING: ReadFile = { data: undefined, lesson: undefined, findings: [] };

function readOne({ text, kind, file }: ContentFile, vocabulary: Vocabulary, schema: z.ZodType | undefined): ReadFile {
  if (text === undefined || kind === 'picture') return NOTHING;
  if (kind === 'readings') {
    const { readings, findings } = readReadings(text, file);
    return { ...NOTHING, data: readings, findings };
  }
  if (isSheetKind(kind)) {
    const { frontMatter, ...lesson } = parseLesson(text, file, kind, vocabulary);
    return withData({ ...NOTHING, lesson, findings: lesson.findings }, frontMatter, schema);
  }
  const yaml = readYaml(text, file);
  return withData({ ...NOTHING, findings: yaml.findings }, yaml, schema);
}

function withData(read: ReadFile, yaml: YamlSource | undefined, schema: z.ZodType | undefined): ReadFile {
  if (schema === undefined || yaml?.data === undefined) return read;
  const { data, findings } = checkData(schema, yaml.data, yaml.file, yaml.locate);
  return { ...read, data, findings: [...read.findings, ...findings] };
}

/** Places of a file's fields. Only findings have a place, so that the file is read for it when the first is asked for. */
function placesIn({ text = '', kind, file }: ContentFile): LocateField {
  let yaml: YamlSource | undefined;
  return (path, part) => (yaml ??= fieldsOf(text, file, kind))?.locate(path, part) ?? START;
}

function fieldsOf(text: string, file: string, kind: ContentFile['kind']): YamlSource | undefined {
  if (kind === 'readings' || kind === 'picture') return undefined;
  return isSheetKind(kind) ? readFrontMatter(text, file) : readYaml(text, file);
}

function isSheetKind(kind: string): kind is SheetKind {
  return (SHEET_KINDS as readonly string[]).includes(kind);
}

function missingFiles(root: string, files: readonly LoadedFile[]): Finding[] {
  const there = new Set(files.map(({ file }) => file));
  const kits = new Set(files.map(({ kit }) => kit).filter((kit) => kit !== undefined));
  const required = [...REQUIRED, ...[...kits].flatMap((kit) => REQUIRED_IN_KIT.map((file) => `kits/${kit}/${file}`))];
  return required
    .map((path) => `${root}/${path}`)
    .filter((path) => !there.has(path))
    .map((path) => findingAt(path, START, { code: 'missing-file', what: 'this file is missing', instead: 'add it' }));
}

/** Only called without findings: every file is there, and its data is of its schema. */
function assemble(root: string, files: readonly LoadedFile[]): Content {
  const byKit = groupByKit(files);
  const named = <K extends FileKind>(kind: K, of = files): Map<string, DataOf[K]> => new Map(filesOf(of, kind).map((file) => [file.name, dataOf(file)]));
  const withText = <K extends FileKind>(kind: K, of = files): Map<string, WithText<DataOf[K]>> =>
    new Map(filesOf(of, kind).map((file) => [file.name, { meta: dataOf(file), lesson: lessonOf(file) }]));
  const kitOf = (file: LoadedFile<'kit'>): Kit => {
    const own = byKit.get(file.kit ?? '') ?? [];
    return {
      meta: dataOf(file),
      run: lessonOf(filesOf(own, 'run')[0]),
      student: lessonOf(filesOf(own, 'student')[0]),
      background: lessonOf(filesOf(own, 'background')[0]),
      questions: withText('question', own),
      readings: named('readings', own),
      pictures: filesOf(own, 'picture').map((picture) => picture.file.slice(picture.file.lastIndexOf('/') + 1)),
    };
  };
  const places = new Map(files.map(({ file, locate }) => [file, locate]));
  return {
    root,
    site: dataOf(filesOf(files, 'site')[0]),
    rooms: named('room'),
    apparatus: named('apparatus'),
    particles: named('particles'),
    hazards: withText('hazard'),
    misconceptions: withText('misconception'),
    standards: named('standards'),
    sources: new Map(dataOf(filesOf(files, 'sources')[0]).map((source) => [source.id, source])),
    kits: new Map(filesOf(files, 'kit').map((file) => [file.kit ?? '', kitOf(file)])),
    locate: (file, path, part) => places.get(file)?.(path, part) ?? START,
  };
}

function dataOf<K extends FileKind>(file: LoadedFile<K> | undefined): DataOf[K] {
  if (file?.data === undefined) throw new Error('a file with findings reached the content');
  return file.data;
}

function lessonOf(file: Pick<ReadFile, 'lesson'> | undefined): Lesson {
  if (file?.lesson?.lesson === undefined) throw new Error('a lesson with findings reached the content');
  return file.lesson.lesson;
}
