/** Arrow keys in a list that begins with a field. */

/**
 * Where a key leads.
 * @param key - as the keyboard event names it
 * @param at - present place; 0 is the field
 * @param count - places in all
 * @returns the new place; undefined where the key is not for moving, or there is nowhere to go
 */
export function moveAmong(key: string, at: number, count: number): number | undefined {
  // In the field these two move the cursor.
  const toEnd = at > 0 && key === 'End' ? count - 1 : at > 0 && key === 'Home' ? 1 : undefined;
  const wanted = key === 'ArrowDown' ? at + 1 : key === 'ArrowUp' ? at - 1 : toEnd;
  return wanted === undefined || wanted < 0 || wanted >= count || at < 0 ? undefined : wanted;
}
