/** A computed quantity inside a sentence. Pure: drawn at build and again in the browser. */
import { computeValue, printValue, type PrintedValue, type ValueQuestion } from '../../tables/index.ts';
import { writeValueQuestion } from './ask.ts';
import type { Setting } from './table.ts';
import { html, NOTHING, type Raw } from './text.ts';

/** `<span class="value">`: the quantity with its unit, and the second unit where people meet either. */
export function renderValue(question: ValueQuestion, { conditions, style }: Setting): Raw {
  const { of, at, unit } = question;
  return html`<span class="value" data-value="${writeValueQuestion(question)}">${renderPrinted(printValue(of, computeValue(conditions, of, at), unit, style))}</span>`;
}

/** A quantity as printed, the second unit in parentheses. */
export const renderPrinted = ({ text, also }: PrintedValue): Raw => html`${text}${also === undefined ? NOTHING : html`<span class="also"> (${also})</span>`}`;
