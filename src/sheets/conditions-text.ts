/** The conditions in words: what every page, table and print says it was computed for. */
import { computeValue, formatWithUnit, printValue, startsAbove, type Conditions, type Parameters, type Style, type QuantityName } from '../tables/index.ts';
import { CONDITION_TEXTS, STATED_TEXTS } from '../texts/index.ts';
import type { Condition } from './book.ts';
import { writeValueQuestion } from './html/ask.ts';

const STATED = [
  'roomPressure',
  'roomTemperature',
  'roomHumidity',
  'startHumidity',
  'vesselVolume',
  'rating',
  'plannedDrop',
  'gaugeResolution',
  'thermometerResolution',
] as const satisfies readonly (QuantityName | 'rating')[];

/** The stated conditions, one by one. */
export function conditionsList(conditions: Conditions, style: Style): Condition[] {
  const said = STATED_TEXTS[style.language];
  const rating = startsAbove(conditions.apparatus) ? 'ratedHighestGauge' : 'ratedLowestGauge';
  return STATED.map((stated) => {
    const of = stated === 'rating' ? rating : stated;
    return { label: said[of], reading: { ...printValue(of, computeValue(conditions, of, {}), undefined, style), ask: writeValueQuestion({ of, at: {} }) }, note: of === rating ? said.byItsMaker : undefined };
  });
}

/**
 * One sentence: `Computed for Room 14: 21.0 °C, 100.3 kPa, 97 % in the vessel`.
 * @param at what a table is asked at in place of the kit's own conditions
 */
export function computedFor(conditions: Conditions, style: Style, at: Parameters = {}): string {
  const said = CONDITION_TEXTS[style.language];
  const text = (of: QuantityName): string => printValue(of, computeValue(conditions, of, at), undefined, style).text;
  const room = at.elevation === undefined ? conditions.roomTitle : said.elsewhere(text('elevation'));
  const sentence = said.computedFor(room, text('roomTemperature'), text('roomPressure'), text('startHumidity'));
  const asked = [
    at.drop !== undefined && said.drop(text('pressureDrop')),
    at.number !== undefined && said.number(text('particleNumber')),
    at.particles !== undefined && conditions.particles.find(({ id }) => id === at.particles)?.title,
    at.cloudEvery !== undefined && said.cloudEvery(formatWithUnit('min', at.cloudEvery, 0, style)),
  ].filter((part) => typeof part === 'string');
  return [sentence, ...asked].join(', ');
}
