/**
 * The interface texts, one file a language; another language is one more file and its name in each line here.
 * A group for each place, so that a script brings along only the groups that it uses; a script made for one
 * language has that language's texts under every name (commands/scripts.ts).
 */
import * as en from './en.ts';
import * as es from './es.ts';

export const LANGUAGES = ['en', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** The file of a script for pages in a language: reader.js, reader-es.js. */
export const scriptName = (name: string, language: Language): string => (language === 'en' ? `${name}.js` : `${name}-${language}.js`);

export const LABELS = { en: en.labels, es: es.labels };
export const CELLS = { en: en.cells, es: es.cells };
export const MARKS = { en: en.marks, es: es.marks };
export const KIND_TITLES = { en: en.kindTitles, es: es.kindTitles };
export const CURVE_TEXTS = { en: en.curves, es: es.curves };
export const METHOD_TEXTS = { en: en.methods, es: es.methods };
export const FORMULA_WORDS = { en: en.formulaWords, es: es.formulaWords };
export const FORMULA_SPEECH = { en: en.formulaSpeech, es: es.formulaSpeech };
export const REFERENCE_TEXTS = { en: en.references, es: es.references };
export const RUN_TEXTS = { en: en.run, es: es.run };
export const PATH_TEXTS = { en: en.path, es: es.path };
export const SETUP_TEXTS = { en: en.setup, es: es.setup };
export const CODE_TEXTS = { en: en.code, es: es.code };
export const SIGN_TEXTS = { en: en.signs, es: es.signs };
export const SIGNALS = { en: en.signals, es: es.signals };
export const TAGS = { en: en.tags, es: es.tags };
export const CONDITION_TEXTS = { en: en.conditions, es: es.conditions };
export const STATED_TEXTS = { en: en.stated, es: es.stated };
export const ANSWER_TEXTS = { en: en.answers, es: es.answers };
export const KEY_TEXTS = { en: en.key, es: es.key };
export const QUESTION_TEXTS = { en: en.questions, es: es.questions };
export const PLATFORM_TEXTS = { en: en.platform, es: es.platform };
export const TABLE_TEXTS = { en: en.tableFiles, es: es.tableFiles };
export const LESSON_TEXTS = { en: en.lesson, es: es.lesson };
export const CITATION_TEXTS = { en: en.citation, es: es.citation };
export const VERDICT_TEXTS = { en: en.verdict, es: es.verdict };
export const WILL_IT_WORK_TEXTS = { en: en.willItWork, es: es.willItWork };
export const ROOM_FIELD_TEXTS = { en: en.roomFields, es: es.roomFields };
export const ROOM_TEXTS = { en: en.room, es: es.room };
export const ROOM_CONTROL_TEXTS = { en: en.roomControl, es: es.roomControl };
export const FIT_TEXTS = { en: en.fit, es: es.fit };
export const READINGS_FILE_TEXTS = { en: en.readingsFile, es: es.readingsFile };
export const OWN_READING_TEXTS = { en: en.ownReadings, es: es.ownReadings };
export const READING_TEXTS = { en: en.readings, es: es.readings };
export const FRAME_TEXTS = { en: en.frame, es: es.frame };
export const SHEET_TEXTS = { en: en.sheets, es: es.sheets };
export const KIT_TEXTS = { en: en.kit, es: es.kit };
export const SHELF_TEXTS = { en: en.shelf, es: es.shelf };
export const NOTICE_TEXTS = { en: en.notices, es: es.notices };
export const CHANGE_TEXTS = { en: en.changes, es: es.changes };
export const NUMBER_TEXTS = { en: en.numbers, es: es.numbers };
export const BOARD_TEXTS = { en: en.board, es: es.board };
export const BOARD_KEY_TEXTS = { en: en.boardKeys, es: es.boardKeys };
export const BOOKLET_TEXTS = { en: en.booklet, es: es.booklet };
export const SAFETY_TEXTS = { en: en.safety, es: es.safety };
export const SOURCE_TEXTS = { en: en.sources, es: es.sources };
export const SEARCH_TEXTS = { en: en.search, es: es.search };
export const FOUND_TEXTS = { en: en.found, es: es.found };
export const CHECK_TEXTS = { en: en.checks, es: es.checks };
export const OFFLINE_TEXTS = { en: en.offline, es: es.offline };
export const NOT_HERE_TEXTS = { en: en.notHere, es: es.notHere };
export const FILE_TEXTS = { en: en.files, es: es.files };

export type LabelName = keyof typeof en.labels;
export type CellWord = keyof typeof en.cells;
export type MarkName = keyof typeof en.marks;
export type KindName = keyof typeof en.kindTitles;
export type FormulaWords = typeof en.formulaWords;
export type ReferenceName = keyof typeof en.references;
export type SignNumber = keyof typeof en.signs;
export type MaterialName = keyof typeof en.setup.materials;
export type TagName = keyof typeof en.tags;
export type RoomFieldName = keyof typeof en.roomFields;
