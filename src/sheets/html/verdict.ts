/** The answer to “will it work here?” in a sentence, with its reasons. Pure: drawn at build and again in the browser. */
import { formatWithUnit, inOrder, UNITS_OF, verdictOn, type Conditions, type DimensionName, type Style, type Obstacle, type Verdict } from '../../tables/index.ts';
import { VERDICT_TEXTS } from '../../texts/index.ts';
import { renderPrinted } from './value.ts';
import { html, NOTHING, raw, type Raw } from './text.ts';

/** To how much a verdict is worth saying, standard uncertainty in SI: a gauge is read to 0.1 kPa at best, a temperature to 0.1 K. */
const WORTH: Partial<Record<DimensionName, number>> = { pressure: 100, temperatureDifference: 0.1, clock: 1, count: 1, fraction: 0.01 };

type Print = (dimension: DimensionName, value: number) => string;
type Said = (typeof VERDICT_TEXTS)['en'];

/** A margin smaller than this share of the rating is worth a word. */
const NARROW = 0.1;

/** The sentence, the reasons, and what to change. */
export function renderVerdict(conditions: Conditions, style: Style): Raw {
  const verdict = verdictOn(conditions);
  const said = VERDICT_TEXTS[style.language];
  const print: Print = (dimension, value) => {
    const [main, also] = inOrder(UNITS_OF[dimension], style);
    const worth = WORTH[dimension] ?? 0;
    return html`<span class="value">${renderPrinted({ text: formatWithUnit(main, value, worth, style), also: also && formatWithUnit(also, value, worth, style) })}</span>`.html;
  };
  const items = (texts: readonly string[]): Raw[] => texts.map((text) => html`<li>${raw(text)}</li>`);
  const change = verdict.works ? NOTHING : html`<h3>${said.whatToChange}</h3><ul class="plain">${items(verdict.obstacles.map((obstacle) => CHANGES[obstacle](verdict, print, said)))}</ul>`;
  return html`<div class="verdict"><p class="${verdict.works ? 'answer-yes' : 'answer-no'}">${sentence(verdict, print, said)}</p><ul class="plain reasons-of-verdict">${items(reasons(verdict, conditions, print, said))}</ul>${change}</div>`;
}

/** One row of the table of apparatus: will it work, from what drop, with how many strokes, gauge, thermometer, margin. */
export function verdictCells(conditions: Conditions, style: Style): readonly string[] {
  const verdict = verdictOn(conditions);
  const said = VERDICT_TEXTS[style.language];
  const print: Print = (dimension, value) => formatWithUnit(inOrder(UNITS_OF[dimension], style)[0], value, WORTH[dimension] ?? 0, style);
  const or = (value: number | null, dimension: DimensionName): string => (value === null ? '–' : print(dimension, value));
  return [
    verdict.works ? said.works : said.fails, or(verdict.onsetDrop, 'pressure'), or(verdict.seenDrop, 'pressure'), or(verdict.strokes, 'count'), or(verdict.seconds, 'clock'),
    print('pressure', verdict.gauge), or(verdict.thermometerLargestFall, 'temperatureDifference'), print('pressure', verdict.ratingMargin),
  ];
}

function sentence(verdict: Verdict, print: Print, said: Said): Raw {
  const { works, obstacles, drop, seenDrop } = verdict;
  if (works) return html`<strong>${said.yes}</strong> ${raw(said.cloud(print('pressure', drop), print('pressure', seenDrop ?? drop)))}`;
  return html`<strong>${said.no}</strong> ${raw(REASONS[obstacles[0]!](verdict, print, said))}`;
}

/** What a text makes of a verdict; HTML, since what goes into it is. */
type Tell = (verdict: Verdict, print: Print, said: Said) => string;

const REASONS: Readonly<Record<Obstacle, Tell>> = {
  rating: ({ gauge, rated }, print, said) => said.rating(print('pressure', gauge), print('pressure', rated)),
  gauge: ({ gauge }, print, said) => said.gauge(print('pressure', gauge)),
  pump: ({ drop, deepestDrop }, print, said) => said.pump(print('pressure', drop), print('pressure', deepestDrop)),
  dry: ({ onsetDrop, deepestDrop }, print, said) => (onsetDrop === null ? said.neverSaturated : said.dry(print('pressure', onsetDrop), print('pressure', deepestDrop))),
  shallow: ({ drop, seenDrop, onsetDrop }, print, said) => said.shallow(print('pressure', drop), print('pressure', seenDrop ?? onsetDrop ?? drop)),
  frozen: (_, __, said) => said.frozen,
  unseen: (_, __, said) => said.unseen,
};

const CHANGES: Readonly<Record<Obstacle, Tell>> = {
  rating: ({ deepestDrop }, print, said) => said.stayWithin(print('pressure', Math.max(0, deepestDrop))),
  gauge: (_, __, said) => said.otherGauge,
  pump: ({ deepestDrop }, print, said) => said.planLess(print('pressure', Math.max(0, deepestDrop))),
  dry: ({ neededHumidity }, print, said) => (neededHumidity === null ? said.warmRoom : said.moisten(print('fraction', neededHumidity))),
  shallow: ({ drop, seenDrop, onsetDrop, neededHumidity }, print, said) => {
    const needed = print('pressure', seenDrop ?? onsetDrop ?? drop);
    return neededHumidity === null ? said.pumpMore(needed) : said.pumpMoreOrMoisten(needed, print('fraction', neededHumidity));
  },
  frozen: (_, __, said) => said.pumpLess,
  unseen: (_, __, said) => said.letInParticles,
};

function reasons(verdict: Verdict, { apparatus }: Conditions, print: Print, said: Said): string[] {
  const { onsetDrop, strokes, seconds, gauge, ratingMargin, rated, airFall, thermometerFall, thermometerLargestFall, obstacles } = verdict;
  const falls = thermometerLargestFall !== null && thermometerLargestFall < 2 * apparatus.thermometer.resolution ? said.thermometerHardly : said.thermometerFalls;
  const margin = ratingMargin < NARROW * Math.abs(rated) ? said.littleMargin : said.margin;
  return [
    onsetDrop === null ? undefined : said.saturatedAt(print('pressure', onsetDrop)),
    ...obstacles.slice(1).map((obstacle) => REASONS[obstacle](verdict, print, said)),
    strokes === null ? undefined : seconds === null ? said.strokes(print('count', strokes), strokes) : said.strokesAndTime(print('count', strokes), strokes, print('clock', seconds)),
    strokes !== null || seconds === null ? undefined : said.time(print('clock', seconds)),
    said.gaugeShows(print('pressure', gauge)),
    airFall === null ? undefined : said.airCools(print('temperatureDifference', airFall)),
    thermometerFall === null || thermometerLargestFall === null ? undefined : falls(print('temperatureDifference', thermometerFall), print('temperatureDifference', thermometerLargestFall)),
    ratingMargin < 0 ? undefined : margin(print('pressure', rated), print('pressure', ratingMargin)),
  ].filter((reason) => reason !== undefined);
}
