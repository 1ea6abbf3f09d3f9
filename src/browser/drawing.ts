/** A page drawn again for other conditions: what is in sight first, or all at once where that takes no time to speak of. */
import type { Conditions } from '../tables/conditions.ts';
import type { Style } from '../tables/display.ts';
import { nearness } from './nearness.ts';
import { madeOf, type Made, type Piece } from './piece.ts';
import type { Preparer } from './preparing.ts';

/** After so many rounds the engines of today have compiled what runs often. */
const WARM_ROUNDS = 8;
/** An answer within this time seems to come at once, ms: Card, Robertson & Mackinlay 1991. A page that is laid out in between takes as long again. */
const SLICE = 100;
/** What is seen waits so long for the thread beside the page, ms: put in its place together, all is laid out once. */
const PATIENCE = 80;

/** Why some of a page keeps its last good numbers: the physics has none, or the simulations could not be fetched. */
export type Refusal = 'no answer' | 'no simulations';

export interface Drawing {
  /**
   * Draws all pieces, unless it is called again meanwhile.
   * @param onSeen what is in sight stands there
   * @param onAll everything does
   */
  readonly draw: (conditions: Conditions, style: Style, onSeen: () => void, onAll: (refused: ReadonlySet<Refusal>) => void) => void;
  /** Computes what the thread can ahead, for conditions that are likely to be drawn soon; these are known again by being the same object. */
  readonly foresee: (conditions: Conditions, style: Style) => void;
  /** Computes all pieces several times for nothing, until something is drawn: the browser has made fast code of it by the time it is wanted. */
  readonly warm: (conditions: () => Conditions, style: Style) => Promise<void>;
}

/** How the pieces of a page are drawn: by the page what is near, by the thread beside it, where there is one, the rest. */
export function drawing(pieces: readonly Piece[], { prepare, isBeside }: Preparer): Drawing {
  const isNear = nearness(pieces.flatMap(({ places }) => places ?? []));
  const foreseen = new WeakMap<Conditions, { readonly style: Style; readonly made: ReturnType<Preparer['prepare']> }>();
  let turn = 0;
  let putSeen = (): void => undefined;

  function foresee(conditions: Conditions, style: Style): void {
    if (pieces.some(isBeside) && foreseen.get(conditions)?.style !== style) foreseen.set(conditions, { style, made: prepare(pieces.filter(isBeside), conditions, style) });
  }

  function draw(conditions: Conditions, style: Style, onSeen: () => void, onAll: (refused: ReadonlySet<Refusal>) => void): void {
    const started = performance.now();
    const own = ++turn;
    const isWanted = (): boolean => turn === own;
    // Made a moment ago, for conditions that have passed: a reader who keeps a key pressed sees the page follow.
    putSeen();
    const refused = new Set<Refusal>();
    const found: Piece[] = [];
    const put = (made: Made): void => {
      if (typeof made === 'function') made();
      else if (made === 'refused') refused.add('no answer');
    };
    const make = (piece: Piece): Made => {
      const made = madeOf(piece, conditions, style);
      if (made === 'not there') {
        piece.isSlow = true;
        found.push(piece);
      }
      return made;
    };
    const ahead = foreseen.get(conditions);
    const isForeseen = ahead?.style === style;
    const seen = pieces.filter(({ places }) => places?.some(isNear) ?? true);
    const apart = pieces.filter(isForeseen ? isBeside : (piece) => piece.isSlow || (isBeside(piece) && !seen.includes(piece)));
    const here = pieces.filter((piece) => !apart.includes(piece));
    const waits = apart.some(isBeside);
    const prepared = isForeseen ? ahead.made : prepare(apart, conditions, style);
    const made = here.filter((piece) => seen.includes(piece)).map(make);
    putSeen = () => {
      putSeen = () => undefined;
      made.forEach(put);
      if (isWanted()) onSeen();
    };
    if (!waits) putSeen();
    void finish();

    async function finish(): Promise<void> {
      let since = started;
      /** Lets the page answer where it has not for long; says whether this is still wanted. */
      const next = async (): Promise<boolean> => {
        if (performance.now() - since > SLICE) {
          await pause();
          since = performance.now();
        }
        return isWanted();
      };
      if (waits) await Promise.race([prepared, pause(started + PATIENCE - performance.now())]);
      if (!isWanted()) return;
      // What is foreseen holds most of what is seen.
      if (!isForeseen) putSeen();
      for (const piece of here) if (!seen.includes(piece) && (await next())) put(make(piece));
      for (const some of [prepared, prepare(found, conditions, style)]) {
        const rest = await some;
        if (rest === undefined) refused.add('no simulations');
        for (const one of rest ?? []) if (await next()) put(one);
      }
      if (!isWanted()) return;
      putSeen();
      onAll(refused);
    }
  }

  async function warm(conditions: () => Conditions, style: Style): Promise<void> {
    const at = turn;
    for (let round = 0; round < WARM_ROUNDS; round++) {
      const some = { ...conditions() };
      const prepared = prepare(pieces.filter((piece) => piece.isSlow || isBeside(piece)), some, style);
      for (const piece of pieces.filter(({ isSlow }) => !isSlow)) {
        await pause();
        if (turn !== at) return;
        const made = madeOf(piece, some, style);
        if (made === 'not there') piece.isSlow = true;
        else if (typeof made === 'function') made();
      }
      // Simulations that are there already would hide which pieces are slow: these are all known after the first round.
      if ((await prepared) === undefined) return;
    }
  }

  return { draw, foresee, warm };
}

const pause = (time = 0): Promise<void> => new Promise((resolve) => setTimeout(resolve, time));
