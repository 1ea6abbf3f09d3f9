/** One piece of a page that can be drawn again for other conditions. */
import type { Conditions } from '../tables/conditions.ts';
import type { Style } from '../tables/display.ts';

export interface Piece {
  /** @throws RangeError where the physics has no answer, and an error of its own while the simulations are not there */
  readonly draw: (conditions: Conditions, style: Style) => void;
  /** Where it stands, if it is large: what is out of sight is drawn after what is seen. */
  readonly place?: Element;
  /** Set once it has shown to need the simulations: then it waits until the rest is drawn. */
  isSlow: boolean;
}
