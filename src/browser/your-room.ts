/** The reader's room: what the control says, the address or the device remembers, is what a page is computed for. */
import { computedFor } from '../sheets/conditions-text.ts';
import { readLive, type Live } from '../sheets/html/live.ts';
import { STYLES, type Style } from '../tables/display.ts';
import type { Conditions } from '../tables/conditions.ts';
import { ROOM_TEXTS, scriptName } from '../texts/index.ts';
import { keep, kept, ROOM } from './kept.ts';
import { isNotThere, simulations } from './simulations.ts';
import { printedCodes } from './printed-codes.ts';
import { printInMargins } from './print-margins.ts';
import type { Piece } from './piece.ts';
import { conditionsFor } from './room-conditions.ts';
import { roomControl } from './room-control.ts';
import { isOwnRoom, isSameRoom, NOTHING_SET, readAddress, writeAddress, writeSettings, type RoomSettings } from './room-settings.ts';

/** After so many rounds the engines of today have compiled what runs often. */
const WARM_ROUNDS = 8;
/** An answer within this time seems to come at once, ms: Card, Robertson & Mackinlay 1991. A page that is laid out in between takes as long again. */
const SLICE = 100;
const script = document.currentScript instanceof HTMLScriptElement ? document.currentScript.src : '';

/** What a page is made of, as far as it follows from the room; `onChoice` puts other conditions of its own in place of the page's. */
export type Pieces = (onChoice: (live: Live) => void) => Piece[];

/** Within one more screen above and below. */
function isNear(place: Element): boolean {
  const { top, bottom } = place.getBoundingClientRect();
  return bottom > -innerHeight && top < 2 * innerHeight;
}

/** Brings the control on the page to life, and with it the pieces; nothing where there is no control. */
export function startRoom(piecesOf: Pieces): void {
  const root = document.querySelector<HTMLElement>('.your-room');
  if (root !== null) start(root, piecesOf);
}

function start(root: HTMLElement, piecesOf: Pieces): void {
  let live = readLive(root.dataset['live']!);
  let settings = NOTHING_SET;
  let drawn: { live: Live; settings: RoomSettings; conditions: Conditions } = { live, settings, conditions: live.conditions };
  let run = 0;
  const own = STYLES[live.language];
  const said = ROOM_TEXTS[live.language];
  const more = scriptName('reader-more', live.language);
  const fetchMore = (): Promise<boolean> => simulations(new URL(more, script || location.href).href);
  const control = roomControl(root, () => live.conditions, own, { onSettings: (wanted) => apply(wanted), onReset: () => apply({ ...NOTHING_SET, customary: settings.customary }, { all: true }) });
  const codes = printedCodes(document, live.language);
  const pieces = piecesOf((chosen) => {
    live = chosen;
    apply(settings, { all: true });
  });

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

  if (root.hasAttribute('open')) void warm();
  else root.addEventListener('toggle', () => root.hasAttribute('open') && void warm(), { once: true });

  /** While the reader looks for the right box: the same numbers computed once more for nothing, so that the browser has made fast code of them by the time they are wanted. */
  async function warm(): Promise<void> {
    const style: Style = { ...own, customary: settings.customary };
    const at = settings;
    for (let round = 0; round < WARM_ROUNDS; round++) {
      const conditions = { ...conditionsFor(live, settings) };
      for (const piece of pieces) {
        await new Promise((resolve) => setTimeout(resolve));
        if (settings !== at) return;
        try {
          piece.draw(conditions, style);
        } catch (error) {
          if (isNotThere(error)) piece.isSlow = true;
          else if (!(error instanceof RangeError)) throw error;
        }
      }
      // Only now: what would find them there already would not be known to be slow.
      if (pieces.some(({ isSlow }) => isSlow) && !(await fetchMore())) return;
    }
  }

  /** Draws the page for settings; keeps the last good numbers, and says so, where the physics has none. */
  function apply(wantedSettings: RoomSettings, { all = false, isSilent = false } = {}): void {
    const started = performance.now();
    // In other units nothing is computed anew.
    const conditions = live === drawn.live && isSameRoom(wantedSettings, drawn.settings) ? drawn.conditions : conditionsFor(live, wantedSettings);
    const style: Style = { ...own, customary: wantedSettings.customary };
    const turn = ++run;
    const slow: Piece[] = [];
    const unseen = new Set(pieces.filter(({ place }) => place !== undefined && !isNear(place)));
    const refused = new Set<string>();
    root.dataset['state'] = 'drawing';
    const draw = (piece: Piece): void => {
      try {
        piece.draw(conditions, style);
      } catch (error) {
        if (isNotThere(error)) {
          piece.isSlow = true;
          slow.push(piece);
        } else if (error instanceof RangeError) refused.add(said.someKeepLast);
        else throw error;
      }
    };
    for (const piece of pieces) if (piece.isSlow) slow.push(piece); else if (!unseen.has(piece)) draw(piece);
    settings = wantedSettings;
    drawn = { live, settings, conditions };
    control.show(settings, conditions, all);
    const line = computedFor(conditions, style);
    printInMargins(isOwnRoom(settings) && !settings.customary ? undefined : `${line}.`, root.dataset['page']!, root.dataset['address']!);
    document.documentElement.classList.toggle('in-your-room', !isOwnRoom(settings));
    const end = (): void => {
      root.dataset['state'] = 'drawn';
      control.say(refused.size === 0 ? `${line}.` : [...refused].join(' '), refused.size > 0);
      performance.measure('room-all', { start: started });
      // The device's memory and the address take longer than many a table: after what is to be seen.
      remember(isSilent);
      void leadBack(() => turn === run);
    };
    performance.measure('room', { start: started });
    void finish(started, [...unseen].filter(({ isSlow }) => !isSlow), slow, draw, () => turn === run, refused, end);
  }

  /** Draws what is out of sight and then what takes simulations, as long as nothing newer is wanted. A page that is done within a slice is laid out once. */
  async function finish(started: number, unseen: readonly Piece[], slow: Piece[], draw: (piece: Piece) => void, isWanted: () => boolean, refused: Set<string>, end: () => void): Promise<void> {
    let since = started;
    /** Lets the page answer where it has not for long; says whether this is still wanted. */
    const next = async (): Promise<boolean> => {
      if (performance.now() - since > SLICE) {
        await new Promise((resolve) => setTimeout(resolve));
        since = performance.now();
      }
      return isWanted();
    };
    for (const piece of unseen) if (await next()) draw(piece);
    const todo = [...slow];
    if (todo.length > 0 && !(await fetchMore())) {
      refused.add(said.notLoaded(more));
      todo.length = 0;
    }
    for (const piece of todo) if (await next()) draw(piece);
    if (isWanted()) end();
  }

  /** Paper leads back to the room it was printed for. Last of all: a code takes longer than a page of tables. */
  async function leadBack(isWanted: () => boolean): Promise<void> {
    const room = writeAddress('', settings);
    if (codes.areOf(room)) return;
    await new Promise((resolve) => setTimeout(resolve));
    if (isWanted() && (await fetchMore()) && isWanted()) codes.draw(room);
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
    else if (writeSettings(given) !== writeSettings(drawn.settings)) apply(given, { all: true, isSilent: true });
    if (at !== '') document.getElementById(at)?.scrollIntoView();
  }

  /** Takes the room along to the other pages of the site, for devices that remember nothing. */
  function carry(event: Event): void {
    const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>('a[href]') : null;
    if (link === null || link.origin !== location.origin && link.protocol !== 'file:' || link.pathname === location.pathname || !link.pathname.endsWith('.html')) return;
    link.hash = writeAddress(readAddress(link.hash, own).anchor, settings);
  }
}
