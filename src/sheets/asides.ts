/** Hazards and misconceptions as they stand beside a lesson's text. */
import type { HazardMeta, MisconceptionMeta } from '../authoring/index.ts';
import { renderSign } from '../figures/index.ts';
import { LESSON_TEXTS, SIGN_TEXTS, SIGNALS, type Language, type SignNumber } from '../texts/index.ts';
import type { HazardView } from './book.ts';
import { html, raw, type Raw } from './html/text.ts';

/** The signs of a hazard: number of ISO 7010, meaning, drawing. */
export const signsOf = (meta: HazardMeta, language: Language): HazardView['signs'] =>
  meta.signs.map((number) => ({ number, meaning: SIGN_TEXTS[language][number as SignNumber], svg: renderSign(number, language) }));

/** Signal word, signs, title, text, and where the whole sheet is: ANSI Z535. */
export function drawHazardAside(meta: HazardMeta, body: Raw, wholeSheet: string, language: Language): Raw {
  const word = meta.signal.toLowerCase();
  const signs = signsOf(meta, language).map(({ svg }) => html`<span class="sign">${raw(svg)}</span>`);
  return html`<aside class="hazard hazard-${word}"><p class="signal-line"><strong class="signal-word ${word}">${SIGNALS[language][meta.signal]}</strong> ${signs}</p><h3>${meta.title}</h3>${body}<p class="whole-sheet"><a href="${wholeSheet}">${LESSON_TEXTS[language].whatToDo}</a></p></aside>`;
}

/** What students think, what is so. */
export const drawMisconceptionAside = (meta: MisconceptionMeta, body: Raw, language: Language): Raw =>
  html`<aside class="misconception"><h3>${LESSON_TEXTS[language].quoted(meta.title)}</h3>${body}</aside>`;
