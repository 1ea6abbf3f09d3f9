/** A kit's run sheet and questions as boards for the projector: one thing at a time, and nothing that tells before the class has said. */
import type { KitView, NoticeView, QuestionView } from '../sheets/book.ts';
import { escapeHtml } from '../sheets/html/text.ts';
import { BOARD_TEXTS, NOTICE_TEXTS, QUESTION_TEXTS } from '../texts/index.ts';
import { minutesText } from './minutes.ts';
import { editionText, noticesOf } from '../sheets/kit-edition.ts';

export interface Board {
  /** Where it stands: "Step 4 of 17 · 15 min". */
  readonly place: string;
  /** Plain text; a question has none, its stem says it all. */
  readonly title?: string;
  /** HTML that is there from the first: what to predict, or the question. */
  readonly asked?: string;
  /** HTML that comes with the next key. */
  readonly shown?: string;
  /** Of a notice: of which kind. */
  readonly notice?: NoticeView['kind'];
  /** So much text that it is set no larger than the back row needs. */
  readonly long: boolean;
}

/** Letters that fit on a screen at the usual size, options counted as lines of their own. */
const FITS = 400;
const LETTERS_OF_OPTION_LINE = 24;

/** The boards in order: what is to be known of the edition, the title, each step of the run sheet, each question. Never an answer, never a teacher's note. */
export const boardsOf = (kit: KitView): Board[] => {
  const readings = readingsOf(kit.run.everybody);
  const predictions = predictionsOf(kit.student.everybody);
  const predictSteps = kit.steps.filter(({ action }) => action === 'predict');
  return [
    ...noticesOf(kit).map((notice) => noticeBoard(notice, kit)),
    { place: `${kit.minutes} min`, title: kit.title, long: false },
    ...kit.steps.map((step, at) => stepBoard(kit, at, readings.get(step.anchor), predictions[predictSteps.indexOf(step)])),
    ...kit.questions.map((question) => questionBoard(question, kit)),
  ];
};

/** Without the corrected numbers: they would tell before the class has said. */
function noticeBoard({ kind, date, why, replacement }: NoticeView, kit: KitView): Board {
  const said = BOARD_TEXTS[kit.language];
  const instead = replacement === undefined ? '' : `<p>${NOTICE_TEXTS[kit.language].useInstead(replacement)}</p>`;
  return { place: `${editionText(kit)} · ${date}`, title: kind === 'withdrawn' ? said.withdrawn : said.corrected, asked: `<p>${escapeHtml(why)}</p>${instead}`, notice: kind, long: why.length > FITS };
}

function stepBoard({ steps, language }: KitView, index: number, reading: Readings | undefined, prediction: string | undefined): Board {
  const said = BOARD_TEXTS[language];
  const { at, title } = steps[index]!;
  const asks = [...(reading?.gauge === undefined ? [] : [said.whatGauge]), ...(reading?.look === undefined ? [] : [said.whatSeen])];
  return {
    place: said.step(index + 1, steps.length, minutesText(at, language)),
    title,
    asked: prediction ?? (asks.length === 0 ? undefined : asks.map((ask) => `<p>${ask}</p>`).join('')),
    shown: asks.length === 0 ? undefined : [reading?.gauge, reading?.look].flatMap((line) => (line === undefined ? [] : `<p>${line}</p>`)).join(''),
    long: (prediction?.replace(/<[^>]*>/g, '').length ?? 0) > FITS,
  };
}

function questionBoard({ number, level, kind, stem, options }: QuestionView, { questions, language }: KitView): Board {
  const list = options.map(({ letter, html }) => `<li><span class="letter">${letter}</span><span>${html}</span></li>`).join('');
  const asked = `${stem}${list === '' ? '' : `<ul class="options">${list}</ul>`}`;
  const letters = asked.replace(/<[^>]*>/g, '').length + options.length * LETTERS_OF_OPTION_LINE;
  return { place: BOARD_TEXTS[language].question(number, questions.length, level, QUESTION_TEXTS[language].kindsOnBoard[kind]), asked, long: letters > FITS };
}

interface Readings {
  readonly gauge?: string;
  readonly look?: string;
}

const STEP = /<section class="step [^"]*" id="([^"]+)"><p class="clock">.*?<\/p>(?:<p class="readings">(.*?)<\/p>)?<div class="deed">/gs;

/** What stands beside each step of a run sheet, by the step's anchor. */
function readingsOf(sheet: string): Map<string, Readings> {
  return new Map([...sheet.matchAll(STEP)].map(([, anchor = '', readings = '']) => {
    const lines = readings.split(/<span class="(?=reading"|look")/);
    const line = (name: string): string | undefined => lines.find((one) => one.startsWith(`${name}"`))?.slice(name.length + 2).replace(/<\/span>$/, '');
    return [anchor, { gauge: capital(line('reading')), look: capital(line('look')) }];
  }));
}

const capital = (text: string | undefined): string | undefined => text && text.charAt(0).toUpperCase() + text.slice(1);

const PREDICT = '<section class="predict">';

/** What each prediction of a student sheet asks, without its heading and its lines to write on. */
function predictionsOf(sheet: string): string[] {
  return sheet.split(PREDICT).slice(1).map((rest) => wholeSection(rest).replace(/^<h2>.*?<\/h2>/s, '').replace(/<div class="lines [^>]*><\/div>$/, ''));
}

/** The text up to the end of the section that it is inside of; sections may stand in it. */
function wholeSection(text: string): string {
  let depth = 1;
  for (const tag of text.matchAll(/<(\/?)section\b/g)) {
    depth += tag[1] === '/' ? -1 : 1;
    if (depth === 0) return text.slice(0, tag.index);
  }
  throw new RangeError('A section of a sheet has no end.');
}
