/** Hazards and misconceptions as they stand beside a lesson's text. */
import type { HazardMeta, MisconceptionMeta } from '../authoring/index.ts';
import { renderSign, SIGNS } from '../figures/index.ts';
import type { HazardView } from './book.ts';
import { html, raw, type Raw } from './html/text.ts';

/** The signs of a hazard: number of ISO 7010, meaning, drawing. */
export const signsOf = (meta: HazardMeta): HazardView['signs'] =>
  meta.signs.map((number) => ({ number, meaning: SIGNS[number]?.meaning ?? number, svg: renderSign(number) }));

/** Signal word, signs, title, text, and where the whole sheet is: ANSI Z535. */
export function drawHazardAside(meta: HazardMeta, body: Raw, wholeSheet: string): Raw {
  const word = meta.signal.toLowerCase();
  const signs = signsOf(meta).map(({ svg }) => html`<span class="sign">${raw(svg)}</span>`);
  return html`<aside class="hazard hazard-${word}"><p class="signal-line"><strong class="signal-word ${word}">${meta.signal}</strong> ${signs}</p><h3>${meta.title}</h3>${body}<p class="whole-sheet"><a href="${wholeSheet}">What to do if it happens</a></p></aside>`;
}

/** What students think, what is so. */
export const drawMisconceptionAside = (meta: MisconceptionMeta, body: Raw): Raw =>
  html`<aside class="misconception"><h3>“${meta.title}”</h3>${body}</aside>`;
