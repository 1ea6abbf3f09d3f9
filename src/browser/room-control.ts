/** The control in which a reader says what the room is: inputs to settings, and settings back to inputs. */
import type { Conditions } from '../tables/conditions.ts';
import type { Style } from '../tables/display.ts';
import { ROOM_TEXTS } from '../texts/index.ts';
import { FIELDS, inputText, plainText, readTyped, typedNumber, unitOf, type Field, type FieldName } from './room-fields.ts';
import type { RoomSettings, Shape } from './room-settings.ts';

/** What the control tells. */
export interface Heard {
  /** Settings that can be computed. */
  readonly onSettings: (settings: RoomSettings) => void;
  readonly onReset: () => void;
}

interface Box {
  readonly place: HTMLElement;
  readonly name: FieldName;
  readonly input: HTMLInputElement;
  readonly unit: HTMLElement;
  readonly problem: HTMLElement;
}

export interface RoomControl {
  /** Shows settings; boxes that hold what cannot be computed are left alone unless `all`. */
  readonly show: (settings: RoomSettings, conditions: Conditions, all?: boolean) => void;
  /** Says something in words that is not about one box. */
  readonly say: (text: string, isProblem?: boolean) => void;
}

/** A step is given up where nothing has been said for so long, ms. */
const TYPING_PAUSE = 250;

/** Brings the control on a page to life. */
export function roomControl(root: HTMLElement, own: () => Conditions, style: Style, heard: Heard): RoomControl {
  const boxes = [...root.querySelectorAll<HTMLElement>('[data-field]')].map((place): Box => ({
    place,
    name: place.dataset['field'] as FieldName,
    input: place.querySelector('input')!,
    unit: place.querySelector<HTMLElement>('.unit-of')!,
    problem: place.querySelector<HTMLElement>('.problem')!,
  }));
  const shape = root.querySelector<HTMLSelectElement>('select[name=shape]');
  const units = root.querySelector<HTMLSelectElement>('select[name=units]')!;
  const said = root.querySelector<HTMLElement>('output')!;
  let current: RoomSettings = { values: {}, customary: false };

  root.hidden = false;
  // Held until here: what is typed before somebody listens would be lost.
  for (const group of root.querySelectorAll('fieldset')) group.disabled = false;
  root.addEventListener('input', (event) => {
    const box = boxes.find(({ input }) => input === event.target);
    if (box !== undefined) later(() => take(box));
    else if (event.target === shape || event.target === units) chosen();
  });
  root.addEventListener('keydown', (event) => {
    const box = boxes.find(({ input }) => input === event.target);
    if (box === undefined || event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
    event.preventDefault();
    step(box, event.key === 'ArrowUp' ? 1 : -1);
  });
  root.addEventListener('click', (event) => {
    const button = event.target instanceof Element ? event.target.closest('button') : null;
    if (button === null) return;
    const place = button.closest<HTMLElement>('[data-field]');
    const box = boxes.find(({ name }) => name === place?.dataset['field']);
    if (box !== undefined) step(box, button.value === 'less' ? -1 : 1);
    else heard.onReset();
  });

  let waiting: ReturnType<typeof setTimeout> | undefined;
  function later(work: () => void): void {
    clearTimeout(waiting);
    waiting = setTimeout(work, TYPING_PAUSE);
  }

  function take(box: Box): void {
    const read = readTyped(box.name, box.input.value, unitOf(box.name, current.customary), style);
    mark(box, 'problem' in read ? read.problem : undefined);
    if ('problem' in read) {
      say(`${read.problem} ${ROOM_TEXTS[style.language].keepsLast}`, true);
      return;
    }
    const { [box.name]: _, ...others } = current.values;
    const values: Partial<Record<FieldName, number>> = isOwn(box) ? others : { ...others, [box.name]: read.value };
    // Elevation and station pressure say the same thing twice: what was said last counts.
    if (box.name === 'elevation') delete values.pressure;
    if (box.name === 'pressure') delete values.elevation;
    heard.onSettings({ ...current, values });
  }

  /** What a box says when nothing is set: then nothing differs, whatever the digits that are not shown. */
  const isOwn = ({ name, input }: Box): boolean => typedNumber(input.value) === Number(ownText(name));
  const ownText = (name: FieldName): string => {
    const field: Field = FIELDS[name];
    const value = field.own(own());
    return value === undefined ? '' : plainText(value, unitOf(name, current.customary));
  };

  function step(box: Box, direction: 1 | -1): void {
    const unit = unitOf(box.name, current.customary);
    const { low, high } = FIELDS[box.name];
    const typed = typedNumber(box.input.value);
    const from = Number.isFinite(typed) ? typed : Number(ownText(box.name));
    const [least, most] = [Number(plainText(low, unit)), Number(plainText(high, unit))];
    box.input.value = String(Number(Math.min(most, Math.max(least, from + direction * unit.step)).toFixed(unit.decimals))).replace('.', style.decimal);
    clearTimeout(waiting);
    take(box);
  }

  function chosen(): void {
    const { shape: _, ...others } = current;
    const customary = units.value === 'customary';
    const wanted = shape?.value as Shape | undefined;
    heard.onSettings({ ...others, customary, ...(wanted === undefined || wanted === own().apparatus.vessel.shape ? {} : { shape: wanted }) });
  }

  function mark({ input, problem }: Box, text: string | undefined): void {
    problem.textContent = text ?? '';
    problem.hidden = text === undefined;
    if (text === undefined) input.removeAttribute('aria-invalid');
    else input.setAttribute('aria-invalid', 'true');
  }

  function say(text: string, isProblem = false): void {
    said.textContent = text;
    said.classList.toggle('is-problem', isProblem);
  }

  function show(settings: RoomSettings, conditions: Conditions, all = false): void {
    current = settings;
    units.value = settings.customary ? 'customary' : 'metric';
    if (shape !== null) shape.value = conditions.apparatus.vessel.shape;
    for (const box of boxes) {
      if (!all && box.input.getAttribute('aria-invalid') === 'true') continue;
      const unit = unitOf(box.name, settings.customary);
      const field: Field = FIELDS[box.name];
      const value = settings.values[box.name] ?? field.own(conditions);
      box.place.hidden = value === undefined;
      if (value === undefined) continue;
      const text = inputText(value, unit, style);
      // What is being typed is not rewritten under the reader's hand.
      if (document.activeElement !== box.input || typedNumber(box.input.value) !== typedNumber(text)) box.input.value = text;
      box.unit.textContent = unit.symbol;
      mark(box, undefined);
    }
  }

  return { show, say };
}
