/** The reader's own readings against the model, computed on the reader's own device. The page is whole without it. */
import { clockIn, numberIn } from '../authoring/readings-form.ts';
import { readReadings } from '../authoring/readings.ts';
import { fitInWords, notesOf, renderComparison, renderExpected } from '../sheets/html/readings.ts';
import type { Raw } from '../sheets/html/text.ts';
import type { DrawnComparison } from '../sheets/readings-view.ts';
import { compareWithModel, expectedReadings, type Choice, type Comparison } from '../sheets/readings.ts';
import type { Conditions } from '../tables/conditions.ts';
import { STYLES, type Style } from '../tables/display.ts';
import { FIT_TEXTS } from '../texts/index.ts';
import { kept, ROOM } from './kept.ts';
import { entryOn } from './readings-entry.ts';
import { readingsPage, type ReadingsPage } from './readings-page.ts';
import { conditionsFor } from './room-conditions.ts';
import { NOTHING_SET, readAddress, type RoomSettings } from './room-settings.ts';

const place = document.querySelector<HTMLElement>('#own-readings');
if (place !== null) start(place);

function start(root: HTMLElement): void {
  const page = readingsPage(root);
  const { find, kit, live, said, say, show } = page;
  const { language } = live;
  const [outcome, result] = [find('outcome'), find('result')];
  let style: Style = STYLES[language];
  let isCompared = false;
  const entry = entryOn(page, { onLoad: compare, onClear: forget });

  root.hidden = false;
  find('compare').addEventListener('click', compare);
  // The room's own script says so when another room is in force.
  const room = document.querySelector('.your-room');
  if (room !== null) new MutationObserver(followRoom).observe(room, { attributes: true, attributeFilter: ['data-state'] });
  followRoom();

  function compare(): void {
    const { readings, findings } = readReadings(entry.text(), kit, language);
    show(findings);
    isCompared = readings !== undefined;
    if (readings === undefined) {
      outcome.hidden = true;
      say(said.wrong(findings.length));
      return;
    }
    const chosen = choiceOn(page);
    if (chosen === undefined) return;
    say(said.fitting);
    // Lets the browser show the line before it is busy.
    setTimeout(() => draw(compareWithModel(readings, conditions(), chosen)), 30);
  }

  function forget(): void {
    isCompared = false;
    outcome.hidden = true;
  }

  function draw(comparison: Comparison): void {
    const { fit, lines } = comparison;
    put(result, renderComparison(comparison, { id: 'own', title: said.title, style }), true);
    outcome.hidden = false;
    say(said.compared(lines.length, conditions().roomTitle, fit === undefined ? notesOf(comparison, style).join(' ') : fitInWords(fit, style)));
  }

  function followRoom(): void {
    if (room?.getAttribute('data-state') !== 'drawn') return;
    const { customary } = settingsIn(style);
    if (customary !== (style.customary ?? false)) {
      style = { ...style, customary };
      entry.writeIn(customary);
      drawClasses(style);
    }
    try {
      put(document.querySelector('[data-expected]')!, renderExpected(expectedReadings(conditions()), { id: 'expected', title: FIT_TEXTS[language].expected, style }));
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      say(said.noAnswer);
    }
    if (isCompared) compare();
  }

  function conditions(): Conditions {
    return conditionsFor(live, settingsIn(style));
  }
}

/** What is said beside the readings; undefined, and said, where it makes no sense. */
function choiceOn({ find, said, say }: ReadingsPage): Choice | undefined {
  const [particles, from, to] = [find<HTMLSelectElement>('particles').value, find<HTMLInputElement>('from'), find<HTMLInputElement>('to')];
  const named = particles === '' ? {} : { particles };
  if (from.value.trim() === '' && to.value.trim() === '') return named;
  const [first = NaN, last = NaN] = [from, to].map(({ value }) => clockIn(value.trim()) ?? numberIn(value.trim(), true));
  if (last > first) return { ...named, closed: { from: first, to: last } };
  say(said.twoTimes);
  from.focus();
  return undefined;
}

/** Of the room in force: the address's, else the device's, else none. */
function settingsIn(style: Style): RoomSettings {
  return readAddress(location.hash, style).settings ?? readAddress(kept(ROOM), style).settings ?? NOTHING_SET;
}

/** The recorded classes, in other units. */
function drawClasses(style: Style): void {
  for (const drawn of document.querySelectorAll<HTMLElement>('[data-comparison]')) {
    const { comparison, id, title } = JSON.parse(drawn.dataset['comparison']!) as DrawnComparison;
    put(drawn, renderComparison(comparison, { id, title, style }));
  }
}

/** Draws a piece anew; its table stays open or shut. */
function put(at: HTMLElement, { html }: Raw, isOpen = at.querySelector('details')?.open ?? false): void {
  at.innerHTML = html;
  const table = at.querySelector('details');
  if (table !== null) table.open = isOpen;
}
