/** “Will it work here?”: every apparatus of the site in its rooms, for a page that answers before anybody has set anything. */
import type { Content } from '../authoring/index.ts';
import { printValue, STYLES, type Room } from '../tables/index.ts';
import { WILL_IT_WORK_TEXTS } from '../texts/index.ts';
import type { RoomView } from './book.ts';
import { writeLive, type Live } from './html/live.ts';
import { html } from './html/text.ts';
import { renderVerdict, verdictCells } from './html/verdict.ts';
import { conditionsOf, movingLevels } from './kit-conditions.ts';
import { languageOf } from './kit-view.ts';

/** The page's data: planned drop, start and particles are those of the first kit, of those in the site's language if there is one; undefined where there is none. */
export function roomView(content: Content): RoomView | undefined {
  const kits = [...content.kits.values()];
  const kit = kits.find((one) => languageOf(content, one) === content.site.language) ?? kits[0];
  if (kit === undefined) return undefined;
  const { language, room: own } = content.site;
  const style = STYLES[language];
  const said = WILL_IT_WORK_TEXTS[language];
  const conditionsIn = (apparatus: string, inRoom: string) => conditionsOf(content, { ...kit, meta: { ...kit.meta, apparatus, room: inRoom } });
  const apparatus = inFront([...content.apparatus.keys()], kit.meta.apparatus);
  const rooms = inFront([...content.rooms.keys()], own);
  const lives = apparatus.map((id): Live => ({ conditions: conditionsIn(id, own), moving: movingLevels(content.apparatus.get(id)!), language }));
  const rows = lives.map(({ conditions }) => html`<tr><th scope="row">${conditions.apparatus.title}</th>${verdictCells(conditions, style).map((cell) => html`<td>${cell}</td>`)}</tr>`);
  return {
    live: writeLive(lives[0]!),
    bench: JSON.stringify({ rooms: rooms.map((id) => roomFrom(conditionsIn(apparatus[0]!, id))), apparatus: lives }),
    rooms: rooms.map((id) => content.rooms.get(id)!.title),
    apparatus: apparatus.map((id) => content.apparatus.get(id)!.title),
    plan: said.plan(kit.meta.title, printValue('plannedDrop', { value: kit.meta.drop.value, uncertainty: 0 }, 'kPa', style).text),
    verdict: renderVerdict(lives[0]!.conditions, style).html,
    table: html`<table class="words bench"><caption class="unseen">${said.each}</caption><thead><tr><th scope="col">${said.apparatus}</th>${Object.values(said.heads).map((head) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${rows}</tbody></table>`.html,
  };
}

const inFront = (all: readonly string[], first: string): readonly string[] => [first, ...all.filter((one) => one !== first)];

const roomFrom = ({ roomTitle, elevation, inputs }: Live['conditions']): Room =>
  ({ title: roomTitle, elevation, temperature: inputs.roomTemperature, pressure: inputs.roomPressure, humidity: inputs.roomHumidity });
