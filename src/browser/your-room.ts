/** The reader's room: what the control says, the address or the device remembers, is what a page is computed for. */
import { computedFor } from '../sheets/conditions-text.ts';
import { readLive, type Live } from '../sheets/html/live.ts';
import { STYLES, type Style } from '../tables/display.ts';
import type { Conditions } from '../tables/conditions.ts';
import { ROOM_TEXTS, scriptName } from '../texts/index.ts';
import { drawing } from './drawing.ts';
import { keep, kept, ROOM } from './kept.ts';
import { simulations } from './simulations.ts';
import { printedCodes } from './printed-codes.ts';
import { printInMargins } from './print-margins.ts';
import type { Piece } from './piece.ts';
import { preparer } from './preparing.ts';
import { conditionsFor } from './room-conditions.ts';
import { roomControl } from './room-control.ts';
import { isOwnRoom, isSameRoom, NOTHING_SET, readAddress, writeAddress, writeSettings, type RoomSettings } from './room-settings.ts';

/** Address of the script that this is part of; empty where it is part of the page. */
const script = (globalThis.document?.currentScript as HTMLScriptElement | null | undefined)?.src ?? '';

/** The room that is drawn, and those that were and may be. */
const ROOMS_KNOWN = 6;

interface Known {
  readonly live: Live;
  readonly settings: RoomSettings;
  readonly conditions: Conditions;
}

/** What a page is made of, as far as it follows from the room; `onChoice` puts other conditions of its own in place of the page's. */
export type Pieces = (onChoice: (live: Live) => void) => Piece[];

/** Brings the control on the page to life, and with it the pieces; nothing where there is no control. */
export function startRoom(piecesOf: Pieces): void {
  const root = document.querySelector<HTMLElement>('.your-room');
  if (root !== null) start(root, piecesOf);
}

function start(root: HTMLElement, piecesOf: Pieces): void {
  let live = readLive(root.dataset['live']!);
  let settings = NOTHING_SET;
  let known: readonly Known[] = [];
  const own = STYLES[live.language];
  const styles = { metric: own, customary: { ...own, customary: true } };
  const said = ROOM_TEXTS[live.language];
  const more = scriptName('reader-more', live.language);
  const simulationsAt = new URL(more, script || location.href).href;
  const control = roomControl(root, () => live.conditions, own, {
    onLikely: (likely) => page.foresee(conditionsOf(likely), styleOf(likely)),
    onSettings: (wanted) => apply(wanted),
    onReset: () => apply({ ...NOTHING_SET, customary: settings.customary }, { all: true }),
  });
  const codes = printedCodes(document, live.language);
  const pieces = piecesOf((chosen) => {
    live = chosen;
    apply(settings, { all: true });
  });
  const page = drawing(pieces, preparer(pieces, script, simulationsAt));

  const { anchor, settings: fromAddress, problems } = readAddress(location.hash, own);
  const wanted = fromAddress ?? readAddress(kept(ROOM), own).settings;
  if (wanted === undefined) control.show(settings, live.conditions, true);
  else apply(wanted, { all: true, isSilent: fromAddress !== undefined });
  if (problems.length > 0) {
    root.setAttribute('open', '');
    control.say(`${problems.join(' ')} ${said.keepsLast}`, true);
  }
  if (anchor !== '' && location.hash !== `#${anchor}`) document.getElementById(anchor)?.scrollIntoView();
  addEventListener('hashchange', follow);
  for (const name of ['click', 'auxclick'] as const) document.addEventListener(name, carry, true);

  // While the reader looks for the right box.
  const warm = (): void => void page.warm(() => conditionsOf(settings), styleOf(settings));
  if (root.hasAttribute('open')) warm();
  else root.addEventListener('toggle', () => root.hasAttribute('open') && warm(), { once: true });

  function styleOf({ customary }: RoomSettings): Style {
    return customary ? styles.customary : styles.metric;
  }

  /** The same object for the same room: in other units nothing is computed anew, and what was computed ahead is found. */
  function conditionsOf(wantedSettings: RoomSettings): Conditions {
    const found = known.find((one) => one.live === live && isSameRoom(one.settings, wantedSettings)) ?? { live, settings: wantedSettings, conditions: conditionsFor(live, wantedSettings) };
    known = [found, ...known.filter((one) => one !== found)].slice(0, ROOMS_KNOWN);
    return found.conditions;
  }

  /** Draws the page for settings; keeps the last good numbers, and says so, where the physics has none. */
  function apply(wantedSettings: RoomSettings, { all = false, isSilent = false } = {}): void {
    const started = performance.now();
    const conditions = conditionsOf(wantedSettings);
    const style = styleOf(wantedSettings);
    settings = wantedSettings;
    root.dataset['state'] = 'drawing';
    // At once: the next setting is read from the boxes.
    control.show(settings, conditions, all);
    const onSeen = (): void => {
      document.documentElement.classList.toggle('in-your-room', !isOwnRoom(settings));
      performance.measure('room', { start: started });
    };
    page.draw(conditions, style, onSeen, (refused) => {
      const line = computedFor(conditions, style);
      printInMargins(isOwnRoom(settings) && !settings.customary ? undefined : `${line}.`, root.dataset['page']!, root.dataset['address']!);
      root.dataset['state'] = 'drawn';
      const why = { 'no answer': said.someKeepLast, 'no simulations': said.notLoaded(more) };
      control.say(refused.size === 0 ? `${line}.` : [...refused].map((refusal) => why[refusal]).join(' '), refused.size > 0);
      performance.measure('room-all', { start: started });
      // The device's memory and the address take longer than many a table: after what is to be seen.
      remember(isSilent);
      void leadBack();
    });
  }

  /** Paper leads back to the room it was printed for. Last of all: a code takes longer than a page of tables. */
  async function leadBack(): Promise<void> {
    const at = settings;
    const isWanted = (): boolean => settings === at;
    const room = writeAddress('', settings);
    if (codes.areOf(room)) return;
    await new Promise((resolve) => setTimeout(resolve));
    if (isWanted() && (await simulations(simulationsAt)) && isWanted()) codes.draw(room);
  }

  /** On the device, unless it came from somebody's address and nothing was changed; and in the address. */
  function remember(isSilent: boolean): void {
    if (!isSilent) keep(ROOM, writeSettings(settings));
    const { anchor: at } = readAddress(location.hash, own);
    const hash = writeAddress(at, settings);
    if (hash === location.hash || hash === '' && location.hash === '') return;
    try {
      history.replaceState(history.state, '', hash === '' ? location.pathname + location.search : hash);
    } catch {
      location.hash = hash;
    }
  }

  /** A link to a step keeps the room; an address typed or pasted brings another. */
  function follow(): void {
    const { anchor: at, settings: given } = readAddress(location.hash, own);
    if (given === undefined) remember(true);
    else if (writeSettings(given) !== writeSettings(settings)) apply(given, { all: true, isSilent: true });
    if (at !== '') document.getElementById(at)?.scrollIntoView();
  }

  /** Takes the room along to the other pages of the site, for devices that remember nothing. */
  function carry(event: Event): void {
    const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>('a[href]') : null;
    if (link === null || link.origin !== location.origin && link.protocol !== 'file:' || link.pathname === location.pathname || !link.pathname.endsWith('.html')) return;
    link.hash = writeAddress(readAddress(link.hash, own).anchor, settings);
  }
}
