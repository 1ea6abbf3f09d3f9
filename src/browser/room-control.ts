/** The control in which a reader says what the room is: inputs to settings, and settings back to inputs. */
import type { Conditions } from '../tables/conditions.ts';
import type { Style } from '../tables/display.ts';
import { ROOM_TEXTS } from '../texts/index.ts';
import { FIELDS, inputText, plainText, readTyped, typedNumber, unitOf, type Field, type FieldName } from './room-fields.ts';
import { NOTHING_SET, type RoomSettings, type Shape } from './room-settings.ts';

/** What the control tells. */
export interface Heard {
  /** Settings that may be said next. */
  readonly onLikely: (settings: RoomSettings) => void;
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
/** What has been said for so long may be meant, ms. */
const LIKELY_PAUSE = 60;

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
  let current = NOTHING_SET;

  root.hidden = false;
  // Held until here: what is typed before somebody listens would be lost.
  for (const group of root.querySelectorAll('fieldset')) group.disabled = false;
  root.addEventListener('input', (event) => {
    const box = boxes.find(({ input }) => input === event.target);
    if (box !== undefined) later(box);
    else if (event.target === shape || event.target === units) heard.onSettings(settingsWithChoices());
  });
  root.addEventListener('keydown', (event) => {
    const box = boxes.find(({ input }) => input === event.target);
    if (box === undefined || event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
    event.preventDefault();
    step(box, event.key === 'ArrowUp' ? 1 : -1);
  });
  // A reader who goes on to the next box has said this one.
  root.addEventListener('focusout', () => untaken !== undefined && take(untaken));
  // What is touched will most likely be used.
  root.addEventListener('focusin', ({ target }) => {
    const box = boxes.find(({ place }) => target instanceof Node && place.contains(target));
    if (box !== undefined) for (const direction of [1, -1] as const) foresee(box, stepped(box, direction));
    else if (target === shape) for (const value of othersOf(shape!)) heard.onLikely(settingsWithChoices({ shape: value }));
    else if (target === units) for (const value of othersOf(units)) heard.onLikely(settingsWithChoices({ units: value }));
    else if (target instanceof HTMLButtonElement) heard.onLikely({ ...NOTHING_SET, customary: current.customary });
  });
  root.addEventListener('click', (event) => {
    const button = event.target instanceof Element ? event.target.closest('button') : null;
    if (button === null) return;
    const place = button.closest<HTMLElement>('[data-field]');
    const box = boxes.find(({ name }) => name === place?.dataset['field']);
    if (box !== undefined) step(box, button.value === 'less' ? -1 : 1);
    else heard.onReset();
  });

  let timers: readonly ReturnType<typeof setTimeout>[] = [];
  /** What has been typed into it counts in a moment. */
  let untaken: Box | undefined;
  function stopWaiting(): void {
    timers.forEach(clearTimeout);
    untaken = undefined;
  }

  /** Once nothing more has been typed for a moment; what it will most likely be is told ahead. */
  function later(box: Box): void {
    stopWaiting();
    untaken = box;
    timers = [setTimeout(() => foresee(box, box.input.value), LIKELY_PAUSE), setTimeout(() => take(box), TYPING_PAUSE)];
  }

  function foresee(box: Box, text: string): void {
    const read = settingsWith(box, text);
    if (!('problem' in read)) heard.onLikely(read);
  }

  function take(box: Box): void {
    stopWaiting();
    const read = settingsWith(box, box.input.value);
    const problem = 'problem' in read ? read.problem : undefined;
    mark(box, problem);
    if ('problem' in read) say(`${read.problem} ${ROOM_TEXTS[style.language].keepsLast}`, true);
    else heard.onSettings(read);
  }

  /** The settings with this text in a box, or what is wrong with it. */
  function settingsWith({ name }: Box, text: string): RoomSettings | { readonly problem: string } {
    const read = readTyped(name, text, unitOf(name, current.customary), style);
    if ('problem' in read) return read;
    const { [name]: _, ...others } = current.values;
    const values: Partial<Record<FieldName, number>> = typedNumber(text) === Number(ownText(name)) ? others : { ...others, [name]: read.value };
    // Elevation and station pressure say the same thing twice: what was said last counts.
    if (name === 'elevation') delete values.pressure;
    if (name === 'pressure') delete values.elevation;
    return { ...current, values };
  }

  /** What a box says when nothing is set: then nothing differs, whatever the digits that are not shown. */
  const ownText = (name: FieldName): string => {
    const field: Field = FIELDS[name];
    const value = field.own(own());
    return value === undefined ? '' : plainText(value, unitOf(name, current.customary));
  };

  function step(box: Box, direction: 1 | -1): void {
    box.input.value = stepped(box, direction);
    take(box);
    // A reader who steps once mostly steps on.
    timers = [setTimeout(() => foresee(box, stepped(box, direction)), LIKELY_PAUSE)];
  }

  /** What a box says a step further. */
  function stepped({ name, input }: Box, direction: 1 | -1): string {
    const unit = unitOf(name, current.customary);
    const { low, high } = FIELDS[name];
    const typed = typedNumber(input.value);
    const from = Number.isFinite(typed) ? typed : Number(ownText(name));
    const [least, most] = [Number(plainText(low, unit)), Number(plainText(high, unit))];
    return String(Number(Math.min(most, Math.max(least, from + direction * unit.step)).toFixed(unit.decimals))).replace('.', style.decimal);
  }

  function settingsWithChoices(wanted: { shape?: string | undefined; units?: string } = {}): RoomSettings {
    const chosen = { shape: shape?.value, units: units.value, ...wanted };
    const { shape: _, ...others } = current;
    const isOwnShape = chosen.shape === undefined || chosen.shape === own().apparatus.vessel.shape;
    return { ...others, customary: chosen.units === 'customary', ...(isOwnShape ? {} : { shape: chosen.shape as Shape }) };
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

const othersOf = ({ options, value }: HTMLSelectElement): string[] => [...options].map((option) => option.value).filter((one) => one !== value);
