/** What must not be asked: an answer that does not exist, a wrong option that is right, two options that read alike. */
import { findingAt, type Content, type Finding, type Kit, type Place, type WithText, type QuestionMeta } from '../authoring/index.ts';
import { STYLES, type Conditions } from '../tables/index.ts';
import { toleranceIn } from './answer.ts';
import { itemOf, type Option } from './item.ts';

/** Findings of all questions of a kit, at the place of the option or the answer. */
export function checkQuestions(content: Content, kit: Kit, conditions: Conditions): Finding[] {
  return [...kit.questions].flatMap(([id, question]) => checkQuestion(content, id, question, conditions));
}

function checkQuestion(content: Content, id: string, { meta, lesson }: WithText<QuestionMeta>, conditions: Conditions): Finding[] {
  const item = itemOf(id, meta, conditions, STYLES.en);
  const { file } = lesson;
  if (item.kind === 'numeric' && item.answer.value === null) {
    return [findingAt(file, content.locate(file, ['answer']), {
      code: 'question-without-answer',
      what: 'physics has no answer for this room: saturation is not reached, or the air is too cold for liquid droplets',
      instead: 'ask at another drop, or for a quantity that exists here',
    })];
  }
  if (item.kind !== 'choice' || meta.kind !== 'choice') return [];
  const right = item.options.find((option) => option.right);
  return item.options.flatMap((option) => {
    const index = meta.options.findIndex(({ why }) => why === option.why);
    const place = (): Place => content.locate(file, ['options', index]);
    if (option.answer !== undefined && option.answer.value === null) {
      return [findingAt(file, place(), { code: 'question-without-answer', what: 'physics has no value for this option in this room', instead: 'ask at another drop, or write the option as text' })];
    }
    const twin = item.options.find((other) => other !== option && printed(other) === printed(option));
    if (twin !== undefined) {
      return [findingAt(file, place(), { code: 'options-alike', what: `two options read \`${printed(option)}\``, instead: 'change one, or ask at another drop' })];
    }
    if (right?.answer === undefined || option.right || option.answer === undefined || right.answer.value === null) return [];
    const distance = Math.abs(option.answer.value! - right.answer.value);
    if (distance > right.answer.tolerance) return [];
    return [findingAt(file, place(), {
      code: 'option-within-tolerance',
      what: `the wrong option \`${printed(option)}\` is within ±${toleranceIn(right.answer).toPrecision(2)} of the right one, \`${printed(right)}\``,
      instead: 'choose a wrong option that is farther off, or ask at another drop',
    })];
  });
}

const printed = ({ text }: Option): string => (typeof text === 'string' ? text : text.text);
