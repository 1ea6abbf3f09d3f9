/** What the reader's own part of the readings page holds, and what it says of readings: one line, and what is wrong with them, one by one. */
import type { ReadingsFinding } from '../authoring/readings.ts';
import type { Live } from '../sheets/html/live.ts';
import { OWN_READING_TEXTS } from '../texts/index.ts';

/** More messages than that are read by nobody. */
const MOST_MESSAGES = 20;

export interface ReadingsPage {
  /** A part of the page by its name. */
  readonly find: <E extends HTMLElement>(name: string) => E;
  readonly kit: string;
  readonly live: Live;
  readonly said: (typeof OWN_READING_TEXTS)['en'];
  readonly say: (words: string) => void;
  /** Lists what is wrong with the readings; nothing where there is nothing. */
  readonly show: (findings: readonly ReadingsFinding[]) => void;
}

/** The reader's own part of the page. */
export function readingsPage(root: HTMLElement): ReadingsPage {
  const find: ReadingsPage['find'] = (name) => root.querySelector(`[data-part="${name}"]`)!;
  // Not by readLive: its file would bring the run chart along.
  const live = JSON.parse(root.dataset['live']!) as Live;
  const said = OWN_READING_TEXTS[live.language];
  const [text, status, problems] = [find('text'), find('status'), find('problems')];
  const show: ReadingsPage['show'] = (findings) => {
    const more = findings.length - MOST_MESSAGES;
    const shown = findings.slice(0, MOST_MESSAGES).map(({ line, cell, what, instead }) => said.line(line, cell, what, instead));
    problems.replaceChildren(...[...shown, ...(more > 0 ? [said.more(more)] : [])].map(itemOf));
    problems.hidden = findings.length === 0;
    text.setAttribute('aria-invalid', String(findings.length > 0));
  };
  return { find, kit: root.dataset['kit']!, live, said, say: (words) => (status.textContent = words), show };
}

function itemOf(words: string): HTMLElement {
  const item = document.createElement('li');
  item.textContent = words.replaceAll('`', '');
  return item;
}
