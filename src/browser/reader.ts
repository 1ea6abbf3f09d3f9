/** Every page with numbers: offers the reader's room, and fetches what computes for it once a room is set or looked for. The page is whole without it. */
import { ROOM_TEXTS, scriptName } from '../texts/index.ts';
import { fetchScript } from './fetch-script.ts';
import { kept, ROOM } from './kept.ts';
import { languageOfPage } from './page-language.ts';

const script = document.currentScript instanceof HTMLScriptElement ? document.currentScript.src : '';
const root = document.querySelector<HTMLElement>('.your-room');
// In a document of its own all scripts are inside, and the room is there already.
if (root?.hidden === true) offer(root);

function offer(control: HTMLElement): void {
  const language = languageOfPage();
  const name = scriptName('reader-room', language);
  let isAsked = false;
  const fetchRoom = async (): Promise<void> => {
    if (isAsked) return;
    isAsked = true;
    if (!(await fetchScript(new URL(name, script).href))) control.querySelector('output')!.textContent = ROOM_TEXTS[language].notLoaded(name);
  };
  /** A room in the address: `#elevation=1600m`; a place on the page has no equals sign. */
  const fetchIfSet = (): void => {
    if (location.hash.includes('=')) void fetchRoom();
  };
  control.hidden = false;
  if (kept(ROOM) !== '') void fetchRoom();
  fetchIfSet();
  addEventListener('hashchange', fetchIfSet);
  for (const sign of ['pointerenter', 'focusin', 'toggle']) control.addEventListener(sign, () => void fetchRoom(), { once: true });
}
