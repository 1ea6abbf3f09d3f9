/** A computed quantity inside a sentence. Pure: drawn at build and again in the browser. */
import { computeValue, printValue, type PrintedValue, type ValueQuestion } from '../../tables/index.ts';
import type { Setting } from './table.ts';
import { html, NOTHING, type Raw } from './text.ts';

/** `<span class="value">`: the quantity with its unit, and the second unit where people meet either. */
export function renderValue({ of, at, unit }: ValueQuestion, { conditions, style }: Setting): Raw {
  return renderPrinted(printValue(of, computeValue(conditions, of, at), unit, style));
}

/** A quantity that is printed already. */
export const renderPrinted = ({ text, also }: PrintedValue): Raw =>
  html`<span class="value">${text}${also === undefined ? NOTHING : html`<span class="also"> (${also})</span>`}</span>`;
