/** The number that answers a question, and how far from it still counts as right. */
import { ANSWER_TEXTS } from '../texts/index.ts';
import { computeValue, inUnit } from '../tables/value.ts';
import { DISPLAY_UNITS, formatNumber, UNITS_OF, type DimensionName, type Style, type UnitName } from '../tables/display.ts';
import { QUANTITIES } from '../tables/quantities.ts';
import { printValue, type PrintedValue } from '../tables/value.ts';
import type { Conditions, ValueQuestion } from '../tables/index.ts';

/** A number to be found, or one to be chosen from. */
export interface Answer {
  readonly question: ValueQuestion;
  /** SI; null where physics has no answer for the room. */
  readonly value: number | null;
  /** Half-width of what counts as right, SI. */
  readonly tolerance: number;
  readonly printed: PrintedValue;
  readonly unit: UnitName;
}

/**
 * What a student's own constants may move an answer by, standard uncertainty: c_p, R and the saturation
 * formulas of school books differ by about half a percent, which is 0.2 K in a temperature here.
 */
const STUDENT_CONSTANTS = { share: 0.005, temperature: 0.2 } as const;
const COVERAGE = 2;

/** The answer to a question in a room. */
export function answerTo(question: ValueQuestion, conditions: Conditions, style: Style): Answer {
  const { of, at, unit } = question;
  const computed = computeValue(conditions, of, at);
  const { dimension } = QUANTITIES[of];
  return {
    question,
    value: computed.value,
    tolerance: computed.value === null ? 0 : toleranceOf(computed.value, computed.uncertainty, dimension),
    printed: printValue(of, computed, unit, style),
    unit: unit ?? UNITS_OF[dimension][0],
  };
}

function toleranceOf(value: number, uncertainty: number, dimension: DimensionName): number {
  const constants = dimension === 'temperature' ? STUDENT_CONSTANTS.temperature : STUDENT_CONSTANTS.share * Math.abs(value);
  return COVERAGE * Math.hypot(uncertainty, constants);
}

/** Half-width of what counts as right, in the unit of the answer. */
export function toleranceIn({ tolerance, unit }: Answer): number {
  const { fromSi } = DISPLAY_UNITS[unit];
  return Math.abs(fromSi(tolerance) - fromSi(0));
}

/** The right answer in its unit, to the digits of its tolerance. A question without an answer in its room is refused when content is checked. */
export const answerInUnit = (answer: Answer): number => Number(inUnit(answer.value!, answer.unit).toFixed(decimalsOfTolerance(toleranceIn(answer))));

/** The half-width as it is printed. */
export function toleranceAsPrinted(answer: Answer): number {
  const width = toleranceIn(answer);
  return Number(width.toFixed(decimalsOfTolerance(width)));
}

/** Two digits of the width. */
const decimalsOfTolerance = (width: number): number => (width === 0 ? MOST_DECIMALS : Math.min(MOST_DECIMALS, Math.max(0, 1 - Math.floor(Math.log10(width)))));
const MOST_DECIMALS = 9;

/** What counts as right in words: `, right within ±0.5 °C`; nothing where there is no answer. */
export function toleranceText(answer: Answer, style: Style): string {
  const width = toleranceIn(answer);
  if (width === 0) return '';
  const { within, points } = ANSWER_TEXTS[style.language];
  return within(`${formatNumber(width, decimalsOfTolerance(width), style)} ${answer.unit === '%' ? points : DISPLAY_UNITS[answer.unit].symbol}`);
}
