/** Which key means what on the board, and where it leads. Pure. */

export type Move = 'next' | 'previous' | 'first' | 'last' | 'leave';

const MOVES: Readonly<Record<string, Move>> = {
  ArrowRight: 'next', ArrowDown: 'next', PageDown: 'next', ' ': 'next',
  ArrowLeft: 'previous', ArrowUp: 'previous', PageUp: 'previous',
  Home: 'first', End: 'last', Escape: 'leave',
};

/** A key as it was pressed. */
export interface Pressed {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/** What a key asks for; undefined for keys that are the browser's own. Remote pointers send the page keys. */
export function moveOf({ key, shiftKey, altKey, ctrlKey, metaKey }: Pressed): Move | undefined {
  if (altKey || ctrlKey || metaKey) return undefined;
  if (shiftKey) return key === ' ' ? 'previous' : undefined;
  return MOVES[key];
}

/** Where the class is: which board, and whether something on it is still to be shown. */
export interface Standing {
  readonly board: number;
  readonly boards: number;
  readonly covered: boolean;
}

/** The board to go to, or 'show' where the next thing is what this board still holds back. */
export function after(move: Exclude<Move, 'leave'>, { board, boards, covered }: Standing): number | 'show' {
  switch (move) {
    case 'first': return 0;
    case 'last': return boards - 1;
    case 'previous': return Math.max(0, board - 1);
    case 'next': return covered ? 'show' : Math.min(boards - 1, board + 1);
  }
}

/**
 * The board that is on the screen: the last whose top is above the screen's middle.
 * @param tops - of the boards in order, from the screen's upper edge, px
 * @param height - of the screen, px
 */
export const boardAt = (tops: readonly number[], height: number): number => Math.max(0, tops.filter((top) => top < height / 2).length - 1);
