/** The table that a reader writes: typed or pasted, row by row, from a file and into one. What stands in it is kept on the device. */
import { readReadings } from '../authoring/readings.ts';
import { keep, kept, readingsOf } from './kept.ts';
import { saveAs, textOf } from './readings-file.ts';
import type { ReadingsPage } from './readings-page.ts';
import { asFile, columnsOf, tableFormat, withRow } from './readings-text.ts';

/** Larger than any table of readings that is read, bytes. */
const LARGEST_FILE = 1e6;

export interface Entry {
  readonly text: () => string;
  /** How a new table begins. @param customary inches of mercury and degrees Fahrenheit */
  readonly writeIn: (customary: boolean) => void;
}

export interface Heard {
  readonly onLoad: () => void;
  readonly onClear: () => void;
}

/** Brings the table on the page to life; it tells when another has been loaded, or this one is emptied. */
export function entryOn({ find, kit, live: { language }, said, say, show }: ReadingsPage, { onLoad, onClear }: Heard): Entry {
  const [text, file, fields, row] = [find<HTMLTextAreaElement>('text'), find<HTMLInputElement>('file'), find('fields'), find<HTMLFormElement>('row')];
  let format = tableFormat(language);

  text.value = kept(readingsOf(kit));
  drawFields();
  text.addEventListener('input', follow);
  file.addEventListener('change', load);
  row.addEventListener('submit', (event) => {
    event.preventDefault();
    addRow();
  });
  find('save').addEventListener('click', save);
  find('clear').addEventListener('click', clear);
  return {
    text: () => text.value,
    writeIn: (customary) => {
      format = tableFormat(language, customary);
      text.placeholder = format.header;
      drawFields();
    },
  };

  function follow(): void {
    keep(readingsOf(kit), text.value);
    drawFields();
  }

  function setText(value: string): void {
    text.value = value;
    follow();
  }

  /** One input for each column that the first line names. */
  function drawFields(): void {
    const names = columnsOf(text.value, format);
    if (names.join() === [...fields.querySelectorAll('label')].map((label) => label.textContent).join()) return;
    fields.replaceChildren(...names.map(fieldOf));
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
      onLoad();
    };
    void textOf(chosen).then(use, () => say(said.unreadable(chosen.name)));
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
    onClear();
    show([]);
    say(said.cleared);
    text.focus();
  }
}

function fieldOf(name: string, i: number): HTMLElement {
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
}
