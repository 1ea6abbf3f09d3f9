/** The board's keys, without a browser. */
import { describe, expect, it } from 'vitest';
import { after, boardAt, moveOf, type Pressed } from '../../src/browser/board-moves.ts';

const press = (key: string, held: Partial<Pressed> = {}): Pressed => ({ key, shiftKey: false, altKey: false, ctrlKey: false, metaKey: false, ...held });

describe('keys', () => {
  it.each([
    ['ArrowRight', 'next'], [' ', 'next'], ['PageDown', 'next'], ['ArrowLeft', 'previous'], ['PageUp', 'previous'], ['Home', 'first'], ['End', 'last'], ['Escape', 'leave'],
  ] as const)('%s: %s', (key, move) => expect(moveOf(press(key))).toBe(move));

  it('leaves the browser its own', () => {
    expect(moveOf(press('Tab'))).toBeUndefined();
    expect(moveOf(press('Enter'))).toBeUndefined();
    for (const held of [{ altKey: true }, { ctrlKey: true }, { metaKey: true }]) expect(moveOf(press('ArrowLeft', held))).toBeUndefined();
  });

  it('goes back with shift and space, as scrolling does', () => expect(moveOf(press(' ', { shiftKey: true }))).toBe('previous'));
});

describe('where a move leads', () => {
  it.each([
    ['next', 2, true, 'show'], ['next', 2, false, 3], ['next', 8, false, 8], ['previous', 2, true, 1], ['previous', 0, false, 0], ['first', 5, true, 0], ['last', 2, true, 8],
  ] as const)('%s from board %i (something covered: %s): %s', (move, board, covered, place) => expect(after(move, { board, boards: 9, covered })).toBe(place));
});

describe('the board on the screen', () => {
  it.each([
    [[0, 720, 1440], 0], [[-720, 0, 720], 1], [[-500, 220, 940], 1], [[-300, 420, 1140], 0], [[-1440, -720, 0], 2], [[900, 1620], 0],
  ] as const)('with tops at %j: %i', (tops, board) => expect(boardAt(tops, 720)).toBe(board));
});
