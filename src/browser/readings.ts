/** The reader's own readings against the model, computed on the reader's own device. The page is whole without it. */
import { clockIn, numberIn } from '../authoring/readings-form.ts';
import { readReadings, type ReadingsFinding } from '../authoring/readings.ts';
import { fitInWords, notesOf, renderComparison, renderExpected } from '../sheets/html/readings.ts';
import type { Live } from '../sheets/html/live.ts';
import type { Raw } from '../sheets/html/text.ts';
import type { DrawnComparison } from '../sheets/readings-view.ts';
import { compareWithModel, expectedReadings, type Choice, type Comparison } from '../sheets/readings.ts';
import type { Conditions } from '../tables/conditions.ts';
import { STYLES, type Style } from '../tables/display.ts';
import { FIT_TEXTS, OWN_READING_TEXTS } from '../texts/index.ts';
import { keep, kept, readingsOf, ROOM } from './kept.ts';
import { saveAs, textOf } from './readings-file.ts';
import { asFile, columnsOf, tableFormat, withRow } from './readings-text.ts';
import { conditionsFor } from './room-conditions.ts';
import { NOTHING_SET, readAddress, type RoomSettings } from './room-settings.ts';

/** Larger than any table of readings that is read, bytes. */
const LARGEST_FILE = 1e6;
/** More messages than that are read by nobody. */
const MOST_MESSAGES = 20;

const place = document.querySelector<HTMLElement>('#own-readings');
if (place !== null) start(place);

function start(root: HTMLElement): void {
  const find = <E extends HTMLElement>(name: string): E => root.querySelector<E>(`[data-part="${name}"]`)!;
  const [text, file, fields, row] = [find<HTMLTextAreaElement>('text'), find<HTMLInputElement>('file'), find('fields'), find<HTMLFormElement>('row')];
  const [particles, from, to] = [find<HTMLSelectElement>('particles'), find<HTMLInputElement>('from'), find<HTMLInputElement>('to')];
  const [status, problems, outcome, result] = [find('status'), find('problems'), find('outcome'), find('result')];
  const classes = [...document.querySelectorAll<HTMLElement>('[data-comparison]')];
  // Not by readLive: its file would bring the run chart along.
  const live = JSON.parse(root.dataset['live']!) as Live;
  const kit = root.dataset['kit']!;
  const { language } = live;
  const said = OWN_READING_TEXTS[language];
  let style: Style = STYLES[language];
  let format = tableFormat(language);
  let isCompared = false;

  root.hidden = false;
  text.value = kept(readingsOf(kit));
  drawFields();
  text.addEventListener('input', () => {
    keep(readingsOf(kit), text.value);
    drawFields();
  });
  file.addEventListener('change', load);
  row.addEventListener('submit', (event) => {
    event.preventDefault();
    addRow();
  });
  find('compare').addEventListener('click', compare);
  find('save').addEventListener('click', save);
  find('clear').addEventListener('click', clear);
  // The room's own script says so when another room is in force.
  const room = document.querySelector('.your-room');
  if (room !== null) new MutationObserver(followRoom).observe(room, { attributes: true, attributeFilter: ['data-state'] });
  followRoom();

  function setText(value: string): void {
    text.value = value;
    keep(readingsOf(kit), value);
    drawFields();
  }

  /** One input for each column that the first line names. */
  function drawFields(): void {
    const names = columnsOf(text.value, format);
    if (names.join() === [...fields.querySelectorAll('label')].map((label) => label.textContent).join()) return;
    fields.replaceChildren(...names.map((name, i) => {
      const field = document.createElement('p');
      const label = document.createElement('label');
      const input = document.createElement('input');
      label.htmlFor = input.id = `reading-column-${i + 1}`;
      label.textContent = name;
      input.type = 'text';
      input.inputMode = 'text';
      input.autocomplete = 'off';
      field.append(label, ' ', input);
      return field;
    }));
  }

  function addRow(): void {
    const inputs = [...fields.querySelectorAll('input')];
    const missing = inputs.find(({ value }) => value.trim() === '');
    if (missing !== undefined) {
      say(said.writeFirst(missing.labels?.[0]?.textContent ?? ''));
      missing.focus();
      return;
    }
    const longer = withRow(text.value, inputs.map(({ value }) => value), format);
    const { findings } = readReadings(longer, kit, language);
    const last = longer.trimEnd().split('\n').length;
    const own = findings.filter(({ line, code }) => line === last && code !== 'file-too-large');
    show(own);
    if (own.length > 0) {
      say(said.notAdded);
      return;
    }
    setText(longer);
    for (const input of inputs) input.value = '';
    inputs[0]?.focus();
    say(said.added(last - 1));
  }

  function load(): void {
    const chosen = file.files?.[0];
    if (chosen === undefined) return;
    if (chosen.size > LARGEST_FILE) {
      say(said.tooLarge(chosen.name));
      return;
    }
    const use = (loaded: string): void => {
      setText(loaded);
      compare();
    };
    void textOf(chosen).then(use, () => say(said.unreadable(chosen.name)));
  }

  function compare(): void {
    const { readings, findings } = readReadings(text.value, kit, language);
    show(findings);
    isCompared = readings !== undefined;
    if (readings === undefined) {
      outcome.hidden = true;
      say(said.wrong(findings.length));
      return;
    }
    const chosen = choice();
    if (chosen === undefined) return;
    say(said.fitting);
    // Lets the browser show the line before it is busy.
    setTimeout(() => draw(compareWithModel(readings, conditions(), chosen)), 30);
  }

  function draw(comparison: Comparison): void {
    const { fit, lines } = comparison;
    put(result, renderComparison(comparison, { id: 'own', title: said.title, style }), true);
    outcome.hidden = false;
    say(said.compared(lines.length, conditions().roomTitle, fit === undefined ? notesOf(comparison, style).join(' ') : fitInWords(fit, style)));
  }

  /** What is said beside the readings; undefined, and said, where it makes no sense. */
  function choice(): Choice | undefined {
    const named = particles.value === '' ? {} : { particles: particles.value };
    if (from.value.trim() === '' && to.value.trim() === '') return named;
    const times = [from, to].map(({ value }) => clockIn(value.trim()) ?? numberIn(value.trim(), true));
    const [first = NaN, last = NaN] = times;
    if (last > first) return { ...named, closed: { from: first, to: last } };
    say(said.twoTimes);
    from.focus();
    return undefined;
  }

  function save(): void {
    if (text.value.trim() === '') {
      say(said.nothingToSave);
      return;
    }
    const name = said.fileName(kit);
    saveAs(name, asFile(text.value, format));
    say(said.saved(name));
  }

  function clear(): void {
    setText('');
    file.value = '';
    isCompared = false;
    show([]);
    outcome.hidden = true;
    say(said.cleared);
    text.focus();
  }

  function followRoom(): void {
    if (room?.getAttribute('data-state') !== 'drawn') return;
    const { customary } = settings();
    if (customary !== (style.customary ?? false)) {
      style = { ...style, customary };
      format = tableFormat(language, customary);
      text.placeholder = format.header;
      drawFields();
      for (const place of classes) {
        const { comparison, id, title } = JSON.parse(place.dataset['comparison']!) as DrawnComparison;
        put(place, renderComparison(comparison, { id, title, style }));
      }
    }
    try {
      put(document.querySelector('[data-expected]')!, renderExpected(expectedReadings(conditions()), { id: 'expected', title: FIT_TEXTS[language].expected, style }));
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      say(said.noAnswer);
    }
    if (isCompared) compare();
  }

  /** Of the room in force: the address's, else the device's, else none. */
  function settings(): RoomSettings {
    return readAddress(location.hash, style).settings ?? readAddress(kept(ROOM), style).settings ?? NOTHING_SET;
  }

  function conditions(): Conditions {
    return conditionsFor(live, settings());
  }

  function show(findings: readonly ReadingsFinding[]): void {
    const shown = findings.slice(0, MOST_MESSAGES).map(({ line, cell, what, instead }) => itemOf(said.line(line, cell, what, instead)));
    const more = findings.length - shown.length;
    problems.replaceChildren(...shown, ...(more > 0 ? [itemOf(said.more(more))] : []));
    problems.hidden = findings.length === 0;
    text.setAttribute('aria-invalid', String(findings.length > 0));
  }

  function itemOf(words: string): HTMLElement {
    const item = document.createElement('li');
    item.textContent = words.replaceAll('`', '');
    return item;
  }

  function say(words: string): void {
    status.textContent = words;
  }
}

/** Draws a piece anew; its table stays open or shut. */
function put(place: HTMLElement, { html }: Raw, isOpen = place.querySelector('details')?.open ?? false): void {
  place.innerHTML = html;
  const table = place.querySelector('details');
  if (table !== null) table.open = isOpen;
}
