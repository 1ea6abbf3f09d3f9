/** Pieces computed by a thread beside the page, or by the page itself where it has none. */
import type { Conditions } from '../tables/conditions.ts';
import type { Style } from '../tables/display.ts';
import { startBeside } from './beside.ts';
import { madeOf, type Made, type Piece } from './piece.ts';
import { simulations } from './simulations.ts';

export interface Preparer {
  /** Whether a piece is computed by the thread. */
  readonly isBeside: (piece: Piece) => boolean;
  /**
   * Computes pieces, simulations included; the thread has begun when this returns.
   * @returns the pieces made, in some order; undefined where the simulations cannot be had
   */
  readonly prepare: (pieces: readonly Piece[], conditions: Conditions, style: Style) => Promise<readonly Made[] | undefined>;
}

/**
 * @param pieces of the page: a thread is started for those that it can compute
 * @param script address of the page's own script; empty where it is part of the page
 * @param address of the simulations
 */
export function preparer(pieces: readonly Piece[], script: string, address: string): Preparer {
  const thread = pieces.some(({ beside }) => beside !== undefined) ? startBeside(script, address) : undefined;
  const isBeside = ({ beside }: Piece): boolean => beside !== undefined && thread?.hasFailed() === false;

  return {
    isBeside,
    prepare: async (some, conditions, style) => {
      const apart = some.filter(isBeside);
      const answers = apart.length === 0 ? [] : await thread!.ask(apart.map(({ beside }) => beside!.asked), conditions, style);
      const here = answers === undefined ? some : some.filter((piece) => !apart.includes(piece));
      if (here.length > 0 && !(await simulations(address))) return undefined;
      const made = (answers ?? []).map((answer, at): Made => (answer === 'refused' ? answer : apart[at]!.beside!.ready(answer.html)));
      return [...made, ...here.map((piece) => madeOf(piece, conditions, style))];
    },
  };
}
