/** The page that asks whether it works: apparatus and room are chosen from the site's own, and the answer is drawn again. */
import type { Live } from '../sheets/html/live.ts';
import { renderVerdict } from '../sheets/html/verdict.ts';
import { inRoom, type Room } from '../tables/room.ts';
import { morph } from './morph.ts';
import type { Piece } from './piece.ts';
import { redrawing } from './rewrite.ts';

/** What can be chosen, as the page carries it in `data-bench`. */
export interface Bench {
  readonly rooms: readonly Room[];
  readonly apparatus: readonly Live[];
}

/** The answer as a piece of the page; none where the page asks nothing. */
export function bench(root: ParentNode, onChoice: (live: Live) => void): Piece[] {
  const place = root.querySelector<HTMLElement>('[data-bench]');
  const answer = place?.querySelector('.verdict');
  if (!place || !answer) return [];
  const { rooms, apparatus } = JSON.parse(place.dataset['bench']!) as Bench;
  const [apparatusChoice, roomChoice] = ['apparatus', 'room'].map((name) => place.querySelector<HTMLSelectElement>(`select[name=${name}]`)!);
  place.querySelector<HTMLElement>('.choices')!.hidden = false;
  place.addEventListener('input', ({ target }) => {
    if (target !== apparatusChoice && target !== roomChoice) return;
    const live = apparatus[apparatusChoice!.selectedIndex]!;
    const room = rooms[roomChoice!.selectedIndex]!;
    onChoice({ ...live, conditions: inRoom(live.conditions, room, live.moving) });
  });
  const draw = redrawing(answer, morph);
  return [{ make: (conditions, style) => draw(renderVerdict(conditions, style).html), isSlow: false }];
}
