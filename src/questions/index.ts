/** Questions: a question and its conditions -> options, answer, tolerance, marking. */
export { checkQuestions } from './check.ts';
export { itemOf, TOLERANCE_RULE, toleranceIn, type Answer, type Item, type Option } from './item.ts';
export { hashOf, shuffled } from './shuffle.ts';
