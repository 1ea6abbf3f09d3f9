/** The answer to “will it work here?” in a sentence, with its reasons. Pure: drawn at build and again in the browser. */
import { formatWithUnit, inOrder, UNITS_OF, verdictOn, type Conditions, type DimensionName, type NumberStyle, type Obstacle, type Verdict } from '../../tables/index.ts';
import { renderPrinted } from './value.ts';
import { html, NOTHING, type Raw } from './text.ts';

/** To how much a verdict is worth saying, standard uncertainty in SI: a gauge is read to 0.1 kPa at best, a temperature to 0.1 K. */
const WORTH: Partial<Record<DimensionName, number>> = { pressure: 100, temperatureDifference: 0.1, clock: 1, count: 1, fraction: 0.01 };

type Print = (dimension: DimensionName, value: number, digits?: number) => Raw;

/** A margin smaller than this share of the rating is worth a word. */
const NARROW = 0.1;

/** The sentence, the reasons, and what to change. */
export function renderVerdict(conditions: Conditions, style?: NumberStyle): Raw {
  const verdict = verdictOn(conditions);
  const print: Print = (dimension, value, worth = WORTH[dimension] ?? 0) => {
    const [main, also] = inOrder(UNITS_OF[dimension], style);
    return renderPrinted({ text: formatWithUnit(main, value, worth, style), also: also && formatWithUnit(also, value, worth, style) });
  };
  const change = verdict.works ? NOTHING : html`<h3>What to change</h3><ul class="plain">${verdict.obstacles.map((obstacle) => html`<li>${CHANGES[obstacle](verdict, print)}</li>`)}</ul>`;
  return html`<div class="verdict"><p class="${verdict.works ? 'answer-yes' : 'answer-no'}">${sentence(verdict, print)}</p><ul class="plain reasons-of-verdict">${reasons(verdict, conditions, print).map((reason) => html`<li>${reason}</li>`)}</ul>${change}</div>`;
}

/** One row of the table of apparatus: will it work, from what drop, with how many strokes, gauge, thermometer, margin. */
export function verdictCells(conditions: Conditions, style?: NumberStyle): readonly Raw[] {
  const verdict = verdictOn(conditions);
  const print: Print = (dimension, value, worth = WORTH[dimension] ?? 0) => html`${formatWithUnit(inOrder(UNITS_OF[dimension], style)[0], value, worth, style)}`;
  const or = (value: number | null, dimension: DimensionName): Raw => (value === null ? html`–` : print(dimension, value));
  return [
    html`${verdict.works ? 'yes' : 'no'}`, or(verdict.onsetDrop, 'pressure'), or(verdict.seenDrop, 'pressure'), or(verdict.strokes, 'count'), or(verdict.seconds, 'clock'),
    print('pressure', verdict.gauge), or(verdict.thermometerLargestFall, 'temperatureDifference'), print('pressure', verdict.ratingMargin),
  ];
}

function sentence(verdict: Verdict, print: Print): Raw {
  const { works, obstacles, drop, seenDrop } = verdict;
  if (works) return html`<strong>Yes.</strong> Pumped ${print('pressure', drop)} below its start, this air makes a cloud; it is seen from ${print('pressure', seenDrop ?? drop)} on.`;
  const first = obstacles[0]!;
  return html`<strong>No.</strong> ${REASONS[first](verdict, print)}`;
}

const REASONS: Readonly<Record<Obstacle, (verdict: Verdict, print: Print) => Raw>> = {
  rating: ({ gauge, lowestRated }, print) => html`The gauge would go to ${print('pressure', gauge)}, and the vessel is rated by its maker down to ${print('pressure', lowestRated)} only.`,
  gauge: ({ gauge }, print) => html`The gauge does not show ${print('pressure', gauge)}.`,
  pump: ({ drop, deepestDrop }, print) => html`The pump does not come down by ${print('pressure', drop)}; here it ends at ${print('pressure', deepestDrop)}.`,
  dry: ({ onsetDrop, deepestDrop }, print) => onsetDrop === null
    ? html`The air is so dry or cold that no fall in pressure saturates it before droplets would freeze.`
    : html`The air is too dry: it becomes saturated only at ${print('pressure', onsetDrop)}, and vessel, gauge and pump allow ${print('pressure', deepestDrop)}.`,
  shallow: ({ drop, seenDrop, onsetDrop }, print) => html`At ${print('pressure', drop)} there is no cloud that can be seen yet; that takes ${print('pressure', seenDrop ?? onsetDrop ?? drop)}.`,
  frozen: () => html`The droplets would be colder than −38 °C, where they freeze by themselves: a cloud of ice, of which these numbers say nothing.`,
  unseen: () => html`The cloud stays too thin to be seen across this vessel in its light.`,
};

const CHANGES: Readonly<Record<Obstacle, (verdict: Verdict, print: Print) => Raw>> = {
  rating: ({ deepestDrop }, print) => html`Stay within the rating: pump by no more than ${print('pressure', Math.max(0, deepestDrop))}, or take a vessel rated for more. Never test a rating by trying.`,
  gauge: () => html`Take a gauge whose range holds the whole run, or pump less far.`,
  pump: ({ deepestDrop }, print) => html`Plan ${print('pressure', Math.max(0, deepestDrop))} or less, or take a pump that comes lower.`,
  dry: ({ neededHumidity }, print) => neededHumidity === null
    ? html`Warm the room: at this temperature even moist air holds too little vapor.`
    : html`Moisten the air: a little water in the closed vessel for some minutes. From ${print('fraction', neededHumidity)} humidity on, cloud begins at half of the planned drop.`,
  shallow: ({ drop, seenDrop, onsetDrop, neededHumidity }, print) => html`Pump by ${print('pressure', seenDrop ?? onsetDrop ?? drop)} or more${neededHumidity === null ? NOTHING : html`, or moisten the air in the vessel to ${print('fraction', neededHumidity)}`}.`,
  frozen: () => html`Pump less far, or start warmer.`,
  unseen: () => html`Let in particles, light it from the side against black, or take a wider vessel.`,
};

function reasons(verdict: Verdict, { apparatus }: Conditions, print: Print): Raw[] {
  const { onsetDrop, strokes, seconds, gauge, ratingMargin, lowestRated, airFall, thermometerFall, thermometerLargestFall, obstacles } = verdict;
  const { resolution } = apparatus.thermometer;
  return [
    onsetDrop === null ? undefined : html`The air in the vessel becomes saturated at ${print('pressure', onsetDrop)} below its start.`,
    ...obstacles.slice(1).map((obstacle) => REASONS[obstacle](verdict, print)),
    strokes === null ? undefined : html`The pump takes ${print('count', strokes)} ${strokes === 1 ? 'stroke' : 'strokes'}${seconds === null ? NOTHING : html`, about ${print('clock', seconds)}`}.`,
    strokes !== null || seconds === null ? undefined : html`Pumping takes about ${print('clock', seconds)}.`,
    html`The gauge shows ${print('pressure', gauge)} against the room.`,
    airFall === null ? undefined : html`Without droplets the air cools by ${print('temperatureDifference', airFall)}.`,
    thermometerFall === null || thermometerLargestFall === null ? undefined
      : html`The thermometer falls by ${print('temperatureDifference', thermometerFall)} as pumping ends and by ${print('temperatureDifference', thermometerLargestFall)} at most${thermometerLargestFall < 2 * resolution ? ', which it hardly shows: take a quicker or finer one' : ''}.`,
    ratingMargin < 0 ? undefined : html`To the vessel’s rating of ${print('pressure', lowestRated)} there are ${print('pressure', ratingMargin)} left${ratingMargin < NARROW * Math.abs(lowestRated) ? ': little' : ''}.`,
  ].filter((reason) => reason !== undefined);
}
