/** A paper from the questions of a kit. The page lists all of them without this script; it shows those chosen, renumbered, in the order of a version. */
import { optionsOf, questionsOf, readPaper, VERSIONS, writePaper, type Choosable, type Paper, type Version } from './paper-choice.ts';

/** A question of the page, with what it looked like in the list. */
interface Listed extends Choosable {
  readonly item: HTMLElement;
  readonly ordinal: Element | null;
  readonly number: string;
  /** Of a question with letters to choose from: they alone may stand in another order. */
  readonly options: readonly HTMLElement[];
  /** Why each option is right or wrong, where the page tells. */
  readonly reasons: readonly HTMLElement[];
  readonly home: Element;
}

const form = document.querySelector<HTMLFormElement>('form.paper-choice');
const sheet = document.getElementById('paper');
const list = sheet?.querySelector('.questions');
const title = sheet?.querySelector('h2');
if (form !== null && sheet !== null && list != null && title != null) offerPapers(form, sheet, list, title);

function offerPapers(choice: HTMLFormElement, paper: HTMLElement, place: Element, heading: Element): void {
  const levels = [...document.querySelectorAll<HTMLElement>('.level[data-level]')];
  const questions = levels.flatMap((level) => [...level.querySelectorAll<HTMLElement>('.question')].map((item) => listed(item, Number(level.dataset.level), item.parentElement!)));
  const words = heading.textContent ?? '';

  const show = (wanted: Paper | undefined): void => {
    for (const question of questions) restore(question);
    const shown = wanted === undefined ? [] : questionsOf(questions, wanted);
    const isPaper = wanted !== undefined && shown.length > 0;
    paper.hidden = !isPaper;
    for (const level of levels) level.hidden = isPaper;
    if (!isPaper) return;
    heading.textContent = `${words} ${wanted.version}`;
    shown.forEach((question, i) => {
      if (question.ordinal !== null) question.ordinal.textContent = String(i + 1);
      place.append(question.item);
      arrange(question, wanted.version);
    });
  };

  const follow = (): void => {
    const wanted = readPaper(anchorOf(location.hash));
    fill(choice, wanted);
    show(wanted);
  };
  choice.hidden = false;
  choice.addEventListener('change', () => {
    const wanted = read(choice);
    fill(choice, wanted);
    writeAnchor(wanted === undefined ? '' : writePaper(wanted));
    show(wanted);
  });
  choice.addEventListener('submit', (event) => {
    event.preventDefault();
    print();
  });
  choice.addEventListener('reset', () => {
    writeAnchor('');
    show(undefined);
  });
  addEventListener('hashchange', follow);
  follow();
}

function listed(item: HTMLElement, level: number, home: Element): Listed {
  const ordinal = item.querySelector('.ordinal');
  const isChoice = item.classList.contains('question-choice');
  return {
    id: item.id, level, item, ordinal, home,
    number: ordinal?.textContent ?? '',
    options: isChoice ? [...item.querySelectorAll<HTMLElement>('.options > li')] : [],
    reasons: isChoice ? [...item.querySelectorAll<HTMLElement>('.reasons > li')] : [],
  };
}

function restore(question: Listed): void {
  const { item, ordinal, number, home } = question;
  home.append(item);
  if (ordinal !== null) ordinal.textContent = number;
  arrange(question, VERSIONS[0]);
}

/** Puts the options, and the reasons with them, in a version's order, and letters them anew. */
function arrange({ id, options, reasons }: Listed, version: Version): void {
  for (const group of [options, reasons]) {
    const letters = [...'ABCDEFGH'];
    optionsOf(group, id, version).forEach((option, i) => {
      option.parentElement?.append(option);
      const letter = option.querySelector('.letter, strong');
      if (letter !== null) letter.textContent = letters[i] ?? '';
    });
  }
}

/** What stands in the form; undefined where no level is chosen. */
function read(choice: HTMLFormElement): Paper | undefined {
  const chosen = new FormData(choice);
  const levels = chosen.getAll('level').map(Number);
  const count = Number(chosen.get('count'));
  const version = VERSIONS.find((one) => one === chosen.get('version')) ?? VERSIONS[0];
  return levels.length === 0 ? undefined : { version, count, levels };
}

function fill(choice: HTMLFormElement, wanted: Paper | undefined): void {
  if (wanted === undefined) return;
  for (const box of choice.querySelectorAll<HTMLInputElement>('[name=level]')) box.checked = wanted.levels.includes(Number(box.value));
  for (const button of choice.querySelectorAll<HTMLInputElement>('[name=version]')) button.checked = button.value === wanted.version;
  const count = choice.querySelector<HTMLSelectElement>('[name=count]');
  if (count !== null) count.value = String(Math.min(wanted.count, count.options.length));
}

/** The reader's room stands behind the anchor, and stays. */
function partsOf(hash: string): string[] {
  return hash.replace(/^#/, '').split('&').filter((part) => part !== '');
}

function anchorOf(hash: string): string {
  return partsOf(hash).find((part) => !part.includes('=')) ?? '';
}

function writeAnchor(anchor: string): void {
  const parts = [anchor, ...partsOf(location.hash).filter((part) => part.includes('='))].filter((part) => part !== '');
  history.replaceState(history.state, '', parts.length === 0 ? location.pathname + location.search : `#${parts.join('&')}`);
}
