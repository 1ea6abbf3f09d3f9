/** One piece of a page that can be drawn again for other conditions. */
import type { Conditions } from '../tables/conditions.ts';
import type { Style } from '../tables/display.ts';
import type { Asked } from './drawn.ts';
import { isNotThere } from './simulations.ts';

/** Does all of the work on a text that changes no page yet; returns what puts it there. */
export type Ready = (html: string | undefined) => () => void;

export interface Piece {
  /**
   * Computes it.
   * @returns what puts it on the page
   * @throws RangeError where the physics has no answer, and an error of its own while the simulations are not there
   */
  readonly make: (conditions: Conditions, style: Style) => () => void;
  /** Where it stands: what is out of sight is drawn after what is seen. Everywhere, where absent. */
  readonly places?: readonly Element[];
  /** Set once it has shown to need the simulations. */
  isSlow: boolean;
  /** By what another thread can compute it, and what makes its text ready to be put on the page; without this it is computed here. */
  readonly beside?: { readonly asked: Asked; readonly ready: Ready };
}

/** What puts a piece on the page, or why nothing does. */
export type Made = (() => void) | 'refused' | 'not there';

/** A piece computed, or that physics has no answer, or that the simulations are not there. */
export function madeOf(piece: Piece, conditions: Conditions, style: Style): Made {
  try {
    return piece.make(conditions, style);
  } catch (error) {
    if (isNotThere(error)) return 'not there';
    if (error instanceof RangeError) return 'refused';
    throw error;
  }
}
