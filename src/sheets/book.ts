/** What the pages are given: a content folder with everything computed, as plain data and HTML text. */
import type { Language, TagName } from '../texts/index.ts';
import type { Item } from '../questions/index.ts';
import type { Records } from '../tables/index.ts';
import type { ReadingsView } from './readings-view.ts';

/** HTML text in two editions: for everybody, and for teachers (with what <TeacherOnly> holds). */
export interface SheetHtml {
  readonly everybody: string;
  readonly teachers: string;
}

/** A quantity ready to be read: main unit first, the second unit where people meet one. */
export interface Reading {
  readonly text: string;
  readonly also?: string;
  /** What was asked, for `data-value`, where the reader's device may ask again. */
  readonly ask?: string;
}

/** One stated condition of a kit: "Room temperature", "21.0 °C", "69.8 °F". */
export interface Condition {
  readonly label: string;
  readonly reading: Reading;
  readonly note?: string;
}

/** A worked-example table as the numbers page shows it. */
export interface TableView {
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  /** Where it stands: run, student, background or numbers. */
  readonly sheet: string;
  /** `<figure>` with caption, table, and the curve where the kind has one. */
  readonly html: string;
  /** How it was computed: formula in MathML/HTML, and what it leaves out. */
  readonly method: string;
  /** Citations, HTML. */
  readonly sources: readonly string[];
}

export interface StepView {
  /** Seconds from the bell. */
  readonly at: number;
  readonly duration: number;
  readonly title: string;
  readonly action: string;
  readonly anchor: string;
}

export interface OptionView {
  readonly letter: string;
  readonly html: string;
  readonly right: boolean;
  readonly why: string;
  readonly misconception?: string;
}

export interface QuestionView {
  readonly id: string;
  readonly number: number;
  readonly level: 1 | 2 | 3;
  /** Id of the objective that it tests. */
  readonly objective?: string;
  readonly kind: 'choice' | 'numeric' | 'ordering' | 'text';
  readonly stem: string;
  /** Choice: the options in printed order. Ordering: the items in printed (not right) order. */
  readonly options: readonly OptionView[];
  /** For teachers only: what is right, its tolerance and why. HTML. */
  readonly answer: string;
  readonly solution: string;
  /** For teachers only: the same for machines. */
  readonly item: Item;
}

export interface HazardView {
  readonly id: string;
  readonly title: string;
  readonly signal: 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE';
  /** The same in the language of the page. */
  readonly signalWord: string;
  readonly signs: readonly { readonly number: string; readonly meaning: string; readonly svg: string }[];
  readonly who: string;
  readonly html: string;
}

export interface MisconceptionView {
  readonly id: string;
  readonly title: string;
  readonly html: string;
}

export interface SourceView {
  readonly id: string;
  /** Formatted reference, HTML. */
  readonly html: string;
}

/** A number that a reader sees, before and after. */
export interface NumberChange {
  readonly label: string;
  readonly before: string;
  readonly after: string;
  /** Whether it tells an answer, or stands where only teachers read. */
  readonly forTeachers: boolean;
}

/** What is to be known of an edition since it was published: it stands first on every page and print. */
export interface NoticeView {
  readonly kind: 'correction' | 'withdrawn';
  /** Year, month and day. */
  readonly date: string;
  readonly why: string;
  /** Of an edition that is withdrawn: the version that replaces it. */
  readonly replacement?: string | undefined;
  /** Corrected numbers that are printed differently. */
  readonly numbers: readonly NumberChange[];
  /** How many more were corrected by less than is printed. */
  readonly unseen: number;
}

/** The changed passages of a sheet, HTML: `<del>` and `<ins>`; empty for everybody where only teachers' text changed. */
export interface WordsView extends SheetHtml {
  readonly sheet: 'kit' | 'run' | 'student' | 'background' | 'questions' | 'safety';
}

/** What changed from one edition of a kit to the next. */
export interface ChangeView {
  /** Versions; the last may be `draft`. */
  readonly from: string;
  readonly to: string;
  readonly words: readonly WordsView[];
  readonly numbers: readonly NumberChange[];
}

/** The changes of a kit, the newest first. */
export interface HistoryView {
  readonly kit: string;
  readonly changes: readonly ChangeView[];
}

export interface KitView {
  readonly id: string;
  /** Of an edition three numbers, of the working copy `draft`: the name of its folder in addresses. */
  readonly version: string;
  readonly draft: boolean;
  /** Year, month and day on which the edition was published; of a draft undefined. */
  readonly published?: string | undefined;
  readonly notices: readonly NoticeView[];
  /** Of an edition the one that it was published under. */
  readonly license: string;
  readonly language: Language;
  /** The kit that this one says in another language. */
  readonly translationOf?: string | undefined;
  readonly title: string;
  readonly summary: string;
  readonly ages: string;
  readonly level: string;
  readonly minutes: number;
  readonly roomTitle: string;
  readonly conditions: readonly Condition[];
  /** One sentence for headers and prints: "computed for the ground-floor laboratory: 21 °C, 1003 hPa, 97 % in the vessel". */
  readonly computedFor: string;
  readonly objectives: readonly { readonly id: string; readonly text: string }[];
  readonly materials: readonly { readonly item: string; readonly specification: string; readonly quantity: string; readonly note?: string }[];
  readonly preparation: readonly { readonly before: string; readonly task: string }[];
  readonly changes: readonly { readonly version: string; readonly date: string; readonly text: string }[];
  readonly standards: readonly { readonly code: string; readonly framework: string; readonly paraphrase: string; readonly link: string; readonly beyond?: string; /** Ids of the kit's objectives that it belongs to. */ readonly objectives: readonly string[] }[];
  readonly run: SheetHtml;
  readonly student: SheetHtml;
  readonly background: SheetHtml;
  readonly steps: readonly StepView[];
  /** Pressure and thermometer against minutes, from the simulated run; SVG. `picture` is the kit's own path for the shelf. */
  readonly runChart: string;
  /** The same with the temperature of the air itself. */
  readonly runChartForTeachers: string;
  readonly picture: string;
  /** Labelled drawing of the apparatus; SVG. */
  readonly setup: string;
  readonly tables: readonly TableView[];
  readonly questions: readonly QuestionView[];
  readonly readings: ReadingsView;
  readonly hazards: readonly HazardView[];
  readonly misconceptions: readonly MisconceptionView[];
  readonly sources: readonly SourceView[];
  /** Names of the picture files in its folder. */
  readonly pictures: readonly string[];
  /** The text of tables.json. */
  readonly tablesJson: string;
  /** The same tables for spreadsheets. */
  readonly records: readonly (Records & { readonly id: string })[];
  /** For `data-live`: what the numbers follow from. */
  readonly live: string;
  readonly apparatusTitle: string;
  /** Words for filters: equipment, hazards. */
  readonly uses: readonly TagName[];
}

/** The page that asks whether it works: HTML, and what the reader's device needs to answer again. */
export interface RoomView {
  /** For `data-live`: the first apparatus in the site's own room. */
  readonly live: string;
  /** For `data-bench`: every room and every apparatus. */
  readonly bench: string;
  /** Titles, the site's own room and the first kit's apparatus in front. */
  readonly rooms: readonly string[];
  readonly apparatus: readonly string[];
  /** In words: what is planned to be pumped. */
  readonly plan: string;
  readonly verdict: string;
  /** One row an apparatus. */
  readonly table: string;
}

export interface Book {
  readonly school: string;
  readonly address: string;
  readonly language: Language;
  readonly license: string;
  readonly answers: 'teacher-pack' | 'public';
  /** By title; the editions of one from the oldest to the newest, its draft last. */
  readonly kits: readonly KitView[];
  readonly histories: readonly HistoryView[];
  readonly hazards: readonly HazardView[];
  readonly sources: readonly SourceView[];
  /** Undefined where there is no kit to plan as. */
  readonly room?: RoomView;
  /** Stylesheet of the formulas: what KaTeX would set in style attributes. */
  readonly mathCss: string;
}
