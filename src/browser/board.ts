/** The board's keys. The page is whole without this script; it adds keys, a hint of them, and a voice for what is uncovered. */
import { languageOfPage } from './page-language.ts';
import { BOARD_KEY_TEXTS } from '../texts/index.ts';
import { after, boardAt, moveOf, type Move } from './board-moves.ts';

const boards = [...document.querySelectorAll<HTMLElement>('.board')];
const voice = addTo(document.body, 'p', 'unseen');
voice.setAttribute('aria-live', 'polite');

hint();
document.addEventListener('keydown', (event) => {
  const move = moveOf(event);
  if (move === undefined || event.defaultPrevented || isTyping(event.target) || event.key === ' ' && isControl(event.target)) return;
  if (event.key === 'ArrowDown' && goesOnBelow()) return;
  if (event.key === 'ArrowUp' && goesOnAbove()) return;
  event.preventDefault();
  follow(move);
});
document.addEventListener('click', (event) => {
  const link = event.target instanceof Element ? event.target.closest('.to-next, .to-previous') : null;
  if (link === null || event.ctrlKey || event.metaKey || event.shiftKey) return;
  // What stands after # is the reader's room; a way from board to board must not replace it.
  event.preventDefault();
  goTo(current() + (link.matches('.to-next') ? 1 : -1));
});

function follow(move: Move): void {
  if (move === 'leave') {
    const kit = document.querySelector<HTMLAnchorElement>('.to-kit');
    if (kit !== null) location.href = kit.href + location.hash.replace(/^#board-\d+$/, '');
    return;
  }
  const board = current();
  const cover = boards[board]?.querySelector<HTMLDetailsElement>('details.reveal:not([open])') ?? null;
  const place = after(move, { board, boards: boards.length, covered: cover !== null });
  if (place !== 'show') goTo(place);
  else if (cover !== null) show(cover);
}

function show(cover: HTMLDetailsElement): void {
  cover.open = true;
  cover.scrollIntoView({ block: 'nearest', behavior: 'instant' });
  voice.textContent = cover.querySelector('.shown')?.textContent ?? '';
}

function goTo(place: number): void {
  const board = boards[place];
  board?.scrollIntoView({ block: 'start', behavior: 'instant' });
  board?.focus({ preventScroll: true });
}

function current(): number {
  return boardAt(boards.map((board) => board.getBoundingClientRect().top), innerHeight);
}

/** A board higher than the screen is read to its end before the next one comes. */
function goesOnBelow(): boolean {
  return (boards[current()]?.getBoundingClientRect().bottom ?? 0) > innerHeight + 2;
}

function goesOnAbove(): boolean {
  return (boards[current()]?.getBoundingClientRect().top ?? 0) < -2;
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('input, select, textarea, dialog, [contenteditable]') !== null;
}

function isControl(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('a, button, summary') !== null;
}

function hint(): void {
  const said = BOARD_KEY_TEXTS[languageOfPage()];
  const keys = addTo(document.querySelector('main') ?? document.body, 'p', 'board-keys');
  keys.dataset['needsScript'] = '';
  for (const [key, meaning] of [['←', ''], ['→', said.or], [said.space, '·'], ['Esc', said.kit]] as const) {
    addTo(keys, 'kbd', '').textContent = key;
    keys.append(` ${meaning} `);
  }
}

function addTo(parent: Element, name: string, className: string): HTMLElement {
  const element = document.createElement(name);
  if (className !== '') element.className = className;
  parent.append(element);
  return element;
}
