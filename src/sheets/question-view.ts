/** A question as the pages show it: stem and options for everybody, answer and reasons for teachers. */
import type { QuestionMeta } from '../authoring/index.ts';
import { itemOf, toleranceText, type Answer, type Item, type Option } from '../questions/index.ts';
import type { Style } from '../tables/index.ts';
import { KEY_TEXTS, QUESTION_TEXTS } from '../texts/index.ts';
import type { OptionView, QuestionView } from './book.ts';
import { writeValueQuestion } from './html/ask.ts';
import { html, NOTHING, raw, type Raw } from './html/text.ts';
import type { Setting } from './html/table.ts';
import { renderValue } from './html/value.ts';

const LETTERS = 'ABCDEFGH';

/** Everything of a question that a page needs. */
export function questionView(
  id: string,
  number: number,
  meta: QuestionMeta,
  setting: Setting,
  text: { readonly stem: Raw; readonly solution: Raw },
): QuestionView {
  const item = itemOf(id, meta, setting.conditions, setting.style);
  const options = optionsOf(item, setting);
  return {
    id, number, level: meta.level, objective: meta.objective, kind: meta.kind, stem: text.stem.html, options,
    answer: answerOf(item, options, setting).html,
    solution: text.solution.html,
    item,
  };
}

/** A question inside a sheet: its stem and options, and where it stands among the others. */
export function drawQuestion(id: string, meta: QuestionMeta, setting: Setting, stem: Raw): Raw {
  const options = optionsOf(itemOf(id, meta, setting.conditions, setting.style), setting);
  const list = options.length === 0 ? NOTHING : html`<ul class="options">${options.map(({ letter, html: text }) => html`<li><span class="letter">${letter}</span><span>${raw(text)}</span></li>`)}</ul>`;
  return html`<section class="asked">${stem}${list}<p class="whole-sheet"><a href="../questions/index.html#question-${id}">${QUESTION_TEXTS[setting.style.language].among}</a></p></section>`;
}

function optionsOf(item: Item, setting: Setting): OptionView[] {
  if (item.kind === 'choice') {
    return item.options.map(({ text, answer, right, why, misconception }: Option, i) => ({
      letter: LETTERS[i]!,
      html: (answer === undefined ? html`${text as string}` : renderValue(answer.question, setting)).html,
      right, why, misconception,
    }));
  }
  if (item.kind === 'ordering') return item.items.map((text, i) => ({ letter: LETTERS[i]!, html: html`${text}`.html, right: false, why: '' }));
  return [];
}

function answerOf(item: Item, options: readonly OptionView[], setting: Setting): Raw {
  const said = KEY_TEXTS[setting.style.language];
  switch (item.kind) {
    case 'numeric':
      return html`<p><strong>${renderValue(item.answer.question, setting)}</strong>${tolerance(item.answer, item.isComputed, setting.style)}${item.accepts.length === 0 ? NOTHING : html` ${said.alsoRight(item.accepts.join(', '))}`}</p><p class="rule">${item.isComputed ? said.rule : said.authorsRule}</p>`;
    case 'choice': {
      const rows = options.map(({ letter, right, why }) => html`<li><strong>${letter}</strong> ${right ? said.right : said.wrong}: ${why}</li>`);
      return html`<ul class="reasons">${rows}</ul>`;
    }
    case 'ordering':
      return html`<p>${said.rightOrder}</p><ol>${item.rightOrder.map((text) => html`<li>${text}</li>`)}</ol>`;
    case 'text': {
      const total = item.rubric.reduce((sum, { points }) => sum + points, 0);
      return html`<p>${said.markedOutOf(String(total))}</p><ul class="rubric">${item.rubric.map(({ points, text }) => html`<li><strong>${points}</strong> ${text}</li>`)}</ul>`;
    }
  }
}

/** Half-width of what counts as right; one that the room decides names its question, so that it can be asked again. */
function tolerance(answer: Answer, isComputed: boolean, style: Style): Raw {
  const text = toleranceText(answer, style);
  return isComputed ? html`<span data-tolerance="${writeValueQuestion(answer.question)}">${text}</span>` : html`${text}`;
}
