/** Questions: a question and its conditions -> options, answer, tolerance, marking. */
export { checkQuestions } from './check.ts';
export { answerInUnit, toleranceAsPrinted, toleranceIn, toleranceText, type Answer } from './answer.ts';
export { itemOf, type Item, type Option } from './item.ts';
export { hashOf, shuffled } from './shuffle.ts';
